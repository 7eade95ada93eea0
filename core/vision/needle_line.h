// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <opencv2/core.hpp>
#include <optional>

#include "core/vision/dial_frame.h"

namespace lapwing::vision {

/// A needle, in the plane of its dial. It turns a little above that plane, so that seen aslant its axis
/// misses the dial's centre; its direction is true all the same, because the planes are parallel.
struct NeedleLine {
    double angle = 0;    ///< radians, direction from hub to tip
    double angle_u = 0;  ///< radians, standard uncertainty of the line
    double offset = 0;   ///< how far the axis passes the centre, to the left of its direction
    double tip = 0;      ///< how far from the centre it reaches
    double tail = 0;     ///< how far it reaches the other way
    double one_way =
        0;  ///< how much more of it is seen near the scale on the tip's side than on the tail's, 0..1
    double contrast = 0;  ///< against the dial, grey levels
    double rivalry = 0;   ///< how nearly another line is as much like a needle, 0..1
    double straight = 0;  ///< share of its length where it was seen as a line, 0..1
};

/// Finds the needle on a dial. `colour` is the picture, 8 bit BGR; the frame's unit circle is the scale.
[[nodiscard]] std::optional<NeedleLine> find_needle(const cv::Mat& colour, const DialFrame& frame);

}  // namespace lapwing::vision
