// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDBusConnection>

#include "platform/api/share.h"

namespace lapwing::platform {

/// A desktop has no share sheet: the folder opens with the file chosen in it (org.freedesktop.FileManager1,
/// freedesktop.org's file manager interface), or just the folder where no file manager offers that.
class LinuxShare final : public Share {
public:
    explicit LinuxShare(QDBusConnection bus) : bus_(std::move(bus)) {}

    [[nodiscard]] Way way() const override;
    void share(const QString& file, const QString& mediaType, Done done) override;

private:
    QDBusConnection bus_;
};

}  // namespace lapwing::platform
