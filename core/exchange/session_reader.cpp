// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cerrno>
#include <map>
#include <set>

#include "core/base/atomic_file.h"
#include "core/base/sha256.h"
#include "core/exchange/bag.h"
#include "core/exchange/file_sink.h"
#include "core/exchange/media.h"
#include "core/exchange/session_file.h"
#include "core/exchange/whereabouts.h"
#include "core/record/record.h"

namespace lapwing::exchange {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view payload_folder = "data/";
constexpr std::size_t most_problems = 200;

bool is_payload(std::string_view path) {
    return path.starts_with(payload_folder);
}
bool is_manifest(std::string_view path) {
    return path.starts_with("manifest-") && path.ends_with(".txt");
}
bool is_tag_manifest(std::string_view path) {
    return path.starts_with("tagmanifest-") && path.ends_with(".txt");
}

/// The part of a path below data/ that a received file keeps in the staging folder; empty for files that are
/// only checked.
std::string staged_name(std::string_view path) {
    const auto name = path.substr(payload_folder.size());
    const bool attachment = (name.starts_with("photos/") && name.find('/', 7) == std::string_view::npos) ||
                            (name.starts_with("voice/") && name.find('/', 6) == std::string_view::npos);
    return attachment || name == "report.pdf" ? std::string(name) : std::string{};
}

/// Goes through one archive. Faults of structure end it at once (a Status); faults of the bag and its content
/// are gathered, so that `check` can tell them all.
class Receiving {
public:
    Receiving(const Archive& archive, Incoming& incoming, const Limits& limits, std::vector<Error>& problems)
        : archive_(archive), incoming_(incoming), limits_(limits), problems_(problems) {}

    Status run() {
        for (const auto step : {&Receiving::find_bag, &Receiving::read_tag_files, &Receiving::check_bag,
                                &Receiving::receive_payload, &Receiving::look_at_signature,
                                &Receiving::read_session, &Receiving::match_attachments})
            if (auto done = (this->*step)(); !done) return done;
        return {};
    }

private:
    template <class... Args>
    void problem(std::string_view code, fmt::format_string<const Args&...> english, const Args&... args) {
        add(std::move(fail(code, english, args...).value()));
    }
    /// A list of a million missing files is no longer read by anybody.
    void add(Error error) {
        if (problems_.size() < most_problems) problems_.push_back(std::move(error));
    }
    bool keep(const Status& status) {
        if (!status) add(status.error());
        return status.has_value();
    }

    /// The bag is the archive's one folder (RFC 8493, section 4.1); packed without a folder it is read as
    /// well.
    Status find_bag() {
        std::string folder;
        for (const auto& entry : archive_.entries()) {
            const auto slash = entry.path.find('/');
            const bool here = entry.path == "bagit.txt";
            if (here || (slash != std::string::npos && entry.path.substr(slash) == "/bagit.txt")) {
                folder = here ? "" : entry.path.substr(0, slash + 1);
                found_ = true;
                if (here) break;
            }
        }
        if (!found_)
            return fail(
                "bag.none",
                "The file is no session file: it holds no bagit.txt. Choose a file that Lapwing made.");
        for (const auto& entry : archive_.entries()) {
            if (!entry.path.starts_with(folder))
                return fail(
                    "bag.beside",
                    "The file holds something beside the session: \"{}\". Ask the sender for the original "
                    "file.",
                    entry.path);
            files_.emplace(entry.path.substr(folder.size()), &entry);
        }
        return {};
    }

    Status read_tag_files() {
        for (const auto& [path, entry] : files_) {
            if (is_payload(path)) continue;
            auto text = archive_.read_text(*entry, limits_.text_bytes);
            if (!text) return tl::unexpected(text.error());
            texts_.emplace(path, std::move(*text));
        }
        return {};
    }

    /// After the checksums: whatever differs from them differs from what was signed.
    Status look_at_signature() {
        const auto found = texts_.find(signature_file);
        if (found == texts_.end()) return {};
        const auto list = texts_.find("tagmanifest-sha256.txt");
        incoming_.signature = verify(found->second, list == texts_.end() ? std::string{} : list->second);
        if (incoming_.signature.state == SignatureState::unaltered &&
            (!problems_.empty() || !is_all_listed()))
            incoming_.signature.state = SignatureState::altered;
        return {};
    }

    /// Whether the signed list speaks of every tag file: one that was laid beside is not part of what was
    /// signed.
    bool is_all_listed() const {
        return std::ranges::all_of(texts_, [&](const auto& item) {
            return item.first == signature_file || is_tag_manifest(item.first) || tags_.contains(item.first);
        });
    }

    Status check_bag() {
        if (!keep(check_declaration(texts_.at("bagit.txt")))) return {};
        if (texts_.contains("fetch.txt"))
            problem(
                "bag.fetch",
                "The file names parts to fetch from elsewhere (fetch.txt): Lapwing fetches nothing. Ask the "
                "sender for the whole file.");
        check_size_told();
        bool any = false;
        for (const auto& [path, text] : texts_) {
            if (is_manifest(path)) any = check_manifest(path, text) || any;
            if (is_tag_manifest(path)) check_tag_manifest(path, text);
        }
        if (!any)
            problem(
                "bag.no_manifest",
                "The file has no list of checksums (manifest-sha256.txt or manifest-sha512.txt): it can't be "
                "checked. Ask the sender for the original file.");
        return {};
    }

    void check_size_told() {
        const auto found = texts_.find("bag-info.txt");
        if (found == texts_.end()) return;
        const auto info = parse_bag_info(found->second);
        if (!info) return add(info.error());
        const auto told = payload_oxum(*info);
        if (!told) return add(told.error());
        Oxum there;
        for (const auto& [path, entry] : files_)
            if (is_payload(path)) {
                there.bytes += entry->bytes;
                ++there.files;
            }
        if (*told && **told != there)
            problem("bag.oxum_differs",
                    "The file should hold {} bytes in {} files and holds {} in {}. Ask the sender to send it "
                    "again.",
                    (*told)->bytes, (*told)->files, there.bytes, there.files);
    }

    /// Every payload file stands once in every payload manifest, and every file in it is there. True for a
    /// manifest whose checksums are then compared.
    bool check_manifest(const std::string& name, const std::string& text) {
        const auto lines = parse_manifest(text, name);
        if (!lines) {
            add(lines.error());
            return false;
        }
        auto* const told = name == "manifest-sha256.txt"   ? &sums_
                           : name == "manifest-sha512.txt" ? &long_sums_
                                                           : nullptr;
        std::set<std::string_view> listed;
        for (const auto& line : *lines) {
            if (!is_payload(line.path) || path_fault(line.path))
                problem("bag.manifest_path", "{} names \"{}\", which is no file of the session.", name,
                        line.path);
            else if (!listed.insert(line.path).second)
                problem("bag.listed_twice", "{} names \"{}\" twice.", name, line.path);
            else if (!files_.contains(line.path))
                problem("bag.missing_file",
                        "\"{}\" is missing from the file. Ask the sender to send it again.", line.path);
            if (told != nullptr) (*told)[line.path] = line.checksum;
        }
        for (const auto& [path, entry] : files_)
            if (is_payload(path) && !listed.contains(path))
                problem("bag.unlisted_file", "\"{}\" stands in the file and not in {}: someone added it.",
                        path, name);
        return told != nullptr;
    }

    void check_tag_manifest(const std::string& name, const std::string& text) {
        const auto lines = parse_manifest(text, name);
        if (!lines) return add(lines.error());
        std::set<std::string_view> listed;
        for (const auto& line : *lines) {
            const auto found = texts_.find(line.path);
            if (is_payload(line.path) || is_tag_manifest(line.path))
                problem("bag.tag_manifest_path", "{} names \"{}\", which does not belong there.", name,
                        line.path);
            else if (!listed.insert(line.path).second)
                problem("bag.listed_twice", "{} names \"{}\" twice.", name, line.path);
            else if (found == texts_.end())
                problem("bag.missing_file",
                        "\"{}\" is missing from the file. Ask the sender to send it again.", line.path);
            else if ((name == "tagmanifest-sha256.txt" && tags_.insert(line.path).second &&
                      sha256_hex(found->second) != line.checksum) ||
                     (name == "tagmanifest-sha512.txt" && sha512_hex(found->second) != line.checksum))
                wrong_sum(line.path);
        }
    }

    void wrong_sum(const std::string& path) {
        problem("bag.checksum",
                "\"{}\" in the file is not as it was packed: it was damaged or changed on its way. Ask the "
                "sender to "
                "send it again.",
                path);
    }

    Status receive_payload() {
        for (const auto& [path, entry] : files_)
            if (is_payload(path))
                if (auto received = receive(path, *entry); !received) return received;
        return {};
    }

    Status receive(const std::string& path, const Entry& entry) {
        const bool is_session = path == "data/session.json";
        if (is_session && entry.bytes > longest_json)
            return fail("archive.text_too_large",
                        "The entry \"{}\" of the file is {} bytes long: at most {} are read.", path,
                        entry.bytes, longest_json);
        const auto name = staged_name(path);
        std::optional<FileSink> out;
        if (!name.empty()) {
            std::error_code error;
            const auto target = incoming_.staging.folder() / name;
            fs::create_directories(target.parent_path(), error);
            if (error) return file_error(error.value(), target);
            out.emplace(target);
        }
        // Known and bounded: growing would take twice as much.
        if (is_session) session_.reserve(entry.bytes);
        Sha256 sum;
        Sha512 long_sum;
        const auto long_told = long_sums_.find(path);
        auto unpacked = archive_.read(entry, [&](std::string_view piece) -> Status {
            sum.add(piece);
            if (long_told != long_sums_.end()) long_sum.add(piece);
            if (is_session) session_ += piece;
            return out ? out->write(piece) : Status{};
        });
        if (!unpacked) return unpacked;
        if (out)
            if (auto closed = out->close(); !closed) return closed;
        const auto& seen = seen_[path] = sum.hex();
        const auto told = sums_.find(path);
        if ((told != sums_.end() && seen != told->second) ||
            (long_told != long_sums_.end() && long_sum.hex() != long_told->second))
            wrong_sum(path);
        return {};
    }

    Status read_session() {
        if (!files_.contains("data/session.json")) {
            problem("session_file.no_session", "The file holds no data/session.json: it is no session file.");
            return {};
        }
        auto dossier = dossier_from_json(session_);
        if (!dossier)
            add(dossier.error());
        else
            incoming_.dossier = std::move(*dossier);
        return {};
    }

    Status match_attachments() {
        if (files_.contains("data/report.pdf")) incoming_.report = incoming_.staging.folder() / "report.pdf";
        std::set<std::string> seen;
        std::set<AttachmentId> missing;
        for (const auto& one : incoming_.dossier.missing)
            missing.insert(one.attachment);
        for (const auto& visit : incoming_.dossier.visits)
            for (const auto& attachment : visit.attachments)
                if (!missing.contains(attachment.id)) match(attachment, seen);
        return {};
    }

    void match(const Attachment& attachment, std::set<std::string>& seen) {
        const auto path = attachment_path(attachment);
        const auto found = files_.find(path);
        if (found == files_.end())
            return problem("session_file.attachment_missing",
                           "A {} taken at {} is missing from the file ({}). Ask the sender to send it again.",
                           word(attachment.kind), to_rfc3339(attachment.taken_at), path);
        if (seen_[path] != attachment.sha256 ||
            static_cast<std::uint64_t>(attachment.bytes) != found->second->bytes)
            return problem(
                "session_file.attachment_differs",
                "The {} {} is not the one that the session speaks of. Ask the sender to send it again.",
                word(attachment.kind), path);
        if (!seen.insert(path).second) return;
        const auto staged = incoming_.staging.folder() / staged_name(path);
        if (keep(check_media(staged, attachment.media_type, limits_.photo_pixels, path)))
            incoming_.attachments.push_back({attachment.sha256, attachment.media_type, staged});
    }

    const Archive& archive_;
    Incoming& incoming_;
    const Limits& limits_;
    std::vector<Error>& problems_;
    bool found_ = false;
    std::map<std::string, const Entry*, std::less<>> files_;     ///< by path within the bag
    std::map<std::string, std::string, std::less<>> texts_;      ///< tag files
    std::set<std::string, std::less<>> tags_;                    ///< tag files in the SHA-256 tag manifest
    std::map<std::string, std::string, std::less<>> sums_;       ///< SHA-256 of payload files as told
    std::map<std::string, std::string, std::less<>> long_sums_;  ///< SHA-512 of them as told
    std::map<std::string, std::string, std::less<>> seen_;       ///< SHA-256 of them as they are
    std::string session_;
};

Result<Incoming> receive(const fs::path& file, const fs::path& staging_parent, const Limits& limits,
                         std::vector<Error>& problems, Signature& signature) {
    const auto archive = Archive::open(file, limits);
    if (!archive) return tl::unexpected(archive.error());
    auto staging = Staging::make(staging_parent);
    if (!staging) return tl::unexpected(staging.error());
    Incoming incoming{std::move(*staging), {}, {}, {}, {}};
    const auto done = Receiving(*archive, incoming, limits, problems).run();
    signature = incoming.signature;
    if (!done) return tl::unexpected(done.error());
    return incoming;
}

}  // namespace

Result<Incoming> read_session_file(const fs::path& file, const fs::path& staging_parent,
                                   const Limits& limits) {
    std::vector<Error> problems;
    Signature signature;
    auto incoming = receive(file, staging_parent, limits, problems, signature);
    if (incoming && !problems.empty()) return tl::unexpected(std::move(problems.front()));
    return incoming;
}

Checked check_session_file(const fs::path& file, const fs::path& scratch, const Limits& limits) {
    Checked out;
    const auto incoming = receive(file, scratch, limits, out.problems, out.signature);
    if (incoming) {
        out.engine = incoming->dossier.engine.name;
        out.gaps = gaps_of(incoming->dossier);
        for (const auto& photo : whereabouts_of(*incoming))
            out.whereabouts.push_back(text_of(photo));
    } else {
        out.problems.insert(out.problems.begin(), incoming.error());
    }
    return out;
}

std::vector<Error> check_file(const fs::path& file, const fs::path& scratch, const Limits& limits) {
    return check_session_file(file, scratch, limits).problems;
}

bool is_structural(const Error& problem) {
    return (problem.code.starts_with("archive.") && problem.code != "archive.damaged") ||
           problem.code.starts_with("file.") || problem.code == "bag.path" || problem.code == "bag.none" ||
           problem.code == "bag.beside";
}

}  // namespace lapwing::exchange
