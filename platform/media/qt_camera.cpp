// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/media/qt_camera.h"

#include <QCameraDevice>
#include <QMediaDevices>
#include <chrono>
#include <utility>

namespace lapwing::platform {
namespace {

using namespace std::chrono_literals;

constexpr auto longest_wait = 3s;
constexpr auto shortest_pause = 60ms;  ///< between two frames: making a picture of one takes a while
constexpr auto settling = 700ms;
constexpr int longest_side = 1280;

QCameraDevice best_camera() {
    const auto cameras = QMediaDevices::videoInputs();
    for (const auto& camera : cameras)
        if (camera.position() == QCameraDevice::BackFace) return camera;
    return QMediaDevices::defaultVideoInput();
}

QImage small(const QVideoFrame& frame) {
    QImage image = frame.toImage();
    if (std::max(image.width(), image.height()) > longest_side)
        image = image.scaled(longest_side, longest_side, Qt::KeepAspectRatio, Qt::FastTransformation);
    return image;
}

Error silent() {
    return fail(
               "camera.silent",
               "The camera does not answer. Close other programs that use it, or choose a photo from a file.")
        .value();
}

}  // namespace

QtCamera::QtCamera() {
    for (auto* timer : {&silence_, &patience_}) {
        timer->setSingleShot(true);
        timer->setInterval(longest_wait);
    }
    connect(&silence_, &QTimer::timeout, this, [this] { lose(silent()); });
    connect(&patience_, &QTimer::timeout, this, [this] { give(tl::unexpected(silent())); });
}

QtCamera::~QtCamera() = default;

bool QtCamera::available() const {
    return !best_camera().isNull();
}

Status QtCamera::start(Viewer viewer) {
    stop();
    const auto device = best_camera();
    if (device.isNull())
        return fail(
            "camera.none",
            "No camera was found. Connect one, or allow Lapwing to use it in the system's settings; photos "
            "can be chosen from files all the same.");
    viewer_ = std::move(viewer);
    eye_ = std::make_unique<Eye>();
    eye_->camera.setCameraDevice(device);
    eye_->session.setCamera(&eye_->camera);
    eye_->session.setImageCapture(&eye_->still);
    eye_->session.setVideoSink(&eye_->sink);
    connect(&eye_->sink, &QVideoSink::videoFrameChanged, this, &QtCamera::show);
    // The image itself is taken over: saving by the backend needs plugins that may be missing, and says
    // nothing.
    connect(&eye_->still, &QImageCapture::imageCaptured, this,
            [this](int, const QImage& picture) { give(picture); });
    connect(&eye_->still, &QImageCapture::errorOccurred, this,
            [this](int, QImageCapture::Error, const QString& why) {
                give(fail("camera.failed", "The camera took no picture ({}). Try again.", why.toStdString()));
            });
    connect(
        &eye_->camera, &QCamera::errorOccurred, this,
        [this](QCamera::Error, const QString& why) {
            lose(fail("camera.lost", "The camera stopped ({}). Go back and open it again.", why.toStdString())
                     .value());
        },
        Qt::QueuedConnection);
    eye_->camera.start();
    on_.start();
    silence_.start();
    return {};
}

// The first frames are left out: PipeWire takes the memory of some of them back while the stream is being set
// up. On this thread: Qt 6.4 shares a frame's picture between its copies without a lock, and taking a photo
// makes one too.
void QtCamera::show(const QVideoFrame& frame) {
    if (!frame.isValid()) return;
    silence_.stop();
    if (!on_.hasExpired(settling.count())) return;
    if (shown_.isValid() && !shown_.hasExpired(shortest_pause.count())) return;
    shown_.start();
    if (const QImage image = small(frame); !image.isNull() && viewer_.frame) viewer_.frame(image);
}

void QtCamera::take(Taken taken) {
    if (!eye_) return taken(tl::unexpected(silent()));
    taken_ = std::move(taken);
    patience_.start();
    if (eye_->still.capture() < 0) give(tl::unexpected(silent()));
}

void QtCamera::give(const Result<QImage>& picture) {
    patience_.stop();
    if (const auto taken = std::exchange(taken_, {})) taken(picture);
}

void QtCamera::lose(const Error& error) {
    if (!eye_) return;
    const auto lost = viewer_.lost;
    stop();
    if (lost) lost(error);
}

void QtCamera::stop() {
    shown_.invalidate();
    silence_.stop();
    patience_.stop();
    taken_ = {};
    viewer_ = {};
    if (!eye_) return;
    eye_->camera.stop();
    eye_.reset();
}

bool QtCamera::hasTorch() const {
    return eye_ && eye_->camera.isTorchModeSupported(QCamera::TorchOn);
}

void QtCamera::setTorch(bool on) {
    if (eye_) eye_->camera.setTorchMode(on ? QCamera::TorchOn : QCamera::TorchOff);
}

bool QtCamera::canFocus() const {
    return eye_ && eye_->camera.supportedFeatures().testFlag(QCamera::Feature::CustomFocusPoint);
}

void QtCamera::focusAt(QPointF place) {
    if (!canFocus()) return;
    eye_->camera.setFocusMode(QCamera::FocusModeAutoNear);
    eye_->camera.setCustomFocusPoint(place);
}

}  // namespace lapwing::platform
