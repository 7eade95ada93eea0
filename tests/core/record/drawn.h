// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cmath>
#include <random>
#include <set>

#include "core/record/fields.h"
#include "core/record/record.h"

namespace lapwing::test {

/// Draws records that can exist, with anything in them that a person could have put there. The field list of
/// core/record/fields.h is walked, so a new field is drawn without a change here; what the model asks of
/// several fields together is mended afterwards.
class Drawn {
public:
    explicit Drawn(std::uint64_t seed) : random_(seed) {}

    int number(int low, int high) { return std::uniform_int_distribution(low, high)(random_); }
    bool coin() { return number(0, 1) == 1; }

    std::string text() {
        static constexpr auto pieces = std::to_array<std::string_view>(
            {"valve", " ",      "ring", "ÄÖÜ ß", "\"",   "\\", "\n", "\r\n", ",", ";",
             "=1+1",  "80 psi", "½",    "\t",    "雲雀", "🐦",  "</", "\x01", "'", "{}"});
        std::string out;
        for (int i = number(0, 5); i > 0; --i)
            out += pieces[static_cast<std::size_t>(number(0, pieces.size() - 1))];
        return out;
    }
    Uuid uuid() {
        std::string hex;
        for (int i = 0; i < 36; ++i)
            hex += i == 8 || i == 13 || i == 18 || i == 23 ? '-' : "0123456789abcdef"[number(0, 15)];
        return *Uuid::parse(hex);
    }

    // One field

    template <class T>
    void operator()(const char*, T& out) {
        draw(out);
    }

    void draw(std::string& out) { out = text(); }
    void draw(bool& out) { out = coin(); }
    void draw(int& out) { out = number(1, 4); }
    void draw(long long& out) { out = number(1, 2'000'000'000); }
    void draw(Uuid& out) { out = uuid(); }
    template <class Tag>
    void draw(Id<Tag>& out) {
        out.uuid = uuid();
    }
    void draw(Timestamp& out) {
        out = {std::uniform_int_distribution<std::int64_t>(0, 4'000'000'000'000)(random_),
               number(-72, 72) * 15};
    }
    template <class Tag>
    void draw(Typed<Tag>& out) {
        const auto unit =
            *Unit<Tag>::find(Unit<Tag>::all()[static_cast<std::size_t>(
                                                  number(0, static_cast<int>(Unit<Tag>::all().size()) - 1))]
                                 .symbol);
        const auto [low, high] = range(Tag{});
        const double value =
            unit.number(Quantity<Tag>::from_si(std::uniform_real_distribution(low, high)(random_)));
        const int significant = 3 - static_cast<int>(std::floor(std::log10(std::abs(value) + 1e-9)));
        out = *Typed<Tag>::make(digits_from(value, std::clamp(significant + number(0, 3), 0, 12)), unit);
    }
    template <class T>
    void draw(std::optional<T>& out) {
        out.reset();
        if (coin()) draw(out.emplace());
    }
    template <class T>
    void draw(std::vector<T>& out) {
        out.resize(static_cast<std::size_t>(number(0, 3)));
        for (auto& one : out)
            draw(one);
    }
    template <class T>
    void draw(T& out) {
        if constexpr (std::is_enum_v<T>)
            out = static_cast<T>(number(0, static_cast<int>(Words<T>::list.size()) - 1));
        else {
            record::fields(*this, out);
            mend(out);
            if constexpr (record::CarriesExtra<T>) {
                // Other versions are whole records: tests that want some make them by merging.
                out.lineage.other_versions.clear();
                std::ranges::sort(out.lineage.revisions, {}, &Revision::library);
            }
        }
    }

    // Whole dossiers

    Dossier dossier() {
        Dossier out;
        draw(out.engine);
        draw(out.testers);
        out.visits.resize(static_cast<std::size_t>(number(0, 3)));
        for (auto& visit : out.visits) {
            draw(visit);
            visit.session.engine = out.engine.id;
            const auto move_in = [&](auto& all) {
                for (auto& one : all)
                    one.session = visit.session.id;
            };
            move_in(visit.readings);
            move_in(visit.exits);
            move_in(visit.clearances);
            move_in(visit.attachments);
            move_in(visit.notes);
            move_in(visit.plan);
        }
        return *dossier_of(records_of(out));
    }

private:
    struct Range {
        double low, high;
    };
    static Range range(PressureTag) { return {1e3, 1e7}; }
    static Range range(LengthTag) { return {2e-4, 8e-3}; }
    static Range range(VolumeTag) { return {1e-8, 9e-4}; }
    static Range range(TemperatureTag) { return {250.0, 330.0}; }
    static Range range(AngleTag) { return {0.2, 1.5}; }
    static Range range(RotationTag) { return {1.0, 200.0}; }
    static Range range(TimeTag) { return {1.0, 7200.0}; }
    static Range range(VoltageTag) { return {1.0, 28.0}; }
    static Range range(RatioTag) { return {0.02, 0.98}; }
    static Range range(UsageTag) { return {0.0, 300'000.0}; }

    template <class T>
    void mend(T&) {}

    static void name(std::string& text) {
        if (text.find_first_not_of(" \t\r\n") == std::string::npos) text = "Orchard";
    }
    void mend(ClearanceRange& range) {
        if (range.low.si() > range.high.si()) std::swap(range.low, range.high);
    }
    void mend(FactoryLimits& limits) {
        if (coin())
            limits.low.reset();
        else
            limits.lowest.reset(), limits.high.reset();
        limits.lowest = limits.high;
    }
    void mend(Engine& engine) {
        name(engine.name);
        engine.cylinders.resize(static_cast<std::size_t>(number(1, 16)));
        std::vector<int> numbers;
        int next = 0;
        for (auto& cylinder : engine.cylinders) {
            cylinder.number = next += number(1, 6);
            numbers.push_back(cylinder.number);
        }
        std::ranges::shuffle(numbers, random_);
        engine.firing_order = coin() ? numbers : std::vector<int>{};
        engine.firing_intervals = coin() ? even_intervals(engine) : std::vector<TypedAngle>{};
        engine.joined_intakes.clear();
        if (numbers.size() > 2 && coin()) engine.joined_intakes = {{numbers[0], numbers[1], numbers[2]}};
        engine.joined_exhausts.clear();
        if (numbers.size() > 3 && coin())
            engine.joined_exhausts = {{numbers[0], numbers[1]}, {numbers[2], numbers[3]}};
        if (engine.stroke && engine.rod) engine.rod->value = engine.stroke->value;
        if (engine.compression_ratio)
            engine.compression_ratio->value = *TypedRatio::make(coin() ? "8.60" : "22", units::one);
    }
    void mend(Gauge& gauge) {
        gauge.full_scale = *TypedPressure::make("400.0", units::bar);
        gauge.accuracy = gauge.scheme == AccuracyScheme::unknown    ? ""
                         : gauge.scheme == AccuracyScheme::en_837_1 ? "1.6"
                                                                    : "B";
    }
    void mend(Adapter& adapter) { name(adapter.name); }
    void mend(Tester& tester) { name(tester.name); }
    template <class T, class Key>
    static void once(std::vector<T>& all, Key key) {
        std::set<std::decay_t<decltype(key(all.front()))>> seen;
        std::erase_if(all, [&](const T& one) { return !seen.insert(key(one)).second; });
    }
    void mend(Session& session) {
        once(session.complaint.symptoms, [](Symptom symptom) { return symptom; });
        once(session.prepare, [](const PrepareMark& mark) { return mark.step; });
        if (session.conditions.station_pressure)
            session.conditions.station_pressure = *TypedPressure::make("29.92", units::in_hg);
    }
    void mend(Reading& reading) {
        const bool cranking = reading.test == TestKind::dry || reading.test == TestKind::wet;
        if (cranking) {
            if (!reading.final) draw(reading.final.emplace());
            reading.set.reset();
            reading.held.reset();
            reading.dial_loss.reset();
        } else {
            draw(reading.set.emplace());
            draw(reading.held.emplace());
            if (reading.test != TestKind::leak_down) reading.dial_loss.reset();
            if (reading.dial_loss) {
                reading.dial_loss = *TypedRatio::make(std::to_string(number(0, 100)), units::percent);
                reading.held = held_by_dial(*reading.set, *reading.dial_loss);
            }
            reading.final.reset();
            reading.first.reset();
            reading.pulls.reset();
            reading.cranked_by = CrankedBy::unknown;
        }
        reading.hold.reset();
        if (reading.test == TestKind::crankcase) draw(reading.hold.emplace());
        if (reading.test != TestKind::wet) {
            reading.oil_volume.reset();
            reading.oil_name.clear();
        }
    }
    void mend(ExitNote& note) {
        if (note.exit != Exit::next_plug_hole || note.neighbour == note.cylinder) note.neighbour.reset();
    }
    void mend(Clearance& clearance) {
        if (!clearance.found) clearance.left = *TypedLength::make("0.15", units::mm);
    }
    void mend(Tie& tie) {
        tie = {.to = tie.to, .record = {}, .cylinder = {}, .finding = {}};
        if (tie.to == TiedTo::cylinder)
            tie.cylinder = number(1, 99);
        else if (tie.to == TiedTo::finding)
            tie.finding = "rings";
        else if (tie.to != TiedTo::session)
            tie.record = uuid();
    }
    void mend(Attachment& attachment) {
        attachment.sha256.clear();
        for (int i = 0; i < 64; ++i)
            attachment.sha256 += "0123456789abcdef"[number(0, 15)];
        if (attachment.kind == AttachmentKind::photo) {
            attachment.media_type = "image/jpeg";
            attachment.length.reset();
        } else {
            attachment.media_type = coin() ? "audio/ogg" : "audio/wav";
            attachment.photo_of.reset();
            attachment.read_value.reset();
            attachment.read_uncertainty.reset();
            attachment.read_confidence.reset();
            attachment.read_refusal.clear();
            attachment.read_settled.reset();
        }
    }
    void mend(Note& note) {
        const bool request = note.kind == NoteKind::test_request;
        note.done = note.done && request;
        if (!request) note.test.reset();
        if (!request || note.test) note.check.reset();
        if (note.kind != NoteKind::other_cause && note.kind != NoteKind::my_call) note.cause.reset();
    }
    void mend(Money& money) {
        money.digits = "120.50";
        money.currency = "EUR";
    }
    void mend(PlanLine& line) { line.predicted_high = line.predicted_low; }

    std::mt19937_64 random_;
};

}  // namespace lapwing::test
