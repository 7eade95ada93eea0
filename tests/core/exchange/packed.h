// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <gtest/gtest.h>
#include <zip.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <list>
#include <map>
#include <sstream>

#include "core/base/sha256.h"
#include "core/base/uuid.h"
#include "core/exchange/session_file.h"
#include "core/record/record.h"
#include "tests/core/record/drawn.h"

namespace lapwing::test {

namespace fs = std::filesystem;

inline std::string bytes_of(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::ostringstream out;
    out << in.rdbuf();
    return out.str();
}

inline void put(const fs::path& file, std::string_view bytes) {
    std::ofstream(file, std::ios::binary) << bytes;
}

/// A folder of one test, gone afterwards.
class Folder {
public:
    Folder() : path_(fs::temp_directory_path() / ("lapwing-" + Uuid::make(SystemClock{}).text())) {
        fs::create_directories(path_);
    }
    ~Folder() { fs::remove_all(path_); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    fs::path operator/(const fs::path& name) const { return path_ / name; }
    [[nodiscard]] const fs::path& path() const { return path_; }
    [[nodiscard]] std::size_t files() const {
        return static_cast<std::size_t>(
            std::distance(fs::directory_iterator(path_), fs::directory_iterator{}));
    }

private:
    fs::path path_;
};

/// The smallest header that says "JPEG of 32 by 16" (ITU-T T.81), told apart by a comment.
inline std::string jpeg(std::string_view comment, int width = 32, int height = 16) {
    std::string out = "\xff\xd8\xff\xfe";
    out += '\0';
    out += static_cast<char>(comment.size() + 2);
    out += comment;
    out += std::string("\xff\xc0\x00\x0b\x08", 5);
    for (const int number : {height >> 8, height & 255, width >> 8, width & 255})
        out += static_cast<char>(number);
    return out + std::string("\x01\x01\x11\x00\xff\xd9", 6);
}
inline std::string ogg(std::string_view rest) {
    return "OggS" + std::string(16, '\0') + std::string(rest);
}
inline std::string wav(std::string_view rest) {
    return std::string("RIFF\x24\0\0\0WAVEfmt ", 16) + std::string(rest);
}

/// A dossier with photos and voice notes whose files lie in `store`, named by their SHA-256.
struct Sample {
    explicit Sample(std::uint64_t seed = 7) {
        for (;; ++seed) {
            dossier = Drawn(seed).dossier();
            std::size_t photos = 0;
            std::size_t voices = 0;
            for (auto& visit : dossier.visits)
                for (const auto& one : visit.attachments)
                    ++(one.kind == AttachmentKind::photo ? photos : voices);
            if (photos > 0 && voices > 0 && dossier.visits.front().readings.size() > 1) break;
        }
        dossier.engine.owner = {"Mill Lane Engine Club", "the white gate"};
        int number = 0;
        for (auto& visit : dossier.visits)
            for (auto& one : visit.attachments) {
                const auto name = std::to_string(++number);
                const auto bytes = one.kind == AttachmentKind::photo ? jpeg(name)
                                   : one.media_type == "audio/wav"   ? wav(name)
                                                                     : ogg(name);
                one.sha256 = sha256_hex(bytes);
                one.bytes = static_cast<long long>(bytes.size());
                put(store / one.sha256, bytes);
            }
    }

    [[nodiscard]] exchange::Outgoing outgoing() const {
        return {.dossier = dossier,
                .with_owner = true,
                .report_pdf = "%PDF-1.4 not a real one",
                .stored_at = [this](const Attachment& one) { return store / one.sha256; },
                .at = *parse_rfc3339("2026-03-14T09:30:00+01:00"),
                .software = "Lapwing 0.1.0"};
    }

    Folder store;
    Dossier dossier;
};

/// A ZIP archive written entry by entry, whatever the entries are.
class Zip {
public:
    struct Options {
        int method = ZIP_CM_DEFLATE;
        std::uint32_t unix_mode = 0;
        bool locked = false;
    };
    explicit Zip(fs::path file) : file_(std::move(file)) {
        int error = 0;
        zip_ = zip_open(file_.c_str(), ZIP_CREATE | ZIP_TRUNCATE, &error);
    }
    void add(const std::string& name, std::string bytes, Options options) {
        texts_.push_back(std::move(bytes));
        const auto index = zip_file_add(
            zip_, name.c_str(), zip_source_buffer(zip_, texts_.back().data(), texts_.back().size(), 0),
            ZIP_FL_ENC_UTF_8);
        ASSERT_GE(index, 0) << name;
        const auto entry = static_cast<zip_uint64_t>(index);
        ASSERT_EQ(zip_set_file_compression(zip_, entry, options.method, 0), 0);
        if (options.unix_mode != 0)
            zip_file_set_external_attributes(zip_, entry, 0, ZIP_OPSYS_UNIX, options.unix_mode << 16);
        if (options.locked) ASSERT_EQ(zip_file_set_encryption(zip_, entry, ZIP_EM_AES_256, "secret"), 0);
    }
    void add(const std::string& name, std::string bytes) { add(name, std::move(bytes), Options{}); }
    void close() { ASSERT_EQ(zip_close(zip_), 0); }

private:
    fs::path file_;
    zip_t* zip_;
    std::list<std::string> texts_;
};

/// What is in a session file, by path within the archive.
inline std::map<std::string, std::string> unpacked(const fs::path& file) {
    std::map<std::string, std::string> out;
    const auto archive = exchange::Archive::open(file, {});
    if (!archive) return out;
    for (const auto& entry : archive->entries())
        out[entry.path] = *archive->read_text(entry, 1 << 30);
    return out;
}

/// A bag by its files below its folder, with the lists made to fit, for tests that then spoil one thing.
inline void list_payload(std::map<std::string, std::string>& bag) {
    std::string manifest;
    std::string tags;
    for (const auto& [path, bytes] : bag)
        if (path.starts_with("data/")) manifest += sha256_hex(bytes) + "  " + path + '\n';
    bag["manifest-sha256.txt"] = manifest;
    for (const auto* name : {"bagit.txt", "manifest-sha256.txt"})
        tags += sha256_hex(bag[name]) + "  " + name + '\n';
    bag["tagmanifest-sha256.txt"] = tags;
}
inline std::map<std::string, std::string> sample_bag(const Sample& sample) {
    std::map<std::string, std::string> bag;
    bag["bagit.txt"] = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";
    bag["data/session.json"] = to_json(sample.dossier);
    for (const auto& visit : sample.dossier.visits)
        for (const auto& one : visit.attachments)
            bag[exchange::attachment_path(one)] = bytes_of(sample.store / one.sha256);
    list_payload(bag);
    return bag;
}
inline void pack(const fs::path& file, const std::map<std::string, std::string>& bag,
                 const std::string& folder = "bag/") {
    Zip zip(file);
    for (const auto& [path, bytes] : bag)
        zip.add(folder + path, bytes);
    zip.close();
}

}  // namespace lapwing::test
