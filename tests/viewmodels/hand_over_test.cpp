// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The files that are handed over.
#include <QFile>

#include "qml/viewmodels/hand_over_files.h"
#include "tests/viewmodels/hand_over_shop.h"

namespace lapwing {

class HandOverTest : public QObject {
    Q_OBJECT

private slots:
    void a_file_of_the_same_name_is_not_written_over() {
        HandingShop shop;
        shop.fill();
        const QTemporaryDir place;
        HandOverOrder order;
        order.kind = HandOverKind::table;
        order.chosen = {shop.engine_id, {shop.session}, false};
        order.session = shop.session;
        order.format = shop.app->format();
        order.folder = place.path().toStdString();
        const auto write = [&] {
            const auto made = write_hand_over(*shop.desk, shop.reference, order);
            if (!made) qFatal("%s", made.error().english.c_str());
            return QString::fromStdString(made->file.string());
        };
        const auto bytes = [](const QString& file) {
            QFile in(file);
            return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
        };
        const QString first = write();
        const QByteArray before = bytes(first);
        QVERIFY(!before.isEmpty());
        Reading more;
        more.session = shop.session;
        more.cylinder = 1;
        more.final = TypedPressure::make("8.8", units::bar).value();
        shop.run(workflow::keep_reading(more));
        const QString second = write();
        const QString third = write();
        QVERIFY(second.endsWith(QStringLiteral(" (2).csv")));
        QVERIFY(third.endsWith(QStringLiteral(" (3).csv")));
        QCOMPARE(bytes(first), before);
        QVERIFY(bytes(second) != before);
        QCOMPARE(bytes(second), bytes(third));
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::HandOverTest)
#include "hand_over_test.moc"
