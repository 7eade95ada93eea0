// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/form_model.h"

#include <QMetaEnum>
#include <algorithm>

namespace lapwing {
namespace {

QString kind_word(FormField::Kind kind) {
    switch (kind) {
        case FormField::Kind::text:
            return QStringLiteral("text");
        case FormField::Kind::long_text:
            return QStringLiteral("longText");
        case FormField::Kind::quantity:
            return QStringLiteral("quantity");
        case FormField::Kind::number:
            return QStringLiteral("number");
        case FormField::Kind::choice:
            return QStringLiteral("choice");
        case FormField::Kind::flags:
            return QStringLiteral("flags");
        case FormField::Kind::toggle:
            return QStringLiteral("toggle");
        case FormField::Kind::action:
            return QStringLiteral("action");
    }
    return {};
}

QVariant value(const FormField& field, int role) {
    switch (role) {
        case FormModel::KeyRole:
            return field.key;
        case FormModel::SectionRole:
            return field.section;
        case FormModel::KindRole:
            return kind_word(field.kind);
        case FormModel::LabelRole:
            return field.label;
        case FormModel::HintRole:
            return field.hint;
        case FormModel::TextRole:
            return field.text;
        case FormModel::ShownRole:
            return field.shown;
        case FormModel::UnitRole:
            return field.unit;
        case FormModel::UnitsRole:
            return field.units;
        case FormModel::UnitNamesRole:
            return field.unitNames;
        case FormModel::OptionsRole:
            return field.options;
        case FormModel::OptionNamesRole:
            return field.optionNames;
        case FormModel::ChosenRole:
            return field.chosen;
        case FormModel::HasOriginRole:
            return field.hasOrigin;
        case FormModel::OriginRole:
            return field.origin;
        case FormModel::OriginNoteRole:
            return field.originNote;
        default:
            return {};
    }
}

}  // namespace

int FormModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant FormModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= count()) return {};
    return value(fields_[static_cast<std::size_t>(index.row())], role);
}

QHash<int, QByteArray> FormModel::roleNames() const {
    return {{KeyRole, "key"},         {SectionRole, "section"},
            {KindRole, "kind"},       {LabelRole, "label"},
            {HintRole, "hint"},       {TextRole, "text"},
            {ShownRole, "shown"},     {UnitRole, "unit"},
            {UnitsRole, "units"},     {UnitNamesRole, "unitNames"},
            {OptionsRole, "options"}, {OptionNamesRole, "optionNames"},
            {ChosenRole, "chosen"},   {HasOriginRole, "hasOrigin"},
            {OriginRole, "origin"},   {OriginNoteRole, "originNote"}};
}

QVariantMap FormModel::field(const QString& key) const {
    QVariantMap map;
    for (const auto& field : fields_) {
        if (field.key != key) continue;
        const auto names = roleNames();
        for (auto it = names.begin(); it != names.end(); ++it)
            map[QString::fromLatin1(it.value())] = value(field, it.key());
    }
    return map;
}

QString FormModel::enter(const QString& key, const QVariantMap& entry) {
    FormEntry typed;
    typed.text = entry.value(QStringLiteral("text")).toString().trimmed();
    typed.unit = entry.value(QStringLiteral("unit")).toString();
    typed.chosen = entry.value(QStringLiteral("chosen")).toStringList();
    typed.origin = entry.value(QStringLiteral("origin")).toString();
    typed.originNote = entry.value(QStringLiteral("originNote")).toString();
    const FormEntry as_typed = typed;
    typed.again = asked_key_ == key && asked_ == as_typed;
    const Status status = take(key, typed);
    asked_key_ = key;
    asked_ = status ? std::nullopt : std::optional(as_typed);
    return status ? QString() : sentence(status.error());
}

void FormModel::show(std::vector<FormField> fields) {
    // When only the contents of lines changed, the lines stay: the list keeps its place under the thumb.
    const bool same_lines = fields.size() == fields_.size() &&
                            std::equal(fields.begin(), fields.end(), fields_.begin(),
                                       [](const FormField& a, const FormField& b) { return a.key == b.key; });
    if (same_lines) {
        fields_ = std::move(fields);
        if (!fields_.empty()) emit dataChanged(index(0), index(count() - 1));
    } else {
        beginResetModel();
        fields_ = std::move(fields);
        endResetModel();
    }
    emit reset();
}

}  // namespace lapwing
