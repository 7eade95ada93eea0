// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>

#include <QRegularExpression>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>

#include "core/compare/codes.h"
#include "core/compare/words.h"
#include "qml/format/formatter.h"

namespace lapwing::format {
namespace {

using namespace findings;

Arg sample(char kind) {
    const auto figure = [](Dimension dimension, double si) { return Figure{dimension, si, {}, {}, {}}; };
    switch (kind) {
        case 'c':
        case 'n':
            return 3;
        case 'l':
            return CylinderList{1, 2};
        case 'p':
            return figure(Dimension::gauge_pressure, 9e5);
        case 'd':
            return figure(Dimension::pressure_difference, 1e5);
        case 'P':
            return figure(Dimension::station_pressure, 98e3);
        case 's':
            return figure(Dimension::share, 0.36);
        case 'V':
            return figure(Dimension::volume, 15e-6);
        case 'w':
            return word_of(Exit::exhaust);
        default:
            return std::string("Mill Lane gauge");
    }
}

TEST(CompareSentences, EveryCodeHasATextThatUsesWhatItIsGiven) {
    const Formatter format;
    for (const auto& [code, args] : compare::codes::all) {
        ASSERT_TRUE(Formatter::knowsMessage(std::string(code))) << code;
        Message message{std::string(code), {}};
        for (const char kind : args)
            message.args.push_back(sample(kind));
        const QString text = format.text(message);
        EXPECT_FALSE(text.contains(QRegularExpression("%\\d"))) << text.toStdString();
        const QString without = format.text(Message{std::string(code), {}});
        for (std::size_t i = 1; i <= args.size(); ++i)
            EXPECT_TRUE(without.contains(QStringLiteral("%%1").arg(i))) << code << " ignores argument " << i;
    }
}

TEST(CompareSentences, EveryCodeInTheSourcesIsListedAndEveryListedOneIsSaid) {
    std::set<std::string, std::less<>> listed;
    for (const auto& code : compare::codes::all)
        EXPECT_TRUE(listed.emplace(code.code).second) << code.code << " stands twice";
    std::set<std::string, std::less<>> said;
    const std::regex message(R"re("((?:compare|history|proof)\.[a-z_0-9]+)")re");
    for (const char* room : {"core/compare", "platform/cli"}) {
        for (const auto& entry :
             std::filesystem::directory_iterator(std::filesystem::path(LAPWING_SOURCE_DIR) / room)) {
            if (entry.path().extension() != ".cpp") continue;
            std::ifstream file(entry.path());
            std::stringstream content;
            content << file.rdbuf();
            const std::string text = content.str();
            for (std::sregex_iterator at(text.begin(), text.end(), message), end; at != end; ++at)
                said.insert((*at)[1].str());
        }
    }
    EXPECT_EQ(said, listed);
}

template <class Enum>
void every_word_has_a_name() {
    for (std::size_t i = 0; i < Words<Enum>::list.size(); ++i)
        EXPECT_TRUE(Formatter::knowsWord(word_of(static_cast<Enum>(i)).code))
            << word_of(static_cast<Enum>(i)).code;
}

TEST(CompareSentences, EveryWordHasAName) {
    every_word_has_a_name<compare::Verdict>();
    every_word_has_a_name<compare::Treatment>();
    every_word_has_a_name<compare::Direction>();
    every_word_has_a_name<compare::Outcome>();
}

}  // namespace
}  // namespace lapwing::format
