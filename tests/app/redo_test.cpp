// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Who undoes by mistake, or once too often, gets back what was undone.
#include <QTest>

#include "core/workflow/engines.h"
#include "tests/app/harness/phone.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {

#define DO(action) QVERIFY2(action, qPrintable(thumb.why() + " / " + phone.why()))

class RedoTest : public QObject {
    Q_OBJECT

    static std::string name(Phone& phone, EngineId id) {
        const auto engine = phone.desk().engine(id);
        return engine ? engine->name : std::string();
    }
    static void rename(Phone& phone, EngineId id, const char* to) {
        auto engine = *phone.desk().engine(id);
        engine.name = to;
        phone.run(workflow::save_engine(engine));
    }

private slots:
    void the_message_of_an_undo_offers_redo() {
        Phone phone({412, 915});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        const auto id = Stock(phone.desk()).engine("Mower", 1);
        rename(phone, id, "Old mower");
        DO(thumb.touch(QStringLiteral("undo")));
        DO(thumb.reads(QStringLiteral("Undone")));
        QTRY_COMPARE(name(phone, id), std::string("Mower"));
        QVERIFY(!thumb.sees(QStringLiteral("undo")));
        DO(thumb.touch(QStringLiteral("redo")));
        QTRY_COMPARE(name(phone, id), std::string("Old mower"));
        // And round again.
        DO(thumb.reads(QStringLiteral("Done again")));
        DO(thumb.touch(QStringLiteral("undo")));
        QTRY_COMPARE(name(phone, id), std::string("Mower"));
        DO(thumb.appears(QStringLiteral("redo")));
        // Something else is done: what was undone has no place any more.
        rename(phone, id, "Saw");
        DO(thumb.goes(QStringLiteral("redo")));
        QCOMPARE(name(phone, id), std::string("Saw"));
    }

    void more_offers_it_as_long_as_nothing_else_is_done() {
        Phone phone({412, 915});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        const auto id = Stock(phone.desk()).engine("Mower", 1);
        {
            auto& thumb = phone.thumb();
            rename(phone, id, "Old mower");
            DO(thumb.touch(QStringLiteral("undo")));
            QTRY_COMPARE(name(phone, id), std::string("Mower"));
        }
        // Even after the app was closed.
        phone.off();
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        auto& thumb = phone.thumb();
        DO(thumb.touch(QStringLiteral("more")));
        DO(thumb.touch(QStringLiteral("redoLast")));
        QTRY_COMPARE(name(phone, id), std::string("Old mower"));
        DO(wait_until([&] { return thumb.overlay() == nullptr; }));
        DO(thumb.touch(QStringLiteral("more")));
        DO(thumb.appears(QStringLiteral("redoLast")));
        QVERIFY(!thumb.find(QStringLiteral("redoLast"))->isEnabled());
        DO(thumb.touch(QStringLiteral("undoLast")));
        QTRY_COMPARE(name(phone, id), std::string("Mower"));
        rename(phone, id, "Saw");
        DO(wait_until([&] { return thumb.overlay() == nullptr; }));
        DO(thumb.touch(QStringLiteral("more")));
        DO(thumb.appears(QStringLiteral("redoLast")));
        QVERIFY(!thumb.find(QStringLiteral("redoLast"))->isEnabled());
        QCOMPARE(name(phone, id), std::string("Saw"));
    }
};

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::RedoTest)
#include "redo_test.moc"
