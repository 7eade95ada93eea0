// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/folder.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <sys/file.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <system_error>

#include "core/base/atomic_file.h"
#include "core/store/connection.h"

namespace lapwing::store {
namespace {

tl::unexpected<Error> cannot_write(const std::filesystem::path& path, int system) {
    if (system == EIO)
        return tl::unexpected(
            sqlite_error(SQLITE_IOERR, system, std::generic_category().message(system), path));
    if (system == ENOSPC || system == EDQUOT || system == EFBIG)
        return fail("store.full",
                    "There is no room left to store this: {} could not grow. Nothing stored before is lost. "
                    "Free some space on this device and do it again.",
                    path.string());
    return fail("store.read_only",
                "{} can't be written ({}). Check that the folder exists, belongs to you and is not "
                "write-protected.",
                path.string(), std::generic_category().message(system));
}

Status sync(const std::filesystem::path& path, int flags) {
    const int descriptor = ::open(path.c_str(), flags | O_CLOEXEC);
    if (descriptor < 0) return cannot_write(path, errno);
    const int result = ::fsync(descriptor);
    const int system = errno;
    ::close(descriptor);
    // Some file systems have nothing to sync for a folder and say EINVAL.
    if (result != 0 && system != EINVAL && system != ENOTSUP) return cannot_write(path, system);
    return {};
}

}  // namespace

Result<std::unique_ptr<FolderLock>> FolderLock::take(const Places& places) {
    std::error_code error;
    const bool is_new = !std::filesystem::exists(places.library(), error);
    const bool is_ours = !std::filesystem::exists(places.folder, error);
    if (auto made = is_new ? make_folders(places.folder) : Status(); !made) {
        const auto& code = made.error().code;
        return cannot_write(places.folder, code == "file.no_space"      ? ENOSPC
                                           : code == "file.not_allowed" ? EACCES
                                           : code == "file.not_found"   ? ENOTDIR
                                                                        : EIO);
    }
    // Private to its owner; a folder that someone had made before keeps the rights that they gave it.
    if (is_ours) std::filesystem::permissions(places.folder, std::filesystem::perms::owner_all, error);

    const int descriptor = ::open(places.lock().c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
    if (descriptor < 0) return cannot_write(places.folder, errno);
    if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0) {
        const int system = errno;
        ::close(descriptor);
        if (system == EWOULDBLOCK)
            return fail("store.in_use",
                        "Lapwing already has {} open. Go on in the window that is open, or close it first.",
                        places.folder.string());
        return cannot_write(places.lock(), system);
    }
    return std::unique_ptr<FolderLock>(new FolderLock(descriptor));
}

FolderLock::~FolderLock() {
    ::close(descriptor_);
}

Status sync_file(const std::filesystem::path& file) {
    return sync(file, O_RDONLY);
}

Status sync_folder(const std::filesystem::path& folder) {
    return sync(folder, O_RDONLY | O_DIRECTORY);
}

}  // namespace lapwing::store
