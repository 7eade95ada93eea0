// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/waiting_photos.h"

#include <algorithm>

namespace lapwing::workflow {
namespace {

/// Common practice, no source: who takes a photo of a gauge writes its number down there and then.
constexpr std::int64_t waits_ms = std::int64_t{15} * 60 * 1000;

}  // namespace

std::vector<const Attachment*> waiting_photos(const Visit& visit, int cylinder, Timestamp at) {
    std::int64_t since = at.unix_ms - waits_ms;
    for (const auto& reading : visit.readings)
        if (reading.cylinder == cylinder && reading.taken_at.unix_ms <= at.unix_ms)
            since = std::max(since, reading.taken_at.unix_ms);
    std::vector<const Attachment*> out;
    for (const auto& photo : visit.attachments)
        if (photo.kind == AttachmentKind::photo && photo.photo_of == PhotoOf::gauge &&
            photo.tie.to == TiedTo::cylinder && photo.tie.cylinder == cylinder &&
            photo.taken_at.unix_ms >= since && photo.taken_at.unix_ms <= at.unix_ms)
            out.push_back(&photo);
    return out;
}

}  // namespace lapwing::workflow
