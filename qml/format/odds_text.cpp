// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/format/odds_text.h"

#include <QCoreApplication>

#include "core/odds/verdict.h"

namespace lapwing::format {
namespace {

struct Texts {
    Q_DECLARE_TR_FUNCTIONS(OddsText)
};

findings::Figure gauge(double pa) {
    return {findings::Dimension::gauge_pressure, pa, {}, {}, {}};
}

}  // namespace

QString share_text(double share, const Formatter& format) {
    const findings::Figure shown = odds::shown_share(share);
    return shown.si > 0.0 ? format.valueText(shown) : Texts::tr("under 1 %");
}

QString interval_text(const odds::Interval& share, const Formatter& format) {
    const odds::Interval shown = odds::shown_interval(share);
    const findings::Figure high = odds::shown_share(shown.hi);
    if (!(high.si > 0.0)) return {};
    return Texts::tr("%1 to %2").arg(format.digits(odds::shown_share(shown.lo)), format.valueText(high));
}

QString share_line(const odds::Interval& share, const Formatter& format) {
    const QString interval = interval_text(share, format);
    const QString mean = share_text(share.mean, format);
    return interval.isEmpty() ? mean : mean + QStringLiteral(", ") + interval;
}

QString chance_text(double chance, const Formatter& format) {
    // What rounds to nothing would show as the 5 % that is never gone below.
    constexpr double nothing = 0.025;
    return chance < nothing ? Texts::tr("under 5 %") : format.valueText(odds::shown_chance(chance));
}

QString reading_text(const odds::AfterRepair& after, const Formatter& format) {
    return Texts::tr("%1 (%2 to %3)")
        .arg(format.valueText(gauge(after.value_pa)), format.digits(gauge(after.lo_pa)),
             format.digits(gauge(after.hi_pa)));
}

}  // namespace lapwing::format
