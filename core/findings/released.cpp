// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/released.h"

#include <algorithm>
#include <string_view>

namespace lapwing::findings {
namespace {

bool says(const std::vector<Remark>& remarks, std::string_view code) {
    return std::ranges::any_of(remarks, [&](const Remark& remark) { return remark.message.code == code; });
}

}  // namespace

bool held_against_no_limit(const Findings& findings) {
    return says(findings.expectation, "model.decompressor") ||
           std::ranges::any_of(findings.cylinders, [](const CylinderFindings& cylinder) {
               return cylinder.dry && says(cylinder.dry->why, "why.decompressor");
           });
}

}  // namespace lapwing::findings
