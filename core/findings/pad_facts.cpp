// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/pad_facts.h"

#include <algorithm>

#include "core/findings/instruments.h"

namespace lapwing::findings {
namespace {

void add_expected(const Case& at, const ModelFacts* model, std::vector<Remark>& facts) {
    const Limits& limits = at.limits;
    // A working decompressor's readings are held against nothing; the model's own silence says so.
    if (!at.decompressor_works()) {
        if (limits.low && limits.high) {
            facts.push_back(remark("fact.limit_range", limits.low->figure, limits.high->figure));
            facts.back().from = {limits.low->from, limits.high->from};
        }
        if (limits.lowest) {
            facts.push_back(remark("fact.limit_lowest", limits.lowest->figure));
            facts.back().from = {limits.lowest->from};
        } else if (limits.low && !limits.high) {
            facts.push_back(remark("fact.limit_lowest", limits.low->figure));
            facts.back().from = {limits.low->from};
        }
    }
    if (facts.empty() && model) facts.push_back(model->healthy_says);
    if (model && model->released) {
        facts.push_back(remark("model.released", model->released->low, model->released->high));
        facts.back().from = {model->released->from};
    }
}

void add_first_puff(const Case& at, const PadEntry& entry, const Cranking& typed, const Gauge* dial,
                    const ModelFacts* model, std::vector<Remark>& facts) {
    if (!typed.first || !(entry.final->si() > 0.0) || entry.first->si() > entry.final->si()) return;
    const Derived share = first_share_of(at, typed, dial, entry.final->step_si());
    double least = 1.0 / at.reference.assumed("first-puff-builds");
    double most = 1.0 / at.reference.assumed("first-puff-stays");
    std::vector<Derivation> all{share.from};
    if (model && model->healthy_first_share) {
        // How fast a gauge fills depends on its hose: the model knows this one.
        const double doubt = at.reference.assumed("first-share-doubt");
        const double usual = model->healthy_first_share->figure.si;
        least = (1.0 - doubt) * usual;
        most = std::min(1.0, (1.0 + doubt) * usual);
        all.push_back(model->healthy_first_share->from);
    }
    const std::string_view code = share.figure.si < least  ? "fact.first_slow"
                                  : share.figure.si > most ? "fact.first_stays"
                                                           : "fact.first_usual";
    facts.push_back(remark(code, share.figure));
    facts.back().from = std::move(all);
}

void add_oil(const Case& at, const ModelFacts* model, std::vector<Remark>& facts) {
    if (!model || !model->oil_rise || at.engine.fuel == Fuel::diesel) return;
    facts.push_back(remark("fact.oil_volume", figure(Dimension::volume, model->inputs.oil_m3),
                           model->oil_rise->low, model->oil_rise->high));
    facts.back().from = {model->oil_rise->from};
}

void add_hose(const Cranking& typed, const ModelFacts* model, std::vector<Remark>& facts) {
    if (!model || !model->hose_loss) return;
    const Derived without = without_hose(typed, *model);
    facts.push_back(remark("fact.without_hose", model->hose_loss->figure, without.figure));
    facts.back().from = {without.from};
}

void add_pulls(const Case& at, const PadEntry& entry, const ModelFacts* model, std::vector<Remark>& facts) {
    if (!entry.pulls) return;
    if (auto rising = still_rising(at, *entry.pulls, model)) facts.push_back(std::move(*rising));
}

}  // namespace

void add_cranking_facts(const Case& at, const PadEntry& entry, const Cranking* typed, const Gauge* dial,
                        const ModelFacts* model, std::vector<Remark>& facts) {
    if (entry.test == TestKind::dry)
        add_expected(at, model, facts);
    else
        add_oil(at, model, facts);
    if (!typed) return;
    if (entry.test == TestKind::dry) add_first_puff(at, entry, *typed, dial, model, facts);
    add_hose(*typed, model, facts);
    add_pulls(at, entry, model, facts);
}

}  // namespace lapwing::findings
