// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDBusConnection>
#include <QDBusVariant>
#include <QObject>

#include "platform/api/appearance.h"

namespace lapwing::platform {

/// The desktop portal's settings (org.freedesktop.portal.Settings, freedesktop.org), and Qt's own idea of the
/// colour scheme where the portal doesn't say. The portal is asked in the background: its answers arrive as
/// changes, so that a slow desktop never delays the start.
class LinuxAppearance final : public QObject, public Appearance {
    Q_OBJECT

public:
    explicit LinuxAppearance(QDBusConnection bus);

    [[nodiscard]] std::optional<bool> dark() const override;
    [[nodiscard]] std::optional<double> textScale() const override { return textScale_; }
    [[nodiscard]] std::optional<bool> reducedMotion() const override { return reducedMotion_; }
    void listen(Changed changed) override { changed_ = std::move(changed); }

private slots:
    void settingChanged(const QString& group, const QString& key, const QDBusVariant& value);

private:
    void ask(const QString& group, const QString& key);
    void take(const QString& group, const QString& key, const QVariant& value);

    QDBusConnection bus_;
    std::optional<bool> portalDark_;
    std::optional<double> textScale_;
    std::optional<bool> reducedMotion_;
    Changed changed_;
};

}  // namespace lapwing::platform
