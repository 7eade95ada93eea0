// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/photo_header.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string_view>

namespace lapwing::vision {
namespace {

using Bytes = std::span<const std::byte>;

std::uint32_t big_endian(Bytes bytes, std::size_t at, std::size_t count) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < count; ++i)
        value = value << 8U | std::to_integer<std::uint32_t>(bytes[at + i]);
    return value;
}

bool starts_with(Bytes bytes, std::string_view text, std::size_t at = 0) {
    if (at > bytes.size() || bytes.size() - at < text.size()) return false;
    return std::equal(text.begin(), text.end(), bytes.begin() + static_cast<std::ptrdiff_t>(at),
                      [](char c, std::byte b) { return static_cast<std::byte>(c) == b; });
}

/// The orientation in the first directory of a TIFF structure; 1 when it is not told or makes no sense.
int orientation_of(Bytes tiff) {
    if (tiff.size() < 8) return 1;
    const bool little = starts_with(tiff, "II");
    if (!little && !starts_with(tiff, "MM")) return 1;
    const auto number = [&](std::size_t at, std::size_t count) -> std::uint32_t {
        if (at > tiff.size() || tiff.size() - at < count) return 0;
        std::uint32_t value = 0;
        for (std::size_t i = 0; i < count; ++i)
            value = value << 8U | std::to_integer<std::uint32_t>(tiff[at + (little ? count - 1 - i : i)]);
        return value;
    };
    const std::size_t directory = number(4, 4);
    const std::uint32_t entries = number(directory, 2);
    for (std::size_t i = 0; i < entries; ++i) {
        const std::size_t entry = directory + 2 + 12 * i;
        if (entry + 12 > tiff.size()) break;
        if (number(entry, 2) != 0x0112) continue;
        const std::uint32_t value = number(entry + 8, 2);
        return value >= 1 && value <= 8 ? static_cast<int>(value) : 1;
    }
    return 1;
}

tl::unexpected<Error> cut_short() {
    return fail("vision.photo_cut_short",
                "The photo's file is cut short. Take the photo again, or copy the file anew.");
}

tl::unexpected<Error> broken() {
    return fail("vision.photo_broken",
                "The photo's file is damaged and can't be read. Take the photo again.");
}

Status check_size(std::int64_t width, std::int64_t height, std::int64_t largest) {
    if (width < smallest_photo_side_px || height < smallest_photo_side_px)
        return fail(
            "vision.photo_too_small",
            "The photo has {} by {} pixels; a gauge can't be read below {} on either side. Use a larger one.",
            width, height, smallest_photo_side_px);
    if (height > largest / width)
        return fail("vision.photo_too_large",
                    "The photo has {} megapixels; files of its kind are read up to {}. Save it smaller, as "
                    "an ordinary JPEG.",
                    std::llround(double(width) * double(height) / 1e6), largest / 1'000'000);
    return {};
}

/// `held` is how many bytes a pixel the decoder holds.
Status check_unshrinkable(std::int64_t width, std::int64_t height, double held, std::size_t file_size) {
    const auto room = static_cast<std::int64_t>((largest_unshrinkable_bytes - double(file_size)) / held);
    return check_size(width, height, std::clamp<std::int64_t>(room, 0, largest_unshrinkable_px));
}

/// Bytes of coefficients a pixel: two for each sample, and colours have fewer samples than there are pixels
/// (ITU-T T.81, A.1.1 and B.2.2). `frame` is the body of the frame's marker.
double coefficients_of(Bytes frame, unsigned colours) {
    double samples = 0;
    double most = 1;
    for (std::size_t at = 7; at < 6 + 3 * std::size_t{colours} && at < frame.size(); at += 3) {
        const auto factors = std::to_integer<unsigned>(frame[at]);
        const double count = (factors >> 4U) * double(factors & 15U);
        samples += count;
        most = std::max(most, count);
    }
    return std::max(1.0, 2 * samples / most);
}

Result<PhotoHeader> read_jpeg(Bytes file) {
    PhotoHeader header;
    bool framed = false;
    bool scanned = false;
    bool in_passes = false;  // progressive, or a colour after the other
    unsigned colours = 0;
    double coefficients = 0;
    std::size_t at = 2;
    while (true) {
        // To the next marker; between the scans that also skips the coded picture.
        while (at + 1 < file.size()) {
            if (file[at] == std::byte{0xFF}) {
                const auto code = std::to_integer<unsigned>(file[at + 1]);
                const bool part_of_scan = code == 0x00 || (code >= 0xD0 && code <= 0xD7);
                if (code != 0xFF && !(scanned && part_of_scan)) break;
            } else if (!scanned) {
                return broken();
            }
            ++at;
        }
        if (at + 1 >= file.size()) return cut_short();
        const auto code = std::to_integer<unsigned>(file[at + 1]);
        at += 2;
        if (code == 0xD9) break;
        if (at + 2 > file.size()) return cut_short();
        const std::size_t length = big_endian(file, at, 2);
        if (length < 2) return broken();
        if (file.size() - at < length) return cut_short();
        const Bytes body = file.subspan(at + 2, length - 2);
        const bool frame = code >= 0xC0 && code <= 0xCF && code != 0xC4 && code != 0xC8 && code != 0xCC;
        if (frame) {
            if (framed || body.size() < 6) return broken();
            framed = true;
            in_passes = code == 0xC2;
            if (code > 0xC2 || body[0] != std::byte{8})
                return fail(
                    "vision.photo_unusual_jpeg",
                    "The photo is a rare kind of JPEG that can't be read here. Save it as an ordinary JPEG.");
            header.height = static_cast<int>(big_endian(body, 1, 2));
            header.width = static_cast<int>(big_endian(body, 3, 2));
            colours = std::to_integer<unsigned>(body[5]);
            if (colours == 4)
                return fail(
                    "vision.photo_four_colours",
                    "The photo is stored in the four colours of print (CMYK). Save it as an ordinary JPEG.");
            if (colours != 1 && colours != 3) return broken();
            coefficients = coefficients_of(body, colours);
            if (auto fits = check_size(header.width, header.height, largest_photo_px); !fits)
                return tl::unexpected(fits.error());
        } else if (code == 0xE1 && starts_with(body, std::string_view("Exif\0\0", 6))) {
            header.orientation = orientation_of(body.subspan(6));
        } else if (code == 0xDA) {
            if (!framed || body.empty()) return broken();
            scanned = true;
            in_passes = in_passes || std::to_integer<unsigned>(body[0]) < colours;
        }
        at += length;
    }
    if (!scanned) return broken();
    if (in_passes)
        if (auto fits = check_unshrinkable(header.width, header.height, coefficients, file.size()); !fits)
            return tl::unexpected(fits.error());
    return header;
}

Result<PhotoHeader> read_png(Bytes file) {
    PhotoHeader header;
    header.kind = PhotoHeader::Kind::png;
    std::size_t at = 8;
    bool data = false;
    while (true) {
        if (file.size() - at < 12) return cut_short();
        const std::size_t length = big_endian(file, at, 4);
        if (file.size() - at - 12 < length) return cut_short();
        const Bytes body = file.subspan(at + 8, length);
        if (at == 8) {
            if (!starts_with(file, "IHDR", at + 4) || length != 13) return broken();
            const std::uint32_t width = big_endian(body, 0, 4);
            const std::uint32_t height = big_endian(body, 4, 4);
            if (auto fits = check_unshrinkable(width, height, 3, file.size()); !fits)
                return tl::unexpected(fits.error());
            header.width = static_cast<int>(width);
            header.height = static_cast<int>(height);
        } else if (starts_with(file, "acTL", at + 4)) {
            return fail("vision.photo_moves",
                        "The file is a moving picture. Use a single photo, JPEG or PNG.");
        } else if (starts_with(file, "eXIf", at + 4)) {
            header.orientation = orientation_of(body);
        } else if (starts_with(file, "IDAT", at + 4)) {
            data = true;
        } else if (starts_with(file, "IEND", at + 4)) {
            break;
        }
        at += 12 + length;
    }
    if (!data) return broken();
    return header;
}

}  // namespace

Result<PhotoHeader> read_photo_header(std::span<const std::byte> file) {
    if (file.empty()) return fail("vision.photo_empty", "The photo's file is empty. Take the photo again.");
    if (file.size() > largest_photo_bytes)
        return fail("vision.photo_file_too_large",
                    "The photo's file is larger than {} MB. Save it as an ordinary JPEG.",
                    largest_photo_bytes >> 20U);
    if (starts_with(file, "\xFF\xD8\xFF")) return read_jpeg(file);
    if (starts_with(file, "\x89PNG\r\n\x1A\n")) return read_png(file);
    if (starts_with(file, "GIF8"))
        return fail("vision.photo_moves", "The file is a GIF. Use a single photo, JPEG or PNG.");
    return fail("vision.photo_kind",
                "The file is no JPEG and no PNG. Use one of those; a phone's camera can be set to JPEG "
                "(\"most compatible\").");
}

}  // namespace lapwing::vision
