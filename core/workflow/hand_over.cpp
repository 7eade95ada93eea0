// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/hand_over.h"

#include <algorithm>

namespace lapwing::workflow {
namespace {

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
    return exchange::SigningKey::open_or_make(desk.folder() / "signing.key");
}

}  // namespace lapwing::workflow
