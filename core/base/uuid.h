// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/clock.h"

namespace lapwing {

/// A UUID version 7 (RFC 9562): its first 48 bits are milliseconds since 1970, so that ids sort by age.
class Uuid {
public:
    Uuid() = default;  ///< the nil UUID, which names nothing

    /// A new id. Ids made in one process always increase, even when the clock is set back.
    static Uuid make(const Clock& clock);

    /// Reads the 36-character form; nothing on anything else. Accepts any version (files come from outside).
    static std::optional<Uuid> parse(std::string_view text);

    [[nodiscard]] std::string text() const;
    [[nodiscard]] bool is_nil() const { return *this == Uuid{}; }

    auto operator<=>(const Uuid&) const = default;

private:
    std::array<std::uint8_t, 16> bytes_{};
};

/// An id that can't be mixed up with another kind's id: `Id<struct EngineTag>`.
template <class Tag>
struct Id {
    Uuid uuid;

    static Id make(const Clock& clock) { return Id{Uuid::make(clock)}; }
    static std::optional<Id> parse(std::string_view text) {
        if (auto uuid = Uuid::parse(text)) return Id{*uuid};
        return std::nullopt;
    }
    [[nodiscard]] std::string text() const { return uuid.text(); }
    [[nodiscard]] bool is_nil() const { return uuid.is_nil(); }

    auto operator<=>(const Id&) const = default;
};

}  // namespace lapwing
