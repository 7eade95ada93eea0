// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <vector>

#include "core/exchange/archive.h"
#include "core/model/visit.h"

/// Whether a dossier fits into a session file that can be read again, and what to do when it doesn't.
namespace lapwing::exchange {

/// What a session file takes of its reader's limits, at most.
struct Size {
    std::uint64_t bytes = 0;
    std::uint64_t entries = 0;
    std::uint64_t json = 0;  ///< bytes of session.json
    std::uint64_t records = 0;

    Size& operator+=(const Size& more);
};

/// Of session.json as it is written, in bytes: far below what is read, so that no reader counts too many
/// values.
inline constexpr std::uint64_t longest_written_json = 12u << 20;

/// With the files of all its attachments, each different one counted once.
Size size_of(const Dossier& dossier);

/// The tighter of the limits to the whole file: photos don't get smaller by packing.
std::uint64_t most_bytes(const Limits& limits);
bool fits(const Size& size, const Limits& limits);

/// The dossier itself when it fits, else several that do and that come to the same when they are merged: its
/// visits are dealt out, and of a visit with too many photos the photos as well. The same dossier is always
/// divided alike. One record that fits nowhere ends up in a portion of its own, which is then too large.
std::vector<Dossier> portions(Dossier whole, const Limits& limits);

}  // namespace lapwing::exchange
