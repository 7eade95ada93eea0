// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/sweep.h"

#include <algorithm>
#include <chrono>
#include <set>

#include "core/store/recordings.h"

namespace lapwing::store {
namespace {

namespace fs = std::filesystem;

/// A file this young may be on its way to its name, or its record on the way to the library.
constexpr auto settling = std::chrono::minutes(10);

long long bytes_below(const fs::path& place) {
    std::error_code error;
    if (fs::is_regular_file(place, error)) return static_cast<long long>(fs::file_size(place, error));
    long long sum = 0;
    for (const auto& entry : fs::recursive_directory_iterator(place, error))
        if (entry.is_regular_file(error)) sum += static_cast<long long>(entry.file_size(error));
    return sum;
}

bool is_settled(const fs::directory_entry& entry) {
    std::error_code error;
    const auto changed = entry.last_write_time(error);
    return !error && changed + settling < fs::file_time_type::clock::now();
}

}  // namespace

Result<Named> named_files(const Queries& queries) {
    auto attachments = queries.attachments();
    if (!attachments) return tl::unexpected(attachments.error());
    auto in_steps = queries.files_in_steps();
    if (!in_steps) return tl::unexpected(in_steps.error());
    return Named{std::move(*attachments), std::move(*in_steps)};
}

Sweep sweep(const Places& places, const Named& named) {
    Sweep found;
    std::set<std::string> wanted;
    std::error_code error;
    for (const auto& attachment : named.attachments) {
        wanted.insert(attachment.sha256);
        if (!fs::is_regular_file(places.attachments() / attachment.sha256, error))
            found.without_file.push_back(attachment);
    }
    const std::set<std::string> undoable(named.in_steps.begin(), named.in_steps.end());
    for (const auto& entry : fs::directory_iterator(places.attachments(), error)) {
        if (!entry.is_regular_file(error)) continue;
        const StoredFile file{entry.path(), static_cast<long long>(entry.file_size(error))};
        found.attachment_bytes += file.bytes;
        const std::string name = entry.path().filename().string();
        if (wanted.contains(name)) continue;
        if (undoable.contains(name))
            found.for_undo.push_back(file);
        else if (is_settled(entry))
            found.without_record.push_back(file);
    }
    // A recording that nothing says what it hangs on.
    std::set<fs::path> known;
    for (const auto& recording : Recordings(places.recordings()).left_over())
        known.insert(recording.sound);
    for (const auto& entry : fs::directory_iterator(places.recordings(), error)) {
        if (!entry.is_regular_file(error)) continue;
        const StoredFile file{entry.path(), static_cast<long long>(entry.file_size(error))};
        found.attachment_bytes += file.bytes;
        if (entry.path().extension() == ".wav" && !known.contains(entry.path()) && is_settled(entry))
            found.without_record.push_back(file);
    }
    std::ranges::sort(found.without_record, {}, &StoredFile::path);
    for (const char* beside : {"", "-wal", "-shm"})
        found.library_bytes += bytes_below(places.library().string() + beside);
    found.backup_bytes = bytes_below(places.backups());
    return found;
}

}  // namespace lapwing::store
