// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <opencv2/core.hpp>
#include <optional>
#include <vector>

/// Draws pressure gauges of made-up kinds as a phone would see them, to check the reader against pictures
/// whose value is known because it was drawn. It shares no code with the reader: a pinhole camera, planes at
/// their own heights above the dial, and OpenCV's drawing.
namespace lapwing::test {

enum class NeedleShape { line, taper, sword, lance, hollow };
enum class TailShape { none, plain, disc, crescent };
enum class ArcShape { none, single, twin };

struct DrawnGauge {
    // the scale
    double min = 0;
    double max = 10;
    double start_deg = -135;  ///< of the lower end, clockwise from the dial's 12 o'clock
    double sweep_deg = 270;
    int divisions = 50;
    int middle_every = 0;  ///< divisions from one line of middle length to the next, 0 for none
    int major_every = 5;
    double ring = 0.82;  ///< radius of the outer ends of the lines; the dial's plate is 1
    double minor_length = 0.05;
    double major_length = 0.10;
    double line_width = 0.009;
    ArcShape arc = ArcShape::single;
    int inner_divisions = 0;    ///< of a second scale further in, 0 for none
    double inner_share = 0.97;  ///< of the sweep that the second scale takes
    bool zones = false;         ///< coloured sectors along the scale
    bool words = true;
    cv::Scalar face{225, 235, 238};  ///< BGR
    cv::Scalar ink{25, 25, 25};
    cv::Scalar bezel{120, 125, 130};
    // the needle
    NeedleShape needle = NeedleShape::taper;
    TailShape tail = TailShape::plain;
    cv::Scalar needle_colour{25, 25, 25};
    double needle_tip = 0.80;
    double needle_width = 0.06;
    double tail_length = 0.25;
    double hub = 0.08;
    double height = 0.05;  ///< of the needle above the dial
    double value = 0;
    std::optional<double> held = {};  ///< where a second, thin needle stands that holds the highest value
    // the camera
    cv::Size size{1280, 960};
    double radius_px = 340;
    double distance = 6;  ///< from the dial, in radii
    double tilt_deg = 0;
    double tilt_towards_deg = 0;  ///< which side of the dial comes nearer
    double roll_deg = 0;
    cv::Point2d centre{640, 480};  ///< px, of the dial
    // what is in the way
    double shadow = 0;  ///< how far the needle's shadow falls, in radii
    double glare = 0;   ///< 0..1
    bool glare_is_bar = false;
    double dirt = 0;         ///< 0..1
    double light = 1;        ///< exposure
    double shade = 0;        ///< 0..1, how much darker one half of the picture is
    double blur_px = 0.7;    ///< standard deviation
    double noise = 3;        ///< standard deviation, grey levels
    std::uint64_t seed = 1;  ///< of dirt, glare, background and noise
};

enum class Difficulty { easy, medium, hard };

/// A gauge with everything chosen by chance, within what its difficulty allows.
[[nodiscard]] DrawnGauge chance_gauge(std::uint64_t seed, Difficulty difficulty);

/// The picture, 8 bit BGR.
[[nodiscard]] cv::Mat draw(const DrawnGauge& gauge);

/// As the JPEG file of a phone.
[[nodiscard]] std::vector<unsigned char> photographed(const DrawnGauge& gauge, int quality = 88);

/// Where a point of the dial's plane (unit: the plate's radius; x right, y down) falls on the picture.
[[nodiscard]] cv::Point2d projected(const DrawnGauge& gauge, double x, double y, double height = 0);

}  // namespace lapwing::test
