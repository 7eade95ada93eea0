// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "platform/api/devices.h"
#include "platform/linux/desktop_plain.h"
#include "platform/linux/linux_appearance.h"
#include "platform/linux/linux_file_picker.h"
#include "platform/linux/linux_keep_awake.h"
#include "platform/linux/linux_paths.h"
#include "platform/linux/linux_share.h"
#include "platform/media/loaded_media.h"

namespace lapwing::platform {

/// Every service of a Linux desktop, ready to hand down.
class LinuxDevices {
public:
    explicit LinuxDevices(QQmlEngine& engine, std::optional<std::filesystem::path> data = {},
                          const QDBusConnection& bus = QDBusConnection::sessionBus())
        : share_(bus), filePicker_(bus, engine), keepAwake_(bus), appearance_(bus), paths_(std::move(data)) {}

    [[nodiscard]] Devices devices() {
        return {share_, filePicker_, permissions_, haptics_, keepAwake_, appearance_, paths_, media_};
    }

private:
    LinuxShare share_;
    LinuxFilePicker filePicker_;
    OpenPermissions permissions_;
    NoHaptics haptics_;
    LinuxKeepAwake keepAwake_;
    LinuxAppearance appearance_;
    LinuxPaths paths_;
    LoadedMedia media_;
};

}  // namespace lapwing::platform
