// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>
#include <tl/expected.hpp>
#include <utility>

#include "core/base/result.h"

namespace lapwing::cli {

/// What the program ends with, for scripts.
enum class Exit {
    done = 0,
    no = 1,         ///< the answer is "no": a session file that fails its check
    wrong_use = 2,  ///< unknown verb or option, a missing unit, a place that can't be written to
    refused = 3,    ///< not a session file, hostile, unreadable, impossible numbers
    internal = 4,
};

/// One sentence for standard error.
struct Failure {
    Exit exit = Exit::internal;
    std::string sentence;
};

using Outcome = tl::expected<Exit, Failure>;

inline tl::unexpected<Failure> wrong_use(std::string sentence) {
    return tl::unexpected(Failure{Exit::wrong_use, std::move(sentence)});
}
inline tl::unexpected<Failure> refused(const Error& error) {
    return tl::unexpected(Failure{Exit::refused, error.english});
}

}  // namespace lapwing::cli
