// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/exif.h"

namespace lapwing::exchange {
namespace {

/// Numbers of a TIFF structure; what lies outside of it is nothing.
class Tiff {
public:
    explicit Tiff(std::string_view bytes) : bytes_(bytes), little_(bytes.starts_with("II")) {}

    [[nodiscard]] bool is_one() const { return little_ || bytes_.starts_with("MM"); }
    [[nodiscard]] std::optional<std::size_t> number(std::size_t at, std::size_t count) const {
        if (at > bytes_.size() || bytes_.size() - at < count) return std::nullopt;
        std::size_t value = 0;
        for (std::size_t i = 0; i < count; ++i)
            value = value << 8U | static_cast<unsigned char>(bytes_[at + (little_ ? count - 1 - i : i)]);
        return value;
    }

private:
    std::string_view bytes_;
    bool little_;
};

struct Entry {
    bool damaged = false;
    std::optional<std::size_t> at = {};  ///< where the first directory has it
};

Entry entry_of(const Tiff& tiff, std::size_t tag) {
    const auto directory = tiff.is_one() ? tiff.number(4, 4) : std::nullopt;
    const auto entries = directory ? tiff.number(*directory, 2) : std::nullopt;
    if (!entries) return {true};
    for (std::size_t i = 0; i < *entries; ++i) {
        const std::size_t at = *directory + 2 + 12 * i;
        const auto found = tiff.number(at, 2);
        if (!found) return {true};
        if (*found == tag) return {false, at};
    }
    return {};
}

}  // namespace

std::optional<std::string_view> exif_in(std::string_view segment) {
    constexpr std::string_view exif{"Exif\0\0", 6};
    return segment.starts_with(exif) ? std::optional(segment.substr(exif.size())) : std::nullopt;
}

bool has_position(std::string_view exif) {
    constexpr std::size_t positions = 0x8825;
    const auto entry = entry_of(Tiff(exif), positions);
    return entry.damaged || entry.at;
}

std::optional<int> orientation_in(std::string_view exif) {
    constexpr std::size_t orientation = 0x0112;
    const Tiff tiff(exif);
    const auto entry = entry_of(tiff, orientation);
    const auto value = entry.at ? tiff.number(*entry.at + 8, 2) : std::nullopt;
    return value && *value >= 1 && *value <= 8 ? std::optional(static_cast<int>(*value)) : std::nullopt;
}

}  // namespace lapwing::exchange
