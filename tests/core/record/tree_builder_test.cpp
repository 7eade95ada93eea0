// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/tree_builder.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>

#include "core/base/atomic_file.h"
#include "core/record/json_text.h"

namespace lapwing::record {
namespace {

using Json = nlohmann::ordered_json;

// The truth is the library's own parser, run here.
void expect_same(const std::string& text) {
    std::vector<std::uint16_t> names;
    ASSERT_TRUE(check_json_text(text, most_json_values, &names));
    TreeBuilder<Json, nlohmann::json_sax<Json>> builder(names);
    ASSERT_TRUE(Json::sax_parse(text, &builder));
    const Json wanted = Json::parse(text);
    EXPECT_EQ(builder.root, wanted);
    EXPECT_EQ(builder.root.dump(), wanted.dump());
}

TEST(TreeBuilder, BuildsWhatTheLibraryDoes) {
    for (const char* text :
         {"null", "true", "\"\"", "-1", "18446744073709551615", "0.1", "1e300", "[]", "{}", "[[],{},[{}]]",
          R"({"b":1,"a":[1,-2,3.5,"x",null,false,{"c":{"d":[{"e":"\u00fc\n"}]}}],"":{},"z":"last"})",
          R"([{"a":1},{"a":2,"b":[{"a":3}]},[[{"a":[]}]],"after"])"})
        expect_same(text);
}

TEST(TreeBuilder, BuildsWholeSessions) {
    int seen = 0;
    for (const auto& entry : std::filesystem::directory_iterator(LAPWING_FIXTURES "/fuzz/json")) {
        const auto text = read_file(entry.path(), 1 << 24);
        ASSERT_TRUE(text);
        if (!check_json_text(*text)) continue;
        expect_same(*text);
        ++seen;
    }
    EXPECT_GE(seen, 2);
}

}  // namespace
}  // namespace lapwing::record
