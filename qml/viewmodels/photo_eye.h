// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>

#include "core/vision/needle.h"
#include "platform/api/part.h"

namespace lapwing {

/// What looks into photos. Stands on a large library, so it is brought in when a photo is first looked into.
/// Any thread.
class PhotoEye {
public:
    virtual ~PhotoEye() = default;
    /// A photo file as it may be kept and handed over: JPEG, upright, at most 4096 pixels wide or high,
    /// without tags of place or device.
    [[nodiscard]] virtual Result<QByteArray> keepable(const QByteArray& file) const = 0;
    /// See vision::read_needle.
    [[nodiscard]] virtual Result<vision::NeedleReading> needle(const QByteArray& file,
                                                               const vision::DialRange& range) const = 0;
};

/// The same eye every time.
class PhotoEyeStore {
public:
    Result<const PhotoEye*> eye() {
        if (eye_) return eye_;
        const auto found = platform::load_part(QStringLiteral("lapwing_photo_eye"), "lapwing_photo_eye");
        if (!found) return tl::unexpected(found.error());
        eye_ = reinterpret_cast<const PhotoEye* (*)()>(*found)();
        return eye_;
    }

private:
    const PhotoEye* eye_ = nullptr;
};

}  // namespace lapwing
