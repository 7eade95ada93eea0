// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QColor>
#include <QQuickPaintedItem>

namespace lapwing::components {

/// The pattern of a leak path over whatever lies under it (qml/charts/share_painter.h).
class PatternDrawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString path MEMBER path_ NOTIFY changed)
    Q_PROPERTY(QColor color MEMBER color_ NOTIFY changed)

public:
    explicit PatternDrawing(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QString path_;
    QColor color_ = Qt::black;
};

/// A share with its interval on a line from 0 to 1.
class ShareTrack : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(qreal mean MEMBER mean_ NOTIFY changed)
    Q_PROPERTY(qreal low MEMBER low_ NOTIFY changed)
    Q_PROPERTY(qreal high MEMBER high_ NOTIFY changed)
    Q_PROPERTY(QColor color MEMBER color_ NOTIFY changed)
    Q_PROPERTY(bool mirrored MEMBER mirrored_ NOTIFY changed)

public:
    explicit ShareTrack(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    qreal mean_ = 0;
    qreal low_ = 0;
    qreal high_ = 0;
    QColor color_ = Qt::black;
    bool mirrored_ = false;
};

}  // namespace lapwing::components
