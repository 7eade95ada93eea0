// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/voice_notes.h"

#include <system_error>

#include "core/store/tape.h"

namespace lapwing::workflow {

Result<std::optional<Attachment>> keep_sound(const store::AttachmentFiles& files,
                                             const store::Recording& recording, const PackSpeech& pack) {
    const auto seconds = store::mend_tape(recording.sound);
    if (!seconds) return tl::unexpected(seconds.error());
    if (*seconds < shortest_voice_note_s) return std::nullopt;

    auto packed = recording.sound;
    packed.replace_extension(".opus");
    std::error_code error;
    std::filesystem::remove(packed, error);  // of a time before that was cut off
    const bool smaller = pack && pack(recording.sound, packed).has_value();
    auto kept = files.keep_file(smaller ? packed : recording.sound);
    std::filesystem::remove(packed, error);
    if (!kept) return tl::unexpected(kept.error());

    Attachment note = recording.note;
    note.sha256 = kept->sha256;
    note.bytes = kept->bytes;
    note.media_type = smaller ? "audio/ogg" : "audio/wav";
    note.length = TypedTime::from(Unit<TimeTag>{}.quantity(*seconds), Unit<TimeTag>{}, 1);
    return checked(std::move(note)).map([](Attachment sound) { return std::optional(std::move(sound)); });
}

}  // namespace lapwing::workflow
