// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <sys/mman.h>
#include <unistd.h>

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <string>

namespace lapwing::fuzz {

/// A file that never touches the storage, holding the bytes of the run.
class MemoryFile {
public:
    MemoryFile() : number_(memfd_create("fuzz", 0)) {
        if (number_ < 0) std::abort();
    }
    void hold(const std::uint8_t* bytes, std::size_t count) const {
        if (ftruncate(number_, 0) != 0 || pwrite(number_, bytes, count, 0) != static_cast<ssize_t>(count))
            std::abort();
    }
    [[nodiscard]] std::filesystem::path path() const { return "/proc/self/fd/" + std::to_string(number_); }

private:
    int number_;
};

/// What must hold for every input; a broken one ends the run as a crash does.
inline void must(bool fine) {
    if (!fine) std::abort();
}

}  // namespace lapwing::fuzz
