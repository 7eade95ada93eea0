// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// What a picked photo says of itself: JPEG in one pass or several, PNG, and their Exif blocks.

#include "core/vision/photo_header.h"

#include <algorithm>
#include <memory>

#include "tests/fuzz/memory_file.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace lapwing;
    using namespace lapwing::vision;
    // Memory of exactly that size: the sanitizer sees one byte too far.
    const auto copy = std::make_unique<std::byte[]>(size);
    std::copy_n(reinterpret_cast<const std::byte*>(data), size, copy.get());
    const auto header = read_photo_header({copy.get(), size});
    if (!header) {
        fuzz::must(!header.error().code.empty() && header.error().english.size() > 20);
        return 0;
    }
    fuzz::must(header->width >= smallest_photo_side_px && header->height >= smallest_photo_side_px);
    fuzz::must(std::int64_t{header->width} * header->height <= largest_photo_px);
    fuzz::must(header->orientation >= 1 && header->orientation <= 8);
    fuzz::must(header->upright_width() == (header->lies_on_its_side() ? header->height : header->width));
    return 0;
}
