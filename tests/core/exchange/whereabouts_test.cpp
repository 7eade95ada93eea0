// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/whereabouts.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <fstream>

namespace lapwing::exchange {
namespace {

namespace fs = std::filesystem;
using std::string_literals::operator""s;

// Segments laid out by ITU-T T.81, B.2.4.6 (APPn) and Exif 2.32, 4.5.4 and 4.6.2, from memory; that real
// tools' files are known too is shown by acceptance.session_file_media with exiftool.
std::string segment(int marker, const std::string& content) {
    const auto length = content.size() + 2;
    return "\xff"s + char(marker) + char(length >> 8) + char(length & 0xff) + content;
}

std::string exif_big_endian(int tag) {
    return "Exif\0\0MM\0*\0\0\0\x08\0\x01"s + char(tag >> 8) + char(tag & 0xff) +
           "\0\x04\0\0\0\x01\0\0\0\x1a\0\0\0\0"s;
}

std::string exif_little_endian(int tag) {
    return "Exif\0\0II*\0\x08\0\0\0\x01\0"s + char(tag & 0xff) + char(tag >> 8) +
           "\x04\0\x01\0\0\0\x1a\0\0\0\0\0\0\0"s;
}

class TellsWhere : public testing::Test {
protected:
    ~TellsWhere() override { fs::remove(file_); }
    bool photo(const std::string& segments) { return whole("\xff\xd8"s + segments + "\xff\xda\0\x02rest"s); }
    bool whole(const std::string& bytes) {
        std::ofstream(file_, std::ios::binary) << bytes;
        return tells_where(file_);
    }

private:
    fs::path file_ = fs::temp_directory_path() / ("lapwing-where-" + std::to_string(::getpid()) + ".jpg");
};

TEST_F(TellsWhere, ByExif) {
    constexpr int positions = 0x8825;
    constexpr int orientation = 0x0112;
    EXPECT_TRUE(photo(segment(0xe1, exif_big_endian(positions))));
    EXPECT_TRUE(photo(segment(0xe0, "JFIF\0"s) + segment(0xe1, exif_little_endian(positions))));
    EXPECT_FALSE(photo(segment(0xe1, exif_big_endian(orientation))));
    EXPECT_FALSE(photo(segment(0xe1, exif_little_endian(orientation))));
}

TEST_F(TellsWhere, ByXmpAndIptc) {
    const std::string xmp = "http://ns.adobe.com/xap/1.0/\0"s;
    EXPECT_TRUE(photo(segment(0xe1, xmp + "<exif:GPSLatitude>52,6N</exif:GPSLatitude>")));
    EXPECT_TRUE(photo(segment(0xe1, xmp + "<photoshop:City>Somewhere</photoshop:City>")));
    EXPECT_FALSE(photo(segment(0xe1, xmp + "<tiff:Orientation>1</tiff:Orientation>")));
    const std::string iptc = "Photoshop 3.0\0"s + "8BIM\x04\x04\0\0\0\0\0\x0a"s;
    EXPECT_TRUE(photo(segment(0xed, iptc + "\x1c\x02\x5a\0\x05There"s)));
    EXPECT_FALSE(photo(segment(0xed, iptc + "\x1c\x02\x78\0\x05Words"s)));
}

TEST_F(TellsWhere, WhenItCanNotBeReadToItsEnd) {
    EXPECT_TRUE(photo(segment(0xe1, "Exif\0\0what"s)));
    EXPECT_TRUE(photo(segment(0xe1, exif_big_endian(0x0112).substr(0, 17))));
    EXPECT_TRUE(photo(segment(0xe1, "Exif\0\0MM\0*\xff\xff\xff\xff"s)));
}

TEST_F(TellsWhere, OfNothingElse) {
    EXPECT_FALSE(photo(""));
    EXPECT_FALSE(photo(segment(0xe0, "JFIF\0GPS City"s) + segment(0xfe, "GPS"s)));
    EXPECT_FALSE(whole("#!/bin/sh GPS"));
    EXPECT_FALSE(whole(""));
    EXPECT_FALSE(whole("\xff\xd8\xff\xe1"s));
    EXPECT_FALSE(tells_where("/nonexistent"));
}

}  // namespace
}  // namespace lapwing::exchange
