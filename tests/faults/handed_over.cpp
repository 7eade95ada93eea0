// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/faults/handed_over.h"

#include "core/base/atomic_file.h"
#include "core/exchange/readings_csv.h"
#include "core/store/attachment_files.h"
#include "core/workflow/full_backup.h"
#include "core/workflow/hand_over.h"

namespace lapwing::faults {
namespace {

const std::string session_file = "orchard-twin.lapwing";
const std::string readings = "orchard-twin.csv";
const std::string backup = "all.lapwing-backup";

const exchange::Progress go_on = [](std::size_t, std::size_t) { return true; };

fs::path beside(const Person& person, const std::string& name) {
    return person.folder.parent_path() / name;
}

Status told(Person& person, Result<std::vector<exchange::Gap>> written) {
    if (!written) return tl::unexpected(written.error());
    person.gaps = std::move(*written);
    return {};
}

}  // namespace

Deed hand_over_session_file() {
    const auto act = [](Person& person) -> Status {
        auto dossier = workflow::hand_over(*person.desk, {.engine = person.engine.id});
        if (!dossier) return tl::unexpected(dossier.error());
        const auto key = workflow::signing_key(*person.desk);
        if (!key) return tl::unexpected(key.error());
        exchange::Outgoing outgoing;
        outgoing.dossier = std::move(*dossier);
        outgoing.stored_at = [&](const Attachment& one) { return person.desk->files().path(one.sha256); };
        outgoing.at = person.clock.now();
        outgoing.key = &*key;
        return told(person, exchange::write_session_file(beside(person, session_file), outgoing));
    };
    return {"hand over a session file", act, {}, session_file};
}

Deed hand_over_readings() {
    const auto act = [](Person& person) -> Status {
        const auto dossier = workflow::hand_over(*person.desk, {.engine = person.engine.id});
        if (!dossier) return tl::unexpected(dossier.error());
        return write_atomically(beside(person, readings), exchange::readings_csv(*dossier));
    };
    return {"hand over the readings", act, {}, readings};
}

Deed back_up_everything() {
    const auto act = [](Person& person) -> Status {
        auto dossier = person.desk->dossier(person.engine.id);
        if (!dossier) return tl::unexpected(dossier.error());
        person.backed_up = std::move(*dossier);
        return told(person, workflow::back_up(*person.desk, beside(person, backup), go_on));
    };
    return {"back up everything", act, {}, backup};
}

Deed restore_everything() {
    const auto act = [](Person& person) -> Status {
        const auto restored =
            workflow::restore(*person.desk, beside(person, backup), beside(person, "scratch"), go_on);
        if (!restored) return tl::unexpected(restored.error());
        EXPECT_EQ(restored->engines, restored->of);
        EXPECT_TRUE(restored->damaged.empty());
        return {};
    };
    return {.name = "restore everything", .act = act, .piecemeal = true};
}

std::map<std::string, std::string> files_beside(const Image& image) {
    auto files = image.files;
    std::erase_if(files, [](const auto& file) { return file.first.starts_with("library"); });
    return files;
}

std::map<std::string, std::string> handed_over(const Image& image) {
    auto files = files_beside(image);
    std::erase_if(files, [](const auto& file) {
        return file.first.starts_with('.') || file.first.starts_with("scratch/");
    });
    return files;
}

std::string fault_of(const Person& person, const std::string& name) {
    const auto file = beside(person, name);
    const auto scratch = person.outside / "scratch";
    if (name == session_file) {
        const auto checked = exchange::check_session_file(file, scratch);
        return checked.problems.empty() ? std::string() : checked.problems.front().english;
    }
    if (name == backup) {
        const auto checked = exchange::BackupReader::open(file, scratch, go_on);
        if (!checked) return checked.error().english;
        return checked->damaged().empty() ? std::string() : checked->damaged().front().why.english;
    }
    constexpr std::size_t longest = 100'000;
    const auto bytes = read_file(file, longest);
    const auto dossier = person.desk->dossier(person.engine.id);
    if (!bytes || !dossier) return "not there";
    return *bytes == exchange::readings_csv(*dossier) ? std::string() : "other readings";
}

}  // namespace lapwing::faults
