// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// session.json and records.

#include "core/record/merge.h"
#include "tests/fuzz/memory_file.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace lapwing;
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto dossier = dossier_from_json(text);
    if (!dossier) {
        fuzz::must(!dossier.error().code.empty() && dossier.error().english.size() > 20);
        return 0;
    }
    const auto again = dossier_from_json(to_json(*dossier));
    fuzz::must(again.has_value() && *again == *dossier);
    const auto merged = merge(*dossier, *dossier);
    fuzz::must(merged.has_value() && *merged == *dossier);
    return 0;
}
