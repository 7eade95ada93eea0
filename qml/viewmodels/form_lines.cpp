// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/form_lines.h"

#include <QRegularExpression>

namespace lapwing::forms {

UnitList<PressureTag> pressures(const format::Formatter& format) {
    UnitList<PressureTag> list{format.choice().pressure};
    for (const auto unit : {units::bar, units::psi, units::kpa, units::kgf_cm2, units::in_hg})
        if (unit != list.front()) list.push_back(unit);
    return list;
}

UnitList<LengthTag> millimetres(const format::Formatter& format) {
    if (format.choice().inches) return {units::inch, units::mm};
    return {units::mm, units::inch};
}

UnitList<LengthTag> clearances(const format::Formatter& format) {
    if (format.choice().inches) return {units::thou, units::mm, units::inch};
    return {units::mm, units::thou, units::inch};
}

UnitList<LengthTag> altitudes(const format::Formatter& format) {
    if (format.choice().inches) return {units::ft, units::m};
    return {units::m, units::ft};
}

UnitList<TemperatureTag> temperatures(const format::Formatter& format) {
    const auto deg_f = *Unit<TemperatureTag>::find("degF");
    if (format.choice().fahrenheit) return {deg_f, units::deg_c};
    return {units::deg_c, deg_f};
}

QString digits(const std::string& canonical, const format::Formatter& format) {
    return QString::fromStdString(canonical).replace(QLatin1Char('.'), format.locale().decimalPoint());
}

QString origin_line(Origin origin, const std::string& note, const format::Formatter& format) {
    QStringList parts;
    if (origin != Origin::unknown) parts << format.name(origin);
    if (!note.empty()) parts << QString::fromStdString(note);
    return parts.join(QStringLiteral(", "));
}

Result<int> whole(const QString& text, const QString& label) {
    if (text.trimmed().isEmpty())
        return fail("form.empty", "\"{}\" is still empty: type a number there.", label.toStdString());
    bool ok = false;
    const int value = text.toInt(&ok);
    if (!ok)
        return fail("form.not_whole", "\"{}\" is no whole number: type digits only for \"{}\".",
                    text.toStdString(), label.toStdString());
    return value;
}

Result<std::vector<int>> numbers(const QString& text) {
    static const QRegularExpression between(QStringLiteral("[\\s,;+/\u2013\u2212-]+"));
    std::vector<int> list;
    for (const QString& part : text.split(between, Qt::SkipEmptyParts)) {
        bool ok = false;
        list.push_back(part.toInt(&ok));
        if (!ok)
            return fail("form.not_numbers",
                        "\"{}\" is no number: type numbers with a dash between them, such as 1-3-4-2.",
                        part.toStdString());
    }
    return list;
}

Status choose_one(const QString& label) {
    return fail("form.choose_one", "Nothing is chosen for \"{}\": choose one.", label.toStdString());
}

}  // namespace lapwing::forms
