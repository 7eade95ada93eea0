// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// A library without a screen, for the Python tests beside this file and for the benchmark:
//   make FOLDER ENGINES PHOTOS BYTES   so many engines, each with so many photos of so many bytes
//   add FOLDER FILE TYPE               a photo, made keepable, or a voice note in its first engine
//   hand-over FOLDER FILE              its first engine as a signed session file
//   bring FOLDER FILE                  reads and merges a session file
//   back-up FOLDER FILE                everything as one file
//   restore FOLDER FILE                merges such a file
//   show FOLDER                        every engine's record and session.json, one after the other
// Prints the seconds it took, or code and sentence; what is lost or damaged on lines of its own, "lost: ..."
// and "damaged: ...". Exit codes: 0 done, 3 refused. The last line on standard error is the peak memory,
// "VmHWM: N kB".

#include <chrono>
#include <future>
#include <iostream>
#include <span>

#include "core/base/atomic_file.h"
#include "core/exchange/session_file.h"
#include "core/store/attachment_files.h"
#include "core/vision/photo.h"
#include "core/workflow/bring_in.h"
#include "core/workflow/full_backup.h"
#include "core/workflow/hand_over.h"
#include "tests/core/exchange/packed.h"

namespace {

using namespace lapwing;
using namespace lapwing::workflow;

const SystemClock system_clock;

int refused(const Error& error) {
    std::cout << error.code << '\n' << error.english << '\n';
    return 3;
}

Result<Step> run(Desk& desk, Intent intent) {
    std::promise<Result<Step>> answer;
    desk.run(std::move(intent), [&](Result<Step> step) { answer.set_value(std::move(step)); });
    return answer.get_future().get();
}

/// Bytes that don't pack, behind a header that says "photo".
std::string photo(std::size_t bytes, std::mt19937_64& random) {
    std::string out = test::jpeg("x");
    while (out.size() < bytes) {
        const auto word = random();
        out.append(reinterpret_cast<const char*>(&word), sizeof word);
    }
    return out;
}

int make(Desk& desk, int engines, int photos, std::size_t bytes) {
    std::mt19937_64 random(1);
    for (int i = 0; i < engines; ++i) {
        Dossier dossier;
        dossier.engine = test::Drawn(static_cast<std::uint64_t>(i) + 1).dossier().engine;
        dossier.engine.id = EngineId::make(system_clock);
        auto& visit = dossier.visits.emplace_back();
        visit.session.id = SessionId::make(system_clock);
        visit.session.engine = dossier.engine.id;
        visit.session.opened_at = system_clock.now();
        for (int k = 0; k < photos; ++k) {
            const auto data = photo(bytes, random);
            const auto kept =
                desk.files().keep({reinterpret_cast<const unsigned char*>(data.data()), data.size()});
            if (!kept) return refused(kept.error());
            Attachment one;
            one.id = AttachmentId::make(system_clock);
            one.session = visit.session.id;
            one.taken_at = system_clock.now();
            one.media_type = "image/jpeg";
            one.sha256 = kept->sha256;
            one.bytes = kept->bytes;
            visit.attachments.push_back(one);
        }
        if (auto done = run(desk, bring_in(dossier)); !done) return refused(done.error());
    }
    return 0;
}

void tell(const std::vector<exchange::Gap>& gaps) {
    for (const auto& gap : gaps)
        std::cout << "lost: " << exchange::text_of(gap) << '\n';
}

void tell(const std::vector<exchange::Whereabouts>& photos) {
    for (const auto& photo : photos)
        std::cout << "tells where: " << exchange::text_of(photo) << '\n';
}

int add(Desk& desk, const std::string& file, const std::string& type) {
    auto data = test::bytes_of(file);
    const bool is_photo = type.starts_with("image/");
    if (is_photo) {
        const auto keepable = vision::make_keepable(std::as_bytes(std::span(data)));
        if (!keepable) return refused(keepable.error());
        data.assign(reinterpret_cast<const char*>(keepable->data()), keepable->size());
    }
    const auto kept = desk.files().keep({reinterpret_cast<const unsigned char*>(data.data()), data.size()});
    if (!kept) return refused(kept.error());
    Attachment one;
    one.id = AttachmentId::make(system_clock);
    one.session = desk.sessions(desk.engines().front().id).front().id;
    one.kind = is_photo ? AttachmentKind::photo : AttachmentKind::voice;
    one.taken_at = system_clock.now();
    one.media_type = type;
    one.sha256 = kept->sha256;
    one.bytes = kept->bytes;
    const auto done = run(desk, [&](const Now&) -> Result<Command> {
        return Command{"attachment.add", {}, {Put{one}}, true};
    });
    return done ? 0 : refused(done.error());
}

int hand_over_first(const Desk& desk, const std::string& file) {
    auto dossier = hand_over(desk, {desk.engines().front().id, {}, false});
    if (!dossier) return refused(dossier.error());
    const auto key = signing_key(desk);
    if (!key) return refused(key.error());
    exchange::Outgoing outgoing;
    outgoing.dossier = std::move(*dossier);
    outgoing.stored_at = [&](const Attachment& one) { return desk.files().path(one.sha256); };
    outgoing.at = system_clock.now();
    outgoing.key = &*key;
    const auto written = exchange::write_session_file(file, outgoing);
    if (!written) return refused(written.error());
    tell(*written);
    tell(exchange::whereabouts_of(outgoing.dossier, outgoing.stored_at));
    return 0;
}

int bring(Desk& desk, const std::filesystem::path& folder, const std::string& file) {
    auto incoming = exchange::read_session_file(file, folder / "staging");
    if (!incoming) return refused(incoming.error());
    tell(exchange::gaps_of(incoming->dossier));
    tell(exchange::whereabouts_of(*incoming));
    if (auto kept = keep_files(desk, *incoming); !kept) return refused(kept.error());
    const auto done = run(desk, bring_in(std::move(incoming->dossier)));
    return done ? 0 : refused(done.error());
}

int act(const std::vector<std::string>& args) {
    if (args.size() < 2) return 2;
    const auto& verb = args[0];
    const std::filesystem::path folder = args[1];
    auto opened = Desk::open(folder, system_clock);
    if (!opened) return refused(opened.error());
    Desk& desk = *opened->desk;
    const Progress go_on = [](std::size_t, std::size_t) { return true; };
    const auto start = std::chrono::steady_clock::now();
    int exit = 2;
    if (verb == "make" && args.size() == 5) {
        exit = make(desk, std::stoi(args[2]), std::stoi(args[3]), std::stoull(args[4]));
    } else if (verb == "add" && args.size() == 4) {
        exit = add(desk, args[2], args[3]);
    } else if (verb == "hand-over" && args.size() == 3) {
        exit = hand_over_first(desk, args[2]);
    } else if (verb == "bring" && args.size() == 3) {
        exit = bring(desk, folder, args[2]);
    } else if (verb == "back-up" && args.size() == 3) {
        const auto done = back_up(desk, args[2], go_on);
        exit = done ? 0 : refused(done.error());
        if (done) tell(*done);
    } else if (verb == "restore" && args.size() == 3) {
        const auto done = restore(desk, args[2], folder / "staging", go_on);
        exit = done ? 0 : refused(done.error());
        if (done) tell(done->gaps);
        for (const auto& one : done ? done->damaged : std::vector<exchange::Damaged>{})
            std::cout << "damaged: " << one.engine << ": " << one.why.code << '\n';
    } else if (verb == "show") {
        for (const auto& engine : desk.engines())
            std::cout << to_json(Record(*desk.engine(engine.id))) << to_json(*desk.dossier(engine.id))
                      << '\n';
        return 0;
    }
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
    if (exit == 0) std::cout << took.count() << '\n';
    return exit;
}

}  // namespace

int main(int count, char** args) {
    const int exit = act({args + 1, args + count});
    // The memory of this program alone: what the kernel tells the parent counts the parent's own as well.
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmHWM:")) std::cerr << line << '\n';
    return exit;
}
