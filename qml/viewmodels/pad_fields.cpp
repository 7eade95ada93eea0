// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/pad_fields.h"

namespace lapwing {
namespace pad_field {

bool is_pressure(const QString& field) {
    return field == first || field == final_reading || field == set || field == held;
}

std::vector<QString> of(TestKind test) {
    switch (test) {
        case TestKind::dry:
            return {first, final_reading, pulls};
        case TestKind::wet:
            return {first, final_reading, oil, pulls};
        case TestKind::leak_down:
            return {set, held};
        case TestKind::crankcase:
            return {set, held, hold};
    }
    return {};
}

QString main_of(TestKind test) {
    return is_cranking(test) ? final_reading : held;
}

}  // namespace pad_field

double PadFields::full_scale() const {
    // Without a tester a common gauge of the kind stands in: 16 bar for cranking, 40 bar for a diesel's, 10
    // bar for leak-down (common practice); it only decides where the decimal point of an all-digit entry
    // goes.
    if (tester_) return unit_.number(tester_->gauge.full_scale.value());
    return unit_.number(units::bar.quantity(!is_cranking(test_)     ? 10.0
                                            : fuel_ == Fuel::diesel ? 40.0
                                                                    : 16.0));
}

format::Entry PadFields::placed(const QString& field) const {
    const QString raw = entry_.typed(field);
    const bool percent = dial_in_percent_ && field == pad_field::held;
    if (!pad_field::is_pressure(field) || percent || entry_.plain)
        return {format::withoutNoughts(raw), false};
    std::optional<double> division;
    if (tester_ && tester_->gauge.division) division = unit_.number(tester_->gauge.division->value());
    return format::placePoint(raw, full_scale(), format::decimalsOfGauge(full_scale(), division));
}

QString PadFields::carried(const QString& field) const {
    const Reading* last = nullptr;
    for (const auto& reading : visit_.readings)
        if (reading.test == test_) last = &reading;
    if (field == pad_field::set) {
        if (last && last->set && last->set->unit() == unit_)
            return QString::fromStdString(last->set->digits());
        if (tester_ && tester_->set_pressure && tester_->set_pressure->unit() == unit_)
            return QString::fromStdString(tester_->set_pressure->digits());
    }
    if (field == pad_field::pulls && last && last->pulls) return QString::number(*last->pulls);
    if (field == pad_field::oil && last && last->oil_volume)
        return QString::fromStdString(last->oil_volume->digits());
    if (field == pad_field::hold && last && last->hold) return QString::fromStdString(last->hold->digits());
    return {};
}

QString PadFields::digits(const QString& field) const {
    const QString typed = placed(field).digits;
    return typed.isEmpty() ? carried(field) : typed;
}

std::optional<TypedPressure> PadFields::pressure(const QString& field) const {
    const QString text = digits(field);
    if (text.isEmpty()) return std::nullopt;
    auto typed = TypedPressure::make(text.toStdString(), unit_);
    return typed ? std::optional(*typed) : std::nullopt;
}

std::optional<TypedPressure> PadFields::typed_pressure(const QString& field) const {
    return entry_.typed(field).isEmpty() ? std::nullopt : pressure(field);
}

std::optional<TypedRatio> PadFields::dial_loss() const {
    if (!dial_in_percent_ || empty()) return std::nullopt;
    auto typed = TypedRatio::make(digits(pad_field::held).toStdString(), units::percent);
    return typed ? std::optional(*typed) : std::nullopt;
}

findings::PadEntry PadFields::pad_entry(int cylinder, Tag tag) const {
    findings::PadEntry pad;
    pad.test = test_;
    pad.cylinder = cylinder;
    pad.tag = tag;
    pad.first = typed_pressure(pad_field::first);
    pad.final = typed_pressure(pad_field::final_reading);
    pad.set = pressure(pad_field::set);
    pad.struck = entry_.typed(is_cranking(test_) ? pad_field::final_reading : pad_field::set).toStdString();
    pad.dial_loss = dial_loss();
    if (!dial_in_percent_)
        pad.held = typed_pressure(pad_field::held);
    else if (pad.dial_loss && pad.set)
        pad.held = held_by_dial(*pad.set, *pad.dial_loss);
    if (const QString hold = placed(pad_field::hold).digits; !hold.isEmpty())
        if (auto typed = TypedTime::make(hold.toStdString(), units::minute)) pad.hold = *typed;
    if (is_cranking(test_))
        if (const QString pulls = digits(pad_field::pulls); !pulls.isEmpty()) pad.pulls = pulls.toInt();
    if (test_ == TestKind::wet)
        if (auto oil = TypedVolume::make(digits(pad_field::oil).toStdString(), units::ml))
            pad.oil_volume = *oil;
    if (tester_) pad.tester = tester_->id;
    return pad;
}

Reading PadFields::reading(int cylinder, Tag tag) const {
    Reading reading;
    reading.id = ReadingId{entry_.id};
    reading.test = test_;
    reading.cylinder = cylinder;
    reading.tag = tag;
    const auto pad = pad_entry(cylinder, tag);
    reading.first = pad.first;
    reading.final = pad.final;
    if (!is_cranking(test_)) reading.set = pad.set;
    reading.held = pad.held;
    reading.dial_loss = pad.dial_loss;
    reading.hold = pad.hold;
    reading.tester = pad.tester;
    reading.pulls = pad.pulls;
    reading.oil_volume = pad.oil_volume;
    if (test_ == TestKind::crankcase && !reading.hold)
        if (auto hold = TypedTime::make(carried(pad_field::hold).toStdString(), units::minute))
            reading.hold = *hold;
    return reading;
}

}  // namespace lapwing
