// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QAbstractListModel>
#include <QStringList>
#include <QVariant>
#include <functional>
#include <optional>
#include <vector>

#include "core/base/result.h"

namespace lapwing {

/// One line of a form: how it reads, and how typed text becomes part of a record.
struct FormField {
    enum class Kind { text, long_text, quantity, number, choice, flags, toggle, action };
    QString key;
    QString section;
    Kind kind = Kind::text;
    QString label;
    QString hint;           ///< what to type, or why it matters
    QString text;           ///< as typed: digits for a quantity
    QString shown;          ///< as it reads on the card when it is not being edited
    QString unit;           ///< file symbol
    QStringList units;      ///< file symbols to choose from
    QStringList unitNames;  ///< their display names
    QStringList options;    ///< choice and flags: stable words
    QStringList optionNames;
    QStringList chosen;      ///< choice: one word; flags: any number
    bool hasOrigin = false;  ///< the figure records where it comes from
    QString origin;          ///< word of Origin
    QString originNote;
};

/// What came of editing one field: everything that its line can hold.
struct FormEntry {
    QString text;
    QString unit;
    QStringList chosen;
    QString origin;
    QString originNote;
    bool again = false;  ///< it was refused or asked about just now, and comes once more as it was

    bool operator==(const FormEntry&) const = default;
};

/// A form of sections and lines over one record. Subclasses list the fields and take entries; each taken
/// entry is one command, so it is stored at once and can be undone.
class FormModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("each form is a class of its own")
    Q_PROPERTY(int count READ count NOTIFY reset)

public:
    enum Roles {
        KeyRole = Qt::UserRole + 1,
        SectionRole,
        KindRole,
        LabelRole,
        HintRole,
        TextRole,
        ShownRole,
        UnitRole,
        UnitsRole,
        UnitNamesRole,
        OptionsRole,
        OptionNamesRole,
        ChosenRole,
        HasOriginRole,
        OriginRole,
        OriginNoteRole
    };

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int count() const { return static_cast<int>(fields_.size()); }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    /// All of one line as a map with the role names as keys, for an editing sheet.
    Q_INVOKABLE QVariantMap field(const QString& key) const;

    /// Takes what was typed for one field: {text, unit, chosen, origin, originNote}. Returns an empty string
    /// when it was taken, or the sentence that says what is wrong and what to do; nothing is changed then.
    Q_INVOKABLE QString enter(const QString& key, const QVariantMap& entry);

signals:
    void reset();

protected:
    virtual Status take(const QString& key, const FormEntry& entry) = 0;
    [[nodiscard]] virtual QString sentence(const Error& error) const = 0;
    void show(std::vector<FormField> fields);

private:
    std::vector<FormField> fields_;
    QString asked_key_;
    std::optional<FormEntry> asked_;  ///< what was not taken last
};

}  // namespace lapwing
