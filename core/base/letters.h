// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>
#include <string_view>

namespace lapwing {

/// The same for all texts that differ only in capitals and in how accents are written ("Ä", "ä", "a" with a
/// mark of its own): what one file system keeps apart and another takes for one name. Marks on one letter
/// count in any order, which takes a few texts more for the same than Unicode does. Bytes that are no UTF-8
/// stay as they are.
std::string one_spelling(std::string_view text);

}  // namespace lapwing
