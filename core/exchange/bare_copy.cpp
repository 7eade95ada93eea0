// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/bare_copy.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

#include "core/exchange/exif.h"

namespace lapwing::exchange {
namespace {

constexpr int start_of_scan = 0xda;
constexpr int end_of_image = 0xd9;
constexpr int app1 = 0xe1;

using Bytes = std::span<const unsigned char>;

std::string_view text_of(Bytes bytes) {
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

/// Of what programs and people note beside a picture only what its colours depend on: JFIF and Adobe say how
/// they are coded, a profile what they mean.
bool is_of_the_picture(int marker, std::string_view content) {
    constexpr int app0 = 0xe0, app2 = 0xe2, app14 = 0xee, app15 = 0xef, comment = 0xfe;
    if (marker == comment) return false;
    if (marker < app0 || marker > app15) return true;
    using std::string_view_literals::operator""sv;
    return (marker == app0 && content.starts_with("JFIF\0"sv)) ||
           (marker == app2 && content.starts_with("ICC_PROFILE\0"sv)) ||
           (marker == app14 && content.starts_with("Adobe"));
}

/// Exif that says which way up, and nothing else.
void put_orientation(std::vector<unsigned char>& out, int orientation) {
    constexpr std::array<unsigned char, 36> exif{
        0xff, app1, 0,   34,                                // length: all but the marker
        'E',  'x',  'i', 'f', 0, 0, 'M', 'M', 0, 42,        // big end first
        0,    0,    0,   8,   0, 1,                         // one entry
        0x01, 0x12, 0,   3,   0, 0, 0,   1,   0, 0,  0, 0,  // orientation, one short number
        0,    0,    0,   0};
    out.insert(out.end(), exif.begin(), exif.end());
    out[out.size() - 7] = static_cast<unsigned char>(orientation);
}

/// Where the coded pixels that begin there end: at the next marker that is none of their own.
std::size_t end_of_scan(Bytes photo, std::size_t at) {
    for (; at + 1 < photo.size(); ++at)
        if (photo[at] == 0xff && photo[at + 1] != 0 && photo[at + 1] != 0xff &&
            (photo[at + 1] < 0xd0 || photo[at + 1] > 0xd7))
            return at;
    return photo.size();
}

}  // namespace

Result<std::vector<unsigned char>> bare_copy(Bytes photo) {
    const auto broken = [] {
        return fail("photo.no_bare_copy",
                    "This photo is no whole JPEG: no copy without its place can be made of it. Delete it, or "
                    "leave it out.");
    };
    if (photo.size() < 4 || photo[0] != 0xff || photo[1] != 0xd8) return broken();
    std::vector<unsigned char> out{0xff, 0xd8};
    out.reserve(photo.size());
    const auto copy = [&](std::size_t from, std::size_t to) {
        const auto begin = photo.begin();
        out.insert(out.end(), begin + static_cast<std::ptrdiff_t>(from),
                   begin + static_cast<std::ptrdiff_t>(to));
    };
    std::optional<int> way_up;
    for (std::size_t at = 2;;) {
        if (at >= photo.size() || photo[at] != 0xff) return broken();
        while (at < photo.size() && photo[at] == 0xff)  // fill bytes
            ++at;
        if (at >= photo.size()) return broken();
        const int marker = photo[at++];
        // No marker, but a coded 0xff, which has no place between segments.
        if (marker == 0) return broken();
        if (marker == end_of_image) break;  // what hangs on after it are other pictures
        if (marker == 0x01 || (marker >= 0xd0 && marker <= 0xd7)) continue;  // markers without a length
        if (photo.size() - at < 2) return broken();
        const std::size_t length = static_cast<std::size_t>(photo[at]) << 8U | photo[at + 1];
        if (length < 2 || photo.size() - at < length) return broken();
        const auto content = text_of(photo.subspan(at + 2, length - 2));
        if (const auto exif = marker == app1 && !way_up ? exif_in(content) : std::nullopt)
            if (way_up = orientation_in(*exif); way_up && *way_up != 1) put_orientation(out, *way_up);
        if (is_of_the_picture(marker, content)) {
            out.push_back(0xff);
            out.push_back(static_cast<unsigned char>(marker));
            copy(at, at + length);
        }
        at += length;
        if (marker == start_of_scan) {
            const auto end = end_of_scan(photo, at);
            copy(at, end);
            at = end;
        }
    }
    out.push_back(0xff);
    out.push_back(end_of_image);
    return out;
}

}  // namespace lapwing::exchange
