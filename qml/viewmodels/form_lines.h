// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>
#include <utility>

#include "core/model/engine.h"
#include "qml/format/formatter.h"
#include "qml/viewmodels/form_model.h"

namespace lapwing {

/// Units that a line offers, the one to start with first.
template <class Tag>
using UnitList = std::vector<Unit<Tag>>;

namespace forms {

UnitList<PressureTag> pressures(const format::Formatter& format);
UnitList<LengthTag> millimetres(const format::Formatter& format);  ///< and inches
UnitList<LengthTag> clearances(const format::Formatter& format);   ///< millimetres, thou, inches
UnitList<LengthTag> altitudes(const format::Formatter& format);
UnitList<TemperatureTag> temperatures(const format::Formatter& format);

/// Digits with the locale's decimal mark, for a field to type in.
QString digits(const std::string& canonical, const format::Formatter& format);
/// "manual, page 7-12"
QString origin_line(Origin origin, const std::string& note, const format::Formatter& format);
/// A whole number; the sentence names `label`.
Result<int> whole(const QString& text, const QString& label);
/// Numbers from "1-5-3-6-2-4", "1,3,4,2" or "1 3 4 2".
Result<std::vector<int>> numbers(const QString& text);
Status choose_one(const QString& label);

inline Origin origin_of(const QString& word) {
    return from_word<Origin>(word.toStdString()).value_or(Origin::unknown);
}

template <class Tag>
Result<Typed<Tag>> typed(const QString& text, const QString& unit, Unit<Tag> otherwise) {
    if (text.trimmed().isEmpty()) return fail("form.nothing", "Nothing is typed there yet: type a number.");
    return Typed<Tag>::make(text.toStdString(), Unit<Tag>::find(unit.toStdString()).value_or(otherwise));
}

}  // namespace forms

/// The lines of a form over one record, built anew for each state of it. `member` is always a generic lambda
/// that hands out a part of the record: `[](auto& engine) -> auto& { return engine.bore; }`.
template <class Record>
class FormLines {
public:
    using Take = std::function<Status(Record&, const FormEntry&)>;

    FormLines(const Record& record, const format::Formatter& format) : record_(record), format_(format) {}

    void section(const QString& name) { section_ = name; }
    /// The line added last explains itself.
    void hint(const QString& text) { fields_.back().hint = text; }

    template <class Member>
    void text(const char* key, const QString& label, Member member,
              FormField::Kind kind = FormField::Kind::text) {
        FormField field = line(key, label, kind);
        field.text = field.shown = QString::fromStdString(member(record_));
        add(std::move(field), [member](Record& record, const FormEntry& entry) -> Status {
            member(record) = entry.text.toStdString();
            return {};
        });
    }

    template <class Tag, class Member>
    void quantity(const char* key, const QString& label, UnitList<Tag> units, Member member) {
        FormField field = quantity_line(key, label, units);
        if (const auto& value = member(record_)) show(field, *value);
        add(std::move(field),
            [member, unit = units.front()](Record& record, const FormEntry& entry) -> Status {
                if (entry.text.isEmpty()) {
                    member(record).reset();
                    return {};
                }
                return forms::typed<Tag>(entry.text, entry.unit, unit).map([&](Typed<Tag> value) {
                    member(record) = std::move(value);
                });
            });
    }

    /// A quantity that has to be there; 0 stands for not known and shows nothing.
    template <class Tag, class Member>
    void needed(const char* key, const QString& label, UnitList<Tag> units, Member member) {
        FormField field = quantity_line(key, label, units);
        if (member(record_).si() != 0.0) show(field, member(record_));
        add(std::move(field), [member, unit = units.front()](Record& record, const FormEntry& entry) {
            return forms::typed<Tag>(entry.text, entry.unit, unit).map([&](Typed<Tag> value) {
                member(record) = std::move(value);
            });
        });
    }

    template <class Tag, class Member>
    void sourced(const char* key, const QString& label, UnitList<Tag> units, Member member) {
        FormField field = quantity_line(key, label, units);
        field.hasOrigin = true;
        if (const auto& known = member(record_)) {
            show(field, known->value);
            show_origin(field, known->origin, known->note);
        }
        add(std::move(field),
            [member, unit = units.front()](Record& record, const FormEntry& entry) -> Status {
                if (entry.text.isEmpty()) {
                    member(record).reset();
                    return {};
                }
                return forms::typed<Tag>(entry.text, entry.unit, unit).map([&](Typed<Tag> value) {
                    member(record) = Sourced<Typed<Tag>>{std::move(value), forms::origin_of(entry.origin),
                                                         entry.originNote.toStdString()};
                });
            });
    }

    template <class Enum, class Member>
    void choice(const char* key, const QString& label, Member member,
                std::vector<Enum> options = all<Enum>()) {
        FormField field = line(key, label, FormField::Kind::choice);
        for (const Enum option : options) {
            field.options << QString::fromUtf8(word(option).data(), qsizetype(word(option).size()));
            field.optionNames << format_.name(option);
        }
        const Enum now = member(record_);
        field.chosen << QString::fromUtf8(word(now).data(), qsizetype(word(now).size()));
        if (field.chosen.front() != QLatin1String("unknown")) field.shown = format_.name(now);
        add(std::move(field), [member, label](Record& record, const FormEntry& entry) -> Status {
            const auto chosen =
                entry.chosen.isEmpty() ? std::nullopt : from_word<Enum>(entry.chosen.front().toStdString());
            if (!chosen) return forms::choose_one(label);
            member(record) = *chosen;
            return {};
        });
    }

    template <class Member>
    void toggle(const char* key, const QString& label, Member member) {
        toggle_with(key, label, member(record_), [member](Record& record, bool on) { member(record) = on; });
    }

    void toggle_with(const char* key, const QString& label, bool on, std::function<void(Record&, bool)> set) {
        FormField field = line(key, label, FormField::Kind::toggle);
        if (on) field.chosen << QStringLiteral("on");
        add(std::move(field), [set = std::move(set)](Record& record, const FormEntry& entry) -> Status {
            set(record, entry.chosen.contains(QLatin1String("on")));
            return {};
        });
    }

    /// A whole number.
    template <class Member>
    void number(const char* key, const QString& label, Member member) {
        FormField field = line(key, label, FormField::Kind::number);
        field.text = field.shown = QString::number(member(record_));
        add(std::move(field), [member, label](Record& record, const FormEntry& entry) -> Status {
            return forms::whole(entry.text, label).map([&](int value) { member(record) = value; });
        });
    }

    /// A line that reads and takes in its own way.
    void special(FormField field, Take take) {
        field.section = section_;
        add(std::move(field), std::move(take));
    }

    [[nodiscard]] FormField line(const QString& key, const QString& label, FormField::Kind kind) const {
        FormField field;
        field.key = key;
        field.section = section_;
        field.kind = kind;
        field.label = label;
        return field;
    }
    [[nodiscard]] FormField line(const char* key, const QString& label, FormField::Kind kind) const {
        return line(QString::fromLatin1(key), label, kind);
    }

    template <class Tag>
    [[nodiscard]] FormField quantity_line(const QString& key, const QString& label,
                                          const UnitList<Tag>& units) const {
        FormField field = line(key, label, FormField::Kind::quantity);
        for (const auto& unit : units) {
            field.units << QString::fromUtf8(unit.symbol().data(), qsizetype(unit.symbol().size()));
            field.unitNames << QString::fromUtf8(unit.display().data(), qsizetype(unit.display().size()));
        }
        field.unit = field.units.front();
        return field;
    }

    template <class Tag>
    void show(FormField& field, const Typed<Tag>& value) const {
        field.text = forms::digits(value.digits(), format_);
        field.shown = format_.typed(value);
        field.unit = QString::fromUtf8(value.unit().symbol().data(), qsizetype(value.unit().symbol().size()));
        if (field.units.contains(field.unit)) return;
        // A value from elsewhere in a unit that the line doesn't offer stays as it was typed.
        field.units << field.unit;
        field.unitNames << QString::fromUtf8(value.unit().display().data(),
                                             qsizetype(value.unit().display().size()));
    }

    void show_origin(FormField& field, Origin origin, const std::string& note) const {
        field.hasOrigin = true;
        field.origin = QString::fromUtf8(word(origin).data(), qsizetype(word(origin).size()));
        field.originNote = QString::fromStdString(note);
    }

    [[nodiscard]] const std::vector<FormField>& fields() const { return fields_; }

    /// Puts an entry into `record`. A line can go while its sheet is open: then the sentence says so.
    Status take(const QString& key, Record& record, const FormEntry& entry) const {
        for (std::size_t i = 0; i < fields_.size(); ++i)
            if (fields_[i].key == key) return takes_[i](record, entry);
        return fail("form.gone", "This line is not there any more: go back and open the card again.");
    }

    template <class Enum>
    static std::vector<Enum> all() {
        std::vector<Enum> values;
        for (std::size_t i = 0; i < Words<Enum>::list.size(); ++i)
            values.push_back(static_cast<Enum>(i));
        return values;
    }

private:
    void add(FormField field, Take take) {
        fields_.push_back(std::move(field));
        takes_.push_back(std::move(take));
    }

    const Record& record_;
    const format::Formatter& format_;
    QString section_;
    std::vector<FormField> fields_;
    std::vector<Take> takes_;
};

}  // namespace lapwing
