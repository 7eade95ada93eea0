// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/plan.h"

#include <algorithm>

#include "core/model/plan_totals.h"
#include "core/workflow/needs.h"

namespace lapwing::workflow {
namespace {

int rank(PlanOption option) {
    switch (option) {
        case PlanOption::quick_fix:
            return 0;
        case PlanOption::strip:
            return 1;
        case PlanOption::leave:
            break;
    }
    return 2;
}

/// Numbers the lines through and hands back those whose place changed.
std::vector<PlanLine> renumbered(std::vector<PlanLine> lines, PlanLineId always) {
    std::vector<PlanLine> changed;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const int place = static_cast<int>(i);
        if (lines[i].order == place && lines[i].id != always) continue;
        lines[i].order = place;
        changed.push_back(std::move(lines[i]));
    }
    return changed;
}

Result<Command> put_all(std::string name, PlanOption option, std::vector<PlanLine> lines) {
    Command command{std::move(name), {std::string(word(option))}, {}};
    for (PlanLine& line : lines) {
        auto sound = checked(std::move(line));
        if (!sound) return tl::unexpected(sound.error());
        command.edits.emplace_back(Put{std::move(*sound)});
    }
    return command;
}

std::vector<PlanLine> ordered(const Visit& visit) {
    std::vector<PlanLine> out;
    for (const PlanLine* line : in_order(visit.plan))
        out.push_back(*line);
    return out;
}

}  // namespace

Intent add_plan_line(PlanLine line) {
    return [line = std::move(line)](const Now& now) -> Result<Command> {
        const auto visit = need_visit(now, line.session);
        if (!visit) return tl::unexpected(visit.error());
        if (line.cylinder)
            if (auto known = check_cylinder(now, visit->session, *line.cylinder); !known)
                return tl::unexpected(known.error());
        PlanLine wanted = line;
        if (wanted.id.is_nil()) wanted.id = PlanLineId::make(now.clock);
        std::vector<PlanLine> lines = ordered(*visit);
        // Behind the last line of its own or an earlier kind; people may have put later kinds further up.
        const auto before = std::find_if(lines.rbegin(), lines.rend(), [&](const PlanLine& other) {
            return rank(other.option) <= rank(wanted.option);
        });
        lines.insert(before.base(), wanted);
        return put_all("plan.add", wanted.option, renumbered(std::move(lines), wanted.id));
    };
}

Intent tick_plan_line(PlanLineId id, bool done) {
    return [=](const Now& now) -> Result<Command> {
        auto line = need<PlanLine>(now, id.uuid);
        if (!line) return tl::unexpected(line.error());
        line->done_at.reset();
        if (done) line->done_at = now.clock.now();
        const std::string option(word(line->option));
        return put_checked("plan.tick", {option, done ? "done" : "open"}, std::move(*line));
    };
}

Intent move_plan_line(PlanLineId id, PlanMove move) {
    return [=](const Now& now) -> Result<Command> {
        const auto line = need<PlanLine>(now, id.uuid);
        if (!line) return tl::unexpected(line.error());
        const auto visit = need_visit(now, line->session);
        if (!visit) return tl::unexpected(visit.error());
        std::vector<PlanLine> lines = ordered(*visit);
        const auto at = std::ranges::find(lines, id, &PlanLine::id);
        const bool at_end = move == PlanMove::up ? at == lines.begin() : at + 1 == lines.end();
        if (at_end)
            return fail("plan.at_end", "This line stands at the end of the plan already: nothing was moved.");
        std::iter_swap(at, move == PlanMove::up ? at - 1 : at + 1);
        return put_all("plan.move", line->option, renumbered(std::move(lines), PlanLineId{}));
    };
}

}  // namespace lapwing::workflow
