// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/tape.h"

#include <array>
#include <bit>
#include <cerrno>
#include <string>

#include "core/base/atomic_file.h"

namespace lapwing::store {
namespace {

namespace fs = std::filesystem;

static_assert(std::endian::native == std::endian::little, "samples are written as they lie in memory");

constexpr std::uint32_t header_bytes = 44;
constexpr std::uint32_t sample_bytes = 2;

void append(std::string& out, std::uint32_t value, int bytes) {
    for (int i = 0; i < bytes; ++i)
        out.push_back(static_cast<char>(value >> (8 * i)));
}

std::string header(std::uint32_t samples) {
    const std::uint32_t sound = samples * sample_bytes;
    std::string out = "RIFF";
    append(out, sound + header_bytes - 8, 4);
    out += "WAVEfmt ";
    append(out, 16, 4);                        // length of what follows
    append(out, 1, 2);                         // linear PCM
    append(out, 1, 2);                         // channels
    append(out, tape_rate, 4);                 // frames a second
    append(out, tape_rate * sample_bytes, 4);  // bytes a second
    append(out, sample_bytes, 2);              // bytes a frame
    append(out, 8 * sample_bytes, 2);          // bits a sample
    out += "data";
    append(out, sound, 4);
    return out;
}

/// Everything but the two lengths.
bool is_like_ours(const std::string& found) {
    const std::string ours = header(0);
    return found.size() == header_bytes && found.substr(0, 4) == ours.substr(0, 4) &&
           found.substr(8, 32) == ours.substr(8, 32);
}

tl::unexpected<Error> not_a_tape(const fs::path& file) {
    return fail("tape.not_a_tape", "{} is not a voice note that Lapwing recorded, so it was left as it is.",
                file.string());
}

}  // namespace

Result<Tape> Tape::start(const fs::path& file) {
    std::error_code error;
    if (fs::exists(file, error)) return file_error(EEXIST, file);
    errno = 0;
    std::fstream stream(file, std::ios::in | std::ios::out | std::ios::binary | std::ios::trunc);
    stream << header(0) << std::flush;
    if (!stream) return file_error(errno != 0 ? errno : EIO, file);
    return Tape(file, std::move(stream));
}

Status Tape::add(std::span<const std::int16_t> samples) {
    errno = 0;
    stream_.seekp(header_bytes + std::streamoff{samples_} * sample_bytes);
    stream_.write(reinterpret_cast<const char*>(samples.data()),
                  static_cast<std::streamsize>(samples.size_bytes()));
    stream_.flush();
    if (stream_) {
        samples_ += static_cast<std::uint32_t>(samples.size());
        const std::string head = header(samples_);
        stream_.seekp(0);
        stream_.write(head.data(), static_cast<std::streamsize>(head.size()));
        stream_.flush();
    }
    if (!stream_) return file_error(errno != 0 ? errno : EIO, file_);
    return {};
}

Result<double> mend_tape(const fs::path& file) {
    std::error_code error;
    const auto size = fs::file_size(file, error);
    if (error) return file_error(error.value(), file);
    std::fstream stream(file, std::ios::in | std::ios::out | std::ios::binary);
    if (!stream) return file_error(errno, file);
    if (size < header_bytes) return 0.0;  // cut off before the first word
    std::string found(header_bytes, '\0');
    stream.read(found.data(), header_bytes);
    if (!is_like_ours(found)) return not_a_tape(file);
    const auto samples = static_cast<std::uint32_t>((size - header_bytes) / sample_bytes);
    errno = 0;
    stream.seekp(0);
    stream << header(samples) << std::flush;
    if (!stream) return file_error(errno != 0 ? errno : EIO, file);
    return static_cast<double>(samples) / tape_rate;
}

Result<TapeReader> TapeReader::open(const fs::path& file) {
    std::ifstream stream(file, std::ios::binary);
    if (!stream) return file_error(errno != 0 ? errno : EIO, file);
    std::string found(header_bytes, '\0');
    stream.read(found.data(), header_bytes);
    if (!is_like_ours(found)) return not_a_tape(file);
    return TapeReader(std::move(stream));
}

std::size_t TapeReader::read(std::span<std::int16_t> into) {
    stream_.read(reinterpret_cast<char*>(into.data()), static_cast<std::streamsize>(into.size_bytes()));
    return static_cast<std::size_t>(stream_.gcount()) / sample_bytes;
}

}  // namespace lapwing::store
