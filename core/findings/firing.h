// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "core/findings/reference.h"
#include "core/model/engine.h"

/// What the firing order tells while the air is on one cylinder.
namespace lapwing::findings {

/// In-line engines of three and more cylinders fire evenly, hardly any but for a few cross-plane cranks
/// (common practice, no source): where the card has the order alone, its intervals are taken as even.
bool fires_evenly_as_assumed(const Engine& engine);

/// Degrees from one cylinder's compression TDC to another's in running direction; absent where the card's
/// order or intervals don't give it.
std::optional<double> turn_to_fire_deg(const Engine& engine, int from, int to);

/// What a neighbour's valves do while another cylinder stands at its compression TDC.
enum class NeighbourValves {
    not_known,  ///< two-stroke, or the card does not give the firing order and its intervals
    shut,       ///< for sure, between intake closing and exhaust opening
    open,       ///< one for sure
    overlap,    ///< it stands on overlap: both may be a little open
    either,     ///< near the moment of opening or closing: cannot be said
};

struct Neighbour {
    NeighbourValves valves = NeighbourValves::not_known;
    double past_tdc_deg = 0.0;  ///< where it stands after its own compression TDC: -360 to 360
    /// It may be open, and the card does not say that the two are on separate manifolds: what leaks past the
    /// same valve of the cylinder under test can come out of the neighbour's plug hole.
    bool by_intake = false;
    bool by_exhaust = false;

    /// Air in its plug hole can only have come through the joint.
    [[nodiscard]] bool proves_joint() const {
        return valves != NeighbourValves::not_known && !by_intake && !by_exhaust;
    }
};

/// The intake closes when the card says, within the doubt of that, else within what valve timings are usual.
Neighbour neighbour_while_tested(const Engine& engine, const Reference& reference, int tested, int neighbour);

}  // namespace lapwing::findings
