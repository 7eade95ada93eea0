// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/bare_photos.h"

#include "core/base/atomic_file.h"
#include "core/exchange/bare_copy.h"
#include "core/exchange/whereabouts.h"
#include "core/workflow/needs.h"

namespace lapwing::workflow {

Result<std::vector<BarePhoto>> bare_photos(const Desk& desk, const HandOver& chosen) {
    constexpr std::size_t largest = 256u << 20;  // far above what a photo of 60 megapixels comes to
    const auto dossier = hand_over(desk, chosen);
    if (!dossier) return tl::unexpected(dossier.error());
    std::vector<BarePhoto> out;
    for (const Visit& visit : dossier->visits)
        for (const Attachment& photo : visit.attachments) {
            const auto file = desk.files().path(photo.sha256);
            if (photo.kind != AttachmentKind::photo || !exchange::tells_where(file)) continue;
            const auto bytes = read_file(file, largest);
            if (!bytes) return tl::unexpected(bytes.error());
            const auto copy =
                exchange::bare_copy({reinterpret_cast<const unsigned char*>(bytes->data()), bytes->size()});
            if (!copy) return tl::unexpected(copy.error());
            auto kept = desk.files().keep(*copy);
            if (!kept) return tl::unexpected(kept.error());
            out.push_back({photo.id, photo.sha256, std::move(*kept)});
        }
    return out;
}

Intent keep_bare(std::vector<BarePhoto> photos) {
    return [photos = std::move(photos)](const Now& now) -> Result<Command> {
        Command command{"attachment.bare", {std::to_string(photos.size())}, {}};
        for (const BarePhoto& bare : photos) {
            auto photo = need<Attachment>(now, bare.id.uuid);
            if (!photo) return tl::unexpected(photo.error());
            if (photo->sha256 != bare.was) continue;  // something else stands there by now
            photo->sha256 = bare.copy.sha256;
            photo->bytes = bare.copy.bytes;
            auto sound = checked(std::move(*photo));
            if (!sound) return tl::unexpected(sound.error());
            command.edits.emplace_back(Put{std::move(*sound)});
        }
        return command;
    };
}

}  // namespace lapwing::workflow
