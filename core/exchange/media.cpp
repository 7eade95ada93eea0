// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/media.h"

#include <cerrno>
#include <fstream>
#include <optional>
#include <string>

#include "core/base/atomic_file.h"

namespace lapwing::exchange {
namespace {

std::optional<int> byte(std::istream& in) {
    const int value = in.get();
    return in ? std::optional(value) : std::nullopt;
}

std::optional<int> two_bytes(std::istream& in) {
    const auto high = byte(in);
    const auto low = byte(in);
    return high && low ? std::optional(*high << 8 | *low) : std::nullopt;
}

/// Width times height from the frame header (ITU-T T.81, B.2.2); nothing when there is none.
std::optional<std::uint64_t> jpeg_pixels(std::istream& in) {
    if (two_bytes(in) != 0xffd8) return std::nullopt;
    for (;;) {
        auto marker = byte(in);
        if (marker != 0xff) return std::nullopt;
        while (marker == 0xff)  // fill bytes
            marker = byte(in);
        if (!marker || *marker == 0xd9 || *marker == 0xda) return std::nullopt;
        if (*marker == 0x01 || (*marker >= 0xd0 && *marker <= 0xd7)) continue;  // markers without a length
        const auto length = two_bytes(in);
        if (!length || *length < 2) return std::nullopt;
        const bool frame =
            *marker >= 0xc0 && *marker <= 0xcf && *marker != 0xc4 && *marker != 0xc8 && *marker != 0xcc;
        if (!frame) {
            in.seekg(*length - 2, std::ios::cur);
            continue;
        }
        byte(in);  // sample precision
        const auto height = two_bytes(in);
        const auto width = two_bytes(in);
        if (!height || !width || *height == 0 || *width == 0) return std::nullopt;
        return static_cast<std::uint64_t>(*height) * static_cast<std::uint64_t>(*width);
    }
}

bool starts_like(std::istream& in, std::string_view media_type) {
    std::string head(12, '\0');
    in.read(head.data(), static_cast<std::streamsize>(head.size()));
    if (media_type == "audio/ogg") return head.starts_with("OggS");
    if (media_type == "audio/wav") return head.starts_with("RIFF") && head.substr(8) == "WAVE";
    if (media_type == "audio/webm") return head.starts_with("\x1a\x45\xdf\xa3");
    return false;
}

}  // namespace

Status check_media(const std::filesystem::path& file, std::string_view media_type, std::uint64_t most_pixels,
                   std::string_view name) {
    std::ifstream in(file, std::ios::binary);
    // A storage that fails here is no fault of the sender's.
    if (!in) return file_error(errno, file);
    if (media_type == "image/jpeg") {
        const auto pixels = jpeg_pixels(in);
        if (!pixels)
            return fail("media.not_a_photo",
                        "{} in the file is not a photo (JPEG). Ask the sender to send it again.", name);
        if (*pixels > most_pixels)
            return fail(
                "media.photo_too_large",
                "The photo {} in the file has {} pixels: at most {} are opened. Do not trust this file.",
                name, *pixels, most_pixels);
        return {};
    }
    if (!starts_like(in, media_type))
        return fail("media.not_a_voice_note",
                    "{} in the file is not a voice note ({}). Ask the sender to send it again.", name,
                    media_type);
    return {};
}

}  // namespace lapwing::exchange
