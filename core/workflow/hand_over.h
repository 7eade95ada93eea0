// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/exchange/signature.h"
#include "core/record/record.h"
#include "core/workflow/desk.h"

namespace lapwing::workflow {

struct HandOver {
    EngineId engine;
    std::vector<SessionId> sessions;  ///< empty: all of them
    bool with_owner = false;          ///< name and contact leave the shop only if the sender ticks it
};

/// The dossier of one engine with the chosen sessions and only the testers that they name.
Result<Dossier> hand_over(const Desk& desk, const HandOver& chosen);

/// The key that this library signs what it hands over with, made at the first call, in the library's own
/// folder.
Result<exchange::SigningKey> signing_key(const Desk& desk);

/// What others compare to know this library's key; empty before it has one (looking makes none).
std::string own_fingerprint(const Desk& desk);

/// Whose signature a file carries, for the preview.
struct SignedBy {
    enum class Who { nobody, this_library, known, unknown, altered, unreadable };
    Who who = Who::nobody;
    std::string name;         ///< of a known key
    std::string fingerprint;  ///< in groups, of every key that could be read

    bool operator==(const SignedBy&) const = default;
};
SignedBy signed_by(const Desk& desk, const exchange::Signature& signature);

}  // namespace lapwing::workflow
