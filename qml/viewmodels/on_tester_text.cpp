// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/on_tester_text.h"

#include <QCoreApplication>
#include <cmath>

namespace lapwing {
namespace {

struct Texts {
    Q_DECLARE_TR_FUNCTIONS(OnTester)
};

/// From here on the ends of a range are given in whole percent.
constexpr double wide = 0.02;

}  // namespace

QString share_on(const findings::OnTester& other, const format::Formatter& format) {
    auto [from, to] = other.range();
    if (to.si - from.si > wide)
        for (findings::Figure* end : {&from, &to})
            end->si = std::round(end->si * 100.0) / 100.0;
    const QString least = format.valueText(from), most = format.valueText(to);
    return least == most ? least : Texts::tr("%1 to %2").arg(least, most);
}

QString name_of(const findings::OnTester& other, const format::Formatter& format) {
    return Texts::tr("on a tester of %1 behind %2")
        .arg(format.valueText({findings::Dimension::gauge_pressure, other.set.si(), {}, {}, {}}),
             format.valueText({findings::Dimension::length, other.restrictor.si(), {}, {}, {}}));
}

}  // namespace lapwing
