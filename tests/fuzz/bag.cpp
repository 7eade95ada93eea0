// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The text files of a bag and the signature beside them.

#include "core/exchange/bag.h"

#include "core/exchange/signature.h"
#include "tests/fuzz/memory_file.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace lapwing;
    using namespace lapwing::exchange;
    const std::string text(reinterpret_cast<const char*>(data), size);
    (void)check_declaration(text);
    if (const auto lines = parse_manifest(text, "manifest-sha256.txt")) {
        const auto again = parse_manifest(manifest_text(*lines), "manifest-sha256.txt");
        // A path that begins with blanks or an asterisk can't be told from the blanks before it.
        if (again)
            for (std::size_t i = 0; i < again->size() && i < lines->size(); ++i)
                fuzz::must((*again)[i].checksum == (*lines)[i].checksum);
    }
    if (const auto info = parse_bag_info(text)) (void)payload_oxum(*info);
    fuzz::must(decode_path(encode_path(text)) == text);
    if (!path_fault(text))
        fuzz::must(text.find("..") == std::string::npos || text.find("/../") == std::string::npos);
    fuzz::must(verify(text, "what was never signed").state != SignatureState::unaltered);
    return 0;
}
