// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtGlobal>

/// The one place that chooses an implementation of platform/api, and how files come in from outside.
#if defined(Q_OS_ANDROID)
#include "platform/android/android_devices.h"
#elif defined(Q_OS_IOS)
#include "platform/ios/ios_devices.h"
#else
#include "platform/linux/linux_devices.h"
#include "platform/linux/one_window.h"
#endif

namespace lapwing {

#if defined(Q_OS_ANDROID)
using ThisDevice = platform::AndroidDevices;
using FilesFromOutside = platform::AndroidReceivedFiles;
#elif defined(Q_OS_IOS)
using ThisDevice = platform::IosDevices;
using FilesFromOutside = platform::IosReceivedFiles;
#else
using ThisDevice = platform::LinuxDevices;
using FilesFromOutside = platform::OneWindow;
#endif

}  // namespace lapwing
