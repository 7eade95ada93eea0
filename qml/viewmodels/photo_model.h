// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QImage>
#include <QPointF>
#include <QVariantList>

#include "qml/viewmodels/capture_backed.h"

namespace lapwing {

/// Takes one photo and keeps it at once, or shows one that was kept. States: "ready" (the camera is off),
/// "looking", "keeping" (until the commit), "kept".
class PhotoModel : public lapwing::CaptureBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool live MEMBER live_ WRITE setLive NOTIFY liveChanged)
    Q_PROPERTY(QString photoId READ photoId WRITE setPhotoId NOTIFY photoChanged)
    Q_PROPERTY(QString file READ file NOTIFY photoChanged)
    Q_PROPERTY(QString photoPlace READ photoPlace NOTIFY photoChanged)
    Q_PROPERTY(QString kind READ kind WRITE setKind NOTIFY photoChanged)
    Q_PROPERTY(QVariantList kinds READ kinds NOTIFY refreshed)
    Q_PROPERTY(bool hasTorch READ hasTorch NOTIFY stateChanged)
    Q_PROPERTY(bool torch READ torch WRITE setTorch NOTIFY torchChanged)
    Q_PROPERTY(bool canFocus READ canFocus NOTIFY stateChanged)
    Q_PROPERTY(bool canChoose READ canChoose NOTIFY appChanged)

public:
    explicit PhotoModel(QObject* parent = nullptr);
    ~PhotoModel() override;

    /// The camera is on only while the page that shows it is seen.
    void setLive(bool live);
    /// The photo that is shown; empty while none was taken.
    [[nodiscard]] QString photoId() const { return photo_; }
    void setPhotoId(const QString& id);
    [[nodiscard]] QString file() const;        ///< empty when it is missing
    [[nodiscard]] QString photoPlace() const;  ///< "Dry test, cylinder 2 · 14 Mar 2026 10:30"
    /// What it shows: the model's word ("gauge").
    [[nodiscard]] QString kind() const { return kind_; }
    void setKind(const QString& word);
    [[nodiscard]] QVariantList kinds() const;              ///< {value, text}
    [[nodiscard]] QImage frame() const { return frame_; }  ///< what the camera sees now
    [[nodiscard]] bool hasTorch() const { return camera_ && camera_->hasTorch(); }
    [[nodiscard]] bool torch() const { return torch_; }
    void setTorch(bool on);
    [[nodiscard]] bool canFocus() const { return camera_ && camera_->canFocus(); }
    [[nodiscard]] bool canChoose() const;

    /// After the camera couldn't be had.
    Q_INVOKABLE void lookAgain();
    Q_INVOKABLE void take();
    /// A photo that is there already.
    Q_INVOKABLE void choose();
    Q_INVOKABLE void focusAt(double x, double y);  ///< 0..1 from left and top
    /// Deletes the photo (Undo brings it back) and looks again.
    Q_INVOKABLE void retake();
    Q_INVOKABLE void remove();

signals:
    void liveChanged();
    void photoChanged();
    void seen();
    void torchChanged();

protected:
    void refresh() override;

private:
    void look();
    void off();
    void lookOrRest();
    [[nodiscard]] Attachment blankPhoto() const;
    void keepOutcome(const Result<Attachment>& kept);

    bool live_ = false;
    bool hidden_ = false;  ///< the whole app
    bool torch_ = false;
    QString photo_;
    QString kind_ = QStringLiteral("gauge");
    std::optional<Tie> retaken_;  ///< what the photo hung on that is taken again
    QImage frame_;
    platform::Camera* camera_ = nullptr;  ///< while it is on
};

}  // namespace lapwing
