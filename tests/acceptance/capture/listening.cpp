// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/acceptance/capture/listening.h"

#include <QProcess>
#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstring>

namespace lapwing::test {
namespace {

constexpr int rate = 16'000;
constexpr std::size_t piece = rate / 50;

double correlation(const double* a, const double* b, std::size_t count) {
    double mean_a = 0, mean_b = 0;
    for (std::size_t i = 0; i < count; ++i) {
        mean_a += a[i] / double(count);
        mean_b += b[i] / double(count);
    }
    double ab = 0, aa = 0, bb = 0;
    for (std::size_t i = 0; i < count; ++i) {
        ab += (a[i] - mean_a) * (b[i] - mean_b);
        aa += (a[i] - mean_a) * (a[i] - mean_a);
        bb += (b[i] - mean_b) * (b[i] - mean_b);
    }
    return aa > 0 && bb > 0 ? ab / std::sqrt(aa * bb) : 0;
}

}  // namespace

std::vector<double> loudness_of(const QString& file) {
    QProcess ffmpeg;
    ffmpeg.start(QStringLiteral("ffmpeg"),
                 {"-v", "error", "-i", file, "-f", "s16le", "-ac", "1", "-ar", QString::number(rate), "-"});
    if (!ffmpeg.waitForFinished(20'000)) return {};
    const QByteArray bytes = ffmpeg.readAllStandardOutput();
    std::vector<std::int16_t> samples(std::size_t(bytes.size()) / sizeof(std::int16_t));
    std::memcpy(samples.data(), bytes.constData(), samples.size() * sizeof(std::int16_t));
    std::vector<double> loudness;
    for (std::size_t at = 0; at + piece <= samples.size(); at += piece) {
        double sum = 0;
        for (std::size_t i = at; i < at + piece; ++i)
            sum += double(samples[i]) * samples[i];
        loudness.push_back(std::sqrt(sum / double(piece)));
    }
    return loudness;
}

double likeness(const std::vector<double>& said, const std::vector<double>& heard) {
    double best = 0;
    for (std::size_t shift = 0; shift + said.size() <= heard.size(); ++shift)
        best = std::max(best, correlation(said.data(), heard.data() + shift, said.size()));
    return best;
}

}  // namespace lapwing::test
