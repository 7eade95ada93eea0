// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/derivations.h"

#include "core/findings/case.h"

namespace lapwing::odds {
namespace {

using findings::Derivation;
using findings::Dimension;

void add(Derivation& to, const char* name, const char* symbol, findings::Arg value) {
    to.inputs.push_back({findings::Word{std::string("input:") + name}, symbol, std::move(value)});
}

findings::Message assumed() {
    return findings::say("source.assumption", std::string("Not yet counted on real engines."));
}

}  // namespace

Derivation shares_from(const findings::CylinderFindings& rules, int assumptions_version) {
    Derivation out;
    out.title = findings::Word{"from:odds"};
    out.symbols = "P(A | E) ∝ P(E | A) P(A)";
    if (rules.dry) {
        if (rules.dry->first) add(out, "first", "", rules.dry->first->figure);
        add(out, "final", "", rules.dry->final.figure);
    }
    if (rules.leak_down) {
        add(out, "set", "", rules.leak_down->set.figure);
        add(out, "held", "", rules.leak_down->held.figure);
    }
    for (const findings::Heard& heard : rules.exits)
        out.inputs.push_back({findings::word_of(heard.exit), "", findings::word_of(heard.loudness)});
    if (rules.wet) add(out, "wet", "", rules.wet->reading.final.figure);
    add(out, "assumptions_version", "", assumptions_version);
    out.source = assumed();
    return out;
}

Derivation after_repair_from(int cylinder, const AfterRepair& after) {
    Derivation out;
    out.title = findings::Word{"from:after_repair"};
    out.symbols = "p(A − A₁ + A₀)";
    const auto area = [](double m2) { return findings::figure(Dimension::area, m2); };
    const auto gauge = [](double pa) { return findings::figure(Dimension::gauge_pressure, pa); };
    add(out, "part", "", findings::word_of(after.repair));
    add(out, "reads_now", "p(A)", gauge(after.now_pa));
    add(out, "leak_now", "A", area(after.rest_m2 + after.part_m2.mean));
    add(out, "part_least", "A₁", area(after.part_m2.lo));
    add(out, "part_most", "A₁", area(after.part_m2.hi));
    add(out, "sound_least", "A₀", area(after.sound_m2.lo));
    add(out, "sound_most", "A₀", area(after.sound_m2.hi));
    add(out, "expected_least", "p", gauge(after.lo_pa));
    add(out, "expected_middle", "p", gauge(after.value_pa));
    add(out, "expected_most", "p", gauge(after.hi_pa));
    out.doubts = after.doubts;
    out.source = assumed();
    if (!after.comparable_at_once) out.notes.push_back(findings::say("odds.fresh_hone", cylinder));
    return out;
}

}  // namespace lapwing::odds
