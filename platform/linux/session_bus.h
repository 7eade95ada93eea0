// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDBusConnection>
#include <QDBusConnectionInterface>
#include <QString>

namespace lapwing::platform {

/// Whether a service is running on the session bus or would be started by the first call.
inline bool serviceOffered(const QDBusConnection& bus, const QString& name) {
    if (!bus.isConnected()) return false;
    QDBusConnectionInterface* daemon = bus.interface();
    return daemon->isServiceRegistered(name) || daemon->activatableServiceNames().value().contains(name);
}

}  // namespace lapwing::platform
