// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/format/odds_text.h"

#include <gtest/gtest.h>

namespace lapwing::format {
namespace {

TEST(OddsText, AChanceIsNeverCertainAndASmallOneIsNotFivePerCent) {
    // The rule of the house: steps of 5 %, never over 95 %, and nothing called 0 %.
    const Formatter format;
    EXPECT_EQ(chance_text(0.0, format), "under 5 %");
    EXPECT_EQ(chance_text(2e-13, format), "under 5 %");
    EXPECT_EQ(chance_text(0.0249, format), "under 5 %");
    EXPECT_EQ(chance_text(0.03, format), "5 %");
    EXPECT_EQ(chance_text(0.52, format), "50 %");
    EXPECT_EQ(chance_text(1.0, format), "95 %");
}

}  // namespace
}  // namespace lapwing::format
