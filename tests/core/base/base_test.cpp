// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include <fstream>

#include "core/base/clock.h"
#include "core/base/sha256.h"
#include "core/base/utf8.h"
#include "core/base/uuid.h"

namespace lapwing {
namespace {

/// A clock that shows what a test wants, and is no FixedClock.
class Scripted final : public Clock {
public:
    [[nodiscard]] Timestamp now() const override { return {ms, 0}; }
    std::int64_t ms = 0;
};

TEST(Uuid, IsVersion7OfRfc9562) {
    const auto text = Uuid::make(FixedClock({0x017F22E279B0, 0})).text();
    ASSERT_EQ(text.size(), 36u);
    // The time of the example in RFC 9562, appendix A.6: 017F22E2-79B0-7...
    EXPECT_EQ(text.substr(0, 15), "017f22e2-79b0-7");
    EXPECT_THAT(std::string("89ab"), testing::HasSubstr(std::string(1, text[19])));
    EXPECT_EQ(Uuid::parse("017F22E2-79B0-7CC3-98C4-DC0C0C07398F")->text(),
              "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
}

TEST(Uuid, IdsIncreaseEvenWhenTheClockIsSetBack) {
    Scripted clock;
    clock.ms = SystemClock{}.now().unix_ms + 1'000'000;
    std::vector<Uuid> made;
    for (int i = 0; i < 5000; ++i) {
        if (i % 1000 == 500) clock.ms -= 5000;
        if (i % 1000 == 800) clock.ms += 20'000;
        made.push_back(Uuid::make(clock));
    }
    for (std::size_t i = 1; i < made.size(); ++i) {
        ASSERT_LT(made[i - 1], made[i]) << i;
        ASSERT_LT(made[i - 1].text(), made[i].text());
        EXPECT_EQ(made[i].text()[14], '7');
    }
}

TEST(Uuid, DrawnIdsOfOneMomentDiffer) {
    const FixedClock clock({1'700'000'000'000, 0});
    EXPECT_NE(Uuid::make(clock), Uuid::make(clock));
}

RC_GTEST_PROP(Uuid, TextComesBack, (std::int64_t ms)) {
    const auto id = Uuid::make(FixedClock({ms & 0xffffffffffff, 0}));
    RC_ASSERT(Uuid::parse(id.text()) == id);
}

TEST(Uuid, RefusesWhatIsNone) {
    for (const auto* text :
         {"", "017f22e2-79b0-7cc3-98c4-dc0c0c07398", "017f22e2-79b0-7cc3-98c4-dc0c0c07398f0",
          "017f22e279b0-7cc3-98c4-dc0c0c07398f-", "g17f22e2-79b0-7cc3-98c4-dc0c0c07398f",
          "{17f22e2-79b0-7cc3-98c4-dc0c0c07398f}", "017f22e2_79b0_7cc3_98c4_dc0c0c07398f"})
        EXPECT_FALSE(Uuid::parse(text)) << text;
    EXPECT_TRUE(Uuid{}.is_nil());
}

TEST(Rfc3339, ReadsTheExamplesOfItsSection58) {
    EXPECT_EQ(parse_rfc3339("1985-04-12T23:20:50.52Z").value(), (Timestamp{482'196'050'520, 0}));
    EXPECT_EQ(parse_rfc3339("1996-12-19T16:39:57-08:00").value(), (Timestamp{851'042'397'000, -480}));
    EXPECT_EQ(parse_rfc3339("1990-12-31T23:59:60Z").value(), (Timestamp{662'688'000'000, 0}));
    EXPECT_EQ(parse_rfc3339("1937-01-01T12:00:27.87+00:20")->offset_min, 20);
    EXPECT_EQ(parse_rfc3339("2026-03-14t09:30:00.1239999z")->unix_ms % 1000, 123);
}

RC_GTEST_PROP(Rfc3339, ComesBack, ()) {
    // 1900 to 2200
    const Timestamp at{*rc::gen::inRange<std::int64_t>(-2'208'988'800'000, 7'258'118'400'000),
                       *rc::gen::inRange(-18 * 60, 18 * 60 + 1)};
    RC_ASSERT(parse_rfc3339(to_rfc3339(at)).value() == at);
}

TEST(Rfc3339, RefusesWhatIsNoTime) {
    for (const auto* text :
         {"", "2026-03-14", "2026-03-14T09:30:00", "2026-03-14 09:30:00Z", "2026-02-30T09:30:00Z",
          "2026-13-01T09:30:00Z", "2026-03-14T24:00:00Z", "2026-03-14T09:60:00Z", "2026-03-14T09:30:61Z",
          "2026-03-14T09:30:00.Z", "2026-03-14T09:30:00+1:00", "2026-03-14T09:30:00+19:00",
          "2026-03-14T09:30:00+18:01", "2026-03-14T09:30:00+01:60", "2026-03-14T09:30:00Zx",
          "26-03-14T09:30:00Z", "2026-03-14T09:30:00+0100", "20a6-03-14T09:30:00Z"}) {
        const auto at = parse_rfc3339(text);
        EXPECT_FALSE(at) << text;
        if (!at) EXPECT_THAT(at.error().english, testing::HasSubstr(text));
    }
}

TEST(Utf8, IsCutBetweenLetters) {
    EXPECT_EQ(cut_between_letters("bore", 80), 4U);
    EXPECT_EQ(cut_between_letters("bore", 2), 2U);
    const std::string letters = "a\u00e4\u20ac\U0001F527";  // of one, two, three and four bytes
    const std::vector<std::size_t> whole{0, 1, 1, 3, 3, 3, 6, 6, 6, 6, 10, 10};
    for (std::size_t most = 0; most < whole.size(); ++most)
        EXPECT_EQ(cut_between_letters(letters, most), whole[most]) << most;
}

TEST(Sha256, AgreesWithPublishedExamples) {
    // NIST, examples for FIPS 180-4: "abc" and the 448-bit message; a million "a" from FIPS 180-2.
    EXPECT_EQ(sha256_hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256_hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    Sha256 pieces;
    for (int i = 0; i < 1000; ++i)
        pieces.add(std::string(1000, 'a'));
    EXPECT_EQ(pieces.hex(), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST(Sha512, AgreesWithAPublishedExample) {
    // NIST, examples for FIPS 180-4: "abc".
    EXPECT_EQ(
        sha512_hex("abc"),
        "ddaf35a193617abacc417349ae20413112e6fa4e89a97ea20a9eeee64b55d39a2192992a274fc1a836ba3c23a3feebbd"
        "454d4423643ce80e2a9ac94fa54ca49f");
}

TEST(Sha256, OfAFileIsThatOfItsBytes) {
    const auto file =
        std::filesystem::temp_directory_path() / ("lapwing-" + Uuid::make(SystemClock{}).text());
    const std::string bytes(200'001, '\x7f');
    std::ofstream(file, std::ios::binary) << bytes;
    EXPECT_EQ(sha256_of_file(file).value(), sha256_hex(bytes));
    std::filesystem::remove(file);
    EXPECT_EQ(sha256_of_file(file).error().code, "file.not_found");
}

}  // namespace
}  // namespace lapwing
