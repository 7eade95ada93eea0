// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/photo_header.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <opencv2/imgcodecs.hpp>

#include "core/vision/decode.h"
#include "tests/core/vision/odd_files.h"

namespace lapwing::vision {
namespace {

using namespace test;

std::string refusal(const File& file) {
    const auto header = read_photo_header(as_bytes(file));
    if (header) return "accepted";
    EXPECT_FALSE(header.error().english.empty());
    EXPECT_EQ(header.error().english.back(), '.');
    return header.error().code;
}

TEST(PhotoHeader, ReadsWhatOpenCvWrites) {
    for (const char* kind : {".jpg", ".png"}) {
        const auto header = read_photo_header(as_bytes(picture_file(kind, 640, 480)));
        ASSERT_TRUE(header) << kind << header.error().english;
        EXPECT_EQ(header->width, 640);
        EXPECT_EQ(header->height, 480);
        EXPECT_EQ(header->orientation, 1);
    }
}

TEST(PhotoHeader, RefusesOtherFiles) {
    EXPECT_EQ(refusal({}), "vision.photo_empty");
    EXPECT_EQ(refusal(text("GIF89a, and so on")), "vision.photo_moves");
    EXPECT_EQ(refusal(text("RIFF....WEBPVP8 ")), "vision.photo_kind");
    EXPECT_EQ(refusal(text("RIFF....WEBPVP8X....ANIM")), "vision.photo_kind");  // moving or not
    EXPECT_EQ(refusal(text(std::string("\0\0\0\x18"
                                       "ftypheic",
                                       12))),
              "vision.photo_kind");
    EXPECT_EQ(refusal(text("%PDF-1.7")), "vision.photo_kind");
    EXPECT_EQ(refusal(text("x")), "vision.photo_kind");
    EXPECT_EQ(refusal(File(largest_photo_bytes + 1)), "vision.photo_file_too_large");
}

TEST(PhotoHeader, RefusesPicturesThatNeedTooMuchMemory) {
    EXPECT_EQ(refusal(jpeg_header(65500, 65500, 3)), "vision.photo_too_large");
    EXPECT_EQ(refusal(jpeg_header(8000, 6000, 3)), "accepted");
    EXPECT_EQ(refusal(jpeg_header(8000, 6000, 3, 0xC2)), "vision.photo_too_large");
    EXPECT_EQ(refusal(jpeg_header(8000, 6000, 3, 0xC0, 1)), "vision.photo_too_large");  // colour by colour
    EXPECT_EQ(refusal(jpeg_header(4000, 3000, 3, 0xC0, 1)), "accepted");
    EXPECT_EQ(refusal(jpeg_header(4000, 3900, 3, 0xC2)), "vision.photo_too_large");  // all colours in full
    EXPECT_EQ(refusal(png_header(8000, 6000)), "vision.photo_too_large");
    File bulky = png_header(4000, 3900);  // with so much file beside it
    bulky.resize(largest_unshrinkable_bytes - 3LL * 4000 * 3900 + 1000);
    EXPECT_EQ(refusal(bulky), "vision.photo_too_large");
    EXPECT_EQ(refusal(png_header(0xFFFFFFFF, 0xFFFFFFFF)), "vision.photo_too_large");
}

TEST(PhotoHeader, RefusesWhatItCanNotUse) {
    EXPECT_EQ(refusal(picture_file(".jpg", 80, 60)), "vision.photo_too_small");
    EXPECT_EQ(refusal(jpeg_header(0, 0, 3)), "vision.photo_too_small");
    EXPECT_EQ(refusal(jpeg_header(800, 600, 4)), "vision.photo_four_colours");
    EXPECT_EQ(refusal(jpeg_header(800, 600, 2)), "vision.photo_broken");
    EXPECT_EQ(refusal(jpeg_header(800, 600, 3, 0xC9)), "vision.photo_unusual_jpeg");
    EXPECT_EQ(refusal(moving_png()), "vision.photo_moves");
}

TEST(PhotoHeader, RefusesEveryCutFile) {
    for (const char* kind : {".jpg", ".png"}) {
        const File whole = picture_file(kind, 160, 120);
        for (std::size_t size = 3; size < whole.size(); size += 1 + size / 40)
            EXPECT_NE(refusal(File(whole.begin(), whole.begin() + static_cast<std::ptrdiff_t>(size))),
                      "accepted")
                << kind << size;
    }
}

TEST(PhotoHeader, KnowsWhichWayIsUp) {
    const File plain = picture_file(".jpg", 320, 240);
    for (const bool little : {true, false})
        for (int orientation = 1; orientation <= 8; ++orientation) {
            const auto header = read_photo_header(as_bytes(with_exif(plain, exif(orientation, little))));
            ASSERT_TRUE(header);
            EXPECT_EQ(header->orientation, orientation);
            EXPECT_EQ(header->upright_width(), orientation >= 5 ? 240 : 320);
        }
    for (const int nonsense : {0, 9, 4711}) {
        const auto header = read_photo_header(as_bytes(with_exif(plain, exif(nonsense, true))));
        ASSERT_TRUE(header);
        EXPECT_EQ(header->orientation, 1);
    }
}

// The orientations of Exif 2.32, 4.6.4: which stored corner holds the picture's top left one.
TEST(Decode, StandsEveryPhotoUpright) {
    cv::Mat upright(240, 320, CV_8UC3, cv::Scalar(20, 20, 20));
    upright(cv::Rect(0, 0, 160, 120)).setTo(cv::Scalar(0, 0, 250));
    upright(cv::Rect(160, 0, 160, 120)).setTo(cv::Scalar(0, 250, 0));
    for (int orientation = 1; orientation <= 8; ++orientation) {
        const File file = with_exif(jpeg_of(stored_as(upright, orientation)), exif(orientation, true));
        const auto photo = decode(as_bytes(file), 1000);
        ASSERT_TRUE(photo) << orientation;
        ASSERT_EQ(photo->colour.size(), upright.size()) << orientation;
        EXPECT_LT(cv::norm(photo->colour, upright, cv::NORM_L1) / double(3 * upright.total()), 4)
            << orientation;
    }
}

TEST(Decode, ShrinksToTheWantedSide) {
    for (const int side : {100, 150, 320, 640, 1000}) {
        const auto photo = decode(as_bytes(picture_file(".jpg", 640, 480)), side);
        ASSERT_TRUE(photo);
        EXPECT_EQ(photo->colour.cols, std::min(side, 640));
        EXPECT_NEAR(photo->scale, 640.0 / std::min(side, 640), 1e-9);
    }
}

// Whatever a file holds: a picture or a sentence.
RC_GTEST_PROP(Decode, SurvivesDamage, (std::vector<std::pair<std::uint16_t, std::uint8_t>> damage)) {
    static const std::array<File, 3> whole{picture_file(".jpg", 200, 150), picture_file(".png", 200, 150),
                                           with_exif(picture_file(".jpg", 200, 150), exif(6, false))};
    File file = whole[*rc::gen::inRange<std::size_t>(0, whole.size())];
    for (const auto& [at, value] : damage)
        file[(at < 32768 ? at % 200 : at) % file.size()] = value;
    const auto photo = decode(as_bytes(file), 300);
    if (!photo) RC_ASSERT(!photo.error().english.empty());
}

}  // namespace
}  // namespace lapwing::vision
