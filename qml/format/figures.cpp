// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "qml/format/formatter.h"

namespace lapwing::format {
namespace {

using findings::Dimension;
using findings::Figure;

/// The unit that a figure is shown in, without a type for each dimension.
struct Shown {
    QString symbol;
    std::string file_symbol;
    double factor = 1.0;
    double offset = 0.0;
    int decimals = 0;    ///< where no uncertainty rules them
    bool strip = false;  ///< "75 %", not "75.0 %"

    [[nodiscard]] double number(double si) const { return (si - offset) / factor; }
};

template <class Tag>
Shown unit(Unit<Tag> of, int decimals, bool strip = false) {
    Shown out;
    out.symbol = QString::fromUtf8(of.display().data(), static_cast<qsizetype>(of.display().size()));
    out.file_symbol = std::string(of.symbol());
    out.offset = of.quantity(0.0).si();
    out.factor = of.quantity(1.0).si() - out.offset;
    out.decimals = decimals;
    out.strip = strip;
    return out;
}

constexpr double newtons_per_lbf = 4.4482216152605;  // 0.45359237 kg x 9.80665 m/s2, exactly

int pressure_decimals(Unit<PressureTag> of) {
    const double step = of.quantity(1.0).si();  // tenths where one unit is about a bar
    return step > 5e4 ? 1 : 0;
}

template <class Tag>
Unit<Tag> named(std::string_view symbol) {
    return *Unit<Tag>::find(symbol);
}

Shown unit_for(Dimension dimension, const Choice& choice, double si) {
    const bool inches = choice.inches;
    switch (dimension) {
        case Dimension::gauge_pressure:
            return unit(choice.pressure, pressure_decimals(choice.pressure));
        case Dimension::pressure_difference:
            return unit(choice.pressure, pressure_decimals(choice.pressure) + 1);
        case Dimension::station_pressure:
            return choice.pressure == units::psi || choice.pressure == units::in_hg ? unit(units::in_hg, 2)
                                                                                    : unit(units::hpa, 0);
        case Dimension::share:
            return unit(units::percent, 1, true);
        case Dimension::number:
            return unit(units::one, 2, true);
        case Dimension::area:
            return unit(units::mm2, 2);
        case Dimension::length:
            if (!inches) return unit(units::mm, std::abs(si) < 10e-3 ? 2 : 1);
            return std::abs(si) < 0.5e-3 ? unit(units::thou, 0) : unit(units::inch, 3);
        case Dimension::altitude:
            return inches ? unit(units::ft, 0) : unit(units::m, 0);
        case Dimension::flow:
            return unit(units::l_min, 1);
        case Dimension::volume:
            return unit(units::cm3, 1);
        case Dimension::angle:
            return unit(units::deg, 0);
        case Dimension::temperature:
            return choice.fahrenheit ? unit(named<TemperatureTag>("degF"), 0) : unit(units::deg_c, 0);
        case Dimension::time:
            return si >= 120.0 ? unit(units::minute, 1, true) : unit(named<TimeTag>("s"), 0);
        case Dimension::voltage:
            return unit(units::volt, 1);
        case Dimension::speed:
            return unit(units::rpm, 0);
        case Dimension::torque:
            return unit(named<TorqueTag>(inches ? "lbf ft" : "N m"), 1);
        case Dimension::force:
            return inches ? Shown{QStringLiteral("lbf"), "lbf", newtons_per_lbf, 0.0, 0}
                          : Shown{QStringLiteral("N"), "N", 1.0, 0.0, 0};
    }
    return {};
}

/// A time stays in the unit that it was typed in: nobody chooses a unit for times.
Shown shown_for(const Figure& figure, const Choice& choice) {
    if (figure.dimension == Dimension::time && !figure.digits.empty())
        if (const auto typed = Unit<TimeTag>::find(figure.unit)) return unit(*typed, 1, true);
    return unit_for(figure.dimension, choice, figure.si);
}

/// Decimals that show an uncertainty with one significant digit, two where the first is a 1: rounding 1.4 to
/// 1 would understate it by a third.
int decimals_of_uncertainty(double u) {
    if (!(u > 0.0)) return 0;
    const int exponent = static_cast<int>(std::floor(std::log10(u) + 1e-9));
    const double first = u / std::pow(10.0, exponent);
    return std::clamp(-exponent + (first < 1.95 ? 1 : 0), 0, 6);
}

bool as_typed(const Figure& figure, const Shown& shown) {
    return !figure.digits.empty() && figure.unit == shown.file_symbol;
}

QString number_text(const QLocale& locale, double number, int decimals, bool strip = false) {
    const double scale = std::pow(10.0, decimals);
    // 22 of 80 is 27.5 whichever way it was worked out; the last bits must not make 27 of it here, 28 there.
    const double nudge = std::copysign(1e-9, number);
    double rounded = std::round(number * scale + nudge) / scale;
    if (rounded == 0.0) rounded = 0.0;  // "-0.0" is not a reading
    if (strip && rounded == std::round(rounded)) decimals = 0;
    return locale.toString(rounded, 'f', decimals);
}

}  // namespace

QString Formatter::unitOf(findings::Dimension dimension) const {
    return unit_for(dimension, choice_, 1.0).symbol;
}

QString Formatter::digits(const findings::Figure& figure) const {
    const Shown shown = shown_for(figure, choice_);
    if (as_typed(figure, shown)) return typedText(figure.digits, {});
    if (figure.u95 && *figure.u95 > 0.0)
        return number_text(locale_, shown.number(figure.si),
                           decimals_of_uncertainty(*figure.u95 / shown.factor));
    return number_text(locale_, shown.number(figure.si), shown.decimals, shown.strip);
}

QString Formatter::uncertainty(const findings::Figure& figure) const {
    if (!figure.u95 || !(*figure.u95 > 0.0)) return {};
    const Shown shown = shown_for(figure, choice_);
    const double u = *figure.u95 / shown.factor;
    return QStringLiteral("± ") + number_text(locale_, u, decimals_of_uncertainty(u));
}

QString Formatter::valueText(const findings::Figure& figure) const {
    const QString symbol = shown_for(figure, choice_).symbol;
    if (symbol.isEmpty()) return digits(figure);
    const bool degrees = figure.dimension == findings::Dimension::angle;
    return digits(figure) + (degrees ? QString() : QStringLiteral(" ")) + symbol;
}

QString Formatter::text(const findings::Figure& figure) const {
    const QString doubt = uncertainty(figure);
    return doubt.isEmpty() ? valueText(figure) : valueText(figure) + u' ' + doubt;
}

}  // namespace lapwing::format
