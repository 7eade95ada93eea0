// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/photo_eye.h"

#include <span>

#include "core/vision/photo.h"

namespace lapwing {
namespace {

std::span<const std::byte> bytes_of(const QByteArray& file) {
    return std::as_bytes(std::span(file.constData(), std::size_t(file.size())));
}

class CvPhotoEye final : public PhotoEye {
public:
    [[nodiscard]] Result<QByteArray> keepable(const QByteArray& file) const override {
        const auto jpeg = vision::make_keepable(bytes_of(file));
        if (!jpeg) return tl::unexpected(jpeg.error());
        return QByteArray(reinterpret_cast<const char*>(jpeg->data()), qsizetype(jpeg->size()));
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
