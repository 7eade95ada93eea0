// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The headers by which photos and voice notes are known, and copies of photos without their place.

#include <algorithm>

#include "core/exchange/bare_copy.h"
#include "core/exchange/media.h"
#include "core/exchange/whereabouts.h"
#include "tests/fuzz/memory_file.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace lapwing;
    static const fuzz::MemoryFile file;
    file.hold(data, size);
    for (const auto* type : {"image/jpeg", "audio/ogg", "audio/wav", "audio/webm"}) {
        const auto fine = exchange::check_media(file.path(), type, 60'000'000, "the file");
        fuzz::must(fine.has_value() || fine.error().english.size() > 20);
        fuzz::must(!fine || size >= 4);
    }
    // Never of what is no JPEG at all.
    fuzz::must(!exchange::tells_where(file.path()) || (size > 2 && data[0] == 0xff && data[1] == 0xd8));
    if (const auto bare = exchange::bare_copy({data, size})) {
        static const fuzz::MemoryFile copy;
        copy.hold(bare->data(), bare->size());
        fuzz::must(!exchange::tells_where(copy.path()));
        const auto again = exchange::bare_copy(*bare);
        fuzz::must(again && *again == *bare);
    }
    return 0;
}
