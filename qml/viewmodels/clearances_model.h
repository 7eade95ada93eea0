// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>
#include <map>
#include <tuple>

#include "qml/viewmodels/session_backed.h"

namespace lapwing {

/// Valve clearances on the pad: valve by valve, as found and as left, in mm or thou.
class ClearancesModel : public lapwing::SessionBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList cylinders READ cylinders NOTIFY entryChanged)
    Q_PROPERTY(int currentIndex READ currentIndex NOTIFY entryChanged)
    Q_PROPERTY(QVariantList valves READ valves NOTIFY entryChanged)
    Q_PROPERTY(int valveIndex READ valveIndex NOTIFY entryChanged)
    Q_PROPERTY(QVariantList fields READ fields NOTIFY entryChanged)
    Q_PROPERTY(QString field READ field NOTIFY entryChanged)
    Q_PROPERTY(QString caption READ caption NOTIFY entryChanged)
    Q_PROPERTY(QString typed READ typed NOTIFY entryChanged)
    Q_PROPERTY(QString placeholder READ placeholder NOTIFY entryChanged)
    Q_PROPERTY(QString unit READ unit NOTIFY entryChanged)
    Q_PROPERTY(QVariantList lines READ lines NOTIFY entryChanged)
    Q_PROPERTY(QString keepText READ keepText NOTIFY entryChanged)
    Q_PROPERTY(QString lastKept READ lastKept NOTIFY kept)

public:
    using SessionBacked::SessionBacked;

    [[nodiscard]] QVariantList cylinders() const;
    [[nodiscard]] int currentIndex() const;
    /// {key, label, value, state, wanted}
    [[nodiscard]] QVariantList valves() const;
    [[nodiscard]] int valveIndex() const { return valve_; }
    [[nodiscard]] QVariantList fields() const;
    [[nodiscard]] QString field() const { return field_; }
    [[nodiscard]] QString caption() const;
    [[nodiscard]] QString typed() const;
    [[nodiscard]] QString placeholder() const;
    [[nodiscard]] QString unit() const;
    [[nodiscard]] QVariantList lines() const;
    [[nodiscard]] QString keepText() const;
    [[nodiscard]] QString lastKept() const { return last_kept_; }

    Q_INVOKABLE void press(const QString& character);
    Q_INVOKABLE void backspace();
    Q_INVOKABLE void clear();
    Q_INVOKABLE void focusField(const QString& key);
    Q_INVOKABLE void choose(int index);
    Q_INVOKABLE void chooseValve(int index);
    Q_INVOKABLE void keep();
    Q_INVOKABLE void switchUnit();

signals:
    void entryChanged();
    void kept();
    void finished();

protected:
    void refresh() override;

private:
    struct Valve {
        ValveSide side;
        int number;
        auto operator<=>(const Valve&) const = default;
    };
    struct Entry {
        QString found, left;
        ClearanceId id;
    };
    using Place = std::pair<int, Valve>;

    [[nodiscard]] std::vector<Valve> valvesOfCylinder() const;
    [[nodiscard]] Valve valve() const;
    [[nodiscard]] const Clearance* recorded(int cylinder, Valve valve) const;
    [[nodiscard]] std::optional<ClearanceRange> wanted(ValveSide side) const;
    [[nodiscard]] Unit<LengthTag> lengthUnit() const;
    [[nodiscard]] findings::State stateOf(const Clearance& clearance) const;
    bool advance();
    [[nodiscard]] QString shown(QString digits) const;
    QString& text();
    void saveDraft();
    void loadDraft();

    int cylinder_ = 0;
    int valve_ = 0;
    QString field_ = QStringLiteral("found");
    std::map<Place, Entry> entries_;
    std::optional<Unit<LengthTag>> chosen_unit_;
    bool draft_loaded_ = false;
    QString last_kept_;
};

}  // namespace lapwing
