// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/compare/words.h"
#include "core/report/changes.h"
#include "core/report/pieces.h"
#include "core/report/sections.h"

namespace lapwing::report {
namespace {

using compare::Change;

constexpr std::size_t both_tests_up_to = 3;

Cell measure_cell(const std::optional<compare::Measure>& measure) {
    if (!measure) return {};
    // The doubt stands with the change: there, what both readings are out by together is gone.
    const auto bare = [](findings::Figure figure) {
        figure.u95.reset();
        return figure;
    };
    Cell out = cell({bare(measure->compared)});
    if (measure->converted) out.lines.push_back({Label::as_measured, bare(measure->as_measured)});
    return out;
}

Cell verdict_cell(const Change& change) {
    if (!change.difference) return {};
    return cell({findings::word_of(change.verdict)});
}

Table table_of(const compare::Comparison& changes) {
    Table out;
    out.columns = {{{Label::cylinder}, 0.8}, {{Label::test}, 1.1},   {{Label::before}, 1.4},
                   {{Label::after}, 1.4},    {{Label::change}, 1.4}, {{Label::verdict}, 1.9}};
    for (const auto& cylinder : changes.cylinders)
        for (const TestKind test : compare::compared_tests)
            if (const Change* change = cylinder.of(test); change && change->difference)
                out.rows.push_back({cell({cylinder.number}), cell({findings::word_of(test)}),
                                    measure_cell(change->before), measure_cell(change->after),
                                    cell({Difference{change->difference->figure}}), verdict_cell(*change)});
    return out;
}

Sentences reasons_of(const compare::Comparison& changes, std::size_t cylinders) {
    Sentences out;
    for (const auto& reason : changes.reasons) {
        if (reason.cylinders.size() < cylinders)
            for (const int number : reason.cylinders)
                out.sentences.push_back({reason.message, std::nullopt, number});
        else
            out.sentences.push_back({reason.message, std::nullopt, std::nullopt});
    }
    return out;
}

}  // namespace

Section before_after(const Dossier& dossier, const Visit& visit, const findings::Findings& found,
                     const findings::Reference& reference) {
    Section out{Label::before_after, {}};
    const Visit* before = visit_before(dossier, visit);
    if (!before) return out;
    const auto changes = compare::compare(dossier, {before, {}}, {&visit, {}}, reference);
    Table table = table_of(changes);
    if (table.rows.empty()) return out;
    Facts which;
    Line then{before->session.opened_at};
    if (!before->session.title.empty()) then.emplace_back(OwnWords{before->session.title});
    add(which, Label::before, std::move(then));
    out.blocks.emplace_back(std::move(which));
    const auto then_found = findings::find(dossier, *before, reference, {{}, nullptr, false});
    for (const TestKind test : {TestKind::dry, TestKind::leak_down}) {
        const bool both = std::ranges::any_of(changes.cylinders, [&](const auto& cylinder) {
            return cylinder.of(test) && cylinder.of(test)->difference;
        });
        if (!both) continue;
        ChangeBores bores = bores_of(dossier.engine, changes, test, then_found, found);
        out.blocks.emplace_back(std::move(bores.before));
        out.blocks.emplace_back(std::move(bores.after));
        // The dry test is what most are done with. Both tests where they stand on one line; the table has
        // all.
        if (dossier.engine.cylinders.size() > both_tests_up_to) break;
    }
    out.blocks.emplace_back(std::move(table));
    Sentences reasons = reasons_of(changes, dossier.engine.cylinders.size());
    const bool any = !reasons.sentences.empty();
    add_block(out, std::move(reasons), any);
    return out;
}

}  // namespace lapwing::report
