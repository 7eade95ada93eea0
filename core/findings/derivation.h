// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>
#include <vector>

#include "core/findings/message.h"

namespace lapwing::findings {

/// One value that went into a number: "held pressure p2 = 60 psi, typed".
struct Input {
    Word name;           ///< "input:held"
    std::string symbol;  ///< as in the formula: "p2"; may be empty
    Arg value;

    bool operator==(const Input&) const = default;
};

/// What one thing brings to the doubt of a number: its share of the variance, to first order (JCGM 100, 5.1).
struct DoubtShare {
    Word of;  ///< "doubt:gauge"
    double share = 0.0;

    bool operator==(const DoubtShare&) const = default;
};

/// What one thing brings to a range: how wide it would be if nothing else were in doubt.
struct RangePart {
    Word of;  ///< as of DoubtShare: "doubt:oil_kept"
    Figure width;

    bool operator==(const RangePart&) const = default;
};

/// "Where does this come from": how one number was made.
struct Derivation {
    Word title;                      ///< "from:leakage"; qml/format has its name and the formula in words
    std::string symbols;             ///< the formula in symbols, the same in every language; may be empty
    std::vector<Input> inputs;       ///< in the order of the formula
    std::vector<DoubtShare> doubts;  ///< largest first, about 1 together; empty where they are not known
    std::vector<RangePart> parts;    ///< of a range in place of doubts: what opens it, widest first
    Message source;  ///< source.published, source.common_practice, source.assumption, source.physics
    std::vector<Message> notes;  ///< what was left out or assumed on the way
};

/// A number and how it was made.
struct Derived {
    Figure figure;
    Derivation from;
};

/// A sentence, with how its verdict was made where numbers went into it.
struct Remark {
    Message message;
    std::vector<Derivation> from;
};

}  // namespace lapwing::findings
