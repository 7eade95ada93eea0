// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/recordings.h"

#include <algorithm>

#include "core/base/atomic_file.h"

namespace lapwing::store {
namespace {

namespace fs = std::filesystem;

constexpr const char* sound_ending = ".wav";
constexpr const char* card_ending = ".json";

}  // namespace

fs::path Recordings::card(const fs::path& sound) const {
    return fs::path(sound).replace_extension(card_ending);
}

Result<Recording> Recordings::begin(Attachment note) const {
    note.kind = AttachmentKind::voice;
    note.media_type = "audio/wav";
    note.sha256 = std::string(64, '0');
    note.bytes = 1;
    auto sound_note = checked(std::move(note));
    if (!sound_note) return tl::unexpected(sound_note.error());
    if (auto made = make_folder(folder_); !made) return tl::unexpected(made.error());
    Recording recording{std::move(*sound_note), {}};
    recording.sound = folder_ / (recording.note.id.text() + sound_ending);
    if (auto written = write_atomically(card(recording.sound), to_json(Record(recording.note))); !written)
        return tl::unexpected(written.error());
    return recording;
}

std::vector<Recording> Recordings::left_over() const {
    std::vector<Recording> found;
    std::error_code error;
    for (const auto& entry : fs::directory_iterator(folder_, error)) {
        if (entry.path().extension() != card_ending) continue;
        const fs::path sound = fs::path(entry.path()).replace_extension(sound_ending);
        constexpr std::size_t longest_card = 1U << 20;
        const auto text = read_file(entry.path(), longest_card);
        auto note = text ? record_from_json(RecordKind::attachment, *text) : tl::unexpected(text.error());
        if (!note) continue;  // stays where it is: a newer Lapwing may read it
        Recording recording{std::get<Attachment>(std::move(*note)), sound};
        if (fs::exists(sound, error))
            found.push_back(std::move(recording));
        else
            forget(recording);
    }
    std::ranges::sort(found, {}, [](const Recording& recording) { return recording.note.id; });
    return found;
}

void Recordings::forget(const Recording& recording) const {
    std::error_code error;
    // The card last: without it the sound would be nobody's.
    fs::remove(recording.sound, error);
    fs::remove(card(recording.sound), error);
}

}  // namespace lapwing::store
