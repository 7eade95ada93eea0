// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <chrono>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/result.h"

namespace lapwing {

/// A moment with the offset from UTC that was in force where it was noted.
struct Timestamp {
    std::int64_t unix_ms = 0;  ///< milliseconds since 1970-01-01T00:00:00Z
    int offset_min = 0;        ///< minutes east of UTC, -18 h to +18 h

    auto operator<=>(const Timestamp&) const = default;  // NOLINT(modernize-use-nullptr): clang-tidy 14 errs
};

/// RFC 3339 with offset and milliseconds: 2026-03-14T09:30:00.000+01:00.
std::string to_rfc3339(Timestamp at);

/// Reads RFC 3339 (offset required, any number of fractional digits, kept to milliseconds).
Result<Timestamp> parse_rfc3339(std::string_view text);

/// Where "now" comes from; tests and the demo use a clock that they set themselves.
class Clock {
public:
    virtual ~Clock() = default;
    [[nodiscard]] virtual Timestamp now() const = 0;
};

class SystemClock final : public Clock {
public:
    [[nodiscard]] Timestamp now() const override;
};

/// A clock that stands at a given moment until it is moved.
class FixedClock final : public Clock {
public:
    explicit FixedClock(Timestamp at) : at_(at) {}
    [[nodiscard]] Timestamp now() const override { return at_; }
    void move_to(Timestamp at) { at_ = at; }
    void move_by(std::chrono::milliseconds by) { at_.unix_ms += by.count(); }

private:
    Timestamp at_;
};

}  // namespace lapwing
