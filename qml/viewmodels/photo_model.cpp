// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/photo_model.h"

#include <QGuiApplication>

#include "core/workflow/remarks.h"
#include "qml/viewmodels/keep_evidence.h"

namespace lapwing {
namespace {

const QString ready = QStringLiteral("ready");
const QString looking = QStringLiteral("looking");
const QString keeping = QStringLiteral("keeping");
const QString shown = QStringLiteral("kept");

}  // namespace

PhotoModel::PhotoModel(QObject* parent) : CaptureBacked(parent) {
    connect(this, &PhotoModel::refreshed, this, &PhotoModel::photoChanged);
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState now) {
        hidden_ = now == Qt::ApplicationHidden || now == Qt::ApplicationSuspended;
        lookOrRest();
    });
}

PhotoModel::~PhotoModel() {
    off();
}

void PhotoModel::setLive(bool live) {
    if (live_ == live) return;
    live_ = live;
    emit liveChanged();
    lookOrRest();
}

void PhotoModel::setPhotoId(const QString& id) {
    if (photo_ == id) return;
    photo_ = id;
    refresh();
    emit photoChanged();
    lookOrRest();
}

void PhotoModel::refresh() {
    const auto* photo = photo_.isEmpty() ? nullptr : attachment(photo_);
    if (photo && photo->photo_of) kind_ = QString::fromUtf8(word(*photo->photo_of).data());
    // Undo of taking it, perhaps on another page, or deleted since this place was left.
    if (!photo && !photo_.isEmpty() && found() && state() != keeping) {
        photo_.clear();
        go(ready);
    }
    lookOrRest();
}

void PhotoModel::lookOrRest() {
    if (!app() || !found()) return;
    if (!photo_.isEmpty()) {
        off();
        if (state() != shown) go(shown);
    } else if (!live_ || hidden_) {
        off();
        if (state() == looking) go(ready);
    } else if (state() == ready && blocked().isEmpty()) {
        look();
    }
}

void PhotoModel::look() {
    // It is on already: a picture that didn't come, or a file that couldn't be taken, stood in between.
    if (camera_) return go(looking);
    allow(platform::Permission::camera, [this] {
        if (!live_ || hidden_ || camera_) return;
        const auto media = app()->devices().media.media();
        if (!media) return block(media.error(), ready);
        camera_ = &(*media)->camera();
        auto started = camera_->start({.frame =
                                           [this](const QImage& frame) {
                                               const bool first = frame_.isNull();
                                               frame_ = frame;
                                               emit seen();
                                               // Only now is it known what the camera can do.
                                               if (first) emit stateChanged();
                                           },
                                       .lost =
                                           [this](const Error& error) {
                                               camera_ = nullptr;
                                               frame_ = {};
                                               emit seen();
                                               block(error, ready);
                                           }});
        if (!started) {
            camera_ = nullptr;
            return block(started.error(), ready);
        }
        go(looking);
    });
}

void PhotoModel::lookAgain() {
    go(ready);
    lookOrRest();
}

void PhotoModel::off() {
    if (auto* camera = std::exchange(camera_, nullptr)) camera->stop();
    torch_ = false;
    frame_ = {};
}

QString PhotoModel::file() const {
    const auto* photo = attachment(photo_);
    return photo ? urlOf(*photo) : QString();
}

QString PhotoModel::photoPlace() const {
    const auto* photo = attachment(photo_);
    return photo ? placeOf(photo->tie) + QStringLiteral(" · ") + format().shortDateTime(photo->taken_at)
                 : place();
}

QVariantList PhotoModel::kinds() const {
    QVariantList list;
    for (const auto of : {PhotoOf::gauge, PhotoOf::plug, PhotoOf::borescope, PhotoOf::valve,
                          PhotoOf::piston_crown, PhotoOf::exit, PhotoOf::other})
        list << QVariantMap{{"value", QString::fromUtf8(word(of).data())}, {"text", format().heading(of)}};
    return list;
}

void PhotoModel::setKind(const QString& text) {
    const auto of = from_word<PhotoOf>(text.toStdString());
    if (!of || kind_ == text) return;
    kind_ = text;
    emit photoChanged();
    const auto* photo = photo_.isEmpty() ? nullptr : attachment(photo_);
    if (!photo || photo->photo_of == *of) return;
    Attachment changed = *photo;
    changed.photo_of = *of;
    app()->run(workflow::save_attachment(changed), this);
}

void PhotoModel::setTorch(bool on) {
    if (!hasTorch() || torch_ == on) return;
    torch_ = on;
    camera_->setTorch(on);
    emit torchChanged();
}

bool PhotoModel::canChoose() const {
    return app() && app()->devices().filePicker.available();
}

void PhotoModel::focusAt(double x, double y) {
    if (camera_) camera_->focusAt({x, y});
}

Attachment PhotoModel::blankPhoto() const {
    Attachment photo = blank();
    photo.photo_of = from_word<PhotoOf>(kind_.toStdString()).value_or(PhotoOf::other);
    if (retaken_) photo.tie = *retaken_;
    return photo;
}

void PhotoModel::keepOutcome(const Result<Attachment>& kept) {
    if (!kept) {
        block(kept.error(), camera_ ? looking : ready);
        return;
    }
    photo_ = QString::fromStdString(kept->id.text());
    retaken_.reset();
    off();
    go(shown);
    emit photoChanged();
    emit this->kept(photo_);
}

void PhotoModel::take() {
    if (!camera_ || state() != looking) return;
    go(keeping);
    camera_->take([guard = QPointer(this)](const Result<QImage>& picture) {
        if (!guard) return;
        if (!picture) return guard->block(picture.error(), looking);
        keep_photo(*guard->app(), *picture, guard->blankPhoto(), [guard](const Result<Attachment>& kept) {
            if (guard) guard->keepOutcome(kept);
        });
    });
}

void PhotoModel::choose() {
    if (state() == keeping) return;
    app()->devices().filePicker.open(tr("Choose a photo"),
                                     {{tr("Photos"),
                                       {QStringLiteral("*.jpg"), QStringLiteral("*.jpeg"),
                                        QStringLiteral("*.JPG"), QStringLiteral("*.png")},
                                       QStringLiteral("image/jpeg")}},
                                     [guard = QPointer(this)](Result<std::optional<QString>> picked) {
                                         if (!guard) return;
                                         if (!picked) return guard->app()->tell(picked.error());
                                         if (!*picked) return;
                                         guard->go(keeping);
                                         keep_photo_file(*guard->app(), **picked, guard->blankPhoto(),
                                                         [guard](const Result<Attachment>& kept) {
                                                             if (guard) guard->keepOutcome(kept);
                                                         });
                                     });
}

void PhotoModel::remove() {
    const auto* photo = attachment(photo_);
    if (!photo) return;
    const auto id = photo->id;
    photo_.clear();
    go(ready);
    emit photoChanged();
    app()->run(workflow::remove_attachment(id), this);
}

void PhotoModel::retake() {
    // The new one takes the old one's place, whatever page this was opened from.
    if (const auto* photo = attachment(photo_)) retaken_ = photo->tie;
    remove();
    lookOrRest();
}

}  // namespace lapwing
