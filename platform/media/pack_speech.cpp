// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/media/pack_speech.h"

#include <opusenc.h>

#include <array>
#include <fstream>
#include <memory>

#include "platform/api/microphone.h"

namespace lapwing::platform {
namespace {

constexpr int wav_header_bytes = 44;
constexpr int bits_per_second = 24'000;

using Comments = std::unique_ptr<OggOpusComments, decltype(&ope_comments_destroy)>;
using Encoder = std::unique_ptr<OggOpusEnc, decltype(&ope_encoder_destroy)>;

}  // namespace

Status pack_speech(const std::filesystem::path& wav, const std::filesystem::path& to) {
    const auto failed = [&](const char* why) {
        return fail("speech.not_packed", "{} could not be made smaller: {}. It stays as it is.", wav.string(),
                    why);
    };
    std::ifstream in(wav, std::ios::binary);
    in.seekg(wav_header_bytes);
    if (!in) return failed("it can't be read");

    const Comments comments(ope_comments_create(), &ope_comments_destroy);
    int error = OPE_OK;
    const Encoder encoder(ope_encoder_create_file(to.c_str(), comments.get(), Microphone::rate, 1, 0, &error),
                          &ope_encoder_destroy);
    if (!encoder) return failed(ope_strerror(error));
    ope_encoder_ctl(encoder.get(), OPUS_SET_BITRATE(bits_per_second));
    ope_encoder_ctl(encoder.get(), OPUS_SET_SIGNAL(OPUS_SIGNAL_VOICE));

    std::array<opus_int16, Microphone::rate / 4> samples{};
    do {
        in.read(reinterpret_cast<char*>(samples.data()), sizeof samples);
        const auto count = static_cast<int>(in.gcount() / static_cast<std::streamsize>(sizeof(opus_int16)));
        error = ope_encoder_write(encoder.get(), samples.data(), count);
    } while (in && error == OPE_OK);
    if (error == OPE_OK) error = ope_encoder_drain(encoder.get());
    if (error != OPE_OK) return failed(ope_strerror(error));
    return {};
}

}  // namespace lapwing::platform
