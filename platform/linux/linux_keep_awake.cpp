// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/linux/linux_keep_awake.h"

#include <QDBusMessage>
#include <QDBusReply>

#include "platform/linux/session_bus.h"

namespace lapwing::platform {
namespace {

const QString screenSaver = QStringLiteral("org.freedesktop.ScreenSaver");
// A desktop that doesn't answer at once must not hold up a test: the screen then simply dims.
constexpr int patienceMs = 1000;

QDBusMessage screenSaverCall(const QString& method) {
    return QDBusMessage::createMethodCall(screenSaver, QStringLiteral("/org/freedesktop/ScreenSaver"),
                                          screenSaver, method);
}

}  // namespace

bool LinuxKeepAwake::available() const {
    return serviceOffered(bus_, screenSaver);
}

void LinuxKeepAwake::keepAwake(bool on) {
    if (on == isOn()) return;
    if (on) {
        if (!available()) return;
        auto call = screenSaverCall(QStringLiteral("Inhibit"));
        call << QStringLiteral("Lapwing") << QStringLiteral("An engine test is going on");
        const QDBusReply<uint> reply = bus_.call(call, QDBus::Block, patienceMs);
        if (reply.isValid()) cookie_ = reply.value();
    } else {
        auto call = screenSaverCall(QStringLiteral("UnInhibit"));
        call << *cookie_;
        bus_.call(call, QDBus::NoBlock);
        cookie_.reset();
    }
}

}  // namespace lapwing::platform
