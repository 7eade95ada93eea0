// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/charts/history_plot.h"

#include <QDateTime>
#include <algorithm>
#include <cmath>

#include "core/base/stations.h"

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

/// As finely as the span needs: visits of one month by day, of one day by the clock.
QString time_of(const report::Chart& chart, Timestamp at, const QLocale& locale) {
    constexpr double day_ms = 86'400'000.0;
    const auto noted = QDateTime::fromMSecsSinceEpoch(at.unix_ms, Qt::OffsetFromUTC, at.offset_min * 60);
    const auto span =
        static_cast<double>(chart.visits.back().at.unix_ms - chart.visits.front().at.unix_ms) / day_ms;
    if (span < 1.0) return locale.toString(noted.time(), QLocale::ShortFormat);
    return locale.toString(noted.date(), span < 60.0 ? QStringLiteral("d MMM") : QStringLiteral("MMM yyyy"));
}

/// 0 to 1 for every visit; empty for one that has no place there.
std::vector<std::optional<double>> places_of(const report::Chart& chart, Along along) {
    std::vector<std::optional<double>> out;
    const Meter meter = meter_of(chart);
    for (std::size_t i = 0; i < chart.visits.size(); ++i) {
        if (along == Along::time)
            out.emplace_back(static_cast<double>(chart.visits[i].at.unix_ms));
        else
            out.push_back(meter.readings[i] ? std::optional(meter.readings[i]->si()) : std::nullopt);
    }
    double low = 1e300;
    double high = -1e300;
    for (const auto& place : out) {
        low = std::min(low, place.value_or(low));
        high = std::max(high, place.value_or(high));
    }
    for (auto& place : out)
        if (place) place = high > low ? (*place - low) / (high - low) : 0.5;
    return out;
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

Meter meter_of(const report::Chart& chart) {
    Meter out;
    const auto hours = [](const TypedUsage& usage) { return usage.unit().symbol() == units::hour.symbol(); };
    std::optional<bool> in_hours;
    for (auto visit = chart.visits.rbegin(); visit != chart.visits.rend() && !in_hours; ++visit)
        if (visit->usage) in_hours = hours(*visit->usage);
    std::optional<double> last;
    for (const auto& visit : chart.visits) {
        const bool read = visit.usage && hours(*visit.usage) == in_hours;
        out.readings.push_back(read ? visit.usage : std::nullopt);
        out.unread += !read;
        if (!read) continue;
        const double here = visit.usage->si();
        out.drawable = out.drawable || (last && here != *last);
        out.runs_back = out.runs_back || (last && here < *last);
        last = here;
    }
    return out;
}

HistoryPlot plot_of(const report::Chart& chart, const format::Formatter& formatter, Along along) {
    HistoryPlot out;
    if (chart.visits.empty() || chart.lines.empty()) return out;
    const Scale scale{formatter, chart.dimension};
    const Axis axis = axis_of(chart, scale);
    out.unit = formatter.unitOf(chart.dimension);
    const int decimals = std::max(0, static_cast<int>(-std::floor(std::log10(axis.step) + 1e-9)));
    for (const double value : stations(axis.low, axis.high + axis.step / 2.0, axis.step))
        out.values.push_back({axis.share(value), formatter.locale().toString(value, 'f', decimals)});

    const auto places = places_of(chart, along);
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (!places[i]) continue;
        const auto& visit = chart.visits[i];
        out.times.push_back({*places[i], along == Along::meter
                                             ? formatter.typed(*visit.usage)
                                             : time_of(chart, visit.at, formatter.locale())});
    }
    for (const auto& line : chart.lines) {
        HistoryPlot::Line drawn{formatter.locale().toString(line.number), line.number, {}};
        bool broken = false;
        for (const auto& point : line.points) {
            broken = broken || point.after_repair;
            if (!places[point.visit]) continue;
            drawn.points.push_back({*places[point.visit], axis.share(scale.number(point.value.si)),
                                    scale.width(point.value.u95.value_or(0.0)) / (axis.high - axis.low),
                                    point.counted, broken});
            broken = false;
        }
        out.lines.push_back(std::move(drawn));
    }
    return out;
}

}  // namespace lapwing::charts
