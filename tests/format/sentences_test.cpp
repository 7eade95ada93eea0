// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <QTranslator>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <span>
#include <sstream>

#include "core/findings/codes.h"
#include "core/odds/codes.h"
#include "core/workflow/proposal_codes.h"
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
        case 'A':
            return figure(Dimension::altitude, 240);
        case 's':
            return figure(Dimension::share, 0.36);
        case 'v':
            return figure(Dimension::voltage, 11.2);
        case 'L':
            return figure(Dimension::length, 1e-3);
        case 'T':
            return figure(Dimension::time, 360);
        case 'r':
            return figure(Dimension::number, 9.5);
        case 'V':
            return figure(Dimension::volume, 15e-6);
        case 'a':
            return figure(Dimension::angle, 1.1);
        case 'w':
            return word_of(Exit::exhaust);
        default:
            return std::string("Mill Lane gauge");
    }
}

std::vector<std::span<const codes::Code>> all_lists() {
    return {codes::all, odds::codes::all, workflow::proposal_codes::all};
}

void expect_texts(std::span<const codes::Code> list) {
    const Formatter format;
    for (const auto& [code, args] : list) {
        ASSERT_TRUE(Formatter::knowsMessage(std::string(code))) << code;
        Message message{std::string(code), {}};
        for (const char kind : args)
            message.args.push_back(sample(kind));
        const QString text = format.text(message);
        EXPECT_FALSE(text.isEmpty()) << code;
        // A place that nothing filled, or a bare code, must not reach a person.
        EXPECT_FALSE(text.contains(QRegularExpression("%\\d"))) << text.toStdString();
        EXPECT_FALSE(text.contains(QRegularExpression("\\b[a-z_]+[.:][a-z_]+\\b"))) << text.toStdString();
        if (!args.empty()) {
            const Message without{std::string(code), {}};
            EXPECT_TRUE(format.text(without).contains(u'%')) << code << " ignores its arguments";
        }
    }
}

TEST(Sentences, EveryCodeHasATextThatUsesWhatItIsGiven) {
    for (const auto& list : all_lists())
        expect_texts(list);
}

TEST(Sentences, CodesAreListedOnce) {
    std::set<std::string_view> seen;
    for (const auto& list : all_lists())
        for (const auto& code : list)
            EXPECT_TRUE(seen.insert(code.code).second) << code.code;
}

// What the sources of the room say is held against the list, so that a new sentence can't be forgotten.
TEST(Sentences, EveryCodeInTheSourcesIsListedAndHasAText) {
    std::set<std::string, std::less<>> listed;
    for (const auto& list : all_lists())
        for (const auto& code : list)
            listed.emplace(code.code);
    const std::regex message(
        R"re("((?:cylinder|engine|limits|why|spread|thumb|contra|question|clearance|weak|crankcase|chamber|next|pad|fact|model|law|source|note|odds|propose|because|left)\.[a-z_0-9]+)")re");
    const std::regex word(R"re("((?:from|verdict|outcome|leak):[a-z_0-9]+)")re");
    const std::regex input(R"re(input\(\s*"([a-z_0-9]+)")re");
    int found = 0;
    std::vector<std::filesystem::directory_entry> files;
    for (const char* room : {"core/findings", "core/odds"})
        for (const auto& entry :
             std::filesystem::directory_iterator(std::filesystem::path(LAPWING_SOURCE_DIR) / room))
            files.push_back(entry);
    files.emplace_back(std::filesystem::path(LAPWING_SOURCE_DIR) / "core/workflow/proposals.cpp");
    for (const auto& entry : files) {
        // Who reads the reference data names files, not messages.
        if (entry.path().extension() != ".cpp" || entry.path().stem() == "reference_json" ||
            entry.path().stem() == "data_files" || entry.path().stem() == "assumptions")
            continue;
        std::ifstream file(entry.path());
        std::stringstream content;
        content << file.rdbuf();
        // The codes of errors carry their sentence with them.
        const std::string text =
            std::regex_replace(content.str(), std::regex(R"re(fail\(\s*"[a-z_.]+")re"), "");
        const auto each = [&](const std::regex& pattern, auto check) {
            for (std::sregex_iterator at(text.begin(), text.end(), pattern), end; at != end; ++at)
                check((*at)[1].str());
        };
        each(message, [&](const std::string& code) {
            ++found;
            EXPECT_TRUE(listed.contains(code)) << code << " in " << entry.path();
        });
        each(word, [&](const std::string& code) {
            EXPECT_TRUE(Formatter::knowsWord(code)) << code << " in " << entry.path();
        });
        each(input, [&](const std::string& name) {
            EXPECT_TRUE(Formatter::knowsWord("input:" + name)) << name << " in " << entry.path();
        });
    }
    EXPECT_GT(found, 100);
}

template <class... Enums>
void every_word_has_a_name() {
    const auto check = [](auto example) {
        using Enum = decltype(example);
        for (std::size_t i = 0; i < Words<Enum>::list.size(); ++i)
            EXPECT_TRUE(Formatter::knowsWord(word_of(static_cast<Enum>(i)).code))
                << word_of(static_cast<Enum>(i)).code;
    };
    (check(Enums{}), ...);
}

TEST(Words, EveryWordOfTheModelHasATradeWord) {
    every_word_has_a_name<
        StrokeCycle, Fuel, Arrangement, Cooling, Adjuster, Decompressor, ValveTiming, Origin, TimingAt,
        TiedTo, AttachmentKind, PhotoOf, NoteKind, Cause, ReadSettled, PlanOption, TestKind, Tag, Oiled,
        ReadingFrom, Exit, Loudness, ListenedBy, ValveSide, Symptom, PrepareStep, StepState, EngineHeat,
        Throttle, Induction, CrankedBy, CrankHeldBy, OwnerAnswer, TesterKind, CheckValveAt, CheckValveCore,
        AdapterSeal, AccuracyScheme, TesterCheckKind, CheckResult, Path, BasisKind, State, Action>();
}

TEST(Sentences, APercentSignInAPersonsTextStays) {
    const Formatter format;
    const Message message{"weak.one_gauge", {std::string("50 %1 tester")}};
    EXPECT_TRUE(format.text(message).startsWith("50 %1 tester has"));
}

TEST(Sentences, ListsOfCylindersReadAsLists) {
    const Formatter format;
    EXPECT_EQ(format.text(Message{"engine.fault", {CylinderList{3}}}), "Fault at cylinder 3.");
    EXPECT_EQ(format.text(Message{"engine.fault", {CylinderList{2, 3}}}), "Fault at cylinders 2 and 3.");
    EXPECT_EQ(format.list({1, 2, 4}), "1, 2 and 4");
}

TEST(Sentences, ADifferenceThatRoundsToNothingIsSaidInWords) {
    const auto apart = [](double pa) {
        return Message{"spread.difference_holds",
                       {Figure{Dimension::pressure_difference, pa, 0.3e5, {}, {}},
                        Figure{Dimension::pressure_difference, 1e5, {}, {}, {}}}};
    };
    const Formatter format;
    EXPECT_TRUE(format.text(apart(0.0)).startsWith("The cylinders read the same;"));
    EXPECT_TRUE(format.text(apart(0.04e5)).startsWith("The cylinders read the same;"));
    EXPECT_TRUE(format.text(apart(0.06e5)).startsWith("The cylinders differ by 0.1 bar"));
}

TEST(Sentences, AnErrorWithoutTranslationIsSaidInEnglish) {
    const Formatter format;
    EXPECT_EQ(format.text(Error{"store.newer_version", {"9"}, "Made by a newer version."}),
              "Made by a newer version.");
}

/// Says the patterns of errors in marks, and one word.
class Marked : public QTranslator {
public:
    QString translate(const char* context, const char* source, const char*, int) const override {
        const QString text = QString::fromUtf8(source);
        if (QString::fromLatin1(context) != QLatin1String("Errors")) return {};
        if (text == QLatin1String("Bore")) return QStringLiteral("Bohrung");
        return text.contains(QStringLiteral("%1")) ? u'<' + text + u'>' : QString();
    }
    [[nodiscard]] bool isEmpty() const override { return false; }
};

class Errors : public testing::Test {
protected:
    Errors() { QCoreApplication::installTranslator(&marked_); }
    ~Errors() override { QCoreApplication::removeTranslator(&marked_); }

    int argc_ = 0;
    QCoreApplication app_{argc_, nullptr};
    Marked marked_;
    Formatter german_{Choice{}, QLocale(QLocale::German)};
};

TEST_F(Errors, AreSaidInTheLanguageWithItsWordsNumbersAndCauses) {
    const QString why = QStringLiteral(
        "%1 in the engine card is %2 mm: possible is 1 to 1500. Check the digits and the unit.");
    EXPECT_EQ(german_.text(Error{"model.out_of_range", {}, why.arg("Bore", "0.5").toStdString()}),
              "<" + why.arg("Bohrung", "0,5") + ">");
    EXPECT_EQ(german_.text(Error{"record.impossible",
                                 {},
                                 "The file is not right at engine: " + why.arg("Bore", "0.5").toStdString()}),
              "<The file is not right at engine: <" + why.arg("Bohrung", "0,5") + ">>");
    // A version is no number, and what fits no pattern stays as it is.
    EXPECT_EQ(german_.text(
                  Error{"record.bad_version", {}, "\"1.5\" is not a version of session files, such as 1.0."}),
              "<\"1.5\" is not a version of session files, such as 1.0.>");
    EXPECT_EQ(german_.text(Error{"no.such", {}, "Nobody knows 0.5."}), "Nobody knows 0.5.");
}

TEST_F(Errors, CountInTheChosenUnitOfPressure) {
    // 80 and 90 psi are 551.581 and 620.528 kPa (NIST SP 811).
    const QString pattern = QStringLiteral(
        "The held pressure (%1 kPa) is above the set pressure (%2 kPa). Were the two exchanged? If not, "
        "block the "
        "outlet and compare the gauges.");
    const Error error{"leakdown.held_above_set", {}, pattern.arg("620.528", "551.581").toStdString()};
    const QString other = QString(pattern).replace("%1 kPa", "%1").replace("%2 kPa", "%2");
    const Formatter psi(Choice{units::psi});
    EXPECT_EQ(psi.text(error), "<" + other.arg("90 psi", "80 psi") + ">");
    EXPECT_EQ(german_.text(error), "<" + other.arg("6,205 bar", "5,516 bar") + ">");
    const Formatter kpa(Choice{units::kpa});
    EXPECT_EQ(kpa.text(error), "<" + pattern.arg("620.528", "551.581") + ">");
}

TEST_F(Errors, EveryPatternThatWasGatheredIsKnownAgain) {
    QFile file(QStringLiteral(LAPWING_SOURCE_DIR "/assets/i18n/errors.json"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const auto codes = QJsonDocument::fromJson(file.readAll()).object();
    int known = 0;
    for (auto code = codes.begin(); code != codes.end(); ++code)
        for (const auto& pattern : code.value().toArray()) {
            QString english = pattern.toString();
            if (!english.contains(QStringLiteral("%1"))) continue;
            QStringList args;
            for (int i = 1; english.contains(u'%' + QString::number(i)); ++i) {
                args << QStringLiteral("part%1").arg(i);
                english.replace(u'%' + QString::number(i), args.back());
            }
            const QString said = german_.text(Error{code.key().toStdString(), {}, english.toStdString()});
            EXPECT_TRUE(said.startsWith(u'<') && said.endsWith(u'>')) << english.toStdString();
            for (const QString& arg : args)
                EXPECT_TRUE(said.contains(arg)) << said.toStdString();
            ++known;
        }
    EXPECT_GT(known, 100);
}

TEST(Sentences, ADerivationNamesNumberFormulaInputsAndSource) {
    Derivation from;
    from.title = Word{"from:leakage"};
    from.symbols = "(p₁ − p₂) / p₁";
    from.inputs = {
        {Word{"input:set"}, "p₁", Figure{Dimension::gauge_pressure, 80 * 6894.757, {}, "80", "psi"}}};
    from.source = Message{"source.typed", {}};
    const Formatter format(Choice{.pressure = units::psi});
    const QStringList lines = format.lines(from);
    ASSERT_EQ(lines.size(), 5);
    EXPECT_EQ(lines[0], "Leakage");
    EXPECT_EQ(lines[2], QString::fromUtf8("(p₁ − p₂) / p₁"));
    EXPECT_EQ(lines[3], QString::fromUtf8("set pressure: p₁ = 80 psi"));
    EXPECT_EQ(lines[4], "From the readings.");
}

TEST(Dates, AreShownAsNotedWhereTheyWereNoted) {
    // 2026-03-14 23:30 UTC is already the 15th one hour east of Greenwich: by definition of the offset.
    const Formatter format(Choice{}, QLocale(QLocale::English, QLocale::UnitedKingdom));
    const auto at = *parse_rfc3339("2026-03-15T00:30:00.000+01:00");
    EXPECT_EQ(format.shortDate(at), "15 Mar 2026");
    EXPECT_EQ(format.shortDateTime(at), "15 Mar 2026 00:30");
}

// Orders: QLocale's own short dates, that is CLDR's.
TEST(Dates, WriteTheMonthAsAWordInTheLocalesOrder) {
    const auto at = *parse_rfc3339("2026-04-03T12:00:00.000Z");
    const auto in = [&](QLocale::Language language, QLocale::Territory territory) {
        return Formatter(Choice{}, QLocale(language, territory)).shortDate(at);
    };
    EXPECT_EQ(in(QLocale::English, QLocale::UnitedStates), "Apr 3, 2026");
    EXPECT_EQ(in(QLocale::English, QLocale::India), "3 Apr 2026");
    EXPECT_EQ(in(QLocale::German, QLocale::Germany), QString::fromUtf8("3. Apr. 2026"));
    EXPECT_EQ(in(QLocale::Spanish, QLocale::Spain), "3 abr 2026");
    EXPECT_TRUE(in(QLocale::Japanese, QLocale::Japan).startsWith("2026"));
}

}  // namespace
}  // namespace lapwing::format
