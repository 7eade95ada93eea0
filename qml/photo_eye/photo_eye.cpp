// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/photo_eye.h"

#include <opencv2/imgcodecs.hpp>
#include <span>
#include <vector>

#include "core/vision/decode.h"

namespace lapwing {
namespace {

constexpr int longest_side = 4096;  ///< px
constexpr int jpeg_quality = 92;

std::span<const std::byte> bytes_of(const QByteArray& file) {
    return std::as_bytes(std::span(file.constData(), std::size_t(file.size())));
}

class CvPhotoEye final : public PhotoEye {
public:
    [[nodiscard]] Result<QByteArray> keepable(const QByteArray& file) const override {
        const auto photo = vision::decode(bytes_of(file), longest_side);
        if (!photo) return tl::unexpected(photo.error());
        std::vector<unsigned char> jpeg;
        // Written anew from its pixels alone: no tag of the old file can come along.
        cv::imencode(".jpg", photo->colour, jpeg, {cv::IMWRITE_JPEG_QUALITY, jpeg_quality});
        return QByteArray(reinterpret_cast<const char*>(jpeg.data()), qsizetype(jpeg.size()));
    }

    [[nodiscard]] Result<vision::NeedleReading> needle(const QByteArray& file,
                                                       const vision::DialRange& range) const override {
        return vision::read_needle(bytes_of(file), range);
    }
};

}  // namespace
}  // namespace lapwing

extern "C" Q_DECL_EXPORT const lapwing::PhotoEye* lapwing_photo_eye() {
    static const lapwing::CvPhotoEye eye;
    return &eye;
}
