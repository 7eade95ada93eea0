// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>
#include <mutex>

#include "core/exchange/session_file.h"
#include "core/workflow/desk.h"
#include "tests/core/workflow/desk_fixture.h"

/// The job from an empty phone to a closed visit, deed by deed, and what the library must hold after each.
namespace lapwing::faults {

/// All that a person can look up again.
struct Holdings {
    std::vector<store::EngineSummary> engines;
    std::vector<Tester> testers;
    std::vector<Dossier> dossiers;
    std::vector<store::Step> steps;
    std::vector<store::Queries::NamedKey> keys;

    static Holdings of(const workflow::Desk& desk);
    bool operator==(const Holdings& other) const;
};

/// Whether that call (Disk::call) ever fails with that system error.
bool may_fail(const std::string& call, int system_error);
/// Whether the error says what happened when a call failed with that system error.
bool tells(const Error& error, int system_error);

/// Photos and voice notes that a record names and whose bytes are not there as they were kept.
std::vector<std::string> lost_files(const workflow::Desk& desk, const Holdings& holdings);

/// A person at work with a library in `folder`. What a deed needs from an earlier one stands here.
struct Person {
    std::filesystem::path folder;   ///< of the library
    std::filesystem::path outside;  ///< another folder: files that come in, and room for unpacking
    workflow::MovedClock clock;
    std::unique_ptr<workflow::Desk> desk;
    std::vector<Error> told;  ///< on opening

    Engine engine = sample::engine("Orchard twin");
    Tester gauge = sample::tester();
    Session session = sample::session(engine.id);
    Reading reading = sample::reading(session.id);
    ExitNote exit = sample::exit_note(session.id);
    std::optional<store::Recording> recording;
    std::optional<Attachment> photo;
    std::optional<Dossier> backed_up;  ///< the engine, as the backup of everything has it
    std::vector<exchange::Gap> gaps;   ///< told by what was handed over last

    Person(std::filesystem::path library, std::filesystem::path elsewhere);
    Person(const Person&) = delete;
    Person& operator=(const Person&) = delete;
    /// The desk's threads tell their troubles here until it is closed.
    ~Person() { close(); }
    Status open();
    void close() { desk.reset(); }
    Status run(workflow::Intent intent);
    Status undo(std::int64_t step);
    Status redo(std::int64_t step);
    Status type(const std::string& text);  ///< a draft
    [[nodiscard]] std::vector<Error> troubles() const;

private:
    mutable std::mutex mutex_;
    std::vector<Error> troubles_;
};

struct Deed {
    std::string name;
    std::function<Status(Person&)> act;  ///< may be done again after it failed
    std::optional<std::string> draft;    ///< what the draft is after it, where it sets one
    std::string hands_over = {};         ///< the file that it writes beside the library
    bool piecemeal = false;              ///< when it fails in between, what it did until then stays
};

/// Everything that writes. At most one command is confirmed in each deed.
std::vector<Deed> main_flow();

/// A friend's session file in `folder`, made at the first call.
std::filesystem::path file_from_elsewhere(const std::filesystem::path& folder);

}  // namespace lapwing::faults
