// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/linux/linux_appearance.h"

#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QGuiApplication>
#include <QPalette>
#include <QStyleHints>

#include "platform/linux/session_bus.h"

namespace lapwing::platform {
namespace {

const QString portal = QStringLiteral("org.freedesktop.portal.Desktop");
const QString portalPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString settings = QStringLiteral("org.freedesktop.portal.Settings");

const QString look = QStringLiteral("org.freedesktop.appearance");
const QString colourScheme = QStringLiteral("color-scheme");
const QString desktop = QStringLiteral("org.gnome.desktop.interface");
const QString textScaling = QStringLiteral("text-scaling-factor");
const QString animations = QStringLiteral("enable-animations");

QVariant unwrapped(QVariant value) {
    while (value.userType() == qMetaTypeId<QDBusVariant>())
        value = value.value<QDBusVariant>().variant();
    return value;
}

std::optional<bool> qtDark() {
#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0)
    switch (QGuiApplication::styleHints()->colorScheme()) {
        case Qt::ColorScheme::Dark:
            return true;
        case Qt::ColorScheme::Light:
            return false;
        case Qt::ColorScheme::Unknown:
            break;
    }
#endif
    const QPalette palette = QGuiApplication::palette();
    const bool dark =
        palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
    // A light palette is also what Qt falls back on when nothing was chosen, so it says nothing.
    return dark ? std::optional(true) : std::nullopt;
}

}  // namespace

LinuxAppearance::LinuxAppearance(QDBusConnection bus) : bus_(std::move(bus)) {
#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0)
    connect(QGuiApplication::styleHints(), &QStyleHints::colorSchemeChanged, this, [this] {
        if (changed_) changed_();
    });
#endif
    if (!serviceOffered(bus_, portal)) return;
    // A slot is found only when the types of its arguments are known by name.
    qRegisterMetaType<QDBusVariant>();
    bus_.connect(portal, portalPath, settings, QStringLiteral("SettingChanged"), this,
                 SLOT(settingChanged(QString, QString, QDBusVariant)));
    ask(look, colourScheme);
    ask(desktop, textScaling);
    ask(desktop, animations);
}

std::optional<bool> LinuxAppearance::dark() const {
    return portalDark_ ? portalDark_ : qtDark();
}

void LinuxAppearance::settingChanged(const QString& group, const QString& key, const QDBusVariant& value) {
    take(group, key, unwrapped(value.variant()));
}

void LinuxAppearance::ask(const QString& group, const QString& key) {
    auto call = QDBusMessage::createMethodCall(portal, portalPath, settings, QStringLiteral("Read"));
    call << group << key;
    auto* watcher = new QDBusPendingCallWatcher(bus_.asyncCall(call), this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, watcher, group, key] {
        watcher->deleteLater();
        const QDBusPendingReply<QDBusVariant> reply = *watcher;
        if (reply.isValid()) take(group, key, unwrapped(reply.value().variant()));
    });
}

void LinuxAppearance::take(const QString& group, const QString& key, const QVariant& value) {
    if (group == look && key == colourScheme) {
        const uint choice = value.toUInt();  // 0 no preference, 1 dark, 2 light
        portalDark_ = choice == 0 ? std::nullopt : std::optional(choice == 1);
    } else if (group == desktop && key == textScaling) {
        textScale_ = value.toDouble();
    } else if (group == desktop && key == animations) {
        reducedMotion_ = !value.toBool();
    } else {
        return;
    }
    if (changed_) changed_();
}

}  // namespace lapwing::platform
