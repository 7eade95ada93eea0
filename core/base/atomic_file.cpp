// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/base/atomic_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <string>
#include <system_error>

#include "core/base/uuid.h"

namespace lapwing {
namespace {

namespace fs = std::filesystem;

/// Closes on the way out; `close` by hand where its result matters.
class Descriptor {
public:
    explicit Descriptor(int number) : number_(number) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor() {
        if (number_ >= 0) ::close(number_);
    }
    [[nodiscard]] int number() const { return number_; }
    [[nodiscard]] bool close() { return ::close(std::exchange(number_, -1)) == 0; }

private:
    int number_;
};

Status write_and_sync(const fs::path& path, std::string_view bytes) {
    Descriptor file(::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600));
    if (file.number() < 0) return file_error(errno, path);
    while (!bytes.empty()) {
        const auto written = ::write(file.number(), bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) return file_error(errno, path);
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    if (::fsync(file.number()) != 0 || !file.close()) return file_error(errno, path);
    return {};
}

Status sync(const fs::path& path, int flags) {
    Descriptor file(::open(path.c_str(), flags | O_CLOEXEC));
    // A folder may allow making names in it and yet not be read.
    if (file.number() < 0 && errno == EACCES && (flags & O_DIRECTORY) != 0) return {};
    if (file.number() < 0) return file_error(errno, path);
    // Some file systems of memory cards can't sync a folder; the rename is then as safe as they make it.
    if (::fsync(file.number()) != 0 && errno != EINVAL && errno != ENOTSUP) return file_error(errno, path);
    return {};
}

fs::path folder_of(const fs::path& path) {
    return path.has_parent_path() ? path.parent_path() : fs::path(".");
}

/// The error names the file that was asked for, not its temporary twin.
Status about(const fs::path& target, Status status) {
    if (!status && !status.error().args.empty()) {
        auto& error = status.error();
        const std::string told = error.args.front();
        if (const auto at = error.english.find(told); at != std::string::npos)
            error.english.replace(at, told.size(), target.string());
        error.args.front() = target.string();
    }
    return status;
}

}  // namespace

tl::unexpected<Error> file_error(int system_error, const fs::path& path) {
    switch (system_error) {
        case ENOSPC:
        case EDQUOT:
            return fail("file.no_space", "There is no room left to write {}. Free some space and try again.",
                        path.string());
        case EACCES:
        case EPERM:
        case EROFS:
            return fail(
                "file.not_allowed",
                "Working with {} is not allowed here. Choose another folder or change who may use it.",
                path.string());
        case ENOENT:
        case ENOTDIR:
            return fail("file.not_found", "{} or its folder does not exist. Choose another place.",
                        path.string());
        default:
            return fail("file.failed",
                        "{} could not be read or written: {}. Try again or choose another place.",
                        path.string(), std::generic_category().message(system_error));
    }
}

fs::path temporary_beside(const fs::path& target) {
    fs::path name = ".";
    name += target.filename();
    name += '-' + Uuid::make(SystemClock{}).text() + ".part";
    return folder_of(target) / name;
}

Status put_in_place(const fs::path& from, const fs::path& target) {
    const auto placed = [&]() -> Status {
        if (auto synced = sync(from, O_RDONLY); !synced) return synced;
        if (::rename(from.c_str(), target.c_str()) != 0) return file_error(errno, target);
        return sync(folder_of(target), O_RDONLY | O_DIRECTORY);
    }();
    if (!placed) {
        std::error_code ignored;
        fs::remove(from, ignored);
    }
    return about(target, placed);
}

Status write_atomically(const fs::path& target, std::string_view bytes) {
    const auto temporary = temporary_beside(target);
    if (auto written = write_and_sync(temporary, bytes); !written) {
        std::error_code ignored;
        fs::remove(temporary, ignored);
        return about(target, written);
    }
    return put_in_place(temporary, target);
}

Status make_folder(const fs::path& folder) {
    std::error_code error;
    if (!fs::create_directory(folder, error)) {
        if (!error) return {};
        return file_error(error == std::errc::file_exists ? ENOTDIR : error.value(), folder);  // it is a file
    }
    auto synced = sync(folder_of(folder), O_RDONLY | O_DIRECTORY);
    if (!synced) fs::remove(folder, error);  // the next try shall not take it for safe
    return about(folder, synced);
}

Status make_folders(const fs::path& folder) {
    std::error_code error;
    fs::create_directories(folder, error);
    if (error) return file_error(error.value(), folder);
    // All of them, also those that are there: a run that was cut off may have made them. Where no names may
    // be made, none can be missing.
    for (auto child = fs::absolute(folder).lexically_normal(); child.has_relative_path();) {
        const auto above = child.parent_path();
        if (::access(above.c_str(), W_OK) != 0) break;
        if (auto synced = sync(above, O_RDONLY | O_DIRECTORY); !synced) return about(folder, synced);
        child = above;
    }
    return {};
}

Result<std::string> read_file(const fs::path& path, std::size_t longest) {
    // Opening a pipe would wait for who writes into it, reading a device might never end.
    Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
    if (file.number() < 0) return file_error(errno, path);
    struct stat status {};
    if (::fstat(file.number(), &status) != 0) return file_error(errno, path);
    if (!S_ISREG(status.st_mode))
        return fail("file.no_file", "{} is a folder, a pipe or a device. Choose a file.", path.string());
    std::string out;
    char buffer[65536];
    for (;;) {
        const auto count = ::read(file.number(), buffer, sizeof buffer);
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) return file_error(errno, path);
        if (count == 0) return out;
        out.append(buffer, static_cast<std::size_t>(count));
        if (out.size() > longest)
            return fail("file.too_large", "{} is larger than {} bytes: it can't be what is wanted here.",
                        path.string(), longest);
    }
}

}  // namespace lapwing
