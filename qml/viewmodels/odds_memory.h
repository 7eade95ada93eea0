// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <deque>
#include <memory>

#include "core/odds/surface_cache.h"
#include "core/odds/where_it_leaks.h"

namespace lapwing {

/// What was worked out of the odds, for as long as the app runs: going from the findings to the plan and back
/// must not take the same second twice. On the UI thread, the surfaces apart.
class OddsMemory {
public:
    /// The odds of exactly this evidence; null when they are not known.
    [[nodiscard]] std::shared_ptr<const odds::WhereItLeaks> find(const Dossier& evidence) const {
        for (const Known& one : known_)
            if (one.evidence == evidence) return one.leaks;
        return nullptr;
    }
    void keep(const Dossier& evidence, std::shared_ptr<const odds::WhereItLeaks> leaks) {
        constexpr std::size_t most = 4;
        known_.push_front({evidence, std::move(leaks)});
        if (known_.size() > most) known_.pop_back();
    }
    /// Something was committed that odds may rest on, other visits of an engine included.
    void forget() { known_.clear(); }

    /// What the cranking model said of engines; any thread.
    [[nodiscard]] odds::SurfaceCache& surfaces() { return surfaces_; }

private:
    struct Known {
        Dossier evidence;
        std::shared_ptr<const odds::WhereItLeaks> leaks;
    };
    std::deque<Known> known_;
    odds::SurfaceCache surfaces_;
};

}  // namespace lapwing
