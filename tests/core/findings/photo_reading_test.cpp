// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// A photo that reads otherwise than was typed. Expected verdicts: made up, no source; what counts as
// "otherwise" is the rule in photo_reading.h.

#include "core/findings/photo_reading.h"

#include "tests/core/findings/bench.h"

namespace lapwing::findings {
namespace {

Attachment photo_of(const Reading& reading, const char* bar, const char* u) {
    Attachment photo;
    photo.photo_of = PhotoOf::gauge;
    photo.tie = {TiedTo::reading, reading.id.uuid, {}, {}};
    photo.read_value = Bench::pressure(bar, "bar");
    photo.read_uncertainty = Bench::pressure(u, "bar");
    return photo;
}

TEST(PhotoReading, DiffersOnlyBeyondBothUncertainties) {
    Bench bench(1);
    const Reading reading = bench.dry(1, "6.4", "bar");
    // 2 x 0.05 of the photo and half of the 0.1 that was typed: 0.15.
    EXPECT_FALSE(photo_differs(reading, photo_of(reading, "6.54", "0.05")));
    EXPECT_TRUE(photo_differs(reading, photo_of(reading, "6.56", "0.05")));
    EXPECT_TRUE(photo_differs(reading, photo_of(reading, "6.24", "0.05")));
    auto unread = photo_of(reading, "9", "0.05");
    unread.read_value.reset();
    EXPECT_FALSE(photo_differs(reading, unread));
}

TEST(PhotoReading, IsAContradictionUntilItIsSettled) {
    Bench bench(1);
    const Reading reading = bench.dry(1, "6.4", "bar");
    bench.visit().attachments.push_back(photo_of(reading, "6.1", "0.05"));
    EXPECT_TRUE(says(bench.find().cylinder(1)->contradictions, "contra.photo_differs"));
    auto& settled = bench.visit().attachments.front().read_settled;
    settled = ReadSettled::left_open;
    EXPECT_TRUE(says(bench.find().cylinder(1)->contradictions, "contra.photo_differs"));
    for (const auto way : {ReadSettled::as_typed, ReadSettled::photo_only, ReadSettled::as_read}) {
        settled = way;
        EXPECT_FALSE(says(bench.find().cylinder(1)->contradictions, "contra.photo_differs"));
    }
}

TEST(PhotoReading, HoldsAgainstWhatWasHeldInALeakDown) {
    Bench bench(1);
    const Reading reading = bench.leak(1, "6", "4.5", "bar");
    EXPECT_EQ(typed_off_gauge(reading), reading.held);
    bench.visit().attachments.push_back(photo_of(reading, "4.5", "0.05"));
    EXPECT_TRUE(bench.find().cylinder(1)->contradictions.empty());
    bench.visit().attachments.front().read_value = Bench::pressure("3.9", "bar");
    EXPECT_TRUE(says(bench.find().cylinder(1)->contradictions, "contra.photo_differs"));
}

}  // namespace
}  // namespace lapwing::findings
