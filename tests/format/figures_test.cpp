// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>

#include <cmath>

#include "qml/format/formatter.h"
#include "qml/format/typed_entry.h"

namespace lapwing::format {
namespace {

using findings::Dimension;
using findings::Figure;

Figure figure(Dimension dimension, double si, std::optional<double> u95 = {}) {
    return Figure{dimension, si, u95, {}, {}};
}

// Expected texts follow from the rule that the uncertainty's first digit (two when it is a 1) rules the
// digits.
TEST(Figures, UncertaintyRulesTheDigits) {
    const Formatter format;
    EXPECT_EQ(format.text(figure(Dimension::share, 0.3612, 0.031)), QString::fromUtf8("36 % ± 3"));
    EXPECT_EQ(format.text(figure(Dimension::gauge_pressure, 6.42e5, 0.4e5)),
              QString::fromUtf8("6.4 bar ± 0.4"));
    EXPECT_EQ(format.text(figure(Dimension::gauge_pressure, 6.42e5, 0.114e5)),
              QString::fromUtf8("6.42 bar ± 0.11"));
    EXPECT_EQ(format.text(figure(Dimension::area, 0.4321e-6, 0.05e-6)), QString::fromUtf8("0.43 mm² ± 0.05"));
    EXPECT_EQ(format.text(figure(Dimension::share, -0.0001, 0.03)), QString::fromUtf8("0 % ± 3"));
}

TEST(Figures, WithoutUncertaintyTheUnitRules) {
    const Formatter format;
    EXPECT_EQ(format.text(figure(Dimension::share, 0.75)), "75 %");
    EXPECT_EQ(format.text(figure(Dimension::share, 0.791)), "79.1 %");
    EXPECT_EQ(format.text(figure(Dimension::gauge_pressure, 8e5)), "8.0 bar");
    EXPECT_EQ(format.text(figure(Dimension::station_pressure, 98470)), "985 hPa");
}

// 22 of 80 are 27.5 per cent, by hand; binary sums of it end a little above or below.
TEST(Figures, RoundAHalfTheSameWayHoweverItWasWorkedOut) {
    const Formatter format;
    const double psi = 6894.757293168;  // 4.4482216152605 N on 0.00064516 m2
    for (const double share : {22.0 / 80.0, 1.0 - 58.0 / 80.0, 1.0 - (58.0 * psi) / (80.0 * psi),
                               (80.0 * psi - 58.0 * psi) / (80.0 * psi), std::nextafter(0.275, 0.0)})
        EXPECT_EQ(format.text(figure(Dimension::share, share, 0.12)), QString::fromUtf8("28 % ± 12"));
    EXPECT_EQ(format.text(figure(Dimension::share, -std::nextafter(0.275, 0.0), 0.2)),
              QString::fromUtf8("-28 % ± 20"));
}

// NIST SP 811: 1 psi = 6.894757 kPa, 1 kgf/cm2 = 98.0665 kPa; 1 inHg = 3.386389 kPa (from memory).
TEST(Figures, ConvertToTheChosenUnit) {
    const Figure pressure = figure(Dimension::gauge_pressure, 551580.6);
    EXPECT_EQ(Formatter(Choice{.pressure = units::psi}).text(pressure), "80 psi");
    EXPECT_EQ(Formatter(Choice{.pressure = units::kpa}).text(pressure), "552 kPa");
    EXPECT_EQ(Formatter(Choice{.pressure = units::kgf_cm2}).text(pressure), QString::fromUtf8("5.6 kgf/cm²"));
    EXPECT_EQ(Formatter(Choice{.pressure = units::in_hg}).text(pressure), "163 inHg");
    EXPECT_EQ(Formatter(Choice{.inches = true}).text(figure(Dimension::length, 1.016e-3)), "0.040 in");
}

TEST(Figures, ATypedValueKeepsItsDigitsInItsOwnUnit) {
    const auto typed = *TypedPressure::make("6.40", units::bar);
    const Figure reading = findings::figure_of(typed);
    EXPECT_EQ(Formatter().text(reading), "6.40 bar");
    EXPECT_EQ(Formatter(Choice{.pressure = units::psi}).text(reading), "93 psi");
    EXPECT_EQ(Formatter(Choice{}, QLocale(QLocale::German)).text(reading), "6,40 bar");
    EXPECT_EQ(Formatter(Choice{}, QLocale(QLocale::German)).typed(typed), "6,40 bar");
}

TEST(Figures, ATypedTimeStaysInItsUnit) {
    const Formatter format;
    EXPECT_EQ(format.text(findings::figure_of(*TypedTime::make("5", *Unit<TimeTag>::find("h")))), "5 h");
    EXPECT_EQ(format.text(findings::figure_of(*TypedTime::make("360", *Unit<TimeTag>::find("s")))), "360 s");
    EXPECT_EQ(format.text(figure(Dimension::time, 360)), "6 min");
}

TEST(TypedEntry, PlacesThePointByTheGaugesRange) {
    EXPECT_EQ(placePoint(u"92", 16.0, 1), (Entry{"9.2", true}));
    EXPECT_EQ(placePoint(u"105", 16.0, 1), (Entry{"10.5", true}));
    EXPECT_EQ(placePoint(u"12", 16.0, 1), (Entry{"12", false}));
    EXPECT_EQ(placePoint(u"350", 10.0, 1), (Entry{"3.50", true}));
    // One digit more does not take the point away that stood there.
    EXPECT_EQ(placePoint(u"2725", 10.0, 1), (Entry{"2.725", true}));
    EXPECT_EQ(placePoint(u"545", 6.0, 2), (Entry{"5.45", true}));
    EXPECT_EQ(placePoint(u"", 16.0, 1), (Entry{"", false}));
}

TEST(TypedEntry, LeavesAloneWhatHasItsOwnPointOrFits) {
    EXPECT_EQ(placePoint(u"92.", 16.0, 1), (Entry{"92.", false}));
    EXPECT_EQ(placePoint(u"9,2", 16.0, 1), (Entry{"9.2", false}));
    EXPECT_EQ(placePoint(u"155", 300.0, 0), (Entry{"155", false}));
    EXPECT_EQ(placePoint(u"400", 300.0, 0), (Entry{"400", false}));
    EXPECT_EQ(placePoint(u"99999", 16.0, 1), (Entry{"99999", false}));  // no place makes it fit
    EXPECT_EQ(placePoint(u"-9", 16.0, 1), (Entry{"-9", false}));
}

TEST(TypedEntry, DropsNoughtsThatLead) {
    EXPECT_EQ(placePoint(u"088", 300.0, 0), (Entry{"88", false}));
    EXPECT_EQ(placePoint(u"0", 300.0, 0), (Entry{"0", false}));
    EXPECT_EQ(placePoint(u"000", 300.0, 0), (Entry{"0", false}));
    EXPECT_EQ(placePoint(u"0.88", 16.0, 1), (Entry{"0.88", false}));
    EXPECT_EQ(placePoint(u"00.88", 16.0, 1), (Entry{"0.88", false}));
    EXPECT_EQ(placePoint(u"088", 16.0, 1), (Entry{"8.8", true}));
}

TEST(TypedEntry, FinenessFollowsScaleAndDivision) {
    EXPECT_EQ(decimalsOfGauge(16.0), 1);
    EXPECT_EQ(decimalsOfGauge(6.0), 1);
    EXPECT_EQ(decimalsOfGauge(6.0, 0.05), 2);
    EXPECT_EQ(decimalsOfGauge(300.0), 0);
    EXPECT_EQ(decimalsOfGauge(0.0), 0);
}

}  // namespace
}  // namespace lapwing::format
