// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/archive.h"

#include <sys/stat.h>
#include <zip.h>

#include <algorithm>
#include <array>
#include <set>

#include "core/base/atomic_file.h"
#include "core/base/letters.h"
#include "core/exchange/bag.h"

namespace lapwing::exchange {
namespace {

bool is_text(std::string_view path) {
    return path.ends_with(".txt") || path.ends_with(".json") || path.ends_with(".csv");
}

tl::unexpected<Error> name_twice(const std::string& where) {
    return fail(
        "archive.name_twice",
        "The file holds two entries of the same name: \"{}\". It was not made by this app: do not trust it.",
        where);
}

/// Files and the folders that their paths imply; the same name may not be both, nor twice in other letters
/// that a phone's or a desk's file system may take for the same.
class NamesSeen {
public:
    Status add(const std::string& path, bool is_folder) {
        for (auto slash = path.find('/'); slash != std::string::npos; slash = path.find('/', slash + 1)) {
            const auto folder = one_spelling(path.substr(0, slash));
            folders_.insert(folder);
            if (files_.contains(folder)) return name_twice(path);
        }
        const auto name = one_spelling(path);
        if (is_folder) {
            folders_.insert(name);
            return files_.contains(name) ? Status(name_twice(path)) : Status{};
        }
        if (folders_.contains(name) || !files_.insert(name).second) return name_twice(path);
        return {};
    }

private:
    std::set<std::string> files_;
    std::set<std::string> folders_;
};

Status check_kind(zip* archive, std::uint64_t index, const std::string& path) {
    zip_uint8_t system = 0;
    zip_uint32_t attributes = 0;
    if (zip_file_get_external_attributes(archive, index, 0, &system, &attributes) != 0) return {};
    const auto kind = attributes >> 16 & S_IFMT;
    if (system == ZIP_OPSYS_UNIX && kind != 0 && kind != S_IFREG && kind != S_IFDIR)
        return fail(
            "archive.link",
            "The file holds a link or a device instead of a file: \"{}\". It was not made by this app: do "
            "not trust it.",
            path);
    return {};
}

Status check_size(const zip_stat_t& stat, const std::string& path, const Limits& limits) {
    constexpr zip_uint64_t wanted = ZIP_STAT_SIZE | ZIP_STAT_COMP_SIZE | ZIP_STAT_COMP_METHOD;
    if ((stat.valid & wanted) != wanted)
        return fail("archive.damaged",
                    "The entry \"{}\" of the file is damaged. Ask the sender to send it again.", path);
    if ((stat.valid & ZIP_STAT_ENCRYPTION_METHOD) != 0 && stat.encryption_method != ZIP_EM_NONE)
        return fail(
            "archive.encrypted",
            "The entry \"{}\" of the file is locked with a password. Ask the sender for the file as the app "
            "made it.",
            path);
    if (stat.comp_method != ZIP_CM_STORE && stat.comp_method != ZIP_CM_DEFLATE)
        return fail(
            "archive.method",
            "The entry \"{}\" of the file is packed in a way that is not supported. Ask the sender for the "
            "file as the app made it.",
            path);
    const auto ratio = is_text(path) ? limits.text_ratio : limits.other_ratio;
    if (stat.size > limits.free_of_ratio && stat.size / ratio > stat.comp_size)
        return fail(
            "archive.ratio",
            "The entry \"{}\" would unpack to {} bytes from {}: that is no real one. Do not trust this file.",
            path, stat.size, stat.comp_size);
    return {};
}

}  // namespace

void Archive::Close::operator()(zip* archive) const {
    zip_discard(archive);
}

Result<Archive> Archive::open(const std::filesystem::path& file, const Limits& limits) {
    struct stat status {};
    if (::stat(file.c_str(), &status) != 0) return file_error(errno, file);
    if (!S_ISREG(status.st_mode))
        return fail("archive.not_a_zip", "{} is not a session file but a folder or a device.", file.string());
    if (static_cast<std::uint64_t>(status.st_size) > limits.packed_bytes)
        return fail("archive.too_large", "{} is larger than {} bytes: no session file is that large.",
                    file.string(), limits.packed_bytes);
    int error = 0;
    Archive archive;
    archive.zip_.reset(zip_open(file.c_str(), ZIP_RDONLY | ZIP_CHECKCONS, &error));
    if (!archive.zip_) {
        if (error == ZIP_ER_OPEN || error == ZIP_ER_READ) return file_error(errno, file);
        if (error == ZIP_ER_EXISTS) return name_twice(file.string());
        return fail(
            "archive.not_a_zip",
            "{} is not a session file, or was cut short or changed on its way. Ask the sender to send it "
            "again.",
            file.string());
    }
    if (auto taken = archive.take_entries(file, limits); !taken) return tl::unexpected(taken.error());
    return archive;
}

Status Archive::take_entries(const std::filesystem::path& file, const Limits& limits) {
    const auto count = static_cast<std::uint64_t>(zip_get_num_entries(zip_.get(), 0));
    if (count > limits.entries)
        return fail("archive.too_many", "{} holds {} entries: at most {} are read. Do not trust this file.",
                    file.string(), count, limits.entries);
    NamesSeen names;
    std::uint64_t packed = 0;
    std::uint64_t unpacked = 0;
    for (std::uint64_t index = 0; index < count; ++index) {
        const char* raw = zip_get_name(zip_.get(), index, ZIP_FL_ENC_RAW);
        zip_stat_t stat;
        zip_stat_init(&stat);
        if (raw == nullptr || zip_stat_index(zip_.get(), index, 0, &stat) != 0)
            return fail("archive.damaged", "{} is damaged. Ask the sender to send it again.", file.string());
        std::string path = raw;
        const bool is_folder = path.size() > 1 && path.ends_with('/');
        if (is_folder) path.pop_back();
        if (auto fault = path_fault(path)) return tl::unexpected(std::move(*fault));
        if (auto fine = check_kind(zip_.get(), index, path); !fine) return fine;
        if (auto fine = names.add(path, is_folder); !fine) return fine;
        if (auto fine = check_size(stat, path, limits); !fine) return fine;
        packed += stat.comp_size;
        unpacked += stat.size;
        if (unpacked > limits.unpacked_bytes || stat.size > limits.unpacked_bytes)
            return fail(
                "archive.unpacks_too_large",
                "{} would unpack to more than {} bytes: no session file is that large. Do not trust it.",
                file.string(), limits.unpacked_bytes);
        if (!is_folder) entries_.push_back({index, std::move(path), stat.size});
    }
    // Entries that share their packed bytes: how a small file unpacks to a huge one without a large ratio.
    std::error_code ignored;
    if (packed > std::filesystem::file_size(file, ignored))
        return fail("archive.overlap", "Entries of {} overlap. It was not made by this app: do not trust it.",
                    file.string());
    return {};
}

Status Archive::read(const Entry& entry, const Sink& sink) const {
    const auto damaged = [&] {
        return fail("archive.damaged",
                    "The entry \"{}\" of the file is damaged. Ask the sender to send it again.", entry.path);
    };
    const std::unique_ptr<zip_file_t, int (*)(zip_file_t*)> file(zip_fopen_index(zip_.get(), entry.index, 0),
                                                                 &zip_fclose);
    if (!file) return damaged();
    std::array<char, 65536> buffer{};
    std::uint64_t seen = 0;
    for (;;) {
        const auto count = zip_fread(file.get(), buffer.data(), buffer.size());
        if (count < 0) return damaged();
        if (count == 0) break;
        seen += static_cast<std::uint64_t>(count);
        if (seen > entry.bytes) return damaged();
        if (auto taken = sink({buffer.data(), static_cast<std::size_t>(count)}); !taken) return taken;
    }
    return seen == entry.bytes ? Status{} : damaged();
}

Result<std::string> Archive::read_text(const Entry& entry, std::uint64_t longest) const {
    if (entry.bytes > longest)
        return fail("archive.text_too_large",
                    "The entry \"{}\" of the file is {} bytes long: at most {} are read.", entry.path,
                    entry.bytes, longest);
    std::string out;
    // Known and bounded: growing would take twice as much.
    out.reserve(std::min<std::uint64_t>(entry.bytes, longest));
    return read(entry,
                [&](std::string_view piece) -> Status {
                    out += piece;
                    return {};
                })
        .map([&] { return std::move(out); });
}

}  // namespace lapwing::exchange
