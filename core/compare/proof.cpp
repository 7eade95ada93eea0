// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/compare/proof.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <iterator>

#include "core/base/apart.h"
#include "core/compare/measured.h"
#include "core/uncertainty/coverage.h"

namespace lapwing::compare {
namespace {

using findings::say;

bool foretells(const PlanLine& line) {
    return line.done_at && line.option != PlanOption::leave && line.cylinder && line.predicted_low &&
           line.predicted_high;
}

class Prove {
public:
    Prove(const Dossier& dossier, const findings::Reference& reference) : dossier_(dossier) {
        std::vector<const Visit*> visits;
        for (const Visit& visit : dossier.visits)
            visits.push_back(&visit);
        std::ranges::stable_sort(visits, {},
                                 [](const Visit* visit) { return visit->session.opened_at.unix_ms; });
        for (const Visit* visit : visits)
            cases_.push_back(findings::case_of(dossier, *visit, reference, {{}, nullptr, false}));
    }

    std::vector<Proof> run() {
        std::vector<Proof> out;
        for (const Visit& visit : dossier_.visits)
            for (const PlanLine& line : visit.plan)
                if (foretells(line)) out.push_back(proof_of(visit, line));
        return out;
    }

private:
    Proof proof_of(const Visit& visit, const PlanLine& line) {
        Proof out;
        out.line = line.id;
        out.foretold_in = visit.session.id;
        out.cylinder = *line.cylinder;
        out.done_at = *line.done_at;
        out.low = findings::figure_of(*line.predicted_low);
        out.high = findings::figure_of(*line.predicted_high);
        const auto after = first_after(out.done_at, out.cylinder);
        if (!after) {
            out.says = say("proof.not_measured", out.cylinder, out.low, out.high);
            return out;
        }
        out.read_in = after->session().id;
        if (foretold_for(out.cylinder, visit, *after) > 1) {
            out.outcome = Outcome::several;
            out.says = say("proof.several", out.cylinder, out.low, out.high);
            return out;
        }
        // Foretold for the gauge and the shop of its own visit.
        Crossed there{after->value, false, {}};
        const auto before = at_visit(visit, out.cylinder);
        if (before) there = in_terms_of(*after, *before, runs_);
        out.reading = after->shown;
        if (there.converted) {
            out.reading = findings::figure(findings::Dimension::gauge_pressure, there.value.value,
                                           uncertainty::expanded(there.value.u()));
            out.converted = say("proof.converted", after->shown);
        }
        judge(out, there);
        if (before && before->newest().taken_at.unix_ms < out.done_at.unix_ms) hold_apart(out, *before);
        return out;
    }

    /// What would have held had nothing been done proves nothing.
    static void hold_apart(Proof& out, const Measured& before) {
        const double read = before.value.value;
        out.held_anyway = !is_below(read, out.low.si) && !is_above(read, out.high.si);
        if (out.held_anyway && out.outcome != Outcome::not_comparable)
            out.why_apart = say("proof.held_anyway", out.cylinder, before.shown);
    }

    static void judge(Proof& out, const Crossed& there) {
        const double read = there.value.value;
        const auto is = [&](Outcome outcome, std::string_view code) {
            out.outcome = outcome;
            out.says = say(code, out.cylinder, *out.reading, out.low, out.high);
        };
        if (there.prevented())
            is(Outcome::not_comparable, "proof.not_comparable");
        else if (is_below(read, out.low.si))
            is(Outcome::below, "proof.below");
        else if (is_above(read, out.high.si))
            is(Outcome::above, "proof.above");
        else
            is(Outcome::held, "proof.held");
    }

    /// The first dry test whose readings were all taken after the work.
    [[nodiscard]] std::optional<Measured> first_after(Timestamp done, int cylinder) const {
        for (const Case& at : cases_) {
            auto read = measured(at, TestKind::dry, cylinder);
            if (read && std::ranges::all_of(read->readings, [&](const Reading* reading) {
                    return reading->taken_at.unix_ms >= done.unix_ms;
                }))
                return read;
        }
        return std::nullopt;
    }

    [[nodiscard]] std::optional<Measured> at_visit(const Visit& visit, int cylinder) const {
        const auto at = std::ranges::find_if(cases_, [&](const Case& one) { return &one.visit == &visit; });
        return at == cases_.end() ? std::nullopt : measured(*at, TestKind::dry, cylinder);
    }

    /// Lines that foretell a reading of the cylinder and were done between the visit and the reading after.
    [[nodiscard]] long foretold_for(int cylinder, const Visit& visit, const Measured& after) const {
        const auto from = visit.session.opened_at.unix_ms;
        const auto until = after.newest().taken_at.unix_ms;
        long out = 0;
        for (const Visit& other : dossier_.visits)
            out += std::ranges::count_if(other.plan, [&](const PlanLine& line) {
                return foretells(line) && line.cylinder == cylinder && line.done_at->unix_ms >= from &&
                       line.done_at->unix_ms <= until;
            });
        return out;
    }

    const Dossier& dossier_;
    std::deque<Case> cases_;  ///< oldest first
    findings::ModelRuns runs_;
};

}  // namespace

std::vector<Proof> proofs_of(const Dossier& dossier, const findings::Reference& reference) {
    return Prove(dossier, reference).run();
}

std::vector<findings::Message> said_of(const Proof& proof) {
    std::vector<findings::Message> out{proof.says};
    if (proof.converted) out.push_back(*proof.converted);
    if (proof.why_apart) out.push_back(*proof.why_apart);
    return out;
}

std::vector<Proof> proofs_between(std::span<const Proof> proofs, const Visit& before, const Visit& after) {
    Timestamp last = after.session.opened_at;
    for (const Reading& reading : after.readings)
        last = std::max(last, reading.taken_at);
    std::vector<Proof> out;
    std::ranges::copy_if(proofs, std::back_inserter(out), [&](const Proof& proof) {
        return proof.done_at >= before.session.opened_at &&
               (proof.read_in ? *proof.read_in == after.session.id : proof.done_at <= last);
    });
    return out;
}

HitRate hit_rate(std::span<const Proof> proofs, const findings::Reference& reference) {
    HitRate out;
    for (const Proof& proof : proofs) {
        const bool held = proof.outcome == Outcome::held;
        if (!held && proof.outcome != Outcome::below && proof.outcome != Outcome::above) continue;
        if (proof.held_anyway) {
            ++out.apart;
            continue;
        }
        ++out.counted;
        out.held += held ? 1 : 0;
    }
    if (out.apart > 0) out.says_apart = say("proof.apart", out.apart);
    const int asked = static_cast<int>(std::lround(reference.assumed("repairs-to-count")));
    out.enough = out.counted >= asked;
    if (!out.enough) {
        out.says = say("proof.too_few", out.counted, asked);
        return out;
    }
    // Wilson 1927, with the coverage factor that every interval here is made with.
    const double n = out.counted;
    const double share = out.held / n;
    const double z = uncertainty::coverage_factor;
    const double middle = (share + z * z / (2.0 * n)) / (1.0 + z * z / n);
    const double half = z / (1.0 + z * z / n) * std::sqrt(share * (1.0 - share) / n + z * z / (4.0 * n * n));
    out.low = std::max(middle - half, 0.0);
    out.high = std::min(middle + half, 1.0);
    out.says =
        say("proof.hit_rate", out.held, out.counted, findings::figure(findings::Dimension::share, out.low),
            findings::figure(findings::Dimension::share, out.high));
    return out;
}

}  // namespace lapwing::compare
