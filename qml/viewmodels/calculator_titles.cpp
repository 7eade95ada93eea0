// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include "qml/viewmodels/calculator_lines.h"

namespace lapwing {
namespace {

using calculators::Calculator;

struct Texts {
    Q_DECLARE_TR_FUNCTIONS(Calculators)
};

}  // namespace

QString calculator_title(Calculator calculator) {
    switch (calculator) {
        case Calculator::leakage:
            return Texts::tr("Leakage");
        case Calculator::other_tester:
            return Texts::tr("Another tester");
        case Calculator::law:
            return Texts::tr("Two set pressures");
        case Calculator::restrictor:
            return Texts::tr("Restrictor check");
        case Calculator::hose:
            return Texts::tr("Hose and adapter");
        case Calculator::oil:
            return Texts::tr("Oil in a wet test");
        case Calculator::altitude:
            return Texts::tr("Altitude");
        case Calculator::healthy:
            return Texts::tr("Healthy reading");
        case Calculator::turning:
            return Texts::tr("Speed and throttle");
        case Calculator::torque:
            return Texts::tr("Holding torque");
        case Calculator::units:
            return Texts::tr("Units");
    }
    return {};
}

QString calculator_purpose(Calculator calculator) {
    switch (calculator) {
        case Calculator::leakage:
            return Texts::tr("What was lost of the set pressure, and how large the leak is");
        case Calculator::other_tester:
            return Texts::tr("The same leak behind another restrictor, at another set pressure");
        case Calculator::law:
            return Texts::tr(
                "Whether a leak is like a hole or a narrow gap, is seated or opened by pressure");
        case Calculator::restrictor:
            return Texts::tr("A home-made tester's restrictor, by a drilled hole of known size");
        case Calculator::hose:
            return Texts::tr("What the volume before the check valve takes off a reading");
        case Calculator::oil:
            return Texts::tr("What the oil's mere volume adds to a wet reading");
        case Calculator::altitude:
            return Texts::tr("A factory limit at the shop's altitude or air pressure");
        case Calculator::healthy:
            return Texts::tr("What a cylinder that seals well should read");
        case Calculator::turning:
            return Texts::tr("What slow cranking and a shut throttle take off a healthy reading");
        case Calculator::torque:
            return Texts::tr("What the crank must be held against with the air on");
        case Calculator::units:
            return Texts::tr("Pressure, length, volume, temperature, torque, flow");
    }
    return {};
}

}  // namespace lapwing
