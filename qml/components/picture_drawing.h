// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QColor>
#include <QFont>
#include <QQuickPaintedItem>
#include <QVariantMap>

#include "qml/components/picture_painter.h"

namespace lapwing::components {

/// A picture of How to: {width, height, strokes: [{look, path}], marks: [{x, y}]}, as wide as the item.
class PictureDrawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantMap picture READ picture WRITE setPicture NOTIFY changed)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed)
    Q_PROPERTY(QColor quiet MEMBER quiet_ NOTIFY changed)
    Q_PROPERTY(QColor ground MEMBER ground_ NOTIFY changed)
    Q_PROPERTY(QColor solid MEMBER solid_ NOTIFY changed)
    Q_PROPERTY(QColor air MEMBER air_ NOTIFY changed)
    Q_PROPERTY(QColor rings MEMBER rings_ NOTIFY changed)
    Q_PROPERTY(QColor intake MEMBER intake_ NOTIFY changed)
    Q_PROPERTY(QColor exhaust MEMBER exhaust_ NOTIFY changed)
    Q_PROPERTY(QColor gasket MEMBER gasket_ NOTIFY changed)
    Q_PROPERTY(QColor inkOnPath MEMBER ink_on_path_ NOTIFY changed)
    Q_PROPERTY(QFont font MEMBER font_ NOTIFY changed)
    Q_PROPERTY(qreal markRadius MEMBER mark_radius_ NOTIFY changed)

public:
    explicit PictureDrawing(QQuickItem* parent = nullptr);

    [[nodiscard]] QVariantMap picture() const { return given_; }
    void setPicture(const QVariantMap& picture);

    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QVariantMap given_;
    Picture picture_;
    QColor ink_, quiet_, ground_, solid_, air_, rings_, intake_, exhaust_, gasket_, ink_on_path_;
    QFont font_;
    qreal mark_radius_ = 11;
};

}  // namespace lapwing::components
