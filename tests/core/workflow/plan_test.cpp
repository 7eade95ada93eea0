// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/plan.h"

#include "core/model/plan_totals.h"
#include "core/workflow/remarks.h"
#include "core/workflow/sessions.h"
#include "tests/core/workflow/desk_fixture.h"

namespace lapwing::workflow {
namespace {

using sample::why;

class Plan : public DeskTest {
protected:
    Engine engine = sample::engine();
    Session session = sample::session(engine.id);

    void SetUp() override {
        const auto done = run(Command{"test.add", {}, {Put{engine}, Put{session}}});
        ASSERT_TRUE(done) << why(done);
    }
    PlanLineId add(PlanOption option, const std::string& work) {
        PlanLine line;
        line.id = PlanLineId::make(clock);
        line.session = session.id;
        line.option = option;
        line.work = work;
        const auto done = run(add_plan_line(line));
        EXPECT_TRUE(done) << why(done);
        return line.id;
    }
    std::string order() {
        std::string out;
        const auto visit = desk->visit(session.id).value();
        for (const PlanLine* line : in_order(visit.plan))
            out += line->work + ' ';
        return out;
    }
    PlanLine stored(PlanLineId id) {
        return std::get<PlanLine>(desk->record(RecordKind::plan_line, id.uuid).value());
    }
};

TEST_F(Plan, QuickFixesComeBeforeStripDownAndWhatIsLeftLast) {
    add(PlanOption::leave, "leave");
    add(PlanOption::strip, "head");
    add(PlanOption::quick_fix, "clearance");
    add(PlanOption::strip, "rings");
    add(PlanOption::quick_fix, "run");
    EXPECT_EQ(order(), "clearance run head rings leave ");
}

TEST_F(Plan, LinesOfAnOlderFileThatHaveNoPlaceKeepTheirOrder) {
    for (const char* work : {"a", "b"}) {
        PlanLine line;
        line.session = session.id;
        line.option = PlanOption::quick_fix;
        line.work = work;
        ASSERT_TRUE(run(save_plan_line(line)));
    }
    add(PlanOption::quick_fix, "c");
    EXPECT_EQ(order(), "a b c ");
}

TEST_F(Plan, MovesOneAtATimeAndSaysWhenItIsAtTheEnd) {
    const auto first = add(PlanOption::strip, "1");
    add(PlanOption::strip, "2");
    add(PlanOption::strip, "3");
    ASSERT_TRUE(run(move_plan_line(first, PlanMove::down)));
    EXPECT_EQ(order(), "2 1 3 ");
    ASSERT_TRUE(run(move_plan_line(first, PlanMove::down)));
    EXPECT_EQ(order(), "2 3 1 ");
    const auto refused = run(move_plan_line(first, PlanMove::down));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, "plan.at_end");
    const auto up = run(move_plan_line(first, PlanMove::up));
    ASSERT_TRUE(up) << why(up);
    EXPECT_EQ(order(), "2 1 3 ");
    ASSERT_TRUE(undo(up->number));
    EXPECT_EQ(order(), "2 3 1 ");
    reopen();
    EXPECT_EQ(order(), "2 3 1 ");
}

TEST_F(Plan, ATickHasItsTimeAndCanBeTakenBack) {
    const auto line = add(PlanOption::quick_fix, "clearance");
    const auto ticked = run(tick_plan_line(line, true));
    ASSERT_TRUE(ticked) << why(ticked);
    EXPECT_EQ(ticked->name, "plan.tick");
    EXPECT_EQ(ticked->args, (std::vector<std::string>{"quick fix", "done"}));
    EXPECT_EQ(stored(line).done_at, clock.now());
    const auto open = run(tick_plan_line(line, false));
    ASSERT_TRUE(open) << why(open);
    EXPECT_EQ(open->args.back(), "open");
    EXPECT_FALSE(stored(line).done_at);
}

TEST_F(Plan, NamesACylinderThatTheEngineDoesNotHave) {
    PlanLine line;
    line.session = session.id;
    line.cylinder = 98;
    const auto refused = run(add_plan_line(line));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, "cylinder.unknown");
    EXPECT_EQ(order(), "");
}

TEST_F(Plan, ALineThatIsGoneSaysSo) {
    const auto line = add(PlanOption::quick_fix, "clearance");
    ASSERT_TRUE(run(remove_plan_line(line)));
    EXPECT_EQ(run(tick_plan_line(line, true)).error().code, "record.gone");
    EXPECT_EQ(run(move_plan_line(line, PlanMove::up)).error().code, "record.gone");
}

TEST_F(Plan, PlansARetestAndForgetsIt) {
    const Timestamp day = clock.now();
    ASSERT_TRUE(run(plan_retest(session.id, day)));
    EXPECT_EQ(desk->session(session.id)->retest_planned_for, day);
    ASSERT_TRUE(run(plan_retest(session.id, std::nullopt)));
    EXPECT_FALSE(desk->session(session.id)->retest_planned_for);
}

}  // namespace
}  // namespace lapwing::workflow
