// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QImage>
#include <QPointF>
#include <functional>

#include "core/base/result.h"

namespace lapwing::platform {

/// The camera that looks away from the person. On only between start() and stop().
class Camera {
public:
    struct Viewer {
        /// What the camera sees, upright, at most 1280 pixels wide or high; many times a second.
        std::function<void(const QImage&)> frame;
        /// It went away or never gave a picture; it is off now.
        std::function<void(const Error&)> lost;
    };
    using Taken = std::function<void(Result<QImage>)>;

    virtual ~Camera() = default;
    [[nodiscard]] virtual bool available() const = 0;
    /// Calls the viewer on the calling thread until stop(). Without a first frame within 3 s `lost` is called
    /// with "camera.silent"; "camera.none" when there is no camera.
    virtual Status start(Viewer viewer) = 0;
    virtual void stop() = 0;

    /// Takes one picture in full size; `taken` is called once, within 3 s, unless stop() comes before it.
    virtual void take(Taken taken) = 0;

    [[nodiscard]] virtual bool hasTorch() const = 0;  ///< known once it is on
    virtual void setTorch(bool on) = 0;
    [[nodiscard]] virtual bool canFocus() const = 0;
    /// Focuses there: 0..1 from the left and from the top of the frame.
    virtual void focusAt(QPointF place) = 0;
};

}  // namespace lapwing::platform
