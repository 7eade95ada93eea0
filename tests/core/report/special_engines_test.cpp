// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// What the report says of two-strokes and diesels alone.

#include <gtest/gtest.h>

#include "tests/core/report/sample.h"

namespace lapwing::report {
namespace {

using sample::blocks;
using sample::section;

/// What was measured and has no limit is not "not measured".
TEST(Report, MarksACrankcaseWithoutALimitAsNothing) {
    sample::Shop shop(1);
    shop.dossier.engine.cycle = StrokeCycle::two;
    Visit& visit = shop.visit("2026-03-14", "As found");
    Reading reading;
    reading.test = TestKind::crankcase;
    reading.cylinder = 0;
    reading.set = sample::bar("0.45");
    reading.held = sample::bar("0.31");
    visit.readings.push_back(reading);
    const Report report = shop.report();
    const Section* crankcase = section(report, Label::crankcase);
    ASSERT_NE(crankcase, nullptr);
    EXPECT_FALSE(blocks<Sentences>(*crankcase).at(0)->sentences.at(0).state);
}

TEST(Report, HasARowForEachChamberOfTheCrankcase) {
    sample::Shop shop(2);
    shop.dossier.engine.cycle = StrokeCycle::two;
    Visit& visit = shop.visit("2026-03-14", "As found");
    for (const int cylinder : {1, 2}) {
        Reading reading;
        reading.test = TestKind::crankcase;
        reading.cylinder = cylinder;
        reading.set = sample::bar("0.45");
        reading.held = sample::bar(cylinder == 1 ? "0.43" : "0.31");
        visit.readings.push_back(reading);
    }
    const Report report = shop.report();
    const Section* crankcase = section(report, Label::crankcase);
    ASSERT_NE(crankcase, nullptr);
    const Table& table = *blocks<Table>(*crankcase).at(0);
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_EQ(std::get<int>(table.rows[1][0].lines[0][0]), 2);
    EXPECT_DOUBLE_EQ(std::get<findings::Figure>(table.rows[1][2].lines[0][0]).si, 0.31e5);
    EXPECT_EQ(blocks<Sentences>(*crankcase).at(0)->sentences.size(), 2U);
}

TEST(Report, NamesADieselsOwnPlugsAmongWhatWasNotDone) {
    sample::Shop shop(2);
    shop.dossier.engine.fuel = Fuel::diesel;
    Visit& visit = shop.visit("2026-03-14", "As found");
    shop.dry(visit, 1, "28");
    visit.session.prepare.push_back({PrepareStep::all_plugs_out, StepState::not_done, ""});
    const Report report = shop.report();
    const Section* not_done = section(report, Label::not_done);
    ASSERT_NE(not_done, nullptr);
    EXPECT_EQ(std::get<findings::Word>(blocks<Table>(*not_done).at(0)->rows.at(0).at(0).lines[0][0]).code,
              "prepare:all plugs out, diesel");
}

}  // namespace
}  // namespace lapwing::report
