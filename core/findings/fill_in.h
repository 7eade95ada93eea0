// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/findings/reference.h"

/// Reference data of an earlier version has no answer to what this program has learned to ask since. For who
/// reads such files: what is missing comes from the program's own, and is named. What is there stays as it
/// is, right or wrong.
namespace lapwing::findings {

/// A list in which every entry of this program's own is needed, and what tells its entries apart.
struct WholeList {
    std::string key;
    std::string id;
};

/// The JSON text of `given` with what it lacks of `own`, named in `filled`. A text that is no such file at
/// all comes back as it is, for its reader to complain of.
std::string fill_in(std::string_view given, std::string_view own, const std::string& file,
                    const std::vector<WholeList>& lists, std::vector<FilledIn>& filled);

}  // namespace lapwing::findings
