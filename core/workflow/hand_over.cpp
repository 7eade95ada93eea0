// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/hand_over.h"

#include <algorithm>

namespace lapwing::workflow {
namespace {

constexpr std::string_view key_file = "signing.key";

/// The public key; empty when there is none yet: looking at a file must not make one.
std::string own_key(const Desk& desk) {
    std::error_code ignored;
    if (!std::filesystem::exists(desk.folder() / key_file, ignored)) return {};
    const auto own = signing_key(desk);
    return own ? own->public_key() : std::string();
}

bool names(const Visit& visit, TesterId id) {
    return visit.session.compression_gauge == id || visit.session.leak_down_tester == id ||
           visit.session.crankcase_tester == id ||
           std::ranges::any_of(visit.readings, [&](const Reading& reading) { return reading.tester == id; });
}

}  // namespace

Result<Dossier> hand_over(const Desk& desk, const HandOver& chosen) {
    auto dossier = desk.dossier(chosen.engine);
    if (!dossier) return dossier;
    if (!chosen.with_owner) dossier->engine.owner = Owner{};
    if (chosen.sessions.empty()) return dossier;

    for (const auto id : chosen.sessions)
        if (std::ranges::none_of(dossier->visits, [&](const Visit& visit) { return visit.session.id == id; }))
            return fail("session.gone",
                        "One of the chosen sessions is no longer in the library. Choose again.");
    std::erase_if(dossier->visits, [&](const Visit& visit) {
        return std::ranges::find(chosen.sessions, visit.session.id) == chosen.sessions.end();
    });
    std::erase_if(dossier->testers, [&](const Tester& tester) {
        return std::ranges::none_of(dossier->visits,
                                    [&](const Visit& visit) { return names(visit, tester.id); });
    });
    return dossier;
}

Result<exchange::SigningKey> signing_key(const Desk& desk) {
    return exchange::SigningKey::open_or_make(desk.folder() / key_file);
}

std::string own_fingerprint(const Desk& desk) {
    const auto key = own_key(desk);
    return key.empty() ? key : exchange::fingerprint(key);
}

SignedBy signed_by(const Desk& desk, const exchange::Signature& signature) {
    using Who = SignedBy::Who;
    SignedBy out{Who::nobody, {}, exchange::fingerprint(signature.public_key)};
    switch (signature.state) {
        case exchange::SignatureState::not_signed:
            return out;
        case exchange::SignatureState::altered:
            out.who = Who::altered;
            return out;
        case exchange::SignatureState::unreadable:
            out.who = Who::unreadable;
            return out;
        case exchange::SignatureState::unaltered:
            break;
    }
    if (own_key(desk) == signature.public_key) {
        out.who = Who::this_library;
        return out;
    }
    out.name = desk.name_of_key(signature.public_key);
    out.who = out.name.empty() ? Who::unknown : Who::known;
    return out;
}

}  // namespace lapwing::workflow
