// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

namespace lapwing::fonts {

/// The family name under which the app's own B612 (regular and bold) can be asked for, on screen and in
/// print; empty when it could not be loaded. Loads the fonts at the first call, which needs a
/// QGuiApplication. Not "B612": see the .cpp file.
QString typeface();

}  // namespace lapwing::fonts
