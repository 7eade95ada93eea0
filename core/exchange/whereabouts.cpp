// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/whereabouts.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <fstream>
#include <map>
#include <optional>
#include <string_view>

#include "core/exchange/exif.h"

namespace lapwing::exchange {
namespace {

namespace fs = std::filesystem;

/// XMP is text: its names for positions and places all hold one of these words.
bool names_a_place(std::string_view xmp) {
    constexpr std::array<std::string_view, 6> words{"GPS",     "Location", "City",
                                                    "Country", "State",    "Sublocation"};
    return std::ranges::any_of(words, [&](std::string_view word) { return xmp.find(word) != xmp.npos; });
}

/// IPTC IIM 4.2: record 2, data sets 26, 27 (content location) and 90 to 101 (city, sublocation, province,
/// country).
bool has_place(std::string_view iptc) {
    constexpr std::array<int, 7> places{26, 27, 90, 92, 95, 100, 101};
    for (auto at = iptc.find("\x1c\x02"); at != iptc.npos; at = iptc.find("\x1c\x02", at + 1))
        if (at + 2 < iptc.size() &&
            std::ranges::find(places, static_cast<unsigned char>(iptc[at + 2])) != places.end())
            return true;
    return false;
}

bool tells_where(int marker, std::string_view segment) {
    constexpr int app1 = 0xe1;
    constexpr int app13 = 0xed;
    if (marker == app13) return has_place(segment);
    if (marker != app1) return false;
    const auto exif = exif_in(segment);
    return exif ? has_position(*exif) : names_a_place(segment);
}

}  // namespace

bool tells_where(const fs::path& photo) {
    constexpr int start_of_scan = 0xda;
    constexpr int end_of_image = 0xd9;
    std::ifstream in(photo, std::ios::binary);
    if (in.get() != 0xff || in.get() != 0xd8) return false;
    std::string segment;
    for (;;) {
        int marker = in.get();
        if (marker != 0xff) return false;
        while (marker == 0xff)  // fill bytes
            marker = in.get();
        if (!in || marker == start_of_scan || marker == end_of_image) return false;
        if (marker == 0x01 || (marker >= 0xd0 && marker <= 0xd7)) continue;  // markers without a length
        const int high = in.get();
        const int length = high << 8 | in.get();
        if (!in || length < 2) return false;
        segment.resize(static_cast<std::size_t>(length - 2));
        in.read(segment.data(), length - 2);
        segment.resize(static_cast<std::size_t>(in.gcount()));
        if (tells_where(marker, segment)) return true;
        if (!in) return false;
    }
}

std::string text_of(const Whereabouts& photo) {
    return fmt::format("a photo of {} ({}{}{})", to_rfc3339(photo.taken_at).substr(0, 10), photo.engine,
                       photo.session.empty() ? "" : ", ", photo.session);
}

std::vector<Whereabouts> whereabouts_of(const Dossier& dossier,
                                        const std::function<fs::path(const Attachment&)>& file_of) {
    std::vector<Whereabouts> out;
    for (const auto& visit : dossier.visits)
        for (const auto& attachment : visit.attachments) {
            if (attachment.kind != AttachmentKind::photo) continue;
            const auto file = file_of(attachment);
            if (!file.empty() && tells_where(file))
                out.push_back({dossier.engine.name, visit.session.title, attachment.taken_at});
        }
    return out;
}

std::vector<Whereabouts> whereabouts_of(const Incoming& incoming) {
    std::map<std::string_view, const fs::path*> files;
    for (const auto& staged : incoming.attachments)
        files.emplace(staged.sha256, &staged.file);
    return whereabouts_of(incoming.dossier, [&](const Attachment& attachment) {
        const auto found = files.find(attachment.sha256);
        return found == files.end() ? fs::path() : *found->second;
    });
}

}  // namespace lapwing::exchange
