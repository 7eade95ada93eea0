// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/attachment_files.h"

#include <sodium.h>
#include <unistd.h>

#include <array>
#include <atomic>
#include <fstream>

#include "core/store/folder.h"

namespace lapwing::store {
namespace {

namespace fs = std::filesystem;
using Chunk = std::span<const unsigned char>;

/// Hashes what is written on the way to a file of no name yet.
class Intake {
public:
    explicit Intake(fs::path part) : part_(std::move(part)), out_(part_, std::ios::binary) {
        crypto_hash_sha256_init(&state_);
    }
    ~Intake() {
        std::error_code error;
        fs::remove(part_, error);
    }
    Intake(const Intake&) = delete;
    Intake& operator=(const Intake&) = delete;

    void take(Chunk chunk) {
        crypto_hash_sha256_update(&state_, chunk.data(), chunk.size());
        out_.write(reinterpret_cast<const char*>(chunk.data()), static_cast<std::streamsize>(chunk.size()));
        bytes_ += static_cast<long long>(chunk.size());
    }

    /// Gives the file its name, on the storage.
    Result<AttachmentFiles::Kept> finish(const AttachmentFiles& files) {
        out_.close();
        if (!out_)
            return fail(
                "store.full",
                "There is no room left to store this: {} could not be written. Nothing stored before is "
                "lost. Free some space on this device and do it again.",
                part_.string());
        if (auto status = sync_file(part_); !status) return tl::unexpected(status.error());

        std::array<unsigned char, crypto_hash_sha256_BYTES> hash{};
        crypto_hash_sha256_final(&state_, hash.data());
        std::string hex;
        for (const auto byte : hash)
            hex += fmt::format("{:02x}", byte);
        AttachmentFiles::Kept kept{std::move(hex), bytes_};
        if (files.has(kept.sha256)) return kept;

        std::error_code error;
        fs::rename(part_, files.path(kept.sha256), error);
        if (error)
            return fail("store.read_only",
                        "{} could not be renamed ({}). Check that its folder is not write-protected.",
                        part_.string(), error.message());
        if (auto status = sync_folder(part_.parent_path()); !status) return tl::unexpected(status.error());
        return kept;
    }

private:
    fs::path part_;
    std::ofstream out_;
    crypto_hash_sha256_state state_{};
    long long bytes_ = 0;
};

fs::path new_part(const fs::path& folder) {
    static std::atomic<int> count = 0;
    std::error_code error;
    fs::create_directories(folder, error);
    return folder / fmt::format("incoming-{}-{}.part", getpid(), ++count);
}

}  // namespace

bool AttachmentFiles::has(const std::string& sha256) const {
    std::error_code error;
    return !sha256.empty() && fs::is_regular_file(path(sha256), error);
}

Result<AttachmentFiles::Kept> AttachmentFiles::keep(Chunk bytes) const {
    Intake intake(new_part(folder_));
    intake.take(bytes);
    return intake.finish(*this);
}

Result<AttachmentFiles::Kept> AttachmentFiles::keep_file(const fs::path& file) const {
    std::ifstream in(file, std::ios::binary);
    const auto unreadable = [&] {
        return fail("store.unreadable_file",
                    "{} could not be read. Check that it is still there and try again.", file.string());
    };
    if (!in) return unreadable();
    Intake intake(new_part(folder_));
    std::array<char, 65536> buffer{};
    while (in.read(buffer.data(), buffer.size()) || in.gcount() > 0)
        intake.take(
            {reinterpret_cast<const unsigned char*>(buffer.data()), static_cast<std::size_t>(in.gcount())});
    if (in.bad()) return unreadable();
    return intake.finish(*this);
}

}  // namespace lapwing::store
