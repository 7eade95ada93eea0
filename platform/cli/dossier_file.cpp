// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/cli/dossier_file.h"

#include <algorithm>
#include <fstream>

#include "core/base/atomic_file.h"
#include "core/record/record.h"

namespace lapwing::cli {
namespace {

/// A JSON text begins with a brace, a ZIP archive with "PK".
bool looks_like_json(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    char first = 0;
    while (in.get(first))
        if (std::string_view(" \t\r\n").find(first) == std::string_view::npos) return first == '{';
    return false;
}

}  // namespace

std::filesystem::path scratch_folder() {
    return std::filesystem::temp_directory_path();
}

tl::expected<Dossier, Failure> read_dossier(const std::filesystem::path& file) {
    auto read = WithPhotos::read(file);
    if (!read) return tl::unexpected(read.error());
    return read->dossier();
}

tl::expected<WithPhotos, Failure> WithPhotos::read(const std::filesystem::path& file) {
    WithPhotos out;
    std::error_code ignored;
    if (!std::filesystem::is_regular_file(file, ignored) || !looks_like_json(file)) {
        auto incoming = exchange::read_session_file(file, scratch_folder());
        if (!incoming) return refused(incoming.error());
        out.dossier_ = std::move(incoming->dossier);
        out.attachments_ = std::move(incoming->attachments);
        out.staging_ = std::move(incoming->staging);
        return out;
    }
    const auto text = read_file(file, longest_json);
    if (!text) return refused(text.error());
    auto dossier = dossier_from_json(*text);
    if (!dossier) return refused(dossier.error());
    out.dossier_ = std::move(*dossier);
    return out;
}

std::filesystem::path WithPhotos::photo(const std::string& sha256) const {
    const auto found = std::ranges::find(attachments_, sha256, &exchange::StagedAttachment::sha256);
    return found == attachments_.end() ? std::filesystem::path() : found->file;
}

tl::expected<std::size_t, Failure> read_visit(Arguments& arguments, const Dossier& dossier) {
    const int visits = static_cast<int>(dossier.visits.size());
    if (visits == 0)
        return tl::unexpected(
            Failure{Exit::refused, "The file holds an engine without any visit: ask for its readings."});
    const int chosen = arguments.count("--visit", 1, visits, visits);
    if (arguments.wrong()) return tl::unexpected(*arguments.wrong());
    return static_cast<std::size_t>(chosen - 1);
}

Outcome write_output(const std::string& target, std::string_view bytes) {
    if (const auto written = write_atomically(target, bytes); !written)
        return wrong_use(written.error().english);
    return Exit::done;
}

}  // namespace lapwing::cli
