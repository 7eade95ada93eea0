// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/bare_copy.h"

#include <gtest/gtest.h>

#include <string>

#include "core/base/atomic_file.h"

namespace lapwing::exchange {
namespace {

using std::string_literals::operator""s;

// Segments laid out by ITU-T T.81, annex B, and Exif 2.32, 4.5.4 and 4.6, from memory.
std::string segment(int marker, const std::string& content) {
    const auto length = content.size() + 2;
    return "\xff"s + char(marker) + char(length >> 8) + char(length & 0xff) + content;
}

/// Exif, little end first, that says which way up and leads to positions.
std::string exif(int orientation) {
    return segment(0xe1, "Exif\0\0II*\0\x08\0\0\0\x02\0"s + "\x12\x01\x03\0\x01\0\0\0"s + char(orientation) +
                             "\0\0\0"s + "\x25\x88\x04\0\x01\0\0\0\x26\0\0\0"s + "\0\0\0\0"s);
}

std::string bare(const std::string& photo) {
    const auto copy = bare_copy({reinterpret_cast<const unsigned char*>(photo.data()), photo.size()});
    return copy ? std::string(copy->begin(), copy->end()) : copy.error().code;
}

const std::string start = "\xff\xd8"s;
const std::string jfif = segment(0xe0, "JFIF\0\x01\x01\0\0\x01\0\x01\0\0"s);
const std::string colours = segment(0xe2, "ICC_PROFILE\0\x01\x01profile"s) + segment(0xee, "Adobe\0d\0"s);
const std::string tables =
    segment(0xdb, std::string(65, '\x11')) + segment(0xc2, "\x08\0\x10\0\x10\x01\x01\x11\0"s);
const std::string scans = segment(0xda, "\x01\x01\0\0\0\0"s) + "coded\xff\0\xff\xd0more"s +
                          segment(0xc4, "huff"s) + segment(0xda, "\x01\x01\0\x01\x3f\0"s) + "again\xff\0"s;
const std::string end = "\xff\xd9"s;

TEST(BareCopy, LeavesOutWhatIsNotedBesideThePicture) {
    const std::string noted = exif(1) + segment(0xe1, "http://ns.adobe.com/xap/1.0/\0City"s) +
                              segment(0xe2, "MPF\0other pictures"s) + segment(0xed, "Photoshop 3.0\0"s) +
                              segment(0xef, "of a maker"s) + segment(0xe0, "JFXX\0a preview"s) +
                              segment(0xfe, "a comment"s);
    EXPECT_EQ(bare(start + jfif + noted + colours + tables + scans + end),
              start + jfif + colours + tables + scans + end);
    // Between the scans too, and other pictures after the end.
    EXPECT_EQ(bare(start + tables + scans + exif(1) + scans + end + start + exif(1) + scans + end),
              start + tables + scans + scans + end);
}

TEST(BareCopy, KeepsWhichWayUp) {
    const std::string way_up =
        segment(0xe1, "Exif\0\0MM\0*\0\0\0\x08\0\x01"s + "\x01\x12\0\x03\0\0\0\x01\0\x06\0\0"s + "\0\0\0\0"s);
    EXPECT_EQ(bare(start + exif(6) + tables + scans + end), start + way_up + tables + scans + end);
    EXPECT_EQ(bare(start + exif(9) + tables + scans + end), start + tables + scans + end);
    EXPECT_EQ(bare(bare(start + exif(6) + tables + scans + end)), start + way_up + tables + scans + end);
}

TEST(BareCopy, OfARealPhotoIsThePhotoBeforeAnythingWasNoted) {
    const auto photo = read_file(LAPWING_FIXTURES "/gauge-photos/g001.jpg", 10u << 20);
    ASSERT_TRUE(photo);
    EXPECT_EQ(bare(*photo), *photo);
    EXPECT_EQ(bare(photo->substr(0, 2) + exif(1) + photo->substr(2) + "left over"), *photo);
}

TEST(BareCopy, RefusesWhatIsNoWholeJpeg) {
    const std::string whole = start + jfif + exif(1) + tables + scans + end;
    for (std::size_t length = 0; length < whole.size(); ++length)
        EXPECT_EQ(bare(whole.substr(0, length)), "photo.no_bare_copy") << length;
    EXPECT_EQ(bare("\x89PNG\r\n\x1a\n"s), "photo.no_bare_copy");
    EXPECT_EQ(bare(start + "\xff\xe1\0\x01"s + end), "photo.no_bare_copy");
    EXPECT_EQ(bare(start + "junk" + end), "photo.no_bare_copy");
}

// Taken out of between, what stands after a segment would run on from the pixels before it.
TEST(BareCopy, RefusesACodedByteBetweenSegments) {
    const std::vector<unsigned char> photo{0xff, 0xd8, 0xff, 0xda, 0, 2, 7,   0xff, 0xfe, 0,
                                           3,    'x',  0xff, 0,    0, 3, 'y', 0xff, 0xd9};
    EXPECT_FALSE(bare_copy(photo));
}

}  // namespace
}  // namespace lapwing::exchange
