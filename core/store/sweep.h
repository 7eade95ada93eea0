// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "core/store/folder.h"
#include "core/store/queries.h"

namespace lapwing::store {

struct StoredFile {
    std::filesystem::path path;
    long long bytes = 0;
};

/// Photos and voice notes as the library names them, held against the files that are there.
struct Sweep {
    std::vector<Attachment> without_file;    ///< named by a record, and the file is gone
    std::vector<StoredFile> without_record;  ///< no record and no step that can be undone names it
    std::vector<StoredFile> for_undo;        ///< its record was deleted; Undo would bring it back
    long long attachment_bytes = 0;          ///< all files of photos and voice notes
    long long library_bytes = 0;             ///< the database
    long long backup_bytes = 0;
};

/// What a sweep needs from the library; reads quickly, so that nobody waits long for the reader.
struct Named {
    std::vector<Attachment> attachments;
    std::vector<std::string> in_steps;  ///< SHA-256 of files that a step names, before or after it
};
Result<Named> named_files(const Queries& queries);

/// Looks at every file; deletes nothing. A file that is being written just now is left out.
Sweep sweep(const Places& places, const Named& named);

}  // namespace lapwing::store
