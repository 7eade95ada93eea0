// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/data_files.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "core/odds/assumptions.h"
#include "core/odds/where_it_leaks.h"
#include "tests/core/odds/bench.h"

namespace lapwing::odds {
namespace {

TEST(DataFiles, AreAllOfThem) {
    const auto files = built_in_data();
    EXPECT_TRUE(std::ranges::is_sorted(files, {}, &DataFile::name));
    for (const DataFile& file : files) {
        EXPECT_GT(file.version, 0) << file.name;
        EXPECT_EQ(file.sha256.size(), 64U) << file.name;
    }
    const auto odds = std::ranges::find(files, "odds.json", &DataFile::name);
    ASSERT_NE(odds, files.end());
    EXPECT_EQ(odds->version, built_in_assumptions()->version);
}

// FIPS 180-4 has the sum of "abc" as its first example.
TEST(DataFiles, AreToldApartByWhatTheySay) {
    findings::ReferenceTexts texts = findings::built_in_texts();
    texts.wet = "abc";
    const auto changed = data_files(texts, built_in_text());
    const auto built_in = built_in_data();
    const auto wet = std::ranges::find(changed, "wet.json", &DataFile::name);
    EXPECT_EQ(in_full(*wet),
              "wet.json, version 0, sha256 ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_NE(sum_of(changed), sum_of(built_in));
    EXPECT_EQ(sum_of(built_in).size(), 8U);
    int differ = 0;
    for (std::size_t i = 0; i < changed.size(); ++i)
        differ += changed[i] == built_in[i] ? 0 : 1;
    EXPECT_EQ(differ, 1);
}

/// The files of a result give it again, and others don't.
TEST(DataFiles, WorkOutAnOldResultAgain) {
    std::string limits(findings::built_in_texts().assumptions);
    const std::string was = "\"id\": \"droop\", \"value\": ";
    const auto at = limits.find(was);
    ASSERT_NE(at, std::string::npos);
    limits.insert(at + was.size(), "1");  // ten times as much and more
    findings::ReferenceTexts texts = findings::built_in_texts();
    texts.assumptions = limits;
    const auto then = findings::read_reference(texts);
    ASSERT_TRUE(then) << then.error().english;
    Odds bench(1);
    bench.leak(1, "5.50", "3.20", "bar");
    const auto odds_with = [&](const findings::Reference& reference) {
        OddsOptions options;
        options.seed = 5;
        options.surfaces = &Odds::surfaces();
        return where_it_leaks(bench.dossier, bench.visit(), reference, options)->cylinders.front();
    };
    const auto first = odds_with(*then);
    EXPECT_EQ(first.leak_area_m2.mean, odds_with(*findings::read_reference(texts)).leak_area_m2.mean);
    EXPECT_NE(first.leak_area_m2.mean, odds_with(Odds::reference()).leak_area_m2.mean);
}

}  // namespace
}  // namespace lapwing::odds
