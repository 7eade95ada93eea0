// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>
#include <vector>

#include "core/record/record.h"

namespace lapwing::store {

/// A voice note on its way into the library: the sound so far, and what it will hang on.
struct Recording {
    Attachment note;  ///< its file is not known yet: sum, bytes and length are stand-ins
    std::filesystem::path sound;
};

/// Where sound lies until the voice note is kept. What is found here on opening was cut off by the end of the
/// process: the words are there and want keeping.
class Recordings {
public:
    explicit Recordings(std::filesystem::path folder) : folder_(std::move(folder)) {}

    /// Puts down what the sound will hang on, so that its place is known before the first word. Makes the
    /// folder; the sound itself is the caller's to write (Tape).
    Result<Recording> begin(Attachment note) const;
    /// Oldest first. A recording whose sound was never begun is cleared away and not among them.
    [[nodiscard]] std::vector<Recording> left_over() const;
    /// Kept, or not wanted: both files go.
    void forget(const Recording& recording) const;

private:
    [[nodiscard]] std::filesystem::path card(const std::filesystem::path& sound) const;
    std::filesystem::path folder_;
};

}  // namespace lapwing::store
