// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <gtest/gtest.h>
#include <stdlib.h>

#include <filesystem>
#include <string>

#include "core/record/record.h"

/// Made-up records and a folder of their own for tests of the library. None of the figures is a reference.
namespace lapwing::sample {

/// A new folder that goes away with the object.
class Folder {
public:
    Folder() {
        std::string name = (std::filesystem::temp_directory_path() / "lapwing-test-XXXXXX").string();
        if (mkdtemp(name.data()) == nullptr) throw std::runtime_error("no temporary folder");
        path_ = name;
    }
    ~Folder() {
        std::error_code error;
        std::filesystem::remove_all(path_, error);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

inline const FixedClock& clock() {
    static const FixedClock fixed(parse_rfc3339("2026-03-14T09:30:00+01:00").value());
    return fixed;
}

inline Engine engine(const std::string& name = "Twin on the bench", int cylinders = 2) {
    Engine engine;
    engine.id = EngineId::make(clock());
    engine.made_at = clock().now();
    engine.name = name;
    engine.tags = {"twin", "bench"};
    engine.cylinders.clear();
    for (int number = 1; number <= cylinders; ++number) {
        Cylinder cylinder;
        cylinder.number = number;
        engine.cylinders.push_back(cylinder);
    }
    lay_out(engine);
    return engine;
}

inline Tester tester(TesterKind kind = TesterKind::compression_gauge, const std::string& name = "Red hose") {
    Tester tester;
    tester.id = TesterId::make(clock());
    tester.made_at = clock().now();
    tester.kind = kind;
    tester.name = name;
    tester.gauge.full_scale = TypedPressure::make("20", units::bar).value();
    return tester;
}

inline Session session(EngineId engine, const std::string& title = "As found") {
    Session session;
    session.id = SessionId::make(clock());
    session.engine = engine;
    session.opened_at = clock().now();
    session.title = title;
    return session;
}

inline Reading reading(SessionId session, TestKind test = TestKind::dry, int cylinder = 1,
                       const std::string& bar = "9.5") {
    Reading reading;
    reading.id = ReadingId::make(clock());
    reading.session = session;
    reading.test = test;
    reading.cylinder = cylinder;
    reading.taken_at = clock().now();
    const auto pressure = TypedPressure::make(bar, units::bar).value();
    if (test == TestKind::leak_down || test == TestKind::crankcase) {
        reading.set = TypedPressure::make("6.0", units::bar).value();
        reading.held = pressure;
    } else {
        reading.final = pressure;
    }
    if (test == TestKind::crankcase) reading.hold = TypedTime::make("60", Unit<TimeTag>{}).value();
    return reading;
}

inline ExitNote exit_note(SessionId session, int cylinder = 1, Exit exit = Exit::intake,
                          Loudness loudness = Loudness::clear) {
    ExitNote note;
    note.id = ExitNoteId::make(clock());
    note.session = session;
    note.cylinder = cylinder;
    note.exit = exit;
    note.loudness = loudness;
    note.at = clock().now();
    return note;
}

inline Clearance clearance(SessionId session, int cylinder = 1, ValveSide side = ValveSide::exhaust) {
    Clearance clearance;
    clearance.id = ClearanceId::make(clock());
    clearance.session = session;
    clearance.cylinder = cylinder;
    clearance.side = side;
    clearance.found = TypedLength::make("0.05", units::mm).value();
    clearance.at = clock().now();
    return clearance;
}

inline Note note(SessionId session, const std::string& text = "Ticks when warm") {
    Note note;
    note.id = NoteId::make(clock());
    note.session = session;
    note.text = text;
    note.at = clock().now();
    return note;
}

inline PlanLine plan_line(SessionId session, const std::string& work = "Lap the exhaust valve") {
    PlanLine line;
    line.id = PlanLineId::make(clock());
    line.session = session;
    line.work = work;
    return line;
}

inline Attachment attachment(SessionId session, const std::string& sha256, long long bytes = 3) {
    Attachment attachment;
    attachment.id = AttachmentId::make(clock());
    attachment.session = session;
    attachment.sha256 = sha256;
    attachment.media_type = "image/jpeg";
    attachment.photo_of = PhotoOf::gauge;
    attachment.bytes = bytes;
    attachment.taken_at = clock().now();
    return attachment;
}

/// "" or the sentence, to show in a failed test.
template <class T>
std::string why(const Result<T>& result) {
    return result ? std::string() : result.error().code + ": " + result.error().english;
}

}  // namespace lapwing::sample
