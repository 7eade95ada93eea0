// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <deque>
#include <memory>
#include <mutex>

#include "core/odds/crank_surface.h"

namespace lapwing::odds {

/// Remembers the surfaces of the last few engines: odds are worked out anew with every record that changes,
/// mostly for the same engine, tester and shop. Handed in by whoever asks; with or without it the odds are
/// the same. Any thread may use it.
class SurfaceCache {
public:
    Result<std::shared_ptr<const CrankSurface>> surface(const SurfaceRange& range);

private:
    std::mutex mutex_;
    std::deque<std::shared_ptr<const CrankSurface>> known_;
};

}  // namespace lapwing::odds
