// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/find_dials.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <opencv2/imgproc.hpp>
#include <utility>

#include "core/base/stations.h"

namespace lapwing::vision {
namespace {

constexpr int small_side = 400;          // px, longer side of the picture that is searched
constexpr double smallest_share = 0.09;  // of the shorter side: radius of the smallest dial looked for
constexpr double largest_share = 0.62;
constexpr int sectors = 64;

struct Edge {
    float x, y;    // px
    float gx, gy;  // unit vector along the gradient
};

std::vector<Edge> edges_of(const cv::Mat& small) {
    cv::Mat smooth;
    cv::Mat dx;
    cv::Mat dy;
    cv::GaussianBlur(small, smooth, {}, 1.2);
    cv::Scharr(smooth, dx, CV_16S, 1, 0, 1.0 / 4);
    cv::Scharr(smooth, dy, CV_16S, 0, 1, 1.0 / 4);
    std::vector<float> strength;
    for (int y = 0; y < small.rows; y += 2)
        for (int x = 0; x < small.cols; x += 2)
            strength.push_back(std::hypot(float(dx.at<short>(y, x)), float(dy.at<short>(y, x))));
    const auto at = [&](double share) {
        const auto place = strength.begin() + static_cast<std::ptrdiff_t>(share * double(strength.size()));
        std::nth_element(strength.begin(), place, strength.end());
        return double(*place);
    };
    const double high = std::max(12.0, at(0.86));
    cv::Mat mask;
    cv::Canny(dx, dy, mask, 0.4 * high, high, true);
    std::vector<Edge> edges;
    for (int y = 0; y < mask.rows; ++y)
        for (int x = 0; x < mask.cols; ++x) {
            if (!mask.at<std::uint8_t>(y, x)) continue;
            const float gx = dx.at<short>(y, x);
            const float gy = dy.at<short>(y, x);
            const float length = std::hypot(gx, gy);
            if (length > 0) edges.push_back({float(x), float(y), gx / length, gy / length});
        }
    return edges;
}

/// The places with the most votes, not too near to each other.
void most_voted(cv::Mat& votes, int cell, double apart, std::size_t count,
                std::vector<cv::Point2d>& centres) {
    cv::GaussianBlur(votes, votes, {}, 1.5);
    for (std::size_t i = 0; i < count; ++i) {
        cv::Point place;
        double most = 0;
        cv::minMaxLoc(votes, nullptr, &most, nullptr, &place);
        if (most <= 0) break;
        const cv::Point2d centre{(place.x + 0.5) * cell, (place.y + 0.5) * cell};
        const bool known = std::any_of(centres.begin(), centres.end(), [&](const cv::Point2d& c) {
            return std::hypot(c.x - centre.x, c.y - centre.y) < 0.7 * apart;
        });
        if (!known) centres.push_back(centre);
        cv::circle(votes, place, std::max(2, static_cast<int>(apart / cell)), 0, cv::FILLED);
    }
}

/// Every edge votes for the places along its own normal: the normals of a circle meet in its centre. A large
/// circle has more edges than a small one, so that among hoses a small dial would not be heard: in a second
/// vote the nearer places count for more.
std::vector<cv::Point2d> likely_centres(const std::vector<Edge>& edges, cv::Size size, double smallest,
                                        double largest) {
    constexpr int cell = 3;
    cv::Mat votes = cv::Mat::zeros(size.height / cell + 1, size.width / cell + 1, CV_32F);
    cv::Mat near = votes.clone();
    const auto distances = stations(smallest, largest, cell);
    for (const Edge& e : edges)
        for (const float way : {-1.0F, 1.0F})
            for (const double d : distances) {
                const int x = static_cast<int>(e.x + way * e.gx * d) / cell;
                const int y = static_cast<int>(e.y + way * e.gy * d) / cell;
                if (x < 0 || y < 0 || x >= votes.cols || y >= votes.rows) break;
                votes.at<float>(y, x) += 1;
                near.at<float>(y, x) += static_cast<float>(smallest / d);
            }
    std::vector<cv::Point2d> centres;
    most_voted(votes, cell, 0.35 * smallest, 8, centres);
    most_voted(near, cell, 0.35 * smallest, 8, centres);
    return centres;
}

/// One guess of how the rings round a centre are squeezed by the tilt, and what it explains.
struct Guess {
    cv::Point2d centre;
    double squeeze = 1.0;  // short axis over long axis
    double direction = 0;  // of the long axis
    double score = 0;
    double radius = 0;  // of the ring that shows best
};

/// Edges as seen from a guess: at which radius of the unsqueezed circles, in which sector.
class Rings {
public:
    Rings(const Guess& g, double largest)
        : c_(std::cos(g.direction)),
          s_(std::sin(g.direction)),
          q_(g.squeeze),
          centre_(g.centre),
          largest_(largest),
          seen_(static_cast<std::size_t>(largest) + 4, 0) {}

    /// Radius in px along the long axis, or negative when the edge does not run round the centre.
    [[nodiscard]] double radius_of(const Edge& e) const {
        const double dx = e.x - centre_.x;
        const double dy = e.y - centre_.y;
        const double u = dx * c_ + dy * s_;
        const double v = (dy * c_ - dx * s_) / q_;
        const double r = std::sqrt(u * u + v * v);
        if (r < 4 || r > largest_) return -1;
        const double gu = e.gx * c_ + e.gy * s_;
        const double gv = (e.gy * c_ - e.gx * s_) * q_;
        const double along = std::abs(gu * u + gv * v);
        const double across = std::abs(gu * v - gv * u);
        return across < 0.22 * along ? r : -1;
    }
    void add(const Edge& e) {
        const double r = radius_of(e);
        if (r < 0) return;
        const float angle =
            cv::fastAtan2(e.y - static_cast<float>(centre_.y), e.x - static_cast<float>(centre_.x));
        const auto sector = static_cast<unsigned>(angle / 360 * sectors) % sectors;
        seen_[static_cast<std::size_t>(r)] |= std::uint64_t{1} << sector;
    }
    /// In how many sectors a ring was seen at this radius, give or take a pixel.
    [[nodiscard]] int at(std::size_t r) const {
        return r + 1 < seen_.size() ? std::popcount(seen_[r] | seen_[r + 1]) : 0;
    }
    /// The radii where a ring shows best, best first.
    [[nodiscard]] std::vector<std::size_t> peaks(double smallest, int least) const {
        std::vector<std::size_t> found;
        std::vector<std::size_t> order;
        for (auto r = static_cast<std::size_t>(smallest); r + 1 < seen_.size(); ++r)
            if (at(r) >= least) order.push_back(r);
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t l, std::size_t r) { return at(l) > at(r); });
        for (const std::size_t r : order) {
            const bool near_better = std::any_of(found.begin(), found.end(),
                                                 [&](std::size_t f) { return (f > r ? f - r : r - f) < 3; });
            if (!near_better) found.push_back(r);
            if (found.size() == 6) break;
        }
        return found;
    }

private:
    double c_, s_, q_;
    cv::Point2d centre_;
    double largest_;
    std::vector<std::uint64_t> seen_;
};

/// Looks at the edges from a guess: what it explains.
Guess judged(const std::vector<Edge>& edges, Guess guess, double smallest, double largest) {
    Rings rings(guess, largest);
    for (const Edge& e : edges)
        rings.add(e);
    guess.score = 0;
    guess.radius = 0;
    double weight = 1.0;
    for (const std::size_t r : rings.peaks(smallest, 12)) {
        if (guess.radius == 0) guess.radius = double(r);
        guess.score += weight * rings.at(r);
        weight *= 0.6;
    }
    return guess;
}

/// The best squeeze for a centre, then small steps of everything.
Guess best_guess(const std::vector<Edge>& few, const std::vector<Edge>& all, cv::Point2d centre,
                 double smallest, double largest) {
    Guess best{centre};
    const double step = 0.06 * smallest;
    for (const double dx : {-2 * step, 0.0, 2 * step})
        for (const double dy : {-2 * step, 0.0, 2 * step})
            for (const double squeeze : {1.0, 0.92, 0.84, 0.75})
                for (int turn = 0; turn < (squeeze < 1 ? 6 : 1); ++turn) {
                    const Guess g = judged(few, {centre + cv::Point2d{dx, dy}, squeeze, turn * pi / 6},
                                           smallest, largest);
                    if (g.score > best.score) best = g;
                }
    for (int round = 0; round < 4; ++round) {
        const double reach = step * std::pow(0.6, round);
        // The first, long steps are told by a part of the edges as well.
        const std::vector<Edge>& edges = round < 2 ? few : all;
        if (round % 2 == 0) best = judged(edges, best, smallest, largest);
        const double share = reach / (2 * smallest);
        const std::array<std::array<double, 4>, 8> steps{{{reach, 0, 0, 0},
                                                          {-reach, 0, 0, 0},
                                                          {0, reach, 0, 0},
                                                          {0, -reach, 0, 0},
                                                          {0, 0, share, 0},
                                                          {0, 0, -share, 0},
                                                          {0, 0, 0, 6 * share},
                                                          {0, 0, 0, -6 * share}}};
        for (const auto& [dx, dy, dq, dd] : steps) {
            const Guess g = judged(
                edges,
                {best.centre + cv::Point2d{dx, dy}, std::min(1.0, best.squeeze + dq), best.direction + dd},
                smallest, largest);
            if (g.score > best.score) best = g;
        }
    }
    return best;
}

std::vector<Ring> rings_of(const std::vector<Edge>& edges, const Guess& guess, double smallest,
                           double largest, double scale) {
    Rings rings(guess, largest);
    for (const Edge& e : edges)
        rings.add(e);
    std::vector<Ring> found;
    for (const std::size_t r : rings.peaks(smallest, 20)) {
        const double middle = static_cast<double>(r) + 1.0;
        std::vector<cv::Point2f> points;
        for (const Edge& e : edges) {
            const double at = rings.radius_of(e);
            if (at > 0 && std::abs(at - middle) < std::max(3.0, 0.05 * middle)) points.emplace_back(e.x, e.y);
        }
        auto ellipse = fit_ellipse(points, 0.012);
        if (!ellipse) continue;
        if (std::hypot(ellipse->centre.x - guess.centre.x, ellipse->centre.y - guess.centre.y) >
            0.15 * middle)
            continue;
        ellipse->centre = (ellipse->centre + cv::Point2d{0.5, 0.5}) * scale - cv::Point2d{0.5, 0.5};
        ellipse->a *= scale;
        ellipse->b *= scale;
        const bool known = std::any_of(found.begin(), found.end(), [&](const Ring& other) {
            return std::abs(other.ellipse.mean_radius() / ellipse->mean_radius() - 1) < 0.015;
        });
        if (!known) found.push_back({*ellipse, double(rings.at(r)) / sectors});
    }
    std::sort(found.begin(), found.end(),
              [](const Ring& l, const Ring& r) { return l.ellipse.mean_radius() > r.ellipse.mean_radius(); });
    return found;
}

}  // namespace

std::vector<std::vector<Ring>> find_dials(const cv::Mat& grey) {
    const double scale = std::max(1.0, double(std::max(grey.cols, grey.rows)) / small_side);
    cv::Mat small;
    cv::resize(grey, small, {}, 1 / scale, 1 / scale, cv::INTER_AREA);
    const double side = std::min(small.cols, small.rows);
    const double smallest = smallest_share * side;
    const double largest = largest_share * side;
    if (smallest < 5) return {};

    const std::vector<Edge> edges = edges_of(small);
    std::vector<Edge> few;
    const std::size_t every = edges.size() / 1200 + 1;
    for (std::size_t i = 0; i < edges.size(); i += every)
        few.push_back(edges[i]);

    std::vector<Guess> guesses;
    for (const cv::Point2d& centre : likely_centres(edges, small.size(), smallest, largest)) {
        Guess g{centre};
        for (const double squeeze : {1.0, 0.85})
            for (int turn = 0; turn < (squeeze < 1 ? 4 : 1); ++turn)
                g.score =
                    std::max(g.score, judged(few, {centre, squeeze, turn * pi / 4}, smallest, largest).score);
        guesses.push_back(g);
    }
    const auto better = [](const Guess& l, const Guess& r) { return l.score > r.score; };
    std::stable_sort(guesses.begin(), guesses.end(), better);
    // Many of them are one circle, found from beside its centre: each is looked for once.
    constexpr std::size_t most_dials = 6;
    constexpr std::size_t most_looks = 8;
    std::vector<Guess> settled;
    for (std::size_t i = 0; i < guesses.size() && i < most_looks && settled.size() < most_dials; ++i) {
        const auto apart = [&](const Guess& other, const Guess& g) {
            return std::hypot(other.centre.x - g.centre.x, other.centre.y - g.centre.y);
        };
        const Guess g = best_guess(few, edges, guesses[i].centre, smallest, largest);
        const bool known = std::any_of(settled.begin(), settled.end(), [&](const Guess& other) {
            return apart(other, g) < std::max(0.3 * smallest, 0.2 * std::min(other.radius, g.radius));
        });
        if (!known) settled.push_back(g);
    }
    std::stable_sort(settled.begin(), settled.end(), better);

    std::vector<std::vector<Ring>> dials;
    for (const Guess& g : settled) {
        auto rings = rings_of(edges, g, smallest, largest, scale);
        if (!rings.empty()) dials.push_back(std::move(rings));
    }
    return dials;
}

}  // namespace lapwing::vision
