// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QImageReader>
#include <QPainter>
#include <algorithm>

#include "qml/print/blocks.h"
#include "qml/print/styles.h"

namespace lapwing::print {
namespace {

constexpr int in_a_row = 4;
constexpr double between = mm(4);
constexpr double highest = mm(34);
/// Enough for a dial's figures on paper; more only makes the file heavy.
constexpr double dots_per_inch = 250.0;

int dots(double length) {
    return static_cast<int>(length / 720.0 * dots_per_inch);
}

QImage photo_of(const PhotoFile& photos, const std::string& sha256, QSizeF most) {
    const std::filesystem::path file = photos ? photos(sha256) : std::filesystem::path();
    if (file.empty()) return {};
    QImageReader reader(QFile::decodeName(QByteArray::fromStdString(file.string())));
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(true);
    const QImage whole = reader.read();
    if (whole.isNull()) return {};
    const QSize target(dots(most.width()), dots(most.height()));
    return whole.width() <= target.width() && whole.height() <= target.height()
               ? whole
               : whole.scaled(target, Qt::KeepAspectRatio, Qt::SmoothTransformation);
}

Piece frame(double width) {
    return {mm(22), [width](QPainter& painter, QPointF at) {
                painter.setBrush(Qt::NoBrush);
                painter.setPen(QPen(styles::hairline, pt(0.5), Qt::DashLine));
                painter.drawRect(QRectF(at, QSizeF(width, mm(21))));
                const Pieces words = typeset(text_of(report::Label::photo_missing),
                                             styles::in(styles::small, Qt::AlignHCenter), width - mm(4));
                QPointF line = at + QPointF(mm(2), (mm(21) - height_of(words)) / 2.0);
                for (const Piece& piece : words) {
                    piece.draw(painter, line);
                    line.ry() += piece.height;
                }
            }};
}

Piece picture(const QImage& image, double width) {
    const QSizeF size = QSizeF(image.size()).scaled(QSizeF(width, highest), Qt::KeepAspectRatio);
    return {size.height() + mm(1),
            [image, size](QPainter& painter, QPointF at) { painter.drawImage(QRectF(at, size), image); }};
}

Pieces photo_pieces(const Means& means, const report::Photo& photo, double width) {
    const Wording& wording = means.wording;
    const QImage image = photo_of(means.photos, photo.sha256, QSizeF(width, highest));
    Pieces pieces{image.isNull() ? frame(width) : picture(image, width)};
    QStringList title;
    if (photo.cylinder) title << cylinder_title(wording, *photo.cylinder);
    title << wording.text(photo.title);
    const auto add = [&](const QString& text, const Style& style) {
        for (Piece& piece : typeset(text, style, width))
            pieces.push_back(std::move(piece));
    };
    add(title.join(QStringLiteral(" · ")), styles::column_head);
    for (const report::Line& line : photo.lines)
        add(wording.text(line), styles::small);
    return pieces;
}

}  // namespace

void put(Flow& flow, const Means& means, const report::Photos& photos) {
    const double width = (flow.width() - between * (in_a_row - 1)) / in_a_row;
    Row row{{}, mm(1), mm(2)};
    for (const report::Photo& photo : photos.photos) {
        row.boxes.push_back(
            {static_cast<double>(row.boxes.size()) * (width + between), photo_pieces(means, photo, width)});
        if (row.boxes.size() == in_a_row) flow.put(std::exchange(row, Row{{}, mm(1), mm(2)}));
    }
    if (!row.boxes.empty()) flow.put(std::move(row));
}

}  // namespace lapwing::print
