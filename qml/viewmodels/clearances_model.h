// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <set>

#include "qml/format/typed_entry.h"
#include "qml/viewmodels/keyed_model.h"

namespace lapwing {

/// Valve clearances on the pad: valve by valve, as found and as left, in mm or thou.
class ClearancesModel : public lapwing::KeyedModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList valves READ valves NOTIFY entryChanged)
    Q_PROPERTY(int valveIndex READ valveIndex NOTIFY entryChanged)
    Q_PROPERTY(bool deletable READ deletable NOTIFY entryChanged)

public:
    using KeyedModel::KeyedModel;

    /// {key, label, value, state}
    [[nodiscard]] QVariantList valves() const;
    [[nodiscard]] int valveIndex() const { return valve_; }
    /// The valve has an entry, and nothing is being typed in its place.
    [[nodiscard]] bool deletable() const { return entry().blank() && recordedAt(cylinder_, valve()); }
    [[nodiscard]] QVariantList fields() const override;
    [[nodiscard]] QString caption() const override;
    [[nodiscard]] QString typed() const override;
    [[nodiscard]] QString placeholder() const override;
    [[nodiscard]] QString unit() const override;
    [[nodiscard]] QVariantList lines() const override;
    [[nodiscard]] QString keepText() const override;

    Q_INVOKABLE void chooseCylinder(int number) override;
    Q_INVOKABLE void chooseValve(int index);
    /// To the first valve of that side.
    Q_INVOKABLE void chooseSide(const QString& word);
    Q_INVOKABLE void switchUnit();
    Q_INVOKABLE void keep() override;
    /// Takes the valve's newest entry out: the one before it, or none, stands again.
    Q_INVOKABLE void remove();
    /// Nothing here is worked out from formulas.
    Q_INVOKABLE QVariantList derivation(int) const override { return {}; }

protected:
    [[nodiscard]] QString place() const override;
    void goTo(const QString& place) override;
    [[nodiscard]] QString mainField() const override;
    [[nodiscard]] QVariantList rail() const override;
    [[nodiscard]] QString draftKey() const override;
    [[nodiscard]] bool recorded(const Uuid& id) const override;
    void writeDraft(QJsonObject& draft) const override;
    void readDraft(const QJsonObject& draft) override;

private:
    struct Valve {
        ValveSide side;
        int number;
        bool operator==(const Valve&) const = default;
    };

    [[nodiscard]] std::vector<Valve> valvesOfCylinder() const;
    [[nodiscard]] Valve valve() const;
    [[nodiscard]] std::optional<int> nextValve() const;
    [[nodiscard]] bool lastValve() const;
    /// Digits as they will be taken: in mm the app places a point that nobody types.
    [[nodiscard]] format::Entry placed(const QString& field) const;
    [[nodiscard]] std::optional<TypedLength> length(const QString& field) const;
    [[nodiscard]] const Clearance* recordedAt(int cylinder, Valve which) const;
    [[nodiscard]] std::optional<ClearanceRange> wanted(ValveSide side) const;
    [[nodiscard]] Unit<LengthTag> lengthUnit() const;
    [[nodiscard]] findings::State stateOf(const Clearance& clearance) const;
    /// What is typed lies so far from what is wanted that a slip is likelier; empty where it does not.
    [[nodiscard]] QString doubtful() const;
    /// The typed digits as one word, to know again what was asked about.
    [[nodiscard]] QString typedAsOne() const;
    [[nodiscard]] QVariantMap wayToCard() const;
    [[nodiscard]] static QString placeOf(int cylinder, Valve which);
    [[nodiscard]] std::optional<int> leftOut() const;
    bool advance(bool kept);

    int valve_ = 0;
    std::set<QString> kept_;  ///< places that were kept here, also before their commit
    QString asked_;           ///< the digits that were asked about, and are kept when they come again
    std::optional<Unit<LengthTag>> chosen_unit_;
};

}  // namespace lapwing
