// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QCamera>
#include <QElapsedTimer>
#include <QImageCapture>
#include <QMediaCaptureSession>
#include <QObject>
#include <QTimer>
#include <QVideoFrame>
#include <QVideoSink>
#include <memory>

#include "platform/api/camera.h"

namespace lapwing::platform {

class QtCamera final : public QObject, public Camera {
    Q_OBJECT

public:
    QtCamera();
    ~QtCamera() override;

    [[nodiscard]] bool available() const override;
    Status start(Viewer viewer) override;
    void stop() override;
    void take(Taken taken) override;
    [[nodiscard]] bool hasTorch() const override;
    void setTorch(bool on) override;
    [[nodiscard]] bool canFocus() const override;
    void focusAt(QPointF place) override;

private:
    /// What is on while the camera is.
    struct Eye {
        QCamera camera;
        QImageCapture still;
        QVideoSink sink;
        QMediaCaptureSession session;
    };

    void show(const QVideoFrame& frame);
    void give(const Result<QImage>& picture);
    void lose(const Error& error);

    std::unique_ptr<Eye> eye_;
    Viewer viewer_;
    Taken taken_;
    QTimer silence_;
    QTimer patience_;
    QElapsedTimer on_;     ///< since the camera was switched on
    QElapsedTimer shown_;  ///< since the last frame that was shown
};

}  // namespace lapwing::platform
