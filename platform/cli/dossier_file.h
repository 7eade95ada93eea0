// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <optional>

#include "core/exchange/session_file.h"
#include "core/model/visit.h"
#include "platform/cli/arguments.h"

namespace lapwing::cli {

/// Where session files are unpacked for checking; what is unpacked goes away again.
std::filesystem::path scratch_folder();

/// A session file, or the session.json of one.
tl::expected<Dossier, Failure> read_dossier(const std::filesystem::path& file);

/// The same with the photos of a session file, unpacked for as long as this lives.
class WithPhotos {
public:
    static tl::expected<WithPhotos, Failure> read(const std::filesystem::path& file);

    [[nodiscard]] const Dossier& dossier() const { return dossier_; }
    /// Empty for a photo that didn't come with the file.
    [[nodiscard]] std::filesystem::path photo(const std::string& sha256) const;

private:
    Dossier dossier_;
    std::optional<exchange::Staging> staging_;
    std::vector<exchange::StagedAttachment> attachments_;
};

inline constexpr Option visit_option{"--visit", "NUMBER",
                                     "which visit, 1 for the oldest; default the newest"};
/// Place of the chosen visit in the dossier.
tl::expected<std::size_t, Failure> read_visit(Arguments& arguments, const Dossier& dossier);

/// The whole file or none.
Outcome write_output(const std::string& target, std::string_view bytes);

}  // namespace lapwing::cli
