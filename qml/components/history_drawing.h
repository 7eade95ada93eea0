// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QVariant>

namespace lapwing::components {

/// Readings over the years (qml/charts/history_painter.h). `plot` holds a charts::HistoryPlot.
class HistoryDrawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariant plot MEMBER plot_ NOTIFY changed)
    Q_PROPERTY(int picked MEMBER picked_ NOTIFY changed)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed)
    Q_PROPERTY(QColor quiet MEMBER quiet_ NOTIFY changed)
    Q_PROPERTY(QColor paper MEMBER paper_ NOTIFY changed)
    Q_PROPERTY(QString family MEMBER family_ NOTIFY changed)
    Q_PROPERTY(int textSize MEMBER text_size_ NOTIFY changed)

public:
    explicit HistoryDrawing(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QVariant plot_;
    int picked_ = 0;  // cylinder that stands out; 0: none
    QColor ink_ = Qt::black;
    QColor quiet_ = Qt::black;
    QColor paper_ = Qt::white;
    QString family_;
    int text_size_ = 14;
};

/// The mark that a cylinder's line has in the drawing, by the line's place.
class HistoryMark : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int line MEMBER line_ NOTIFY changed)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed)

public:
    explicit HistoryMark(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    int line_ = 0;
    QColor ink_ = Qt::black;
};

}  // namespace lapwing::components
