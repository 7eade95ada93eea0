// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string_view>

namespace lapwing::cli {

/// The session files of assets/demo, built in.
std::string_view orchard_v_twin_file();
std::string_view harbour_six_file();

}  // namespace lapwing::cli
