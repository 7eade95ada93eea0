// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/charts/history_plot.h"

#include <QDateTime>
#include <algorithm>
#include <cmath>

namespace lapwing::charts {
namespace {

/// The chosen unit as numbers.
struct Scale {
    const format::Formatter& formatter;
    findings::Dimension dimension;

    [[nodiscard]] double number(double si) const {
        if (dimension == findings::Dimension::share) return 100.0 * si;
        return formatter.choice().pressure.number(Pressure::from_si(si));
    }
    /// Pressures are gauge pressures: zero is zero in every unit.
    [[nodiscard]] double width(double si) const { return number(si) - number(0.0); }
};

/// 1, 2 or 5 times a power of ten, for about four steps.
double step_for(double span) {
    const double rough = span / 4.0;
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double factor : {1.0, 2.0, 5.0})
        if (factor * power >= rough) return factor * power;
    return 10.0 * power;
}

QString month_of(Timestamp at, const QLocale& locale) {
    const auto noted = QDateTime::fromMSecsSinceEpoch(at.unix_ms, Qt::OffsetFromUTC, at.offset_min * 60);
    return locale.toString(noted.date(), QStringLiteral("MMM yyyy"));
}

struct Axis {
    double low = 0.0;
    double high = 1.0;
    double step = 1.0;

    [[nodiscard]] double share(double value) const { return (value - low) / (high - low); }
};

Axis axis_of(const report::Chart& chart, const Scale& scale) {
    double low = 1e300;
    double high = -1e300;
    for (const auto& line : chart.lines) {
        for (const auto& point : line.points) {
            const double value = scale.number(point.value.si);
            const double u = scale.width(point.value.u95.value_or(0.0));
            low = std::min(low, value - u);
            high = std::max(high, value + u);
        }
    }
    if (!(low < high)) {
        low -= 1.0;
        high += 1.0;
    }
    Axis out;
    out.step = step_for(high - low);
    out.low = std::max(out.step * std::floor(low / out.step), scale.number(0.0));
    out.high = out.step * std::ceil(high / out.step);
    return out;
}

}  // namespace

HistoryPlot plot_of(const report::Chart& chart, const format::Formatter& formatter) {
    HistoryPlot out;
    if (chart.visits.empty() || chart.lines.empty()) return out;
    const Scale scale{formatter, chart.dimension};
    const Axis axis = axis_of(chart, scale);
    out.unit = formatter.unitOf(chart.dimension);
    const int decimals = std::max(0, static_cast<int>(-std::floor(std::log10(axis.step) + 1e-9)));
    for (double value = axis.low; value < axis.high + axis.step / 2.0; value += axis.step)
        out.values.push_back({axis.share(value), formatter.locale().toString(value, 'f', decimals)});

    const auto first = static_cast<double>(chart.visits.front().at.unix_ms);
    const double span = static_cast<double>(chart.visits.back().at.unix_ms) - first;
    std::vector<double> places;
    for (const auto& visit : chart.visits) {
        places.push_back(span > 0.0 ? (static_cast<double>(visit.at.unix_ms) - first) / span : 0.5);
        out.times.push_back({places.back(), month_of(visit.at, formatter.locale())});
    }
    for (const auto& line : chart.lines) {
        HistoryPlot::Line drawn{formatter.locale().toString(line.number), line.number, {}};
        for (const auto& point : line.points)
            drawn.points.push_back({places[point.visit], axis.share(scale.number(point.value.si)),
                                    scale.width(point.value.u95.value_or(0.0)) / (axis.high - axis.low),
                                    point.counted, point.after_repair});
        out.lines.push_back(std::move(drawn));
    }
    return out;
}

}  // namespace lapwing::charts
