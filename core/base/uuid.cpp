// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/base/uuid.h"

#include <sodium.h>

#include <algorithm>
#include <mutex>

namespace lapwing {

Uuid Uuid::make(const Clock& clock) {
    // RFC 9562 section 6.2, method 2 with a monotonic guard: within one millisecond, or after the clock went
    // back, the 74 random bits are counted up instead of drawn anew, so ids keep the order they were made in.
    static std::mutex guard;
    static Uuid last;
    static std::int64_t last_ms = -1;

    const std::lock_guard lock(guard);
    const std::int64_t now = std::max<std::int64_t>(clock.now().unix_ms, 0);
    Uuid id;
    const bool fresh = dynamic_cast<const FixedClock*>(&clock) != nullptr || now > last_ms;
    if (fresh) {
        [[maybe_unused]] static const int ready = sodium_init();
        randombytes_buf(id.bytes_.data(), id.bytes_.size());
        for (std::size_t i = 0; i < 6; ++i)
            id.bytes_[i] = static_cast<std::uint8_t>(static_cast<std::uint64_t>(now) >> (8 * (5 - i)));
        id.bytes_[8] &= 0x1f;  // leave room to count up
    } else {
        id = last;
        for (std::size_t i = 16; i-- > 9;)
            if (++id.bytes_[i] != 0) break;
    }
    id.bytes_[6] = static_cast<std::uint8_t>((id.bytes_[6] & 0x0f) | 0x70);
    id.bytes_[8] = static_cast<std::uint8_t>((id.bytes_[8] & 0x3f) | 0x80);
    if (dynamic_cast<const FixedClock*>(&clock) == nullptr) {
        last = id;
        last_ms = std::max(now, last_ms);
    }
    return id;
}

std::optional<Uuid> Uuid::parse(std::string_view text) {
    if (text.size() != 36) return std::nullopt;
    Uuid id;
    std::size_t nibble = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (i == 8 || i == 13 || i == 18 || i == 23) {
            if (c != '-') return std::nullopt;
            continue;
        }
        int value = 0;
        if (c >= '0' && c <= '9')
            value = c - '0';
        else if (c >= 'a' && c <= 'f')
            value = c - 'a' + 10;
        else if (c >= 'A' && c <= 'F')
            value = c - 'A' + 10;
        else
            return std::nullopt;
        auto& byte = id.bytes_[nibble / 2];
        byte = static_cast<std::uint8_t>(byte << 4 | value);
        ++nibble;
    }
    return id;
}

std::string Uuid::text() const {
    std::string out;
    out.reserve(36);
    for (std::size_t i = 0; i < bytes_.size(); ++i) {
        if (i == 4 || i == 6 || i == 8 || i == 10) out += '-';
        out += fmt::format("{:02x}", bytes_[i]);
    }
    return out;
}

}  // namespace lapwing
