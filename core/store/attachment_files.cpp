// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/attachment_files.h"

#include <array>
#include <cerrno>
#include <fstream>

#include "core/base/atomic_file.h"
#include "core/base/sha256.h"
#include "core/store/folder.h"

namespace lapwing::store {
namespace {

namespace fs = std::filesystem;

/// Adds up what is written on the way to a file that has no lasting name yet.
class Intake {
public:
    explicit Intake(const AttachmentFiles& files)
        : files_(files), part_(temporary_beside(files.path("incoming"))) {
        made_ = make_folder(part_.parent_path());
        if (!made_) return;
        errno = 0;
        out_.open(part_, std::ios::binary);
        note_error();
    }
    ~Intake() {
        std::error_code error;
        fs::remove(part_, error);
    }
    Intake(const Intake&) = delete;
    Intake& operator=(const Intake&) = delete;

    void take(std::string_view bytes) {
        sum_.add(bytes);
        errno = 0;
        out_.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        note_error();
        bytes_ += static_cast<long long>(bytes.size());
    }

    Result<AttachmentFiles::Kept> finish() {
        if (!made_) return tl::unexpected(made_.error());
        errno = 0;
        out_.close();
        note_error();
        if (!out_) return file_error(system_error_, part_);
        AttachmentFiles::Kept kept{sum_.hex(), bytes_};
        // It may have been put there by a run that was cut off before its name was safe.
        if (files_.has(kept.sha256)) return sync_folder(part_.parent_path()).map([&] { return kept; });
        return put_in_place(part_, files_.path(kept.sha256)).map([&] { return kept; });
    }

private:
    /// The first reason is the one to tell.
    void note_error() {
        if (!out_ && system_error_ == 0) system_error_ = errno != 0 ? errno : EIO;
    }

    const AttachmentFiles& files_;
    fs::path part_;
    Status made_;
    std::ofstream out_;
    int system_error_ = 0;
    Sha256 sum_;
    long long bytes_ = 0;
};

}  // namespace

bool AttachmentFiles::has(const std::string& sha256) const {
    std::error_code error;
    return !sha256.empty() && fs::is_regular_file(path(sha256), error);
}

Result<AttachmentFiles::Kept> AttachmentFiles::keep(std::span<const unsigned char> bytes) const {
    Intake intake(*this);
    intake.take({reinterpret_cast<const char*>(bytes.data()), bytes.size()});
    return intake.finish();
}

Result<AttachmentFiles::Kept> AttachmentFiles::keep_file(const fs::path& file) const {
    std::ifstream in(file, std::ios::binary);
    const auto unreadable = [&] {
        return fail("store.unreadable_file",
                    "{} could not be read. Check that it is still there and try again.", file.string());
    };
    if (!in) return unreadable();
    Intake intake(*this);
    std::array<char, 65536> buffer{};
    while (in.read(buffer.data(), buffer.size()) || in.gcount() > 0)
        intake.take({buffer.data(), static_cast<std::size_t>(in.gcount())});
    if (in.bad()) return unreadable();
    return intake.finish();
}

Status AttachmentFiles::adopt(const fs::path& file, const std::string& sha256) const {
    if (has(sha256)) return sync_folder(folder_);
    if (auto made = make_folder(folder_); !made) return made;
    std::error_code error;
    const auto part = temporary_beside(path(sha256));
    fs::rename(file, part, error);
    if (!error) return put_in_place(part, path(sha256));
    return keep_file(file).and_then([&](const Kept& kept) -> Status {
        if (kept.sha256 == sha256) return {};
        return fail("store.unreadable_file", "{} changed while it was taken in. Try again.", file.string());
    });
}

}  // namespace lapwing::store
