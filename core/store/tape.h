// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <filesystem>
#include <fstream>
#include <span>

#include "core/base/result.h"

namespace lapwing::store {

inline constexpr int tape_rate = 16'000;  ///< samples a second, one channel, 16 bits each

/// Sound written down while it is heard: a WAV file (RIFF WAVE, linear PCM) that is whole after every add().
/// What the system has been handed survives the end of the process.
class Tape {
public:
    /// Makes the file; one that is there already is an error.
    static Result<Tape> start(const std::filesystem::path& file);

    /// Appends samples. After an error the tape still plays up to the add before.
    Status add(std::span<const std::int16_t> samples);
    [[nodiscard]] double seconds() const { return static_cast<double>(samples_) / tape_rate; }

private:
    Tape(std::filesystem::path file, std::fstream stream)
        : file_(std::move(file)), stream_(std::move(stream)) {}

    std::filesystem::path file_;
    std::fstream stream_;
    std::uint32_t samples_ = 0;
};

/// Makes the header of a tape that was cut off count all of its samples.
///
/// @return its length in seconds, 0 when nothing was recorded; "tape.not_a_tape" for any other file
Result<double> mend_tape(const std::filesystem::path& file);

/// Reads a tape from its beginning, piece by piece.
class TapeReader {
public:
    static Result<TapeReader> open(const std::filesystem::path& file);
    /// Fills `into` and says how many samples that were; fewer than asked for only at the end.
    std::size_t read(std::span<std::int16_t> into);

private:
    explicit TapeReader(std::ifstream stream) : stream_(std::move(stream)) {}
    std::ifstream stream_;
};

}  // namespace lapwing::store
