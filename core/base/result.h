// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <fmt/format.h>

#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <utility>
#include <vector>

namespace lapwing {

/// What went wrong, for a person: what, where, and what to do.
///
/// `code` is stable and names the kind of error ("store.newer_version"); `args` are what `fail` was given;
/// `english` is the whole sentence, as the command line and logs say it. qml/format takes that sentence apart
/// by the pattern that it was made from (assets/i18n/errors.json) and says it in the user's language.
struct Error {
    std::string code;
    std::vector<std::string> args;
    std::string english;

    bool operator==(const Error&) const = default;
};

template <class T>
using Result = tl::expected<T, Error>;

/// A step that can fail but has nothing to hand back.
using Status = tl::expected<void, Error>;

/// `return fail("pressure.unknown_unit", "\"{}\" is not a unit of pressure. Use psi, bar, ...", typed);`
template <class... Args>
[[nodiscard]] tl::unexpected<Error> fail(std::string_view code, fmt::format_string<const Args&...> english,
                                         const Args&... args) {
    return tl::unexpected<Error>(
        Error{std::string(code), {fmt::format("{}", args)...}, fmt::format(english, args...)});
}

}  // namespace lapwing
