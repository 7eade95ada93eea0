// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/hand_over_files.h"

#include <algorithm>
#include <fstream>
#include <sstream>

#include "core/base/atomic_file.h"
#include "core/base/utf8.h"
#include "core/exchange/readings_csv.h"
#include "core/exchange/session_file.h"
#include "core/odds/data_files.h"
#include "core/odds/where_it_leaks.h"
#include "core/report/make_report.h"
#include "core/store/attachment_files.h"
#include "qml/print/pdf.h"

namespace lapwing {
namespace {

const Visit* visit_of(const Dossier& dossier, SessionId session) {
    const auto at = std::find_if(dossier.visits.begin(), dossier.visits.end(),
                                 [&](const Visit& visit) { return visit.session.id == session; });
    return at == dossier.visits.end() ? nullptr : &*at;
}

Status write_report(const Dossier& dossier, const Visit& visit, const workflow::Desk& desk,
                    const findings::Reference& reference, const HandOverOrder& order,
                    const std::filesystem::path& target) {
    report::Options options;
    options.owner_name = options.owner_contact = order.chosen.with_owner;
    options.appendix = order.appendix || order.kind == HandOverKind::session_file;
    options.made_at = desk.clock().now();
    const auto found = findings::find(dossier, visit, reference);
    // Of what is handed over and nothing else, so that whoever has the session file can work it out again.
    const auto leaks = odds::where_it_leaks(dossier, visit, reference);
    if (leaks) options.leaks = &*leaks;
    const auto report = report::make_report(dossier, visit, found, reference, options);
    return print::write_pdf(
        report, order.format, target, order.letter ? print::PageSize::letter : print::PageSize::a4,
        [&desk](const std::string& sha256) {
            return desk.files().has(sha256) ? desk.files().path(sha256) : std::filesystem::path();
        });
}

std::string bytes_of(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::ostringstream out;
    out << in.rdbuf();
    return std::move(out).str();
}

/// Without what file systems of phones and desktops do not take, at most so many bytes.
std::string for_a_file(const std::string& text, std::size_t most) {
    std::string name;
    for (const char c : text)
        name += std::string_view("<>:\"/\\|?*").find(c) != std::string_view::npos ||
                        static_cast<unsigned char>(c) < 0x20
                    ? '-'
                    : c;
    name.resize(cut_between_letters(name, most));
    while (!name.empty() && (name.back() == ' ' || name.back() == '.'))
        name.pop_back();
    return name;
}

}  // namespace

std::string hand_over_name(const Engine& engine, const Session& session, HandOverKind kind) {
    // Two visits of one day must not take each other's place.
    std::string name = for_a_file(engine.name, 80) + ' ' + to_rfc3339(session.opened_at).substr(0, 10);
    if (!session.title.empty()) name += ' ' + for_a_file(session.title, 40);
    switch (kind) {
        case HandOverKind::report:
            return name + ".pdf";
        case HandOverKind::session_file:
            return name + std::string(exchange::session_file_ending);
        case HandOverKind::table:
            return name + ".csv";
    }
    return name;
}

namespace {

std::string time_of(const Timestamp& at, std::size_t letters) {
    std::string time = to_rfc3339(at).substr(11, letters);
    std::ranges::replace(time, ':', '.');
    return time;
}

/// Whose remark is the newest, and when it was made: so that a file that was sent and the one that comes back
/// can lie in one folder. Empty without remarks.
std::string newest_remark(const Dossier& dossier) {
    const Note* newest = nullptr;
    for (const Visit& visit : dossier.visits)
        for (const Note& note : visit.notes)
            if (newest == nullptr || note.at > newest->at) newest = &note;
    if (newest == nullptr) return {};
    std::string author = for_a_file(newest->author, 40);
    if (!author.empty()) author += ' ';
    return author + to_rfc3339(newest->at).substr(0, 10) + ' ' + time_of(newest->at, 5);
}

/// With the time of day where another visit of this engine would have the same name.
std::string name_of_its_own(const workflow::Desk& desk, const Dossier& dossier, const Session& session,
                            HandOverKind kind) {
    const Engine& engine = dossier.engine;
    std::string name = hand_over_name(engine, session, kind);
    std::string own;
    for (const Session& other : desk.sessions(engine.id))
        if (other.id != session.id && hand_over_name(engine, other, kind) == name)
            own = ' ' + time_of(session.opened_at, 8);
    if (kind == HandOverKind::session_file)
        if (const auto remark = newest_remark(dossier); !remark.empty()) own += ", " + remark;
    return name.insert(name.rfind('.'), own);
}

/// "… (2).pdf" where such a file lies there already: what was handed over once is not written over.
std::filesystem::path beside_what_is_there(const std::filesystem::path& wanted) {
    std::error_code error;
    auto target = wanted;
    for (int number = 2; std::filesystem::exists(target, error); ++number)
        target.replace_filename(wanted.stem().string() + " (" + std::to_string(number) + ')' +
                                wanted.extension().string());
    return target;
}

}  // namespace

Result<HandedOver> write_hand_over(const workflow::Desk& desk, const findings::Reference& reference,
                                   const HandOverOrder& order) {
    auto dossier = workflow::hand_over(desk, order.chosen);
    if (!dossier) return tl::unexpected(dossier.error());
    const auto* visit = visit_of(*dossier, order.session);
    if (!visit && !dossier->visits.empty()) visit = &dossier->visits.back();
    if (!visit) return fail("hand_over.nothing", "No visit is chosen. Choose at least one.");

    std::error_code error;
    std::filesystem::create_directories(order.folder, error);
    if (error)
        return fail("hand_over.folder", "The folder {} can't be made: {}. Save a copy somewhere else.",
                    order.folder.string(), error.message());
    const auto target =
        beside_what_is_there(order.folder / name_of_its_own(desk, *dossier, visit->session, order.kind));

    HandedOver out{target, {}};
    Status written;
    switch (order.kind) {
        case HandOverKind::report:
            written = write_report(*dossier, *visit, desk, reference, order, target);
            break;
        case HandOverKind::table:
            written = write_atomically(target, exchange::readings_csv(*dossier));
            break;
        case HandOverKind::session_file: {
            exchange::Outgoing outgoing;
            const auto key = workflow::signing_key(desk);
            if (!key) return tl::unexpected(key.error());
            outgoing.key = &*key;
            const auto pdf = target.string() + ".report";
            if (auto made = write_report(*dossier, *visit, desk, reference, order, pdf); !made)
                return tl::unexpected(made.error());
            outgoing.report_pdf = bytes_of(pdf);
            std::filesystem::remove(pdf, error);
            if (const auto assumed = odds::built_in_assumptions())
                outgoing.assumptions = std::to_string(assumed->version);
            for (const odds::DataFile& file : odds::built_in_data())
                outgoing.reference_data.push_back(odds::in_full(file));
            outgoing.dossier = std::move(*dossier);
            outgoing.with_owner = order.chosen.with_owner;
            outgoing.stored_at = [&desk](const Attachment& attachment) {
                return desk.files().path(attachment.sha256);
            };
            outgoing.at = desk.clock().now();
            out.whereabouts = exchange::whereabouts_of(outgoing.dossier, outgoing.stored_at);
            written =
                exchange::write_session_file(target, outgoing).map([&](std::vector<exchange::Gap> gaps) {
                    out.gaps = std::move(gaps);
                });
            break;
        }
    }
    if (!written) return tl::unexpected(written.error());
    return out;
}

}  // namespace lapwing
