// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/faults/flow.h"

#include <algorithm>
#include <atomic>
#include <cerrno>
#include <future>
#include <thread>

#include "core/base/atomic_file.h"
#include "core/base/sha256.h"
#include "core/exchange/session_file.h"
#include "core/store/backup.h"
#include "core/store/tape.h"
#include "core/workflow/bring_in.h"
#include "core/workflow/clearances.h"
#include "core/workflow/engines.h"
#include "core/workflow/exits.h"
#include "core/workflow/full_backup.h"
#include "core/workflow/readings.h"
#include "core/workflow/remarks.h"
#include "core/workflow/sessions.h"
#include "core/workflow/testers.h"
#include "core/workflow/voice_notes.h"
#include "tests/faults/handed_over.h"

namespace lapwing::faults {
namespace {

using namespace workflow;

/// A photo by its header (ITU-T T.81), long enough to be written in several pieces.
std::string photo_bytes(char mark) {
    std::string out("\xff\xd8\xff\xfe\x00\x03", 6);
    out += mark;
    out += std::string("\xff\xc0\x00\x0b\x08\x00\x10\x00\x20\x01\x01\x11\x00\xff\xd9", 15);
    for (int i = 0; i < 20'000; ++i)
        out += static_cast<char>(i * 31 + mark);
    return out;
}

std::span<const unsigned char> as_bytes(const std::string& text) {
    return {reinterpret_cast<const unsigned char*>(text.data()), text.size()};
}

template <class T>
Status status_of(const Result<T>& result) {
    return result ? Status() : tl::unexpected(result.error());
}

template <class Ask>
Status wait(Ask&& ask) {
    std::promise<Result<Step>> answer;
    ask([&](Result<Step> step) { answer.set_value(std::move(step)); });
    return status_of(answer.get_future().get());
}

Status keep_photo(Person& person) {
    const auto photo = photo_bytes('p');
    const auto kept = person.desk->files().keep(as_bytes(photo));
    if (!kept) return status_of(kept);
    auto attachment = sample::attachment(person.session.id, kept->sha256, kept->bytes);
    if (person.photo) attachment.id = person.photo->id;
    person.photo = attachment;
    return person.run(save_attachment(attachment));
}

Status speak(Person& person) {
    Attachment note = sample::attachment(person.session.id, std::string(64, '0'), 1);
    note.kind = AttachmentKind::voice;
    note.photo_of.reset();
    auto recording = person.desk->recordings().begin(note);
    if (!recording) return status_of(recording);
    auto tape = store::Tape::start(recording->sound);
    if (!tape) return status_of(tape);
    const std::vector<std::int16_t> second(store::tape_rate, 1234);
    if (auto added = tape->add(second); !added) return added;
    person.recording = *recording;
    return {};
}

Status keep_voice(Person& person) {
    auto note = keep_sound(person.desk->files(), *person.recording, {});
    if (!note) return status_of(note);
    if (!*note) return fail("test.no_sound", "nothing was recorded");
    if (auto kept = person.run(save_attachment(**note)); !kept) return kept;
    person.desk->recordings().forget(*person.recording);
    return {};
}

Status bring_in_file(Person& person) {
    auto incoming =
        exchange::read_session_file(file_from_elsewhere(person.outside), person.outside / "scratch");
    if (!incoming) return status_of(incoming);
    if (auto kept = keep_files(*person.desk, *incoming); !kept) return kept;
    return person.run(bring_in(incoming->dossier));
}

/// A file in which a mentor changed the engine while it was changed here.
Status bring_in_conflict(Person& person) {
    auto dossier = person.desk->dossier(person.engine.id);
    if (!dossier) return status_of(dossier);
    auto& engine = dossier->engine;
    engine.name = "Orchard twin, mentor's";
    engine.lineage.revisions = {{Uuid::parse("00000000-0000-4000-8000-000000000001").value(),
                                 Timestamp{person.clock.now().unix_ms + 5, 60}}};
    return person.run(bring_in(*dossier));
}

Status reopen(Person& person) {
    person.close();
    person.clock.move_by(std::chrono::hours(25));
    if (auto opened = person.open(); !opened) return opened;
    // The daily backup is made when nothing else is to do; it is part of what may break.
    const store::Places places{person.folder};
    for (int i = 0; i < 400 && person.told.empty() && person.troubles().empty() &&
                    store::backup_is_due(places, person.clock.now());
         ++i)
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
    return {};
}

}  // namespace

Person::Person(std::filesystem::path library, std::filesystem::path elsewhere)
    : folder(std::move(library)), outside(std::move(elsewhere)) {
    session.compression_gauge = gauge.id;
}

Status Person::open() {
    auto opened = Desk::open(folder, clock);
    if (!opened) return status_of(opened);
    desk = std::move(opened->desk);
    told = std::move(opened->told);
    desk->on_trouble([this](const Error& error) {
        const std::lock_guard lock(mutex_);
        troubles_.push_back(error);
    });
    return {};
}

std::vector<Error> Person::troubles() const {
    const std::lock_guard lock(mutex_);
    return troubles_;
}

Status Person::run(Intent intent) {
    clock.move_by(std::chrono::seconds(1));
    return wait([&](Desk::Done done) { desk->run(std::move(intent), std::move(done)); });
}

Status Person::undo(std::int64_t step) {
    return wait([&](Desk::Done done) { desk->undo(step, std::move(done)); });
}

Status Person::redo(std::int64_t step) {
    return wait([&](Desk::Done done) { desk->redo(step, std::move(done)); });
}

Status Person::type(const std::string& text) {
    const auto troubles_before = troubles().size();
    // One that is refused waits on, and may be stored long after this.
    const auto stored = std::make_shared<std::atomic<bool>>(false);
    desk->keep_draft("pad", text, [stored] { *stored = true; });
    desk->flush();
    if (*stored) return {};
    const auto all = troubles();
    if (all.size() == troubles_before)
        return fail("test.silent", "a draft was not stored and nobody was told");
    return tl::unexpected(all.back());
}

bool may_fail(const std::string& call, int system_error) {
    const bool takes_room =
        !call.starts_with("open") && !call.starts_with("remove") && !call.starts_with("truncate");
    return system_error != ENOSPC || takes_room;
}

bool tells(const Error& error, int system_error) {
    if (system_error == ENOSPC) return error.code == "store.full" || error.code == "file.no_space";
    // A file that was written and could not be looked over says why within its sentence.
    const bool looked_over = error.code == "session_file.not_readable" &&
                             error.english.find("Input/output error") != std::string::npos;
    return looked_over || error.code == "store.io" || error.code == "file.failed" ||
           error.code == "store.unreadable_file";
}

Holdings Holdings::of(const Desk& desk) {
    Holdings all{desk.engines(), desk.testers(), {}, desk.steps(), desk.named_keys()};
    for (const auto& summary : all.engines)
        if (auto dossier = desk.dossier(summary.id)) all.dossiers.push_back(std::move(*dossier));
    return all;
}

bool Holdings::operator==(const Holdings& other) const {
    const auto key = [](const auto& one) { return std::pair(one.public_key, one.name); };
    return engines == other.engines && testers == other.testers && dossiers == other.dossiers &&
           steps == other.steps && std::ranges::equal(keys, other.keys, {}, key, key);
}

std::vector<std::string> lost_files(const Desk& desk, const Holdings& holdings) {
    std::vector<std::string> lost;
    for (const auto& dossier : holdings.dossiers)
        for (const auto& visit : dossier.visits)
            for (const auto& attachment : visit.attachments) {
                constexpr std::size_t longest = 10'000'000;
                const auto bytes = read_file(desk.files().path(attachment.sha256), longest);
                Sha256 sum;
                if (bytes) sum.add(*bytes);
                if (!bytes || sum.hex() != attachment.sha256) lost.push_back(attachment.sha256);
            }
    return lost;
}

std::filesystem::path file_from_elsewhere(const std::filesystem::path& folder) {
    const auto file = folder / "from-a-friend.lapwing";
    if (std::filesystem::exists(file)) return file;
    const auto photo = photo_bytes('f');
    Sha256 sum;
    sum.add(photo);
    const auto sha256 = sum.hex();
    std::filesystem::create_directories(folder / "scratch");
    EXPECT_TRUE(write_atomically(folder / "photo", photo));
    exchange::Outgoing outgoing;
    outgoing.dossier.engine = sample::engine("A friend's twin");
    auto& visit = outgoing.dossier.visits.emplace_back();
    visit.session = sample::session(outgoing.dossier.engine.id);
    visit.readings = {sample::reading(visit.session.id)};
    visit.attachments = {sample::attachment(visit.session.id, sha256, static_cast<long long>(photo.size()))};
    outgoing.stored_at = [&](const Attachment&) { return folder / "photo"; };
    outgoing.at = sample::clock().now();
    const auto written = exchange::write_session_file(file, outgoing);
    EXPECT_TRUE(written) << sample::why(written);
    return file;
}

std::vector<Deed> main_flow() {
    const auto run = [](auto make) { return [make](Person& person) { return person.run(make(person)); }; };
    const auto type = [](const std::string& text) {
        return Deed{"type " + text, [text](Person& person) { return person.type(text); }, text};
    };
    const auto last = [](Person& person) { return person.desk->last_step().value_or(Step{}).number; };
    const auto undone = [](Person& person) { return person.desk->last_undone().value_or(Step{}).number; };
    const auto undo = [last](Person& person) { return person.undo(last(person)); };
    const auto redo = [undone](Person& person) { return person.redo(undone(person)); };
    return {
        {"open a new library", [](Person& person) { return person.open(); }, {}},
        {"add a gauge", run([](Person& person) { return save_tester(person.gauge); }), {}},
        {"add an engine", run([](Person& person) { return save_engine(person.engine); }), {}},
        {"open a session",
         run([](Person& person) { return open_session(person.session.id, person.engine.id, "As found"); }),
         {}},
        type("9"),
        type("9.5"),
        {"keep a reading", run([](Person& person) { return keep_reading(person.reading); }), {}},
        type("9.6"),
        {"redo the reading",
         run([](Person& person) {
             return redo_reading(person.reading.id,
                                 sample::reading(person.session.id, TestKind::dry, 1, "9.6"));
         }),
         {}},
        {"undo", undo, {}},
        {"redo", redo, {}},
        {"keep an exit", run([](Person& person) { return keep_exit(person.exit); }), {}},
        {"listen again",
         run([](Person& person) {
             return keep_exit(sample::exit_note(person.session.id, 1, Exit::intake, Loudness::strong));
         }),
         {}},
        {"keep a clearance",
         run([](Person& person) { return keep_clearance(sample::clearance(person.session.id)); }),
         {}},
        {"keep a photo", keep_photo, {}},
        {"speak", speak, {}},
        {"keep the voice note", keep_voice, {}},
        {"take the photo out", run([](Person& person) { return remove_attachment(person.photo->id); }), {}},
        {"bring the photo back", undo, {}},
        {"write a note", run([](Person& person) { return save_note(sample::note(person.session.id)); }), {}},
        {"plan",
         run([](Person& person) { return save_plan_line(sample::plan_line(person.session.id)); }),
         {}},
        hand_over_session_file(),
        hand_over_readings(),
        back_up_everything(),
        {"bring in a file", bring_in_file, {}},
        {"name its signer",
         [](Person& person) {
             std::promise<Status> answer;
             person.desk->name_key(std::string(64, 'a'), "The mentor",
                                   [&](const Status& status) { answer.set_value(status); });
             return answer.get_future().get();
         },
         {}},
        {"rename the engine",
         run([](Person& person) {
             auto renamed = person.engine;
             renamed.name = "Orchard twin, ours";
             return save_engine(renamed);
         }),
         {}},
        {"bring in another version", bring_in_conflict, {}},
        {"settle",
         run([](Person& person) { return settle(RecordKind::engine, person.engine.id.uuid, 1); }),
         {}},
        {"close and open again a day later", reopen, {}},
        {"answer", run([](Person& person) { return set_answer(person.session.id, OwnerAnswer::yes); }), {}},
        {"delete the engine", run([](Person& person) { return remove_engine(person.engine.id); }), {}},
        {"bring the engine back", undo, {}},
        // In the place of those of before.
        hand_over_session_file(),
        hand_over_readings(),
        back_up_everything(),
        {"delete the engine again", run([](Person& person) { return remove_engine(person.engine.id); }), {}},
        restore_everything(),
        type("10.1"),
        {"close",
         [](Person& person) {
             person.close();
             return Status();
         },
         {}},
    };
}

}  // namespace lapwing::faults
