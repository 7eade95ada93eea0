// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/pad_facts.h"

#include <algorithm>

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
}

void add_first_puff(const Case& at, const PadEntry& entry, const ModelFacts* model,
                    std::vector<Remark>& facts) {
    if (!entry.first || !entry.final || !(entry.final->si() > 0.0) || entry.first->si() > entry.final->si())
        return;
    const double share = entry.first->si() / entry.final->si();
    double least = 1.0 / at.reference.assumed("first-puff-builds");
    double most = 1.0 / at.reference.assumed("first-puff-stays");
    Derivation from;
    from.title = Word{"from:first_share"};
    from.symbols = "p₁ / p";
    from.inputs = {input("first", "p₁", figure_of(*entry.first)),
                   input("final", "p", figure_of(*entry.final))};
    from.source = say("source.typed");
    std::vector<Derivation> all{from};
    if (model && model->healthy_first_share) {
        // How fast a gauge fills depends on its hose: the model knows this one.
        const double doubt = at.reference.assumed("first-share-doubt");
        const double usual = model->healthy_first_share->figure.si;
        least = (1.0 - doubt) * usual;
        most = std::min(1.0, (1.0 + doubt) * usual);
        all.push_back(model->healthy_first_share->from);
    }
    const std::string_view code = share < least  ? "fact.first_slow"
                                  : share > most ? "fact.first_stays"
                                                 : "fact.first_usual";
    facts.push_back(remark(code, figure(Dimension::share, share)));
    facts.back().from = std::move(all);
}

void add_oil(const Case& at, const ModelFacts* model, std::vector<Remark>& facts) {
    if (!model || !model->oil_rise || at.engine.fuel == Fuel::diesel) return;
    facts.push_back(remark("fact.oil_volume", figure(Dimension::volume, model->inputs.oil_m3),
                           model->oil_rise->low, model->oil_rise->high));
    facts.back().from = {model->oil_rise->from};
}

void add_hose(const PadEntry& entry, const ModelFacts* model, std::vector<Remark>& facts) {
    if (!model || !model->hose_loss || !entry.final) return;
    Cranking reading;
    reading.final.figure = figure_of(*entry.final);
    const Derived without = without_hose(reading, *model);
    facts.push_back(remark("fact.without_hose", model->hose_loss->figure, without.figure));
    facts.back().from = {without.from};
}

}  // namespace

void add_cranking_facts(const Case& at, const PadEntry& entry, const ModelFacts* model,
                        std::vector<Remark>& facts) {
    if (entry.test == TestKind::dry) {
        add_expected(at, model, facts);
        add_first_puff(at, entry, model, facts);
    } else {
        add_oil(at, model, facts);
    }
    add_hose(entry, model, facts);
}

}  // namespace lapwing::findings
