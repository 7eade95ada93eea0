// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/photo.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>

#include "core/vision/photo_header.h"
#include "tests/core/vision/odd_files.h"

namespace lapwing::vision {
namespace {

using namespace test;

std::string letters(const std::vector<std::byte>& file) {
    return {reinterpret_cast<const char*>(file.data()), file.size()};
}

cv::Mat two_tone() {
    cv::Mat picture(240, 320, CV_8UC3, cv::Scalar(20, 20, 20));
    picture(cv::Rect(0, 0, 160, 120)).setTo(cv::Scalar(0, 0, 250));
    return picture;
}

TEST(MakeKeepable, StandsUprightAndSaysNothingOfDeviceAndPlace) {
    for (int orientation = 1; orientation <= 8; ++orientation) {
        const File taken =
            with_exif(jpeg_of(stored_as(two_tone(), orientation)), exif(orientation, orientation % 2 == 0));
        ASSERT_NE(std::string(taken.begin(), taken.end()).find("Invented Co"), std::string::npos);
        const auto kept = make_keepable(as_bytes(taken));
        ASSERT_TRUE(kept);
        EXPECT_EQ(letters(*kept).find("Exif"), std::string::npos);
        EXPECT_EQ(letters(*kept).find("Invented"), std::string::npos);
        const auto header = read_photo_header(*kept);
        ASSERT_TRUE(header);
        EXPECT_EQ(header->width, 320);
        EXPECT_EQ(header->orientation, 1);
        const std::string bytes = letters(*kept);
        const cv::Mat seen = cv::imdecode(std::vector<char>(bytes.begin(), bytes.end()), cv::IMREAD_COLOR);
        EXPECT_LT(cv::norm(seen, two_tone(), cv::NORM_L1) / double(3 * seen.total()), 6) << orientation;
    }
}

TEST(MakeKeepable, KeepsOnlyTheMarkersThatAPictureNeeds) {
    const auto kept = make_keepable(as_bytes(with_exif(picture_file(".jpg", 640, 480), exif(6, true))));
    ASSERT_TRUE(kept);
    // Up to the scan (ITU-T T.81, B.1.1.3): no application data but JFIF's, no comments.
    for (std::size_t at = 2; at + 4 < kept->size();) {
        const auto marker = std::to_integer<unsigned>((*kept)[at + 1]);
        if (marker == 0xDA) break;
        EXPECT_FALSE((marker >= 0xE1 && marker <= 0xEF) || marker == 0xFE) << std::hex << marker;
        at += 2 + std::to_integer<std::size_t>((*kept)[at + 2]) * 256 +
              std::to_integer<std::size_t>((*kept)[at + 3]);
    }
}

TEST(MakeKeepable, BoundsTheSizeAndTakesPngToo) {
    cv::Mat large;
    cv::resize(two_tone(), large, {8160, 6120});
    const auto kept = make_keepable(as_bytes(jpeg_of(large)));
    ASSERT_TRUE(kept);
    const auto header = read_photo_header(*kept);
    ASSERT_TRUE(header);
    EXPECT_LE(header->width, keepable_side_px);
    EXPECT_GE(header->width, keepable_side_px - 32);  // a whole fraction of it was near enough
    EXPECT_NEAR(header->height, 0.75 * header->width, 1.0);
    const auto from_png = make_keepable(as_bytes(picture_file(".png", 640, 480)));
    ASSERT_TRUE(from_png);
    EXPECT_EQ(read_photo_header(*from_png)->kind, PhotoHeader::Kind::jpeg);
}

TEST(MakeKeepable, PassesOnWhyAFileWasRefused) {
    EXPECT_EQ(make_keepable(as_bytes(text("no picture"))).error().code, "vision.photo_kind");
    EXPECT_EQ(make_keepable({}).error().code, "vision.photo_empty");
}

}  // namespace
}  // namespace lapwing::vision
