// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/vision/odd_files.h"

#include <opencv2/imgcodecs.hpp>

namespace lapwing::test {
namespace {

void add(File& file, std::uint32_t value, int bytes, bool little = false) {
    for (int i = 0; i < bytes; ++i)
        file.push_back(static_cast<std::uint8_t>(value >> (8 * (little ? i : bytes - 1 - i))));
}
void add(File& file, const std::string& letters) {
    file.insert(file.end(), letters.begin(), letters.end());
}
/// Without a true checksum: what reads headers does not look at it.
void add_chunk(File& png, const std::string& name, const File& body) {
    add(png, static_cast<std::uint32_t>(body.size()), 4);
    add(png, name);
    png.insert(png.end(), body.begin(), body.end());
    add(png, 0, 4);
}

}  // namespace

File text(const std::string& content) {
    return {content.begin(), content.end()};
}

File jpeg_of(const cv::Mat& picture) {
    File file;
    cv::imencode(".jpg", picture, file, {cv::IMWRITE_JPEG_QUALITY, 92});
    return file;
}

File picture_file(const char* kind, int width, int height) {
    cv::Mat picture(height, width, CV_8UC3);
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x)
            picture.at<cv::Vec3b>(y, x) = {static_cast<unsigned char>(x), static_cast<unsigned char>(y),
                                           static_cast<unsigned char>(x * y / 64)};
    File file;
    cv::imencode(kind, picture, file);
    return file;
}

File jpeg_header(unsigned width, unsigned height, unsigned colours, unsigned frame, unsigned in_scan) {
    File file{0xFF, 0xD8, 0xFF, static_cast<std::uint8_t>(frame)};
    add(file, 8 + 3 * colours, 2);
    add(file, 8, 1);
    add(file, height, 2);
    add(file, width, 2);
    add(file, colours, 1);
    for (unsigned i = 0; i < colours; ++i)
        add(file, (i + 1) << 16U | 0x1100U, 3);
    add(file, 0xFFDA, 2);
    const unsigned scanned = in_scan == 0 ? colours : in_scan;
    add(file, 6 + 2 * scanned, 2);
    add(file, scanned, 1);
    for (unsigned i = 0; i < scanned; ++i)
        add(file, (i + 1) << 8U, 2);
    add(file, 0x003F00, 3);
    add(file, 0x123456, 3);
    add(file, 0xFFD9, 2);
    return file;
}

File png_header(std::uint32_t width, std::uint32_t height) {
    File file{0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    File head;
    add(head, width, 4);
    add(head, height, 4);
    add(head, 0x08020000, 4);
    add(head, 0, 1);
    add_chunk(file, "IHDR", head);
    add_chunk(file, "IDAT", {1, 2, 3});
    add_chunk(file, "IEND", {});
    return file;
}

File moving_png() {
    File file = picture_file(".png", 200, 150);
    File control;
    add(control, 2, 4);
    add(control, 0, 4);
    File chunk;
    add_chunk(chunk, "acTL", control);
    file.insert(file.begin() + 33, chunk.begin(), chunk.end());  // behind the signature and IHDR
    return file;
}

File exif(int orientation, bool little) {
    File block;
    add(block, std::string("Exif\0\0", 6));
    add(block, little ? "II" : "MM");
    add(block, 42, 2, little);
    add(block, 8, 4, little);
    add(block, 3, 2, little);
    // Maker, at offset 50; orientation; a directory of the place, at offset 62.
    add(block, 0x010F, 2, little);
    add(block, 2, 2, little);
    add(block, 12, 4, little);
    add(block, 50, 4, little);
    add(block, 0x0112, 2, little);
    add(block, 3, 2, little);
    add(block, 1, 4, little);
    add(block, static_cast<std::uint32_t>(orientation), 2, little);
    add(block, 0, 2);
    add(block, 0x8825, 2, little);
    add(block, 4, 2, little);
    add(block, 1, 4, little);
    add(block, 62, 4, little);
    add(block, 0, 4);
    add(block, std::string("Invented Co\0", 12));
    add(block, 1, 2, little);
    add(block, 0x0001, 2, little);
    add(block, 2, 2, little);
    add(block, 2, 4, little);
    add(block, std::string("N\0\0\0", 4));
    add(block, 0, 4);
    return block;
}

File with_exif(const File& jpeg, const File& exif_block) {
    File file{0xFF, 0xD8, 0xFF, 0xE1};
    add(file, static_cast<std::uint32_t>(exif_block.size() + 2), 2);
    file.insert(file.end(), exif_block.begin(), exif_block.end());
    file.insert(file.end(), jpeg.begin() + 2, jpeg.end());
    return file;
}

cv::Mat stored_as(const cv::Mat& upright, int orientation) {
    const bool side = orientation >= 5;
    cv::Mat stored(side ? upright.cols : upright.rows, side ? upright.rows : upright.cols, upright.type());
    for (int row = 0; row < stored.rows; ++row)
        for (int column = 0; column < stored.cols; ++column) {
            // "Row 0 is the visual top / bottom / left / right side", and the same for column 0.
            const int last_row = stored.rows - 1;
            const int last_column = stored.cols - 1;
            int y = row;
            int x = column;
            switch (orientation) {
                case 2:
                    x = last_column - column;
                    break;
                case 3:
                    y = last_row - row;
                    x = last_column - column;
                    break;
                case 4:
                    y = last_row - row;
                    break;
                case 5:
                    y = column;
                    x = row;
                    break;
                case 6:
                    y = column;
                    x = last_row - row;
                    break;
                case 7:
                    y = last_column - column;
                    x = last_row - row;
                    break;
                case 8:
                    y = last_column - column;
                    x = row;
                    break;
                default:
                    break;
            }
            stored.at<cv::Vec3b>(row, column) = upright.at<cv::Vec3b>(y, x);
        }
    return stored;
}

}  // namespace lapwing::test
