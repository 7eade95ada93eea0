// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <sys/stat.h>
#include <zip.h>

#include <algorithm>
#include <list>
#include <set>

#include "core/base/atomic_file.h"
#include "core/base/sha256.h"
#include "core/exchange/bag.h"
#include "core/exchange/readings_csv.h"
#include "core/exchange/session_file.h"
#include "core/record/record.h"

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
    Status add_attachment(const Attachment& attachment, const fs::path& from) {
        const auto path = attachment_path(attachment);
        if (!seen_.insert(path).second) return {};  // the same photo taken twice is one file
        const auto sum = sha256_of_file(from);
        std::error_code error;
        const auto bytes = fs::file_size(from, error);
        if (!sum || error)
            return fail("session_file.attachment_missing",
                        "The {} taken at {} is missing from the library ({}). Nothing was written.",
                        word(attachment.kind), to_rfc3339(attachment.taken_at), from.string());
        if (*sum != attachment.sha256 || static_cast<long long>(bytes) != attachment.bytes)
            return fail(
                "session_file.attachment_damaged",
                "The {} taken at {} is damaged in the library ({}): its bytes are not those that were "
                "stored. Nothing was written.",
                word(attachment.kind), to_rfc3339(attachment.taken_at), from.string());
        count(path, *sum, bytes);
        packing_.add_file(folder_ + path, from);
        return {};
    }
    void finish(const Outgoing& outgoing) {
        add_tag_file("bagit.txt", std::string(bag_declaration));
        std::vector<std::pair<std::string, std::string>> about{
            {"Bag-Software-Agent", outgoing.software},
            {"Bagging-Date", to_rfc3339(outgoing.at).substr(0, 10)},
            {"Payload-Oxum", fmt::format("{}.{}", oxum_.bytes, oxum_.files)}};
        if (!outgoing.assumptions.empty()) about.emplace_back("Working-Assumptions", outgoing.assumptions);
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

Status pack(const fs::path& file, const std::string& folder, const Outgoing& outgoing) {
    auto dossier = outgoing.dossier;
    if (!outgoing.with_owner) dossier.engine = without_owner(std::move(dossier.engine));
    Packing packing(file, outgoing.at);
    Bag bag(packing, folder);
    auto json = to_json(dossier);
    if (json.size() > longest_json)
        return fail(
            "session_file.too_large",
            "The chosen sessions hold more than fits into one file ({} bytes of {}). Choose fewer sessions.",
            json.size(), longest_json);
    bag.add_payload("data/session.json", std::move(json), true);
    bag.add_payload("data/readings.csv", readings_csv(dossier), true);
    if (outgoing.report_pdf) bag.add_payload("data/report.pdf", *outgoing.report_pdf, false);
    for (const auto& visit : dossier.visits)
        for (const auto& attachment : visit.attachments)
            if (auto added = bag.add_attachment(attachment, outgoing.stored_at(attachment)); !added)
                return added;
    bag.finish(outgoing);
    return packing.close();
}

}  // namespace

std::string attachment_path(const Attachment& attachment) {
    return fmt::format("data/{}/{}.{}", attachment.kind == AttachmentKind::photo ? "photos" : "voice",
                       attachment.sha256, file_extension(attachment.media_type).value_or("bin"));
}

Status write_session_file(const fs::path& target, const Outgoing& outgoing) {
    const auto temporary = temporary_beside(target);
    if (auto packed = pack(temporary, bag_folder(target), outgoing); !packed) {
        std::error_code ignored;
        fs::remove(temporary, ignored);
        return packed;
    }
    return put_in_place(temporary, target);
}

}  // namespace lapwing::exchange
