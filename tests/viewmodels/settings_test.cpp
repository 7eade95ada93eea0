// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "qml/viewmodels/settings_model.h"
#include "tests/viewmodels/shop.h"

namespace lapwing {

class SettingsTest : public QObject {
    Q_OBJECT

    static QJsonDocument json(const QString& name) {
        QFile file(name);
        if (!file.open(QIODevice::ReadOnly)) return {};
        return QJsonDocument::fromJson(file.readAll());
    }

private slots:
    void every_library_that_is_built_in_is_named() {
        const auto listed = json(QStringLiteral(LAPWING_SOURCE_DIR "/assets/licences/licences.json")).array();
        QStringList covered;
        for (const QJsonValue& one : listed)
            for (const QJsonValue& package : one["packages"].toArray())
                covered << package.toString();
        // The list that builds for phones link from.
        const auto built =
            json(QStringLiteral(LAPWING_SOURCE_DIR "/platform/vcpkg.json"))["dependencies"].toArray();
        QVERIFY(built.size() > 10);
        for (const QJsonValue& one : built) {
            const QString name = one.isString() ? one.toString() : one["name"].toString();
            QVERIFY2(covered.contains(name), qPrintable(name));
        }
    }

    void every_licence_can_be_read_without_a_network() {
        const auto licences = SettingsModel::licences();
        QVERIFY(licences.size() > 12);
        for (const QVariant& one : licences) {
            const QVariantMap map = one.toMap();
            const QString text = SettingsModel::licenceText(map["name"].toString());
            QVERIFY2(text.startsWith(map["holders"].toString()), qPrintable(map["name"].toString()));
            if (map["licence"].toString() != QLatin1String("public domain"))
                QVERIFY2(text.size() > 600, qPrintable(map["name"].toString()));
        }
        QVERIFY(SettingsModel::licenceText(QStringLiteral("Qt"))
                    .contains(QStringLiteral("GNU LESSER GENERAL PUBLIC LICENSE")));
        QVERIFY(SettingsModel::licenceText(QStringLiteral("B612"))
                    .contains(QStringLiteral("SIL OPEN FONT LICENSE")));
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::SettingsTest)
#include "settings_test.moc"
