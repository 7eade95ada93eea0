// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/components/picture_drawing.h"

namespace lapwing::components {

PictureDrawing::PictureDrawing(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
    connect(this, &PictureDrawing::changed, this, [this] { update(); });
}

void PictureDrawing::setPicture(const QVariantMap& picture) {
    if (given_ == picture) return;
    given_ = picture;
    picture_ = {};
    picture_.size = {picture[QStringLiteral("width")].toReal(), picture[QStringLiteral("height")].toReal()};
    const auto strokes = picture[QStringLiteral("strokes")].toList();
    for (const auto& stroke : strokes) {
        const auto map = stroke.toMap();
        picture_.strokes << Stroke{map[QStringLiteral("look")].toString(),
                                   map[QStringLiteral("path")].toString()};
    }
    const auto marks = picture[QStringLiteral("marks")].toList();
    for (const auto& mark : marks) {
        const auto map = mark.toMap();
        picture_.marks << Mark{int(picture_.marks.size()) + 1,
                               {map[QStringLiteral("x")].toReal(), map[QStringLiteral("y")].toReal()}};
    }
    emit changed();
}

void PictureDrawing::paint(QPainter* painter) {
    paint_picture(*painter, picture_, width(),
                  {ink_, quiet_, ground_, solid_, air_, rings_, intake_, exhaust_, gasket_, ink_on_path_},
                  font_, mark_radius_);
}

}  // namespace lapwing::components
