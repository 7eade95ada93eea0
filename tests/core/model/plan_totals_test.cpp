// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/model/plan_totals.h"

#include <gtest/gtest.h>

namespace lapwing {
namespace {

PlanLine line(PlanOption option, const char* digits, const char* currency, const char* hours = "") {
    PlanLine out;
    out.option = option;
    if (*digits) out.price = Money{digits, currency};
    if (*hours) out.labour = *TypedTime::make(hours, *Unit<TimeTag>::find("h"));
    return out;
}

std::string text(const PlanTotals& totals) {
    std::string out;
    for (const Money& price : totals.prices)
        out += price.digits + ' ' + price.currency + ';';
    return out;
}

// Sums by hand.
TEST(PlanTotals, AddUpEveryCurrencyByItselfAndExactly) {
    const std::vector<PlanLine> plan{
        line(PlanOption::quick_fix, "0.10", "EUR", "0.5"), line(PlanOption::strip, "0.20", "EUR", "4"),
        line(PlanOption::strip, "1200.305", "$"), line(PlanOption::strip, "", "", "1.25"),
        line(PlanOption::leave, "9999", "EUR", "99")};
    const PlanTotals all = totals_of(plan);
    EXPECT_EQ(text(all), "0.30 EUR;1200.305 $;");
    EXPECT_EQ(all.lines, 4);  // what is left as it is costs nothing
    EXPECT_DOUBLE_EQ(all.labour_s, 5.75 * 3600);
    EXPECT_EQ(text(totals_of(plan, PlanOption::quick_fix)), "0.10 EUR;");
    EXPECT_EQ(text(totals_of(plan, PlanOption::strip)), "0.20 EUR;1200.305 $;");
}

TEST(PlanTotals, WholeSumsHaveNoDecimalsAndNothingCostsNothing) {
    EXPECT_EQ(
        text(totals_of({line(PlanOption::strip, "420", "EUR"), line(PlanOption::strip, "80.00", "EUR")})),
        "500 EUR;");
    EXPECT_EQ(
        text(totals_of({line(PlanOption::strip, "420", "EUR"), line(PlanOption::strip, "-20.5", "EUR")})),
        "399.50 EUR;");
    EXPECT_EQ(text(totals_of({})), "");
}

TEST(PlanTotals, SayWhatWasTooLongToAddUp) {
    const auto totals =
        totals_of({line(PlanOption::strip, "1234567890123", "EUR"), line(PlanOption::strip, "1.00001", "EUR"),
                   line(PlanOption::strip, "999999999999.9999", "EUR")});
    EXPECT_EQ(text(totals), "999999999999.9999 EUR;");
    EXPECT_EQ(totals.left_out, 2);
}

TEST(PlanTotals, LinesOfOnePlaceStandAsTheyWereEntered) {
    std::vector<PlanLine> plan(3);
    plan[0].order = 2;
    plan[0].work = "c";
    plan[1].work = "a";
    plan[2].work = "b";
    std::string order;
    for (const PlanLine* one : in_order(plan))
        order += one->work;
    EXPECT_EQ(order, "abc");
}

}  // namespace
}  // namespace lapwing
