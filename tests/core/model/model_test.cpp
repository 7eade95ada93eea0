// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>

#include "core/model/visit.h"

namespace lapwing {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

constexpr Timestamp noon{1'773'487'800'000, 60};
const FixedClock clock_(noon);

TypedPressure bar(std::string_view digits) {
    return *TypedPressure::make(digits, units::bar);
}
TypedLength mm(std::string_view digits) {
    return *TypedLength::make(digits, units::mm);
}
template <class T>
Sourced<T> measured(T value) {
    return {value, Origin::measured, {}};
}

/// The V-twin of the demonstration (invented figures).
Engine v_twin() {
    Engine engine;
    engine.id = EngineId::make(clock_);
    engine.made_at = noon;
    engine.name = "Orchard V-twin";
    engine.arrangement = Arrangement::vee;
    engine.cylinders = {{.number = 1, .name = "front", .bank = 0}, {.number = 2, .name = "rear", .bank = 1}};
    engine.firing_order = {1, 2};
    engine.firing_intervals = {*TypedAngle::make("270", units::deg), *TypedAngle::make("450", units::deg)};
    engine.bore = measured(mm("73.4"));
    engine.stroke = measured(mm("58.8"));
    engine.rod = measured(mm("118"));
    engine.compression_ratio = measured(*TypedRatio::make("8.6", units::one));
    engine.limits.low = bar("9.0");
    engine.limits.high = bar("11.5");
    engine.limits.lowest = bar("8.0");
    return engine;
}
Reading dry_reading() {
    Reading reading;
    reading.id = ReadingId::make(clock_);
    reading.session = SessionId::make(clock_);
    reading.taken_at = noon;
    reading.final = bar("6.4");
    return reading;
}
Reading leak_down_reading() {
    auto reading = dry_reading();
    reading.test = TestKind::leak_down;
    reading.final.reset();
    reading.set = bar("5.5");
    reading.held = bar("4.1");
    return reading;
}

/// `spoil` makes a good value one that can't exist: refused with this code and a sentence that holds `told`.
template <class T>
void expect_refused(T value, const std::function<void(T&)>& spoil, std::string_view code,
                    std::string_view told = "") {
    ASSERT_TRUE(checked(value)) << checked(value).error().english;
    spoil(value);
    const auto result = checked(value);
    ASSERT_FALSE(result) << code << ' ' << told;
    EXPECT_EQ(result.error().code, code) << result.error().english;
    EXPECT_THAT(result.error().english, HasSubstr(std::string(told)));
    EXPECT_EQ(result.error().english.back(), '.');
}
void refuse_engine(const std::function<void(Engine&)>& spoil, std::string_view code,
                   std::string_view told = "") {
    expect_refused<Engine>(v_twin(), spoil, code, told);
}

TEST(EngineCard, CylindersAreOneToSixteenWithNumbersOfTheirOwn) {
    const auto cylinders = [](int count) {
        return [count](Engine& engine) {
            engine.cylinders.clear();
            engine.firing_order.clear();
            engine.firing_intervals.clear();
            for (int i = 1; i <= count; ++i)
                engine.cylinders.push_back({.number = i});
        };
    };
    refuse_engine(cylinders(0), "engine.no_cylinders");
    refuse_engine(cylinders(17), "engine.too_many_cylinders", "17");
    auto sixteen = v_twin();
    cylinders(16)(sixteen);
    EXPECT_TRUE(checked(sixteen));
    refuse_engine([](Engine& e) { e.cylinders[1].number = 1; }, "engine.number_twice", "number 1");
    refuse_engine([](Engine& e) { e.cylinders[1].number = 0; }, "model.out_of_range", "1 to 99");
    refuse_engine([](Engine& e) { e.cylinders[1].number = 100; }, "model.out_of_range");
}

TEST(EngineCard, FiringOrderAndIntervals) {
    refuse_engine([](Engine& e) { e.firing_order = {1, 3}; }, "engine.order_unknown_cylinder", "3");
    refuse_engine([](Engine& e) { e.firing_order = {1, 1}; }, "engine.order_twice");
    refuse_engine([](Engine& e) { e.firing_order = {1}; }, "engine.order_incomplete");
    refuse_engine([](Engine& e) { e.firing_intervals.pop_back(); }, "engine.interval_count");
    refuse_engine([](Engine& e) { e.firing_intervals[0] = *TypedAngle::make("271", units::deg); },
                  "engine.interval_sum", "721");
    refuse_engine([](Engine& e) { e.cycle = StrokeCycle::two; }, "model.out_of_range", "360");
    refuse_engine([](Engine& e) { e.firing_order.clear(); }, "engine.interval_count");
    auto unknown = v_twin();
    unknown.firing_order.clear();
    unknown.firing_intervals.clear();
    EXPECT_TRUE(checked(unknown));
}

TEST(EngineCard, JoinedManifolds) {
    refuse_engine([](Engine& e) { e.joined_intakes = {{1}}; }, "engine.joined_alone", "intake");
    refuse_engine([](Engine& e) { e.joined_exhausts = {{1, 5}}; }, "engine.joined_unknown_cylinder", "5");
    refuse_engine([](Engine& e) { e.joined_exhausts = {{1, 2}, {2, 1}}; }, "engine.joined_twice");
    auto joined = v_twin();
    joined.joined_exhausts = {{1, 2}};
    EXPECT_TRUE(checked(joined));
}

TEST(EngineCard, Dimensions) {
    refuse_engine([](Engine& e) { e.name = " "; }, "model.missing", "name");
    refuse_engine([](Engine& e) { e.bore->value = mm("0"); }, "model.not_positive", "Bore");
    refuse_engine([](Engine& e) { e.bore->value = mm("-73.4"); }, "model.not_positive", "-73.4 mm");
    refuse_engine([](Engine& e) { e.bore->value = mm("73400"); }, "model.out_of_range", "2000");
    refuse_engine([](Engine& e) { e.rod->value = mm("29.4"); }, "engine.rod_too_short", "29.4 mm");
    refuse_engine([](Engine& e) { e.compression_ratio->value = *TypedRatio::make("1", units::one); },
                  "engine.ratio_too_low");
    refuse_engine([](Engine& e) { e.limits.low = bar("12"); }, "model.crossed", "12 bar");
    refuse_engine([](Engine& e) { e.limits.lowest = bar("9.5"); }, "model.crossed");
    refuse_engine([](Engine& e) { e.limits.lowest = bar("1001"); }, "model.out_of_range", "1000");
    refuse_engine([](Engine& e) { e.valves.intake_valves = 0; }, "model.out_of_range");
    refuse_engine([](Engine& e) { e.shop_altitude = *TypedLength::make("30000", units::ft); },
                  "model.out_of_range", "ft");
    auto two_stroke = v_twin();
    two_stroke.cycle = StrokeCycle::two;
    two_stroke.firing_intervals = even_intervals(two_stroke);
    two_stroke.valves.intake_valves = two_stroke.valves.exhaust_valves = 0;
    EXPECT_TRUE(checked(two_stroke));
}

TEST(EngineCard, TextIsText) {
    refuse_engine([](Engine& e) { e.description = std::string(30'000, 'x'); }, "model.text_too_long",
                  "Description");
    for (const auto* broken : {"\xff", "\xc0\xaf", "\xed\xa0\x80", "\xf4\x90\x80\x80", "caf\xc3"})
        refuse_engine([&](Engine& e) { e.description = broken; }, "model.text_broken");
    auto fine = v_twin();
    fine.description = "Ölverlust ½ 雲雀 🐦";
    EXPECT_TRUE(checked(fine));
    refuse_engine([](Engine& e) { e.id = {}; }, "model.no_id");
}

TEST(EngineCard, LayoutFollowsArrangementAndBank) {
    Engine engine = v_twin();
    engine.cylinders = {{.number = 3, .bank = 1},
                        {.number = 1, .bank = 0},
                        {.number = 4, .bank = 0},
                        {.number = 2, .bank = 1}};
    lay_out(engine);
    const auto place = [&](int number) {
        const auto* cylinder = find_cylinder(engine, number);
        return std::pair(cylinder->row, cylinder->column);
    };
    EXPECT_EQ(place(1), std::pair(0, 0));
    EXPECT_EQ(place(4), std::pair(0, 1));
    EXPECT_EQ(place(2), std::pair(1, 0));
    EXPECT_EQ(place(3), std::pair(1, 1));
    engine.arrangement = Arrangement::in_line;
    lay_out(engine);
    EXPECT_EQ(place(3), std::pair(0, 2));
    EXPECT_THAT(numbers_in_order(engine), ElementsAre(1, 2, 3, 4));
    EXPECT_EQ(find_cylinder(engine, 9), nullptr);
}

TEST(EngineCard, EvenIntervalsFillTheCycle) {
    for (int count = 1; count <= 16; ++count)
        for (const auto cycle : {StrokeCycle::four, StrokeCycle::two}) {
            auto engine = v_twin();
            engine.cycle = cycle;
            engine.cylinders.clear();
            engine.firing_order.clear();
            for (int i = 1; i <= count; ++i) {
                engine.cylinders.push_back({.number = i});
                engine.firing_order.push_back(i);
            }
            engine.firing_intervals = even_intervals(engine);
            EXPECT_EQ(engine.firing_intervals.size(), static_cast<std::size_t>(count));
            EXPECT_TRUE(checked(engine)) << count;
        }
    auto six = v_twin();
    six.firing_order = {1, 5, 3, 6, 2, 4};
    EXPECT_EQ(even_intervals(six).front().text(), "120 °");
    six.firing_order.clear();
    EXPECT_TRUE(even_intervals(six).empty());
}

TEST(TesterCard, CanExist) {
    Tester tester;
    tester.id = TesterId::make(clock_);
    tester.made_at = noon;
    tester.name = "Home-made leak-down";
    tester.kind = TesterKind::leak_down;
    tester.gauge.full_scale = bar("10");
    tester.set_pressure = bar("5.5");
    const auto refuse = [&](const std::function<void(Tester&)>& spoil, std::string_view code,
                            std::string_view told = "") {
        expect_refused<Tester>(tester, spoil, code, told);
    };
    refuse([](Tester& t) { t.name.clear(); }, "model.missing");
    refuse([](Tester& t) { t.gauge.full_scale = bar("0"); }, "model.not_positive", "Full scale");
    refuse([](Tester& t) { t.set_pressure = bar("10.5"); }, "tester.set_over_scale", "10.5 bar");
    refuse([](Tester& t) { t.gauge.accuracy = "1.6"; }, "tester.class_without_scheme");
    refuse([](Tester& t) { t.gauge.scheme = AccuracyScheme::en_837_1, t.gauge.accuracy = "B"; },
           "tester.unknown_class");
    refuse([](Tester& t) { t.gauge.scheme = AccuracyScheme::asme_b40_100, t.gauge.accuracy = "1.6"; },
           "tester.unknown_grade");
    refuse([](Tester& t) { t.restrictor = mm("0"); }, "model.not_positive");
    refuse([](Tester& t) { t.restrictor = mm("21"); }, "model.out_of_range");
    refuse([](Tester& t) { t.hose_volume = *TypedVolume::make("-1", units::cm3); }, "model.out_of_range");
    refuse([](Tester& t) { t.adapters.emplace_back(); }, "model.missing", "adapter");
    refuse([](Tester& t) { t.gauge.division = bar("20"); }, "model.out_of_range");
    tester.checks = {{.kind = TesterCheckKind::outlet_blocked, .at = {5, 0}, .note = "second"},
                     {.kind = TesterCheckKind::outlet_blocked, .at = {3, 0}, .note = "first"},
                     {.kind = TesterCheckKind::zero_at_rest, .at = {9, 0}}};
    EXPECT_EQ(last_check(tester, TesterCheckKind::outlet_blocked)->note, "second");
    EXPECT_EQ(last_check(tester, TesterCheckKind::drilled_hole), nullptr);
}

TEST(SessionCard, CanExist) {
    Session session;
    session.id = SessionId::make(clock_);
    session.engine = EngineId::make(clock_);
    session.opened_at = noon;
    const auto refuse = [&](const std::function<void(Session&)>& spoil, std::string_view code) {
        expect_refused<Session>(session, spoil, code);
    };
    refuse([](Session& s) { s.engine = {}; }, "model.no_id");
    refuse([](Session& s) { s.usage = *TypedUsage::make("-1", units::km); }, "session.usage");
    refuse([](Session& s) { s.conditions.altitude = *TypedLength::make("9001", units::m); },
           "model.out_of_range");
    refuse([](Session& s) { s.conditions.station_pressure = bar("0.1"); }, "model.out_of_range");
    refuse([](Session& s) { s.conditions.air = *TypedTemperature::make("200", units::deg_c); },
           "model.out_of_range");
    refuse(
        [](Session& s) {
            s.complaint.symptoms = {Symptom::noise, Symptom::noise};
        },
        "session.symptom_twice");
    refuse(
        [](Session& s) {
            s.prepare = {{.step = PrepareStep::battery}, {.step = PrepareStep::battery}};
        },
        "session.step_twice");
    refuse([](Session& s) { s.opened_at.offset_min = 2000; }, "model.bad_time");
    refuse([](Session& s) { s.opened_at.unix_ms = 900'000'000'000'000; }, "model.bad_time");
    session.prepare = {{.step = PrepareStep::battery, .state = StepState::done}};
    EXPECT_EQ(step_state(session, PrepareStep::battery), StepState::done);
    EXPECT_EQ(step_state(session, PrepareStep::borescope), StepState::open);
}

TEST(ReadingCard, HasTheFieldsOfItsTest) {
    const auto refuse = [](Reading good, const std::function<void(Reading&)>& spoil, std::string_view code,
                           std::string_view told) {
        expect_refused<Reading>(std::move(good), spoil, code, told);
    };
    refuse(
        dry_reading(), [](Reading& r) { r.final.reset(); }, "reading.field_missing", "final reading");
    refuse(
        dry_reading(), [](Reading& r) { r.set = bar("5"); }, "reading.field_out_of_place", "set pressure");
    refuse(
        dry_reading(), [](Reading& r) { r.held = bar("5"); }, "reading.field_out_of_place", "held pressure");
    refuse(
        dry_reading(), [](Reading& r) { r.oil_volume = *TypedVolume::make("5", units::ml); },
        "reading.field_out_of_place", "oil volume");
    refuse(
        dry_reading(), [](Reading& r) { r.hold = *TypedTime::make("5", units::minute); },
        "reading.field_out_of_place", "time held");
    refuse(
        leak_down_reading(), [](Reading& r) { r.held.reset(); }, "reading.field_missing", "held pressure");
    refuse(
        leak_down_reading(), [](Reading& r) { r.set.reset(); }, "reading.field_missing", "set pressure");
    refuse(
        leak_down_reading(), [](Reading& r) { r.first = bar("1"); }, "reading.field_out_of_place",
        "first puff");
    refuse(
        leak_down_reading(), [](Reading& r) { r.pulls = 4; }, "reading.field_out_of_place", "pulls");
    refuse(
        leak_down_reading(), [](Reading& r) { r.set = bar("0"); }, "model.not_positive", "Set pressure");
    auto crankcase = leak_down_reading();
    crankcase.test = TestKind::crankcase;
    crankcase.cylinder = 0;
    crankcase.hold = *TypedTime::make("6", units::minute);
    refuse(
        crankcase, [](Reading& r) { r.hold.reset(); }, "reading.field_missing", "time held");
    refuse(
        crankcase, [](Reading& r) { r.held.reset(); }, "reading.field_missing", "end pressure");
    auto wet = dry_reading();
    wet.test = TestKind::wet;
    wet.oil_volume = *TypedVolume::make("5", units::ml);
    wet.oil_name = "SAE 30";
    EXPECT_TRUE(checked(wet));
}

TEST(ReadingCard, ADialInPercentStandsForAPressure) {
    // Chart for an 80 psi supply: Kohler ECV940 service manual.
    const auto psi = [](const char* digits) { return *TypedPressure::make(digits, units::psi); };
    const auto percent = [](const char* digits) { return *TypedRatio::make(digits, units::percent); };
    auto reading = leak_down_reading();
    reading.set = psi("80");
    for (const auto& [loss, held] : {std::pair{"0", 80.0},
                                     {"10", 72.0},
                                     {"20", 64.0},
                                     {"30", 56.0},
                                     {"40", 48.0},
                                     {"50", 40.0},
                                     {"60", 32.0}}) {
        reading.dial_loss = percent(loss);
        reading.held = held_by_dial(*reading.set, *reading.dial_loss);
        EXPECT_NEAR(reading.held->number(), held, 1e-9) << loss;
        EXPECT_EQ(reading.held->unit(), units::psi);
        EXPECT_TRUE(checked(reading)) << loss;
    }
    // One percent of the dial is 0.8 psi, however many digits the pressure has got.
    EXPECT_NEAR(step_pa(reading, &Reading::held), psi("0.8").si(), 1e-6);
    reading.dial_loss.reset();
    reading.held = psi("32");
    EXPECT_NEAR(step_pa(reading, &Reading::held), psi("1").si(), 1e-6);
    // Neighbouring steps of the dial don't fall together, whatever the unit of the set pressure.
    for (const char* set : {"0.3", "5.5", "80", "550"})
        EXPECT_NE(held_by_dial(bar(set), percent("15.1")), held_by_dial(bar(set), percent("15.2"))) << set;
}

TEST(ReadingCard, RefusesADialThatDisagrees) {
    const auto with = [](const char* loss) {
        return [loss](Reading& r) { r.dial_loss = *TypedRatio::make(loss, units::percent); };
    };
    expect_refused<Reading>(leak_down_reading(), with("40"), "reading.dial_disagrees", "40 % on the dial");
    expect_refused<Reading>(leak_down_reading(), with("101"), "model.out_of_range", "Leakage on the dial");
    expect_refused<Reading>(leak_down_reading(), with("-1"), "model.out_of_range", "Leakage on the dial");
    expect_refused<Reading>(dry_reading(), with("10"), "reading.field_out_of_place", "leakage on the dial");
}

TEST(ReadingCard, AsksWhatIsUnlikelyAndRefusesWhatIsImpossible) {
    auto over = leak_down_reading();
    over.held = bar("5.9");
    EXPECT_TRUE(checked(over)) << "held over set is for the screen to ask about";
    auto below = dry_reading();
    below.final = bar("-0.2");
    EXPECT_TRUE(checked(below)) << "a gauge below zero is odd, not impossible";
    for (const auto* digits : {"-1.01", "1000.1", "99999999"})
        expect_refused<Reading>(
            dry_reading(), [&](Reading& r) { r.final = bar(digits); }, "model.out_of_range", "-1 to 1000");
    expect_refused<Reading>(
        dry_reading(), [](Reading& r) { r.final = *TypedPressure::make("14504.5", units::psi); },
        "model.out_of_range", "14503.8");
    for (const int pulls : {-1, 100})
        expect_refused<Reading>(
            dry_reading(), [&](Reading& r) { r.pulls = pulls; }, "model.out_of_range", "0 to 99");
    for (const int cylinder : {0, -1, 100})
        expect_refused<Reading>(
            dry_reading(), [&](Reading& r) { r.cylinder = cylinder; }, "model.out_of_range", "Cylinder");
    expect_refused<Reading>(
        dry_reading(), [](Reading& r) { r.replaces = r.id; }, "reading.replaces_itself");
}

TEST(ExitCard, NamesANeighbourOnlyForItsHole) {
    ExitNote note;
    note.id = ExitNoteId::make(clock_);
    note.session = SessionId::make(clock_);
    note.at = noon;
    expect_refused<ExitNote>(
        note, [](ExitNote& n) { n.neighbour = 2; }, "exit.neighbour_out_of_place", "intake");
    expect_refused<ExitNote>(
        note, [](ExitNote& n) { n.cylinder = 0; }, "model.out_of_range");
    note.exit = Exit::next_plug_hole;
    note.neighbour = 2;
    expect_refused<ExitNote>(
        note, [](ExitNote& n) { n.neighbour = 1; }, "exit.own_neighbour");
    note.exit = Exit::crank_seals;
    note.neighbour.reset();
    note.cylinder = 0;
    EXPECT_TRUE(checked(note));
}

TEST(ClearanceCard, HasAFigure) {
    Clearance clearance;
    clearance.id = ClearanceId::make(clock_);
    clearance.session = SessionId::make(clock_);
    clearance.at = noon;
    clearance.found = mm("0");
    expect_refused<Clearance>(
        clearance, [](Clearance& c) { c.found.reset(); }, "clearance.empty");
    expect_refused<Clearance>(
        clearance, [](Clearance& c) { c.found = mm("-0.05"); }, "model.out_of_range");
    expect_refused<Clearance>(
        clearance, [](Clearance& c) { c.left = mm("15"); }, "model.out_of_range", "10");
    expect_refused<Clearance>(
        clearance, [](Clearance& c) { c.valve = 5; }, "model.out_of_range", "1 to 4");
}

TEST(Evidence, AttachmentsNotesAndPlanLines) {
    Attachment photo;
    photo.id = AttachmentId::make(clock_);
    photo.session = SessionId::make(clock_);
    photo.taken_at = noon;
    photo.sha256 = std::string(64, 'a');
    photo.media_type = "image/jpeg";
    photo.bytes = 1000;
    const auto refuse = [&](const std::function<void(Attachment&)>& spoil, std::string_view code) {
        expect_refused<Attachment>(photo, spoil, code);
    };
    refuse([](Attachment& a) { a.sha256.back() = 'A'; }, "attachment.bad_hash");
    refuse([](Attachment& a) { a.sha256.pop_back(); }, "attachment.bad_hash");
    refuse([](Attachment& a) { a.media_type = "audio/ogg"; }, "attachment.media_type");
    refuse([](Attachment& a) { a.media_type = "text/html"; }, "attachment.media_type");
    refuse([](Attachment& a) { a.bytes = 0; }, "attachment.size");
    refuse([](Attachment& a) { a.length = *TypedTime::make("3", Unit<TimeTag>{}); }, "attachment.length");
    refuse([](Attachment& a) { a.tie.to = TiedTo::reading; }, "tie.record");
    refuse([](Attachment& a) { a.tie.record = a.id.uuid; }, "tie.record");
    refuse([](Attachment& a) { a.tie.to = TiedTo::cylinder; }, "tie.cylinder_missing");
    refuse([](Attachment& a) { a.tie.cylinder = 1; }, "tie.cylinder_out_of_place");
    refuse([](Attachment& a) { a.tie.to = TiedTo::finding; }, "tie.finding");
    EXPECT_EQ(file_extension("image/jpeg"), "jpg");
    EXPECT_EQ(file_extension("audio/ogg"), "opus");
    EXPECT_EQ(file_extension("image/svg+xml"), std::nullopt);

    Note note;
    note.id = NoteId::make(clock_);
    note.session = photo.session;
    note.at = noon;
    expect_refused<Note>(
        note, [](Note& n) { n.done = true; }, "note.done");
    expect_refused<Note>(
        note, [](Note& n) { n.check = AskedCheck::staking; }, "note.check");
    note.kind = NoteKind::test_request;
    note.check = AskedCheck::leak_hunt;
    EXPECT_TRUE(checked(note));
    expect_refused<Note>(
        note, [](Note& n) { n.test = TestKind::wet; }, "note.check_or_test");

    PlanLine line;
    line.id = PlanLineId::make(clock_);
    line.session = photo.session;
    line.price = Money{"120,50", "EUR"};
    EXPECT_EQ(checked(line)->price->digits, "120.50");
    expect_refused<PlanLine>(
        line, [](PlanLine& l) { l.price->digits = "cheap"; }, "plan.price", "cheap");
    expect_refused<PlanLine>(
        line, [](PlanLine& l) { l.predicted_low = bar("9"), l.predicted_high = bar("8"); }, "model.crossed");
}

TEST(VisitCard, ReplacedReadingsDontCount) {
    auto first = dry_reading();
    auto again = first;
    again.id = ReadingId::make(clock_);
    again.replaces = first.id;
    auto third = first;
    third.id = ReadingId::make(clock_);
    third.replaces = again.id;
    auto repeat = first;
    repeat.id = ReadingId::make(clock_);
    repeat.taken_at.unix_ms -= 1;
    auto other = first;
    other.id = ReadingId::make(clock_);
    other.cylinder = 2;
    const std::vector<Reading> readings{first, again, third, repeat, other};
    EXPECT_THAT(standing(readings, TestKind::dry, 1), ElementsAre(&readings[2], &readings[3]));
    EXPECT_THAT(standing(readings, TestKind::dry, 2), ElementsAre(&readings[4]));
    EXPECT_TRUE(standing(readings, TestKind::wet, 1).empty());
    EXPECT_EQ(latest(readings, TestKind::dry, 1), &readings[2]);
    EXPECT_EQ(latest(readings, TestKind::dry, 9), nullptr);
}

/// Readings a minute apart; `replaced[i]` is the place of the one that reading i replaces, or -1.
std::vector<Reading> chained(const std::vector<int>& replaced) {
    std::vector<Reading> out;
    for (std::size_t i = 0; i < replaced.size(); ++i) {
        out.push_back(dry_reading());
        out.back().id = ReadingId::make(clock_);
        out.back().taken_at.unix_ms += static_cast<std::int64_t>(i) * 60'000;
    }
    for (std::size_t i = 0; i < replaced.size(); ++i)
        if (replaced[i] >= 0) out[i].replaces = out[static_cast<std::size_t>(replaced[i])].id;
    return out;
}

TEST(VisitCard, ReadingsThatReplaceEachOtherDontVanish) {
    const auto two = chained({1, 0});
    EXPECT_THAT(standing(two, TestKind::dry, 1), ElementsAre(&two[1]));
    EXPECT_EQ(latest(two, TestKind::dry, 1), &two[1]);
    const auto circle = chained({1, 2, 0, -1});
    EXPECT_THAT(standing(circle, TestKind::dry, 1), ElementsAre(&circle[2], &circle[3]));
    // A reading that replaces one of the circle stands for all of it, as for any chain.
    const auto led_in = chained({1, 0, 0});
    EXPECT_THAT(standing(led_in, TestKind::dry, 1), ElementsAre(&led_in[2]));
    const auto two_circles = chained({1, 0, 3, 2});
    EXPECT_THAT(standing(two_circles, TestKind::dry, 1), ElementsAre(&two_circles[1], &two_circles[3]));
}

TEST(VisitCard, AReadingOfAnotherPlaceReplacesNothing) {
    auto readings = chained({-1, 0, 0});
    readings[1].cylinder = 2;
    readings[2].test = TestKind::wet;
    EXPECT_THAT(standing(readings, TestKind::dry, 1), ElementsAre(&readings[0]));
}

TEST(VisitCard, TestersAreFoundById) {
    Dossier dossier;
    dossier.testers.resize(2);
    dossier.testers[0].id = TesterId::make(clock_);
    dossier.testers[1].id = TesterId::make(clock_);
    EXPECT_EQ(find_tester(dossier, dossier.testers[1].id), &dossier.testers[1]);
    EXPECT_EQ(find_tester(dossier, std::nullopt), nullptr);
    EXPECT_EQ(find_tester(dossier, TesterId::make(clock_)), nullptr);
}

}  // namespace
}  // namespace lapwing
