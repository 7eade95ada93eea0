// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

#include "core/base/result.h"

namespace lapwing::vision {

/// What is known of the gauge before the photo is looked at. The scale is taken to be even and to rise
/// clockwise, which is how pressure gauges are made (EN 837-1).
struct DialRange {
    double min = 0.0;                      ///< value at the lower end of the outer scale, any unit
    double max = 0.0;                      ///< value at the upper end, same unit, greater than min
    std::optional<double> sweep_deg = {};  ///< from the lower to the upper end, 90 to 350
    std::optional<double> start_deg =
        {};  ///< where the lower end stands, clockwise from 12 o'clock, -360 to 360
};

struct NeedleOptions {
    /// Readings less sure than this are refused, 0..1.
    double least_confidence = 0.5;
};

/// Why a photo was not read.
enum class Refusal {
    none,
    no_dial,      ///< no round dial found
    no_scale,     ///< a dial, but no scale
    no_needle,    ///< a scale, but no needle
    two_needles,  ///< a second needle, such as one that holds the highest reading
    unsure,       ///< something was found, but too little speaks for it
};
/// "no_dial": what is stored with the photo; qml/format says it in words ("read_refusal:no_dial"). Empty for
/// none. Here whole: who only hands it on need not carry the library that looks into photos.
[[nodiscard]] constexpr std::string_view code(Refusal refusal) {
    constexpr std::array<std::string_view, 6> codes{"",          "no_dial",     "no_scale",
                                                    "no_needle", "two_needles", "unsure"};
    return codes.at(static_cast<std::size_t>(refusal));
}

struct Point {
    double x = 0.0;
    double y = 0.0;
};

/// What was read off a photo. Pixels are those of the upright photo at its full size, origin in the middle of
/// the top left one, x to the right, y down.
struct NeedleReading {
    Refusal refusal = Refusal::none;
    double value = 0.0;       ///< in the unit of the range; may lie a little outside it
    double u = 0.0;           ///< standard uncertainty of the reading, not of the gauge; same unit
    double confidence = 0.0;  ///< 0..1, how likely it is that dial, scale and needle were rightly recognised
    Point centre_px;          ///< of the scale
    double needle_angle_deg = 0.0;  ///< clockwise from the scale's lower end, tilt undone
    double sweep_deg = 0.0;         ///< from the scale's lower to its upper end, tilt undone
    int divisions = 0;              ///< of the scale
    Point tip_px;
    Point tail_px;  ///< a point of the needle's axis near its hub
    Point min_px;   ///< outer end of the scale's first graduation line
    Point max_px;
    /// Row by row, takes the dial's plane to the photo: origin in the scale's centre, the unit circle through
    /// the outer ends of its lines, angle 0 at the lower end, clockwise.
    std::array<double, 9> plane_to_photo{};

    [[nodiscard]] bool refused() const { return refusal != Refusal::none; }
};

/// Reads the needle of a pressure gauge off a photo (JPEG or PNG file in memory, up to 60 megapixels).
/// A photo that can't be decoded, and a range that can't be, is an Error; a photo of something else, or one
/// on which dial, scale or needle stay doubtful, is a reading with a `refusal`. Never throws.
[[nodiscard]] Result<NeedleReading> read_needle(std::span<const std::byte> photo, const DialRange& range,
                                                const NeedleOptions& options = {});

}  // namespace lapwing::vision
