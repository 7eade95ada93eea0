// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <sys/stat.h>
#include <zip.h>

#include <algorithm>
#include <list>
#include <map>
#include <set>
#include <tuple>

#include "core/base/atomic_file.h"
#include "core/base/sha256.h"
#include "core/exchange/bag.h"
#include "core/exchange/portions.h"
#include "core/exchange/readings_csv.h"
#include "core/exchange/session_file.h"
#include "core/record/record.h"
#include "core/record/walk.h"

namespace lapwing::exchange {
namespace {

namespace fs = std::filesystem;

/// One ZIP archive being written. libzip reads its sources at the very end, so texts are kept until then.
class Packing {
public:
    Packing(fs::path file, Timestamp at) : file_(std::move(file)), at_(at.unix_ms / 1000) {
        int error = 0;
        zip_ = zip_open(file_.c_str(), ZIP_CREATE | ZIP_EXCL, &error);
    }
    Packing(const Packing&) = delete;
    Packing& operator=(const Packing&) = delete;
    ~Packing() {
        if (zip_ != nullptr) zip_discard(zip_);
    }

    void add_text(const std::string& path, std::string text, bool compress) {
        texts_.push_back(std::move(text));
        if (zip_ != nullptr)
            add(path, zip_source_buffer(zip_, texts_.back().data(), texts_.back().size(), 0), compress);
    }
    void add_file(const std::string& path, const fs::path& from) {
        // Photos, voice notes and PDF are packed already.
        if (zip_ != nullptr) add(path, zip_source_file(zip_, from.c_str(), 0, -1), false);
    }

    Status close() {
        if (zip_ == nullptr) return file_error(ENOENT, file_);
        if (ok_ && zip_close(zip_) == 0) {
            zip_ = nullptr;
            return {};
        }
        const zip_error_t* error = zip_get_error(zip_);
        const int system = zip_error_system_type(error) == ZIP_ET_SYS ? zip_error_code_system(error) : EIO;
        return file_error(system, file_);
    }

private:
    void add(const std::string& path, zip_source_t* source, bool compress) {
        if (source == nullptr) {
            ok_ = false;
            return;
        }
        const auto index = zip_file_add(zip_, path.c_str(), source, ZIP_FL_ENC_UTF_8);
        if (index < 0) {
            zip_source_free(source);
            ok_ = false;
            return;
        }
        const auto entry = static_cast<zip_uint64_t>(index);
        const zip_uint32_t plain_file = static_cast<zip_uint32_t>(S_IFREG | 0644) << 16;
        ok_ = ok_ &&
              zip_set_file_compression(zip_, entry, compress ? ZIP_CM_DEFLATE : ZIP_CM_STORE, 0) == 0 &&
              zip_file_set_mtime(zip_, entry, static_cast<time_t>(at_), 0) == 0 &&
              zip_file_set_external_attributes(zip_, entry, 0, ZIP_OPSYS_UNIX, plain_file) == 0;
    }

    fs::path file_;
    std::int64_t at_;
    zip_t* zip_ = nullptr;
    bool ok_ = true;
    std::list<std::string> texts_;
};

/// The bag's folder inside the archive: the file's own name, so that unzipping many never mixes them.
std::string bag_folder(const fs::path& target) {
    std::string name;
    for (const char c : target.stem().string())
        name += static_cast<unsigned char>(c) < 0x20 || c == '\\' || c == ':' || c == 0x7f ? '-' : c;
    return name.empty() || name == "." || name == ".." || path_fault(name) ? "session" : name;
}

/// Collects what goes into the bag and what its lists say about it.
class Bag {
public:
    Bag(Packing& packing, std::string folder) : packing_(packing), folder_(std::move(folder) + '/') {}

    void add_payload(const std::string& path, std::string text, bool compress) {
        count(path, sha256_hex(text), text.size());
        packing_.add_text(folder_ + path, std::move(text), compress);
    }
    void add_attachment(const Attachment& attachment, const fs::path& from) {
        const auto path = attachment_path(attachment);
        if (!seen_.insert(path).second) return;  // the same photo taken twice is one file
        count(path, attachment.sha256, static_cast<std::uint64_t>(attachment.bytes));
        packing_.add_file(folder_ + path, from);
    }
    void finish(const Outgoing& outgoing) {
        add_tag_file("bagit.txt", std::string(bag_declaration));
        std::vector<std::pair<std::string, std::string>> about{
            {"Bag-Software-Agent", outgoing.software},
            {"Bagging-Date", to_rfc3339(outgoing.at).substr(0, 10)},
            {"Payload-Oxum", fmt::format("{}.{}", oxum_.bytes, oxum_.files)}};
        if (!outgoing.assumptions.empty()) about.emplace_back("Working-Assumptions", outgoing.assumptions);
        for (const std::string& file : outgoing.reference_data)
            about.emplace_back("Reference-Data", file);
        add_tag_file("bag-info.txt", bag_info_text(about));
        std::ranges::sort(payload_, {}, &ManifestLine::path);
        add_tag_file("manifest-sha256.txt", manifest_text(payload_));
        const auto tag_manifest = manifest_text(tags_);
        if (outgoing.key != nullptr)
            packing_.add_text(fmt::format("{}{}", folder_, signature_file), outgoing.key->sign(tag_manifest),
                              true);
        packing_.add_text(folder_ + "tagmanifest-sha256.txt", tag_manifest, true);
    }

private:
    void count(const std::string& path, std::string sum, std::uint64_t bytes) {
        payload_.push_back({std::move(sum), path});
        oxum_.bytes += bytes;
        ++oxum_.files;
    }
    void add_tag_file(const std::string& path, std::string text) {
        tags_.push_back({sha256_hex(text), path});
        packing_.add_text(folder_ + path, std::move(text), true);
    }

    Packing& packing_;
    std::string folder_;
    std::vector<ManifestLine> payload_;
    std::vector<ManifestLine> tags_;
    Oxum oxum_;
    std::set<std::string> seen_;
};

/// What became of an attachment's stored file, if anything.
std::optional<Loss> loss_of(const Attachment& attachment, const fs::path& stored) {
    const auto sum = sha256_of_file(stored);
    std::error_code error;
    const auto bytes = fs::file_size(stored, error);
    if (!sum || error) return fs::exists(stored, error) ? Loss::damaged : Loss::lost;
    const bool same = *sum == attachment.sha256 && static_cast<long long>(bytes) == attachment.bytes;
    return same ? std::nullopt : std::optional(Loss::damaged);
}

/// Looks at every stored file; those that can't be handed over end up in `missing`.
void look_for_losses(Dossier& dossier, const Outgoing& outgoing) {
    dossier.missing.clear();
    std::map<std::tuple<std::string, long long, std::string>, std::optional<Loss>> seen;
    for (const auto& visit : dossier.visits)
        for (const auto& attachment : visit.attachments) {
            const auto [at, is_new] =
                seen.try_emplace({attachment.sha256, attachment.bytes, attachment.media_type});
            if (is_new) at->second = loss_of(attachment, outgoing.stored_at(attachment));
            if (at->second) dossier.missing.push_back({attachment.id, *at->second});
        }
}

tl::unexpected<Error> too_large(const Size& size, const Limits& limits) {
    if (size.records > most_records)
        return fail("session_file.too_many_records",
                    "The chosen sessions of this engine hold {} records, more than the {} that one file may. "
                    "Choose fewer sessions for each file. Nothing was written.",
                    size.records, most_records);
    return fail(
        "session_file.too_large",
        "The chosen sessions of this engine hold more than one file may: {} MB in {} files with {} MB of "
        "records, where {} MB in {} files with {} MB can be read again. Choose fewer sessions for each "
        "file. Nothing was written.",
        size.bytes >> 20, size.entries, size.json >> 20, most_bytes(limits) >> 20, limits.entries,
        longest_written_json >> 20);
}

Status pack(const fs::path& file, const std::string& folder, const Outgoing& outgoing, Dossier& dossier) {
    auto size = size_of(dossier);
    if (outgoing.report_pdf) size.bytes += outgoing.report_pdf->size();
    if (!fits(size, outgoing.limits)) return too_large(size, outgoing.limits);
    look_for_losses(dossier, outgoing);
    std::set<AttachmentId> missing;
    for (const auto& one : dossier.missing)
        missing.insert(one.attachment);
    Packing packing(file, outgoing.at);
    Bag bag(packing, folder);
    auto json = to_json(dossier);
    size.json = json.size();
    if (!fits(size, outgoing.limits)) return too_large(size, outgoing.limits);
    bag.add_payload("data/session.json", std::move(json), true);
    bag.add_payload("data/readings.csv", readings_csv(dossier), true);
    if (outgoing.report_pdf) bag.add_payload("data/report.pdf", *outgoing.report_pdf, false);
    for (const auto& visit : dossier.visits)
        for (const auto& attachment : visit.attachments)
            if (!missing.contains(attachment.id))
                bag.add_attachment(attachment, outgoing.stored_at(attachment));
    bag.finish(outgoing);
    if (auto closed = packing.close(); !closed) return closed;
    // What was written is held against the reader's own rules: a file that can't be read back is none.
    if (auto readable = Archive::open(file, outgoing.limits); !readable)
        return fail("session_file.not_readable",
                    "The file was made and could not be read again, so it was thrown away: {}",
                    readable.error().english);
    return {};
}

}  // namespace

std::string attachment_path(const Attachment& attachment) {
    return fmt::format("data/{}/{}.{}", attachment.kind == AttachmentKind::photo ? "photos" : "voice",
                       attachment.sha256, file_extension(attachment.media_type).value_or("bin"));
}

std::vector<Gap> gaps_of(const Dossier& dossier) {
    std::map<AttachmentId, Loss> missing;
    for (const auto& one : dossier.missing)
        missing.emplace(one.attachment, one.loss);
    std::vector<Gap> out;
    for (const auto& visit : dossier.visits)
        for (const auto& attachment : visit.attachments)
            if (const auto found = missing.find(attachment.id); found != missing.end())
                out.push_back({dossier.engine.name, visit.session.title, attachment.kind, attachment.taken_at,
                               found->second});
    return out;
}

std::string text_of(const Gap& gap) {
    return fmt::format("a {} of {} ({}{}{}): its file is {}", word(gap.kind),
                       to_rfc3339(gap.taken_at).substr(0, 10), gap.engine, gap.session.empty() ? "" : ", ",
                       gap.session, word(gap.loss));
}

Result<std::vector<Gap>> write_session_file(const fs::path& target, const Outgoing& outgoing) {
    auto dossier = outgoing.dossier;
    if (!outgoing.with_owner) dossier.engine = without_owner(std::move(dossier.engine));
    const auto temporary = temporary_beside(target);
    if (auto packed = pack(temporary, bag_folder(target), outgoing, dossier); !packed) {
        std::error_code ignored;
        fs::remove(temporary, ignored);
        return tl::unexpected(packed.error());
    }
    return put_in_place(temporary, target).map([&] { return gaps_of(dossier); });
}

}  // namespace lapwing::exchange
