// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QClipboard>
#include <QGuiApplication>
#include <QTest>

#include "core/workflow/hand_over.h"
#include "qml/viewmodels/known_keys_model.h"
#include "tests/viewmodels/shop.h"

namespace lapwing {

class KnownKeysTest : public QObject {
    Q_OBJECT

private:
    static workflow::SignedBy::Who who(const Shop& shop, const std::string& key) {
        return workflow::signed_by(*shop.desk, {exchange::SignatureState::unaltered, key}).who;
    }
    static QVariantMap only(const KnownKeysModel& model) { return model.keys().value(0).toMap(); }
    const std::string theirs_ = std::string(64, 'a');

private slots:
    void people_are_renamed_and_forgotten_and_come_back() {
        Shop shop;
        shop.desk->name_key(theirs_, "Robin");
        shop.desk->flush();
        KnownKeysModel model;
        model.setApp(shop.app.get());
        QCOMPARE(model.keys().size(), 1);
        QCOMPARE(only(model)["name"].toString(), QStringLiteral("Robin"));
        QCOMPARE(only(model)["fingerprint"].toString().toStdString(), exchange::fingerprint(theirs_));
        QCOMPARE(only(model)["since"].toString(), shop.app->format().shortDate(shop.clock.now()));
        const auto key = only(model)["key"].toString();
        const auto since = only(model)["since"].toString();

        shop.clock.move_by(std::chrono::hours(72));
        model.rename(key, QStringLiteral("  "));
        shop.settle();
        QCOMPARE(only(model)["name"].toString(), QStringLiteral("Robin"));
        model.rename(key, QStringLiteral(" Kim "));
        shop.settle();
        QCOMPARE(only(model)["name"].toString(), QStringLiteral("Kim"));
        QCOMPARE(only(model)["since"].toString(), since);

        QCOMPARE(who(shop, theirs_), workflow::SignedBy::Who::known);
        model.forget(key);
        shop.settle();
        QVERIFY(model.keys().isEmpty());
        QCOMPARE(model.forgotten()["name"].toString(), QStringLiteral("Kim"));
        QCOMPARE(who(shop, theirs_), workflow::SignedBy::Who::unknown);

        model.undoForget();
        shop.settle();
        QCOMPARE(only(model)["name"].toString(), QStringLiteral("Kim"));
        QCOMPARE(only(model)["since"].toString(), since);
        QVERIFY(model.forgotten().isEmpty());
    }

    void the_own_fingerprint_is_shown_once_there_is_a_key() {
        Shop shop;
        KnownKeysModel model;
        model.setApp(shop.app.get());
        QCOMPARE(model.own(), QString());
        model.copyOwn();
        QVERIFY(!model.copied());
        QVERIFY(workflow::signing_key(*shop.desk));
        QVERIFY(!model.own().isEmpty());
        QCOMPARE(model.own().toStdString(), workflow::own_fingerprint(*shop.desk));
        model.copyOwn();
        QVERIFY(model.copied());
        QCOMPARE(QGuiApplication::clipboard()->text(), model.own());
    }
};

}  // namespace lapwing

QTEST_MAIN(lapwing::KnownKeysTest)
#include "known_keys_test.moc"
