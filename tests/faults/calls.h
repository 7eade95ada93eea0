// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <sys/types.h>

#include <atomic>
#include <string_view>

#include "tests/faults/disk.h"

namespace lapwing::faults {

/// What the system's calls do in a program that links calls.cpp: the real thing, and a note to the disk that
/// is watched. Nothing waits for the real storage, because no real power fails here.
class Calls {
public:
    static inline std::atomic<Disk*> watched = nullptr;

    static int open(const char* path, int flags, mode_t mode);
    static void* open_stream(const char* path, const char* mode);
    static int open_temporary(char* pattern);
    static void close(int descriptor);
    static std::size_t write_stream(const void* bytes, std::size_t count, void* stream);
    static ssize_t write(int descriptor, const void* bytes, std::size_t count, std::int64_t at);
    static int truncate(int descriptor, std::int64_t length);
    static int sync(int descriptor);
    static int rename(const char* from, const char* to);
    static int remove(const char* path, int (*really)(const char*));
    static int make_folder(const char* path, mode_t mode);
    static bool watches(int descriptor);

private:
    struct Place;
    static void opened(Disk& disk, int descriptor, const std::string& name, bool made, bool emptied);
};

}  // namespace lapwing::faults
