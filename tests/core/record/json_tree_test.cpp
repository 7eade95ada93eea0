// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/json_tree.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "core/base/atomic_file.h"

namespace lapwing::record {
namespace {

using Json = nlohmann::ordered_json;

// The truth is the library's own parser, run here.
void expect_same(const std::string& text) {
    const auto tree = json_tree(text);
    ASSERT_TRUE(tree) << tree.error().english;
    const Json wanted = Json::parse(text);
    EXPECT_EQ(*tree, wanted);
    EXPECT_EQ(tree->dump(), wanted.dump());
}

TEST(JsonTree, IsTheSameAsTheLibrarysOwn) {
    for (const char* text :
         {"null", "true", "\"\"", "-1", "18446744073709551615", "0.1", "1e300", "[]", "{}", "[[],{},[{}]]",
          R"({"b":1,"a":[1,-2,3.5,"x",null,false,{"c":{"d":[{"e":"\u00fc\n"}]}}],"":{},"z":"last"})",
          R"([{"a":1},{"a":2,"b":[{"a":3}]},[[{"a":[]}]],"after"])"})
        expect_same(text);
}

TEST(JsonTree, IsTheSameForWholeSessions) {
    int seen = 0;
    for (const auto& entry : std::filesystem::directory_iterator(LAPWING_FIXTURES "/fuzz/json")) {
        const auto text = read_file(entry.path(), 1 << 24);
        ASSERT_TRUE(text);
        if (!Json::accept(*text)) continue;
        expect_same(*text);
        ++seen;
    }
    EXPECT_GE(seen, 2);
}

TEST(JsonTree, RefusesWhatIsNoJson) {
    for (const char* text : {"", "{", "[1,]", "{\"a\":1,\"a\":2}", "1 2", "1e999", "nul"})
        EXPECT_FALSE(json_tree(text)) << text;
}

}  // namespace
}  // namespace lapwing::record
