// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QImage>
#include <QQuickItem>

#include "qml/viewmodels/photo_model.h"

namespace lapwing::capture {

/// Shows one image after another, whole, in the middle of the item. Works with every scene graph, the
/// software one too.
class Viewfinder : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lapwing::PhotoModel* photo READ photo WRITE setPhoto NOTIFY photoChanged REQUIRED)
    Q_PROPERTY(QRectF picture READ picture NOTIFY pictureChanged)

public:
    explicit Viewfinder(QQuickItem* parent = nullptr);

    [[nodiscard]] PhotoModel* photo() const { return photo_; }
    void setPhoto(PhotoModel* photo);
    /// Where the image lies in the item.
    [[nodiscard]] QRectF picture() const;

signals:
    void photoChanged();
    void pictureChanged();

protected:
    QSGNode* updatePaintNode(QSGNode* node, UpdatePaintNodeData* data) override;
    void geometryChange(const QRectF& now, const QRectF& before) override;

private:
    void show(const QImage& frame);

    PhotoModel* photo_ = nullptr;
    QImage frame_;
    bool fresh_ = false;
};

}  // namespace lapwing::capture
