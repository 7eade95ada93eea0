// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <mutex>
#include <set>
#include <string>
#include <vector>

/// The storage as a program meets it through the system's calls (tests/faults/calls.cpp stands between the
/// program, SQLite and the C++ library on one side and the C library on the other): it notes down what was
/// asked for, in order, and refuses when told to.
namespace lapwing::faults {

namespace fs = std::filesystem;

/// One thing that was asked of the storage and changes what it holds.
struct Wish {
    enum class Kind { create, make_folder, write, truncate, sync, rename, remove, sync_folder };
    Kind kind = Kind::write;
    int file = -1;           ///< which file, whatever its name; -1 for folders
    std::string name;        ///< below the watched folder
    std::string to;          ///< rename: the new name
    std::int64_t at = 0;     ///< write: first byte; truncate: new length
    std::string bytes;       ///< write
    bool forgotten = false;  ///< sync: it failed, and what was written before it will never reach the storage
};

/// Files by what they are called below the watched folder; a folder is a name with no bytes.
struct Image {
    std::map<std::string, std::string> files;
    std::set<std::string> folders;

    bool operator==(const Image&) const = default;
    /// Makes all of it in `place`, which must exist.
    void lay_out(const fs::path& place) const;
    /// What lies there. Shared memory of SQLite (-shm) is no part of what a storage keeps.
    static Image of(const fs::path& place);
};

/// What is left of unsynced writes when the power fails.
enum class Left {
    synced,      ///< none of them
    everything,  ///< all: as if only the program had ended
    drawn,       ///< some, in no order, torn at sectors; of names, as many as the folder's journal got done
};

/// The storage, wish by wish. A file's bytes are safe after it was synced, its name after its folder was
/// (POSIX promises no more; many file systems do).
class Storage {
public:
    explicit Storage(Image at_first);
    void take(const Wish& wish);
    /// What may be found after the power fails now.
    [[nodiscard]] Image after_power_cut(Left left, std::uint32_t seed = 0) const;
    /// What programs see while the power is on: the number of the file behind each name.
    [[nodiscard]] std::map<std::string, int> names() const;
    [[nodiscard]] int files() const { return static_cast<int>(files_.size()); }

private:
    struct File {
        std::string synced;
        std::vector<Wish> pending;
    };
    std::vector<File> files_;
    std::map<std::string, int> names_;  ///< that are safe; -1: a folder
    std::vector<Wish> pending_names_;
};

/// Watches all below `root` while it lives; only one at a time. It has to be the only way in: what happens
/// there through calls it doesn't know shows in `is_complete`.
class Disk {
public:
    explicit Disk(fs::path root);
    /// Another run on a storage that still holds back what an earlier one asked of it.
    Disk(fs::path root, const Storage& before);
    ~Disk();
    Disk(const Disk&) = delete;
    Disk& operator=(const Disk&) = delete;

    [[nodiscard]] const Image& at_first() const { return at_first_; }
    [[nodiscard]] std::size_t wishes() const;
    [[nodiscard]] std::vector<Wish> log() const;
    /// Whether the wishes, one by one, lead to what really lies there.
    [[nodiscard]] bool is_complete() const;

    /// Calls that could have failed so far: every wish, and every opening of a file.
    [[nodiscard]] std::size_t calls() const;
    /// What the call with that number was: "write library.sqlite-wal".
    [[nodiscard]] std::string call(std::size_t number) const;

    enum class Lasting { once, until_room };
    /// Lets the call with that number (counted from 0) fail with the system error; or that one and all that
    /// need room after it.
    void refuse(std::size_t number, int system_error, Lasting lasting);
    void make_room();
    [[nodiscard]] bool refused() const;

private:
    friend class Calls;
    bool refuses(const std::string& call, bool needs_room);

    fs::path root_;
    Image at_first_;
    mutable std::recursive_mutex mutex_;  ///< guards what stands below
    std::vector<Wish> log_;
    std::vector<std::string> calls_;
    std::map<std::string, int> names_;
    std::map<int, std::string> open_;  ///< by descriptor: the name it was opened by
    std::map<int, int> open_files_;    ///< by descriptor: which file; -1 for a folder
    int files_ = 0;
    std::size_t refuse_at_ = SIZE_MAX;
    int system_error_ = 0;
    Lasting lasting_ = Lasting::once;
    bool refusing_ = false;
    bool refused_ = false;
};

}  // namespace lapwing::faults
