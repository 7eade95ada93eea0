// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "platform/api/appearance.h"
#include "platform/api/file_picker.h"
#include "platform/api/haptics.h"
#include "platform/api/keep_awake.h"
#include "platform/api/media.h"
#include "platform/api/paths.h"
#include "platform/api/permissions.h"
#include "platform/api/share.h"

namespace lapwing::platform {

/// The device's services, as the composition root chose them and hands them down.
struct Devices {
    Share& share;
    FilePicker& filePicker;
    Permissions& permissions;
    Haptics& haptics;
    KeepAwake& keepAwake;
    Appearance& appearance;
    Paths& paths;
    MediaStore& media;
};

}  // namespace lapwing::platform
