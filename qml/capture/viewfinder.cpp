// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/capture/viewfinder.h"

#include <QQuickWindow>
#include <QSGImageNode>

namespace lapwing::capture {

Viewfinder::Viewfinder(QQuickItem* parent) : QQuickItem(parent) {
    setFlag(ItemHasContents);
}

void Viewfinder::setPhoto(PhotoModel* photo) {
    if (photo_ == photo) return;
    photo_ = photo;
    connect(photo_, &PhotoModel::seen, this, [this] { show(photo_->frame()); });
    connect(photo_, &QObject::destroyed, this, [this] { photo_ = nullptr; });
    emit photoChanged();
}

void Viewfinder::show(const QImage& frame) {
    const bool other_shape = frame.size() != frame_.size();
    frame_ = frame;
    fresh_ = true;
    update();
    if (other_shape) emit pictureChanged();
}

QRectF Viewfinder::picture() const {
    if (frame_.isNull()) return {};
    const QSizeF size = QSizeF(frame_.size()).scaled(QQuickItem::size(), Qt::KeepAspectRatio);
    return {{(width() - size.width()) / 2, (height() - size.height()) / 2}, size};
}

QSGNode* Viewfinder::updatePaintNode(QSGNode* old, UpdatePaintNodeData*) {
    auto* node = static_cast<QSGImageNode*>(old);
    if (frame_.isNull()) {
        delete node;
        return nullptr;
    }
    if (!node) {
        node = window()->createImageNode();
        node->setOwnsTexture(true);
        node->setFiltering(QSGTexture::Linear);
        fresh_ = true;
    }
    if (std::exchange(fresh_, false)) node->setTexture(window()->createTextureFromImage(frame_));
    node->setRect(picture());
    return node;
}

void Viewfinder::geometryChange(const QRectF& now, const QRectF& before) {
    QQuickItem::geometryChange(now, before);
    update();
    emit pictureChanged();
}

}  // namespace lapwing::capture
