// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <map>
#include <optional>
#include <vector>

#include "core/findings/crank_model.h"

/// The way of a cranking reading from one visit's circumstances to another's. The model is only asked for
/// ratios: what it is out by as a whole falls out of them.
namespace lapwing::findings {

/// Runs of the cranking model, each remembered: neighbours differ in nothing that it asks for.
class ModelRuns {
public:
    /// Last reading, gauge Pa; nothing where the model refuses.
    std::optional<double> reading_pa(const physics::CrankingCase& of);

private:
    std::map<std::vector<double>, std::optional<double>> done_;
};

/// Circumstance by circumstance: each step gives the factor on the reading that it makes, and the next one
/// starts from there. Steps give nothing where the model is silent. Air pressure is no step: readings go in
/// proportion to it.
class CrankWay {
public:
    CrankWay(const ModelInputs& from, const ModelInputs& to, ModelRuns& runs);

    /// Gauge, hose, check valve and adapter.
    std::optional<double> tester();
    /// Warmth of the walls.
    std::optional<double> heat();
    std::optional<double> speed();
    std::optional<double> pulls(int was, int is);

private:
    template <class Change>
    std::optional<double> factor(Change change);

    bool has_model_;
    ModelRuns& runs_;
    physics::CrankingCase here_, there_;
};

/// How the engine was turned for a reading.
CrankedBy cranked_by(const Session& session, const Reading& reading);
/// What is not known may be alike.
bool may_be_turned_alike(CrankedBy one, CrankedBy other);

enum class OnRings { unknown, dry, oiled };
OnRings oil_on_rings(const Visit& visit, const Reading& reading);

}  // namespace lapwing::findings
