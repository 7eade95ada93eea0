// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/testers.h"

#include "core/workflow/needs.h"
#include "core/workflow/requests.h"

namespace lapwing::workflow {

Intent save_tester(Tester tester) {
    return [tester = std::move(tester)](const Now& now) -> Result<Command> {
        Tester wanted = tester;
        complete(wanted, wanted.made_at, now);
        const auto stored = now.library.tester(wanted.id);
        if (!stored) return tl::unexpected(stored.error());
        std::vector<std::string> args{wanted.name};
        return put_checked(*stored ? "tester.change" : "tester.add", std::move(args), std::move(wanted));
    };
}

Intent keep_check(TesterId id, const TesterCheck& check) {
    return [=](const Now& now) -> Result<Command> {
        auto tester = need_tester(now, id);
        if (!tester) return tl::unexpected(tester.error());
        TesterCheck dated = check;
        if (dated.at == Timestamp{}) dated.at = now.clock.now();
        // What the needle showed at rest is the gauge's zero error from now on.
        if (dated.kind == TesterCheckKind::zero_at_rest && dated.shown)
            tester->gauge.zero_at_rest = dated.shown;
        tester->checks.push_back(std::move(dated));
        std::vector<std::string> args{tester->name, std::string(word(check.kind))};
        return with_ticks(put_checked("tester.check", std::move(args), *tester),
                          [&] { return ticked_by_check(now, *tester); });
    };
}

Intent remove_tester(TesterId id) {
    return [id](const Now& now) -> Result<Command> {
        const auto tester = need_tester(now, id);
        if (!tester) return tl::unexpected(tester.error());
        const auto uses = now.library.uses_of(id);
        if (!uses) return tl::unexpected(uses.error());
        if (*uses > 0)
            return fail(
                "tester.in_use",
                "{} stays: sessions or readings were taken with it ({} of them), and their figures need "
                "it.",
                tester->name, *uses);
        return Command{"tester.delete", {tester->name}, {Remove{RecordKind::tester, id.uuid}}};
    };
}

}  // namespace lapwing::workflow
