// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>

#include "core/base/result.h"

/// What the version that a session file names means for this one. Internal to this room.
namespace lapwing::record {

/// "1.2" and the like of a format that this version reads; a later minor version is read as far as it goes.
Status check_session_version(const std::string& version);

/// A later minor version may add words and units; who meets one is told that, not that the file is broken.
/// `version` was checked.
Error of_a_newer_one(Error error, const std::string& version);

}  // namespace lapwing::record
