// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/vision/scale.h"

namespace lapwing::vision {

/// Two places of a needle's axis in the photo, the second one nearer to the tip.
struct Axis {
    cv::Point2d from;
    cv::Point2d to;
};

/// Moves the scale's centre so that the needle's axis passes it, as far as lines and axis both tell: the
/// lines of half a circle say little of how far below them their centre lies. Returns what stays unknown of
/// the needle's direction, radians.
[[nodiscard]] double settle(Scale& scale, const Axis& axis);

}  // namespace lapwing::vision
