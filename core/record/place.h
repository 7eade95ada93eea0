// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace lapwing::record {

/// Where the reader stands in a JSON text. Links live on the reader's stack and become text only for an error
/// or an unknown field.
struct Place {
    const Place* outer = nullptr;
    std::string_view name;             ///< of a field; empty for an element
    std::optional<std::size_t> index;  ///< of an element
    bool is_record = false;            ///< pointers count from here

    /// "visits[0].readings[3].final.unit"; "the file" for its top.
    [[nodiscard]] std::string text() const;
    /// JSON pointer (RFC 6901) from the record that this is in: "/final/unit".
    [[nodiscard]] std::string pointer() const;
};

}  // namespace lapwing::record
