// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <functional>
#include <optional>

#include "core/store/attachment_files.h"
#include "core/store/recordings.h"

namespace lapwing::workflow {

/// Writes the tape's sound to a new, smaller file (Ogg Opus).
using PackSpeech = std::function<Status(const std::filesystem::path& tape, const std::filesystem::path& to)>;

/// A recording this short is a slip of the thumb.
inline constexpr double shortest_voice_note_s = 0.3;

/// Takes a finished or cut-off recording into the library's files: smaller when `pack` can do that, else as
/// the WAV file it is. Takes a moment; any thread. The recording itself stays until the record is committed
/// (save_attachment), so that nothing is lost in between; then Recordings::forget.
///
/// @return the record to save; nothing when the recording is too short to hold a word
Result<std::optional<Attachment>> keep_sound(const store::AttachmentFiles& files,
                                             const store::Recording& recording, const PackSpeech& pack);

}  // namespace lapwing::workflow
