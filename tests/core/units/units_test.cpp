// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include "core/units/typed.h"

namespace lapwing {
namespace {

using ::testing::HasSubstr;

TEST(Units, NistSp811) {
    EXPECT_NEAR(units::psi.quantity(1.0).si(), 6894.757, 5e-4);
    EXPECT_DOUBLE_EQ(units::kgf_cm2.quantity(1.0).si(), 98'066.5);
    EXPECT_DOUBLE_EQ(units::bar.quantity(1.0).si(), 100'000.0);
    EXPECT_DOUBLE_EQ(units::inch.quantity(1.0).si(), 0.0254);
    EXPECT_DOUBLE_EQ(Unit<LengthTag>::find("mi")->quantity(1.0).si(), 1609.344);
    EXPECT_NEAR(Unit<TorqueTag>::find("lbf ft")->quantity(1.0).si(), 1.355818, 5e-7);
    EXPECT_NEAR(Unit<FlowTag>::find("cfm")->quantity(1.0).si(), 4.719474e-4, 5e-11);
    EXPECT_DOUBLE_EQ(Unit<VolumeTag>::find("in3")->quantity(1.0).si(), 1.6387064e-5);
}

TEST(Units, InchesOfMercury) {
    // From memory: 3.386389 kPa (conventional inch of mercury).
    EXPECT_NEAR(units::in_hg.quantity(1.0).si(), 3386.389, 1e-9);
}

TEST(Units, TheRuleAndNotTheMisprint) {
    // A Lycoming manual prints "61 to 69 psi (421 to 441 kPa)"; 69 psi is 475.7 kPa.
    EXPECT_NEAR(units::kpa.number(units::psi.quantity(69.0)), 475.7, 0.05);
    EXPECT_NEAR(units::kpa.number(units::psi.quantity(61.0)), 420.6, 0.05);
}

TEST(Units, TemperaturesHaveAnOffset) {
    // Defined: 0 degC is 273.15 K (SI brochure); 32 degF and 212 degF are 0 and 100 degC (NIST SP 811, B.8).
    const auto deg_f = *Unit<TemperatureTag>::find("degF");
    EXPECT_DOUBLE_EQ(units::deg_c.quantity(0.0).si(), 273.15);
    EXPECT_NEAR(units::deg_c.number(deg_f.quantity(32.0)), 0.0, 1e-9);
    EXPECT_NEAR(units::deg_c.number(deg_f.quantity(212.0)), 100.0, 1e-9);
    EXPECT_NEAR(TypedTemperature::make("20.5", units::deg_c)->step_si(), 0.1, 1e-9);
}

template <class Tag>
class EveryUnit : public testing::Test {};
using Dimensions = testing::Types<PressureTag, LengthTag, VolumeTag, AreaTag, TemperatureTag, AngleTag,
                                  RotationTag, TimeTag, VoltageTag, TorqueTag, FlowTag, RatioTag, UsageTag>;
TYPED_TEST_SUITE(EveryUnit, Dimensions);

TYPED_TEST(EveryUnit, ComesBackAndIsFoundBySymbol) {
    for (const auto& entry : Unit<TypeParam>::all()) {
        const auto unit = Unit<TypeParam>::find(entry.symbol);
        ASSERT_TRUE(unit) << entry.symbol;
        EXPECT_EQ(unit->symbol(), entry.symbol);
        EXPECT_TRUE(rc::check(std::string(entry.symbol), [&] {
            const double number = *rc::gen::inRange(-1'000'000, 1'000'000) / 1000.0;
            const double back = unit->number(unit->quantity(number));
            RC_ASSERT(std::abs(back - number) <=
                      1e-9 * (1.0 + std::abs(number)) + 1e-9 * std::abs(entry.offset / entry.factor));
        }));
    }
    EXPECT_FALSE(Unit<TypeParam>::find("furlong"));
    EXPECT_FALSE(Unit<TypeParam>::find(""));
}

TEST(Digits, StayAsTyped) {
    for (const auto* digits : {"6.4", "6.40", "0", "007", "-0.05", "123456789.123456789"}) {
        const auto typed = TypedPressure::make(digits, units::bar);
        ASSERT_TRUE(typed) << digits;
        EXPECT_EQ(typed->digits(), digits);
    }
    EXPECT_EQ(TypedPressure::make("6.40", units::bar)->text(), "6.40 bar");
    EXPECT_EQ(TypedRatio::make("8.6", units::one)->text(), "8.6");
    EXPECT_NEAR(TypedPressure::make("6.40", units::bar)->step_si(), 1000.0, 1e-6);
}

TEST(Digits, CommaAndPointBothWork) {
    EXPECT_EQ(canonical_digits("6,4").value(), "6.4");
    EXPECT_EQ(canonical_digits(",5").value(), "0.5");
    EXPECT_EQ(canonical_digits("-.5").value(), "-0.5");
    EXPECT_EQ(canonical_digits("+7.").value(), "7");
}

TEST(Digits, RefuseWhatIsNoNumber) {
    for (const auto* text : {"", "-", ".", ",", "1,234.5", "1.2.3", "1e5", "0x1", "nan", "inf", "6 4",
                             "6.4bar", "--1", "½", "1234567890123456789012345"}) {
        const auto digits = canonical_digits(text);
        EXPECT_FALSE(digits) << text;
        if (!digits) EXPECT_EQ(digits.error().code, "units.not_a_number");
    }
}

RC_GTEST_PROP(Digits, CanonicalFormIsItsOwn, ()) {
    const auto some_digits = [] {
        return *rc::gen::resize(10, rc::gen::container<std::string>(rc::gen::inRange('0', ':')));
    };
    const auto text = *rc::gen::element<std::string>("", "-", "+") + some_digits() + '0' +
                      *rc::gen::element<std::string>("", ".", ",") + some_digits();
    const auto once = canonical_digits(text);
    RC_ASSERT(once.has_value());
    RC_ASSERT(canonical_digits(*once).value() == *once);
}

TEST(Digits, LongestCanonicalFormIsReadAgain) {
    // 23 digits after a leading point gain a zero: either refused, or readable again.
    for (int count = 20; count < 26; ++count)
        if (const auto once = canonical_digits('.' + std::string(static_cast<std::size_t>(count), '3')))
            EXPECT_TRUE(canonical_digits(*once)) << count;
}

RC_GTEST_PROP(Digits, ComputedValuesAreWrittenToTheirDecimals, ()) {
    const double value = *rc::gen::inRange(-10'000'000, 10'000'000) / 997.0;
    const int decimals = *rc::gen::inRange(0, 7);
    const auto typed = TypedPressure::from(units::bar.quantity(value), units::bar, decimals);
    RC_ASSERT(decimals_of(typed.digits()) == decimals);
    RC_ASSERT(std::abs(typed.number() - value) <= 0.5000001 * std::pow(10.0, -decimals));
    RC_ASSERT(TypedPressure::make(typed.digits(), units::bar).value() == typed);
}

TEST(Digits, ThereIsNoMinusZero) {
    EXPECT_EQ(digits_from(-0.04, 1), "0.0");
    EXPECT_EQ(digits_from(-0.06, 1), "-0.1");
}

TEST(ParseQuantity, ReadsNumberAndUnit) {
    EXPECT_NEAR(parse_quantity<PressureTag>("80psi")->si(), 551'580.6, 0.1);
    EXPECT_DOUBLE_EQ(parse_quantity<PressureTag>("5,5 bar")->si(), 550'000.0);
    EXPECT_DOUBLE_EQ(parse_quantity<PressureTag>("12kgf/cm2")->si(), 1'176'798.0);
    EXPECT_DOUBLE_EQ(parse_quantity<TemperatureTag>("-5degC")->si(), 268.15);
}

TEST(ParseQuantity, ListsTheKnownUnits) {
    for (const auto* text : {"80", "80 furlong", "80 PSI"}) {
        const auto typed = parse_quantity<PressureTag>(text);
        ASSERT_FALSE(typed) << text;
        EXPECT_EQ(typed.error().code, "units.unknown");
        EXPECT_THAT(typed.error().english, HasSubstr("Pa, kPa, hPa, bar, psi, kgf/cm2, inHg"));
    }
    EXPECT_EQ(parse_quantity<PressureTag>("psi").error().code, "units.not_a_number");
}

}  // namespace
}  // namespace lapwing
