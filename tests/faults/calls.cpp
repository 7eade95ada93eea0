// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/faults/calls.h"

#include <dlfcn.h>
#include <fcntl.h>
#include <sys/sendfile.h>
#include <sys/stat.h>
#include <sys/uio.h>
#include <unistd.h>

#include <cerrno>
#include <cstdarg>
#include <cstdio>
#include <cstring>
#include <mutex>
#include <regex>

namespace lapwing::faults {
namespace {

/// The C library's own function of that name.
template <class Function>
Function* really(const char* name) {
    return reinterpret_cast<Function*>(dlsym(RTLD_NEXT, name));
}

/// Names that differ from run to run, made alike.
std::string label(const char* what, const std::string& name) {
    static const std::regex id("[0-9a-f]{8}-[0-9a-f-]{27}");
    static const std::regex sum("[0-9a-f]{64}");
    static const std::regex time("[0-9]{8}T[0-9]{6}Z");
    static const std::regex drawn("\\.[0-9A-Za-z]{6}$");
    auto out = std::regex_replace(name, id, "ID");
    out = std::regex_replace(out, sum, "SUM");
    if (name.find(".part.") != std::string::npos) out = std::regex_replace(out, drawn, ".DRAWN");
    return what + (' ' + std::regex_replace(out, time, "TIME"));
}

bool is_there(const fs::path& path) {
    struct stat found {};
    return ::lstat(path.c_str(), &found) == 0;
}

std::string bytes_of(const char* path) {
    static auto* const open_it = really<int(const char*, int, ...)>("open");
    static auto* const close_it = really<int(int)>("close");
    const int descriptor = open_it(path, O_RDONLY);
    std::string out;
    std::string buffer(65536, '\0');
    for (ssize_t count = 0; (count = ::read(descriptor, buffer.data(), buffer.size())) > 0;)
        out.append(buffer, 0, static_cast<std::size_t>(count));
    close_it(descriptor);
    return out;
}

int refuse(int system_error) {
    errno = system_error;
    return -1;
}

}  // namespace

/// The watched disk, held, and the name below it that a path means; or neither.
struct Calls::Place {
    Disk* disk = watched;
    std::string name;
    std::unique_lock<std::recursive_mutex> lock;

    explicit Place(const char* path) {
        if (disk == nullptr) return;
        const auto relative = fs::path(path).lexically_normal().lexically_relative(disk->root_).string();
        const bool below = !relative.empty() && !relative.starts_with("..") && !relative.ends_with("-shm");
        if (!below) {
            disk = nullptr;
            return;
        }
        name = relative == "." ? "" : relative;
        lock = std::unique_lock(disk->mutex_);
    }
    explicit Place(int descriptor) {
        if (disk == nullptr) return;
        lock = std::unique_lock(disk->mutex_);
        const auto found = disk->open_.find(descriptor);
        if (found == disk->open_.end()) {
            disk = nullptr;
            lock.unlock();
        } else {
            name = found->second;
        }
    }
};

bool Calls::watches(int descriptor) {
    return Place(descriptor).disk != nullptr;
}

void Calls::opened(Disk& disk, int descriptor, const std::string& name, bool made, bool emptied) {
    if (made) {
        const int file = disk.files_++;
        disk.names_[name] = file;
        disk.log_.push_back({.kind = Wish::Kind::create, .file = file, .name = name});
    }
    const auto found = disk.names_.find(name);
    const int file = found == disk.names_.end() ? -1 : found->second;
    if (emptied && !made) disk.log_.push_back({.kind = Wish::Kind::truncate, .file = file, .name = name});
    disk.open_[descriptor] = name;
    disk.open_files_[descriptor] = file;
}

int Calls::open(const char* path, int flags, mode_t mode) {
    static auto* const real = really<int(const char*, int, ...)>("open");
    Place place(path);
    if (place.disk == nullptr) return real(path, flags, mode);
    const bool makes = (flags & O_CREAT) != 0 && !is_there(path);
    const bool empties = (flags & O_TRUNC) != 0;
    if (place.disk->refuses(label(makes ? "create" : "open", place.name), makes))
        return refuse(place.disk->system_error_);
    const int descriptor = real(path, flags, mode);
    if (descriptor >= 0) opened(*place.disk, descriptor, place.name, makes, empties);
    return descriptor;
}

void* Calls::open_stream(const char* path, const char* mode) {
    static auto* const real = really<void*(const char*, const char*)>("fopen64");
    Place place(path);
    if (place.disk == nullptr) return real(path, mode);
    const bool writes = mode[0] != 'r';
    const bool makes = writes && !is_there(path);
    if (place.disk->refuses(label(makes ? "create" : "open", place.name), makes)) {
        errno = place.disk->system_error_;
        return nullptr;
    }
    void* stream = real(path, mode);
    if (stream != nullptr)
        opened(*place.disk, ::fileno(static_cast<FILE*>(stream)), place.name, makes, mode[0] == 'w');
    return stream;
}

/// The C library draws the name, so what is refused has none yet.
int Calls::open_temporary(char* pattern) {
    static auto* const real = really<int(char*)>("mkstemp");
    Place place(pattern);
    if (place.disk == nullptr) return real(pattern);
    if (place.disk->refuses(label("create", place.name), true)) return refuse(place.disk->system_error_);
    const int descriptor = real(pattern);
    if (descriptor >= 0) opened(*place.disk, descriptor, Place(pattern).name, true, false);
    return descriptor;
}

/// A stream's writes stay inside the C library, where nobody sees them: each goes out at once instead, at the
/// place where the stream stands.
std::size_t Calls::write_stream(const void* bytes, std::size_t count, void* to) {
    auto* const stream = static_cast<FILE*>(to);
    const std::int64_t at = ::ftello64(stream);
    std::size_t done = 0;
    while (done < count) {
        const auto written = write(::fileno(stream), static_cast<const char*>(bytes) + done, count - done,
                                   at + static_cast<std::int64_t>(done));
        if (written <= 0) break;
        done += static_cast<std::size_t>(written);
    }
    const int system_error = errno;
    ::fseeko64(stream, at + static_cast<std::int64_t>(done), SEEK_SET);
    errno = system_error;
    return done;
}

void Calls::close(int descriptor) {
    Place place(descriptor);
    if (place.disk == nullptr) return;
    place.disk->open_.erase(descriptor);
    place.disk->open_files_.erase(descriptor);
}

ssize_t Calls::write(int descriptor, const void* bytes, std::size_t count, std::int64_t at) {
    static auto* const real = really<ssize_t(int, const void*, std::size_t)>("write");
    static auto* const real_at = really<ssize_t(int, const void*, std::size_t, off64_t)>("pwrite64");
    Place place(descriptor);
    if (place.disk == nullptr)
        return at < 0 ? real(descriptor, bytes, count) : real_at(descriptor, bytes, count, at);
    if (place.disk->refuses(label("write", place.name), true)) {
        // A disk that fills up takes the first part.
        const bool first = place.disk->lasting_ == Disk::Lasting::until_room &&
                           place.disk->calls_.size() == place.disk->refuse_at_ + 1;
        if (!first || count < 2) return refuse(place.disk->system_error_);
        count /= 2;
    }
    const std::int64_t from = at < 0 ? ::lseek64(descriptor, 0, SEEK_CUR) : at;
    const auto written = at < 0 ? real(descriptor, bytes, count) : real_at(descriptor, bytes, count, at);
    if (written > 0)
        place.disk->log_.push_back(
            {.kind = Wish::Kind::write,
             .file = place.disk->open_files_[descriptor],
             .name = place.name,
             .at = from,
             .bytes = std::string(static_cast<const char*>(bytes), static_cast<std::size_t>(written))});
    return written;
}

int Calls::truncate(int descriptor, std::int64_t length) {
    static auto* const real = really<int(int, off64_t)>("ftruncate64");
    Place place(descriptor);
    if (place.disk == nullptr) return real(descriptor, length);
    if (place.disk->refuses(label("truncate", place.name), false)) return refuse(place.disk->system_error_);
    const int result = real(descriptor, length);
    if (result == 0)
        place.disk->log_.push_back({.kind = Wish::Kind::truncate,
                                    .file = place.disk->open_files_[descriptor],
                                    .name = place.name,
                                    .at = length});
    return result;
}

int Calls::sync(int descriptor) {
    Place place(descriptor);
    if (place.disk == nullptr) return 0;
    const int file = place.disk->open_files_[descriptor];
    Wish wish{
        .kind = file < 0 ? Wish::Kind::sync_folder : Wish::Kind::sync, .file = file, .name = place.name};
    if (place.disk->refuses(label("sync", place.name), false)) {
        // Linux counts the pages as written after it has told of the error once ("fsync(2)", Errors: EIO).
        wish.forgotten = true;
        if (file >= 0) place.disk->log_.push_back(wish);
        return refuse(place.disk->system_error_);
    }
    place.disk->log_.push_back(wish);
    return 0;
}

int Calls::rename(const char* from, const char* to) {
    static auto* const real = really<int(const char*, const char*)>("rename");
    Place source(from);
    Place target(to);
    if (target.disk == nullptr && source.disk == nullptr) return real(from, to);
    Disk& disk = target.disk != nullptr ? *target.disk : *source.disk;
    if (disk.refuses(label("rename", target.disk != nullptr ? target.name : source.name), true))
        return refuse(disk.system_error_);
    const int result = real(from, to);
    if (result != 0) return result;
    if (source.disk == nullptr) {  // comes from elsewhere, its bytes not known to be safe
        const int file = disk.files_++;
        disk.names_[target.name] = file;
        disk.log_.push_back({.kind = Wish::Kind::create, .file = file, .name = target.name});
        disk.log_.push_back(
            {.kind = Wish::Kind::write, .file = file, .name = target.name, .bytes = bytes_of(to)});
        return result;
    }
    const int file = disk.names_[source.name];
    disk.names_.erase(source.name);
    if (target.disk == nullptr) {
        disk.log_.push_back({.kind = Wish::Kind::remove, .name = source.name});
        return result;
    }
    disk.names_[target.name] = file;
    disk.log_.push_back({.kind = Wish::Kind::rename, .file = file, .name = source.name, .to = target.name});
    return result;
}

int Calls::remove(const char* path, int (*really)(const char*)) {
    Place place(path);
    if (place.disk == nullptr || !is_there(path)) return really(path);
    if (place.disk->refuses(label("remove", place.name), false)) return refuse(place.disk->system_error_);
    const int result = really(path);
    if (result == 0) {
        place.disk->names_.erase(place.name);
        place.disk->log_.push_back({.kind = Wish::Kind::remove, .name = place.name});
    }
    return result;
}

int Calls::make_folder(const char* path, mode_t mode) {
    static auto* const real = really<int(const char*, mode_t)>("mkdir");
    Place place(path);
    if (place.disk == nullptr || is_there(path)) return real(path, mode);
    if (place.disk->refuses(label("make", place.name), true)) return refuse(place.disk->system_error_);
    const int result = real(path, mode);
    if (result == 0) {
        place.disk->names_[place.name] = -1;
        place.disk->log_.push_back({.kind = Wish::Kind::make_folder, .name = place.name});
    }
    return result;
}

namespace {
int really_unlink(const char* path) {
    static auto* const real = really<int(const char*)>("unlink");
    return real(path);
}
int really_remove_folder(const char* path) {
    static auto* const real = really<int(const char*)>("rmdir");
    return real(path);
}
int really_remove(const char* path) {
    static auto* const real = really<int(const char*)>("remove");
    return real(path);
}
mode_t mode_in(int flags, va_list rest) {
    return (flags & O_CREAT) != 0 ? static_cast<mode_t>(va_arg(rest, int)) : 0;
}
}  // namespace

}  // namespace lapwing::faults

// The names below are found before those of the C library by everything in this program, the shared
// libraries too (ld.so(8)).
using lapwing::faults::Calls;

extern "C" {

int open(const char* path, int flags, ...) {
    va_list rest;
    va_start(rest, flags);
    const mode_t mode = lapwing::faults::mode_in(flags, rest);
    va_end(rest);
    return Calls::open(path, flags, mode);
}

int open64(const char* path, int flags, ...) {
    va_list rest;
    va_start(rest, flags);
    const mode_t mode = lapwing::faults::mode_in(flags, rest);
    va_end(rest);
    return Calls::open(path, flags, mode);
}

FILE* fopen64(const char* path, const char* mode) {
    return static_cast<FILE*>(Calls::open_stream(path, mode));
}

FILE* fopen(const char* path, const char* mode) {
    return static_cast<FILE*>(Calls::open_stream(path, mode));
}

int mkstemp(char* pattern) {
    return Calls::open_temporary(pattern);
}

size_t fwrite(const void* bytes, size_t size, size_t count, FILE* stream) {
    static auto* const real = lapwing::faults::really<size_t(const void*, size_t, size_t, FILE*)>("fwrite");
    if (size == 0 || !Calls::watches(::fileno(stream))) return real(bytes, size, count, stream);
    return Calls::write_stream(bytes, size * count, stream) / size;
}

int close(int descriptor) {
    static auto* const real = lapwing::faults::really<int(int)>("close");
    Calls::close(descriptor);
    return real(descriptor);
}

int fclose(FILE* stream) {
    static auto* const real = lapwing::faults::really<int(FILE*)>("fclose");
    Calls::close(::fileno(stream));
    return real(stream);
}

ssize_t write(int descriptor, const void* bytes, size_t count) {
    return Calls::write(descriptor, bytes, count, -1);
}

ssize_t pwrite64(int descriptor, const void* bytes, size_t count, off64_t at) {
    return Calls::write(descriptor, bytes, count, at);
}

ssize_t pwrite(int descriptor, const void* bytes, size_t count, off_t at) {
    return Calls::write(descriptor, bytes, count, at);
}

ssize_t writev(int descriptor, const iovec* parts, int count) {
    static auto* const real = lapwing::faults::really<ssize_t(int, const iovec*, int)>("writev");
    if (!Calls::watches(descriptor)) return real(descriptor, parts, count);
    ssize_t all = 0;
    for (int i = 0; i < count; ++i) {
        const auto written = Calls::write(descriptor, parts[i].iov_base, parts[i].iov_len, -1);
        if (written < 0) return all > 0 ? all : -1;
        all += written;
        if (static_cast<size_t>(written) < parts[i].iov_len) break;
    }
    return all;
}

/// Copies inside the kernel would not be seen; the C++ library then copies by hand.
ssize_t sendfile(int to, int from, off_t* at, size_t count) {
    static auto* const real = lapwing::faults::really<ssize_t(int, int, off_t*, size_t)>("sendfile");
    if (!Calls::watches(to)) return real(to, from, at, count);
    errno = EINVAL;
    return -1;
}

int ftruncate64(int descriptor, off64_t length) noexcept {
    return Calls::truncate(descriptor, length);
}

int ftruncate(int descriptor, off_t length) noexcept {
    return Calls::truncate(descriptor, length);
}

int fsync(int descriptor) {
    return Calls::sync(descriptor);
}

int fdatasync(int descriptor) {
    return Calls::sync(descriptor);
}

int rename(const char* from, const char* to) noexcept {
    return Calls::rename(from, to);
}

int unlink(const char* path) noexcept {
    return Calls::remove(path, lapwing::faults::really_unlink);
}

/// As removing a folder with all that is in it asks for it.
int unlinkat(int folder, const char* name, int flags) noexcept {
    std::string path = name;
    if (folder != AT_FDCWD && !path.starts_with('/')) {
        std::error_code gone;
        path =
            (std::filesystem::read_symlink("/proc/self/fd/" + std::to_string(folder), gone) / name).string();
    }
    return Calls::remove(path.c_str(), (flags & AT_REMOVEDIR) != 0 ? lapwing::faults::really_remove_folder
                                                                   : lapwing::faults::really_unlink);
}

int remove(const char* path) noexcept {
    return Calls::remove(path, lapwing::faults::really_remove);
}

int mkdir(const char* path, mode_t mode) noexcept {
    return Calls::make_folder(path, mode);
}

}  // extern "C"
