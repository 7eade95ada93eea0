// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// A whole file from outside: ZIP, bag, session, attachments.

#include "core/exchange/session_file.h"
#include "tests/fuzz/memory_file.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace lapwing;
    static const fuzz::MemoryFile file;
    static const auto staging = std::filesystem::temp_directory_path() / ("fuzz-" + std::to_string(getpid()));
    exchange::Limits limits;
    limits.unpacked_bytes = 4 << 20;
    limits.entries = 200;
    file.hold(data, size);
    const auto read = exchange::read_session_file(file.path(), staging, limits);
    const auto checked = exchange::check_session_file(file.path(), staging, limits);
    // Reading and checking are of one mind, and what is refused is told in a sentence.
    fuzz::must(read.has_value() == checked.problems.empty());
    for (const auto& problem : checked.problems)
        fuzz::must(!problem.code.empty() && problem.english.size() > 20);
    return 0;
}
