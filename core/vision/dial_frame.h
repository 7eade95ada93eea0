// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cmath>
#include <opencv2/core.hpp>
#include <optional>
#include <vector>

/// Where the plane of a dial lies in a picture. Inside core/vision only: the public headers know no OpenCV.
namespace lapwing::vision {

inline constexpr double pi = 3.14159265358979323846;

[[nodiscard]] constexpr double degrees(double radians) {
    return radians * 180.0 / pi;
}

/// An angle brought into [0, 2 pi).
[[nodiscard]] double wrapped(double radians);

struct Ellipse {
    cv::Point2d centre;    ///< px
    double a = 0.0;        ///< px, semi-axis along `direction`
    double b = 0.0;        ///< px, the other semi-axis
    double direction = 0;  ///< radians, from +x towards +y

    [[nodiscard]] double mean_radius() const { return std::sqrt(a * b); }
};

/// Fits an ellipse through points by least squares and drops what lies off it, a few times over.
/// `off` is the largest distance kept, as a share of the mean radius. Empty when there is none.
[[nodiscard]] std::optional<Ellipse> fit_ellipse(std::vector<cv::Point2f> points, double off);

/// The plane of a dial as a camera sees it: a homography that takes the unit circle to an ellipse and the
/// circle's centre to a point that need not be the ellipse's. The two fix the plane's tilt completely, and
/// leave its rotation alone (the image of a circle with that of its centre: Hartley and Zisserman, Multiple
/// View Geometry, 2nd edition, 2.7 and 8.10).
/// Plane coordinates: origin in the dial's centre, x to the right, y down, the unit circle on `ellipse`.
/// Angles are those of the plane, radians, from +x towards +y, which is clockwise to the eye.
class DialFrame {
public:
    explicit DialFrame(const Ellipse& ellipse, cv::Point2d centre_px);
    explicit DialFrame(const Ellipse& ellipse) : DialFrame(ellipse, ellipse.centre) {}

    [[nodiscard]] cv::Point2d to_image(cv::Point2d plane) const;
    [[nodiscard]] cv::Point2d to_plane(cv::Point2d px) const;
    [[nodiscard]] cv::Point2d to_image(double radius, double angle) const {
        return to_image(cv::Point2d{radius * std::cos(angle), radius * std::sin(angle)});
    }
    [[nodiscard]] const Ellipse& ellipse() const { return ellipse_; }
    [[nodiscard]] const cv::Matx33d& homography() const { return to_image_; }

    /// The picture unrolled: a column an angle (column 0 at angle 0), a row a radius from 0 to `radius_max`.
    /// The first rows, those round the centre, can be left out.
    [[nodiscard]] cv::Mat unroll(const cv::Mat& picture, int columns, int rows, double radius_max,
                                 int first_row = 0) const;

private:
    Ellipse ellipse_;
    cv::Matx33d to_image_;
    cv::Matx33d to_plane_;
};

}  // namespace lapwing::vision
