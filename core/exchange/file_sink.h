// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <string_view>
#include <utility>

#include "core/base/atomic_file.h"

namespace lapwing::exchange {

/// A new file that is written piece by piece: of a received archive, into a folder that is thrown away if
/// anything fails.
class FileSink {
public:
    explicit FileSink(std::filesystem::path path)
        : path_(std::move(path)),
          file_(std::fopen(path_.c_str(), "wbx"), &std::fclose),
          refused_(file_ ? 0 : errno) {}
    Status write(std::string_view piece) {
        if (!file_) return file_error(refused_, path_);
        if (std::fwrite(piece.data(), 1, piece.size(), file_.get()) != piece.size())
            return file_error(errno, path_);
        return {};
    }
    Status close() {
        if (!file_) return file_error(refused_, path_);
        if (std::fclose(file_.release()) != 0) return file_error(errno, path_);
        return {};
    }

private:
    std::filesystem::path path_;
    std::unique_ptr<std::FILE, int (*)(std::FILE*)> file_;
    int refused_ =
        0;  ///< why the file could not be made; kept, because others set errno before it is asked for
};

}  // namespace lapwing::exchange
