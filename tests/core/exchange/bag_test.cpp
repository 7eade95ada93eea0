// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// One test for each MUST of RFC 8493 ("The BagIt File Packaging Format (V1.0)") that concerns a bag of this
// kind; the section is named at each.

#include "core/exchange/bag.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include "core/exchange/session_file.h"
#include "core/model/check.h"
#include "tests/core/exchange/packed.h"

namespace lapwing::exchange {
namespace {

using namespace lapwing::test;

class Rfc8493 : public testing::Test {
protected:
    std::vector<std::string> problems() {
        pack(file, bag);
        std::vector<std::string> codes;
        for (const auto& problem : check_file(file, folder.path()))
            codes.push_back(problem.code);
        return codes;
    }
    void expect_problem(const std::string& code) { EXPECT_THAT(problems(), testing::Contains(code)); }
    void expect_fine() { EXPECT_THAT(problems(), testing::IsEmpty()); }

    /// Adds a payload file and lists it under `listed` in every manifest.
    void list(const std::string& listed, const std::string& bytes) {
        bag["manifest-sha256.txt"] += sha256_hex(bytes) + "  " + listed + '\n';
        bag.erase("tagmanifest-sha256.txt");
    }

    /// Lines of SHA-512 for every file whose path begins so.
    std::string long_list(const std::string& begin) {
        std::string lines;
        for (const auto& [path, bytes] : bag)
            if (path.starts_with(begin)) lines += sha512_hex(bytes) + "  " + path + '\n';
        return lines;
    }

    Sample sample;
    Folder folder;
    fs::path file = folder / "a.lapwing";
    std::map<std::string, std::string> bag = sample_bag(sample);
};

TEST(BagText, DeclarationIsExactlyTwoLines) {  // 2.1.1
    EXPECT_TRUE(check_declaration(bag_declaration));
    EXPECT_TRUE(check_declaration("BagIt-Version: 1.0\r\nTag-File-Character-Encoding: UTF-8"));
    EXPECT_TRUE(check_declaration("BagIt-Version: 0.97\rTag-File-Character-Encoding: utf-8\r"));
    for (const auto* text :
         {"", "BagIt-Version: 1.0\n", "Tag-File-Character-Encoding: UTF-8\nBagIt-Version: 1.0\n",
          "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\nMore: x\n",
          "BagIt-Version: 1.0\n\nTag-File-Character-Encoding: UTF-8\n"})
        EXPECT_EQ(check_declaration(text).error().code, "bag.declaration") << text;
    EXPECT_EQ(check_declaration("BagIt-Version: 2.0\nTag-File-Character-Encoding: UTF-8\n").error().code,
              "bag.version");
    EXPECT_EQ(check_declaration("BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-16\n").error().code,
              "bag.encoding");
}

TEST(BagText, DeclarationHasNoByteOrderMark) {  // 2.1.1
    EXPECT_FALSE(check_declaration("\xef\xbb\xbf" + std::string(bag_declaration)));
}

TEST(BagText, ManifestLinesAreChecksumWhitespacePath) {  // 2.1.3
    const auto lines = parse_manifest("AB01 data/a b\r\ncd23\t \tdata/ü\rEF45  *data/c\n", "m");
    ASSERT_TRUE(lines) << lines.error().english;
    EXPECT_EQ(*lines,
              (std::vector<ManifestLine>{{"ab01", "data/a b"}, {"cd23", "data/ü"}, {"ef45", "data/c"}}));
    for (const auto* text :
         {"data/a\n", "ab01\n", "ab01data/x\n", "ab0 data/a\n", "  data/a\n", "xy01  data/a\n"})
        EXPECT_FALSE(parse_manifest(text, "m")) << text;
}

TEST(BagText, LineEndsAndPercentAreEncodedAndNothingElse) {  // 2.1.3
    EXPECT_EQ(encode_path("data/100%\n\r ü\\"), "data/100%25%0A%0D ü\\");
    EXPECT_EQ(decode_path("data/100%25%0a%0D %41"), "data/100%\n\r %41");
}
RC_GTEST_PROP(BagText, PathsComeBack, (const std::string& path)) {
    RC_ASSERT(decode_path(encode_path(path)) == path);
    RC_ASSERT(encode_path(path).find_first_of("\r\n") == std::string::npos);
}

TEST(BagText, BagInfoLinesMayBeContinued) {  // 2.2.2
    const auto info = parse_bag_info("Contact-Name: one\n  two\nPAYLOAD-OXUM: 12.3\n");
    ASSERT_TRUE(info);
    EXPECT_EQ(info->front().second, "one\ntwo");
    EXPECT_EQ(*payload_oxum(*info), (Oxum{12, 3}));
    EXPECT_FALSE(parse_bag_info("no label\n"));
}

TEST(BagText, WhatIsShownOfALongTextIsCutBetweenLetters) {
    std::string umlauts = "/";
    for (int i = 0; i < 400; ++i)
        umlauts += "\u00dc";  // of two bytes
    for (const auto& text : {umlauts, "/x" + umlauts}) {
        EXPECT_TRUE(model::is_utf8(path_fault(text)->english));
        EXPECT_TRUE(model::is_utf8(parse_bag_info(text).error().english));
    }
}

TEST(BagText, PayloadOxumStandsOnceAndIsTwoNumbers) {  // 2.2.2: MUST NOT be repeated
    EXPECT_FALSE(payload_oxum({{"Payload-Oxum", "1.1"}, {"Payload-Oxum", "1.1"}}));
    for (const auto* value : {"", "1", "1.", ".1", "a.1", "1.1.1", "-1.1", "99999999999999999999999.1"})
        EXPECT_FALSE(payload_oxum({{"Payload-Oxum", value}})) << value;
    EXPECT_EQ(payload_oxum({}).value(), std::nullopt);
}

TEST_F(Rfc8493, AHandMadeBagIsValid) {
    expect_fine();
}
TEST_F(Rfc8493, ChecksumsMayBeInUpperCase) {  // 2.4
    bag.erase("tagmanifest-sha256.txt");
    bag["manifest-sha256.txt"].clear();
    for (const auto& [path, bytes] : bag)
        if (path.starts_with("data/")) {
            auto sum = sha256_hex(bytes);
            for (auto& c : sum)
                if (c >= 'a') c = static_cast<char>(c - 32);
            bag["manifest-sha256.txt"] += sum + "  " + path + '\n';
        }
    expect_fine();
}
TEST_F(Rfc8493, NeedsADeclaration) {  // 2.1.1
    bag["bagit.txt"] += "Third: line\n";
    expect_problem("bag.declaration");
}
TEST_F(Rfc8493, NeedsAPayloadManifest) {  // 2.1.3
    bag.erase("manifest-sha256.txt");
    bag.erase("tagmanifest-sha256.txt");
    expect_problem("bag.no_manifest");
}
TEST_F(Rfc8493, EveryPayloadFileIsListed) {  // 2.1.3, 3
    bag["data/added.txt"] = "x";
    expect_problem("bag.unlisted_file");
}
TEST_F(Rfc8493, EveryPayloadFileIsListedInEveryManifest) {  // 2.1.3: all manifests list the same set
    bag["manifest-sha512.txt"] = std::string(128, '0') + "  data/session.json\n";
    expect_problem("bag.unlisted_file");
}
// 2.4: tools MUST support SHA-256 and SHA-512. 3: valid is what holds in every manifest.
TEST_F(Rfc8493, ABagWithSha512AloneIsValid) {
    bag.erase("tagmanifest-sha256.txt");
    bag.erase("manifest-sha256.txt");
    bag["manifest-sha512.txt"] = long_list("data/");
    bag["tagmanifest-sha512.txt"] = long_list("bagit.txt");
    expect_fine();
    bag["data/session.json"] += '\n';
    expect_problem("bag.checksum");
}
TEST_F(Rfc8493, EveryManifestHolds) {
    bag["manifest-sha512.txt"] = long_list("data/");
    expect_fine();
    auto& sum = bag["manifest-sha512.txt"];
    sum[0] = sum[0] == '0' ? '1' : '0';
    expect_problem("bag.checksum");
}
TEST_F(Rfc8493, EveryTagManifestHolds) {
    bag["tagmanifest-sha512.txt"] = long_list("bagit.txt");
    expect_fine();
    auto& sum = bag["tagmanifest-sha512.txt"];
    sum[0] = sum[0] == '0' ? '1' : '0';
    expect_problem("bag.checksum");
}
TEST_F(Rfc8493, EveryPayloadFileIsListedOnce) {  // 2.1.3
    list("data/session.json", bag["data/session.json"]);
    expect_problem("bag.listed_twice");
}
TEST_F(Rfc8493, EveryListedFileIsThere) {  // 3: complete
    list("data/gone.txt", "x");
    expect_problem("bag.missing_file");
}
TEST_F(Rfc8493, PayloadManifestNamesPayloadOnly) {  // 2.1.3
    list("bagit.txt", bag["bagit.txt"]);
    expect_problem("bag.manifest_path");
}
TEST_F(Rfc8493, PayloadManifestStaysInside) {  // 2.1.3, 5.1
    list("data/../../outside", "x");
    expect_problem("bag.manifest_path");
}
TEST_F(Rfc8493, EncodedPathsAreFound) {  // 2.1.3
    bag["data/100%.txt"] = "x";
    list("data/100%25.txt", "x");
    expect_fine();
}
TEST_F(Rfc8493, PayloadChecksumsHold) {  // 3: valid
    bag["data/session.json"] += '\n';
    expect_problem("bag.checksum");
}
TEST_F(Rfc8493, TagChecksumsHold) {  // 2.2.1, 3
    bag["bagit.txt"] = "BagIt-Version: 1.0\r\nTag-File-Character-Encoding: UTF-8\r\n";
    expect_problem("bag.checksum");
}
TEST_F(Rfc8493, TagFilesListedAreThere) {  // 2.2.1, 3
    bag["tagmanifest-sha256.txt"] += std::string(64, '0') + "  gone.txt\n";
    expect_problem("bag.missing_file");
}
TEST_F(Rfc8493, TagManifestNamesNoTagManifestAndNoPayload) {  // 2.2.1
    const auto right = bag["tagmanifest-sha256.txt"];
    for (const auto* name : {"tagmanifest-sha256.txt", "data/session.json"}) {
        bag["tagmanifest-sha256.txt"] = right + std::string(64, '0') + "  " + name + '\n';
        expect_problem("bag.tag_manifest_path");
    }
}
TEST_F(Rfc8493, PayloadOxumMustFit) {  // 2.2.2, 3
    bag["bag-info.txt"] = "Payload-Oxum: 12.1\n";
    expect_problem("bag.oxum_differs");
}
TEST_F(Rfc8493, FetchIsNotFollowed) {  // 2.2.3: a bag is complete only without anything left to fetch
    bag["fetch.txt"] = "https://example.org/a 1 data/a\n";
    expect_problem("bag.fetch");
}

TEST(Rfc8493Writer, EveryMustHoldsForOurFiles) {
    const Sample sample;
    const Folder folder;
    ASSERT_TRUE(write_session_file(folder / "Mill Lane 100%.lapwing", sample.outgoing()));
    const auto files = unpacked(folder / "Mill Lane 100%.lapwing");
    // 4.1: one folder at the top, named like the file.
    for (const auto& [path, bytes] : files)
        EXPECT_TRUE(path.starts_with("Mill Lane 100%/")) << path;
    const auto at = [&](const std::string& path) { return files.at("Mill Lane 100%/" + path); };
    EXPECT_EQ(at("bagit.txt"), "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n");
    const auto manifest = parse_manifest(at("manifest-sha256.txt"), "m");
    ASSERT_TRUE(manifest);
    std::set<std::string> listed;
    std::uint64_t bytes = 0;
    for (const auto& line : *manifest) {
        EXPECT_TRUE(listed.insert(line.path).second) << line.path;
        EXPECT_EQ(sha256_hex(at(line.path)), line.checksum) << line.path;
        bytes += at(line.path).size();
    }
    for (const auto& [path, content] : files)
        if (path.starts_with("Mill Lane 100%/data/")) EXPECT_TRUE(listed.contains(path.substr(15))) << path;
    EXPECT_EQ(payload_oxum(*parse_bag_info(at("bag-info.txt"))).value(), (Oxum{bytes, listed.size()}));
    const auto tags = parse_manifest(at("tagmanifest-sha256.txt"), "t");
    ASSERT_TRUE(tags);
    EXPECT_EQ(tags->size(), 3u);
    for (const auto& line : *tags)
        EXPECT_EQ(sha256_hex(at(line.path)), line.checksum) << line.path;
}

}  // namespace
}  // namespace lapwing::exchange
