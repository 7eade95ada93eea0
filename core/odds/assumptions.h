// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <array>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/findings/reference.h"

/// The numbers behind the odds: assets/reference/odds.json. All of them are working assumptions, each with a
/// comment; none of them stands in code.
namespace lapwing::odds {

/// Another set of chances of fault. The odds are worked out again under each, and a main path that changes is
/// said to depend on assumptions.
struct OtherAssumptions {
    std::string id;
    std::string text;                      ///< English
    std::map<std::string, double> change;  ///< by a number's id, in SI
};

struct Assumptions {
    int version = 0;
    std::vector<findings::Assumption> numbers;  ///< as written, for whoever wants to see them
    std::vector<OtherAssumptions> others;
    std::vector<findings::FilledIn> filled_in;

    /// In SI; every id that the code asks for is checked on reading.
    [[nodiscard]] double at(std::string_view id) const;
    [[nodiscard]] const findings::Assumption* find(std::string_view id) const;
    /// The same set with one number changed, in SI. For trials under other assumptions.
    void set(std::string_view id, double si);

private:
    friend Result<Assumptions> read_assumptions(std::string_view, std::string_view);
    std::map<std::string, double, std::less<>> si_;
};

/// Fails with "odds.malformed", naming the place.
Result<Assumptions> read_assumptions(std::string_view json, std::string_view own = {});

/// As built into this program from assets/reference/odds.json.
std::string_view built_in_text();
Result<Assumptions> built_in_assumptions();

}  // namespace lapwing::odds
