// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/exchange/archive.h"
#include "core/exchange/signature.h"
#include "core/model/visit.h"

/// The session file: a ZIP archive that holds one bag (BagIt 1.0, RFC 8493) with one engine, its visits and
/// their attachments.
namespace lapwing::exchange {

inline constexpr std::string_view session_file_ending = ".lapwing";
inline constexpr std::string_view session_media_type = "application/vnd.lapwing.session+zip";

/// Where an attachment's file stands inside the bag: "data/photos/SHA256.jpg".
std::string attachment_path(const Attachment& attachment);

/// A photo or voice note that a session file speaks of and doesn't hold, in words that a person can look for.
struct Gap {
    std::string engine;
    std::string session;  ///< its title; may be empty
    AttachmentKind kind = AttachmentKind::photo;
    Timestamp taken_at;
    Loss loss = Loss::lost;

    bool operator==(const Gap&) const = default;
};
/// What a dossier lists as missing.
std::vector<Gap> gaps_of(const Dossier& dossier);
/// "a photo of 2026-03-14 (Orchard V-twin, Before): its file is lost"
std::string text_of(const Gap& gap);

struct Outgoing {
    Dossier dossier;
    bool with_owner = false;  ///< the owner's name and contact leave the shop only if the sender ticks it
    std::optional<std::string> report_pdf;                              ///< bytes
    std::function<std::filesystem::path(const Attachment&)> stored_at;  ///< the attachment's stored file
    Timestamp at;                                                       ///< for Bagging-Date and file times
    std::string software = "Lapwing";                                   ///< with version, for bag-info.txt
    /// Version of the working assumptions behind the report's odds, for bag-info.txt; empty: not said.
    std::string assumptions;
    std::vector<std::string> reference_data;  ///< the same of every file of reference data, one line each
    const SigningKey* key = nullptr;          ///< signs the file; null: not signed
    Limits limits = {};                       ///< of whoever reads it
};

/// Writes the file whole or not at all: beside `target` first, on the disk, then renamed. An attachment that
/// is missing or whose bytes are not those of its SHA-256 doesn't stop the rest: it is listed in the file
/// (`Dossier::missing`) and handed back. More than `limits` let a reader take is an error, before anything is
/// written ("session_file.too_large").
Result<std::vector<Gap>> write_session_file(const std::filesystem::path& target, const Outgoing& outgoing);

/// A folder of its own that goes with this object.
class Staging {
public:
    static Result<Staging> make(const std::filesystem::path& parent);
    Staging(Staging&& other) noexcept : folder_(std::exchange(other.folder_, {})) {}
    Staging& operator=(Staging&& other) noexcept {
        std::swap(folder_, other.folder_);
        return *this;
    }
    ~Staging();
    [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }

private:
    explicit Staging(std::filesystem::path folder) : folder_(std::move(folder)) {}
    std::filesystem::path folder_;
};

struct StagedAttachment {
    std::string sha256;
    std::string media_type;
    std::filesystem::path file;  ///< in the staging folder

    bool operator==(const StagedAttachment&) const = default;
};

/// A session file that passed every check, its attachments unpacked into a folder that is removed with it.
struct Incoming {
    Staging staging;
    Dossier dossier;
    std::vector<StagedAttachment> attachments;  ///< one for each different file
    std::optional<std::filesystem::path> report;
    Signature signature;
};

/// Reads a session file from anywhere: streams it into a new folder under `staging_parent` and checks sizes,
/// counts, ratios, paths, links, names, that the bag is complete, checksums, session.json and that every
/// attachment is what it says. Any fault is one sentence, and nothing stays behind.
Result<Incoming> read_session_file(const std::filesystem::path& file,
                                   const std::filesystem::path& staging_parent, const Limits& limits = {});

struct Checked {
    std::vector<Error> problems;           ///< empty when the file is in order
    Signature signature;                   ///< what it says, as far as the file could be read
    std::string engine;                    ///< its name; empty when session.json can't be read
    std::vector<Gap> gaps;                 ///< what the file itself says it lacks: no problem of its own
    std::vector<std::string> whereabouts;  ///< photos that tell where they were taken, in words
};
/// Everything that is wrong with a session file. A file whose very structure can't be trusted has that one
/// problem only. A file that was altered since it was signed is no problem of its own when its checksums hold
/// (someone changed it and packed it again): the signature says so. `scratch` is a folder for unpacking, left
/// as it was.
Checked check_session_file(const std::filesystem::path& file, const std::filesystem::path& scratch,
                           const Limits& limits = {});
/// The problems alone.
std::vector<Error> check_file(const std::filesystem::path& file, const std::filesystem::path& scratch,
                              const Limits& limits = {});

/// Whether such a problem means "no session file at all, or a hostile one", not "a session file with faults".
bool is_structural(const Error& problem);

}  // namespace lapwing::exchange
