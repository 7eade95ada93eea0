// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Figures by touch: where they come from, and which of two holds. LAPWING_KEEP_SHOTS=FOLDER keeps what was
// seen.
#include <QTest>

#include "core/workflow/remarks.h"
#include "tests/app/harness/errands.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {

#define DO(action) QVERIFY2(action, qPrintable(errands.why() + " / " + thumb.why() + " / " + phone.why()))

class FiguresTest : public QObject {
    Q_OBJECT

private slots:
    void a_figure_of_the_session_opens_where_it_comes_from_data() { sizes(); }
    void a_figure_of_the_session_opens_where_it_comes_from();
    void the_leakage_in_the_head_of_the_leak_hunt_does_too_data() { sizes(); }
    void the_leakage_in_the_head_of_the_leak_hunt_does_too();
    void a_photo_that_reads_otherwise_is_asked_about_before_keep_data() { sizes(); }
    void a_photo_that_reads_otherwise_is_asked_about_before_keep();

private:
    static void sizes() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("320x568") << QSize(320, 568);
        QTest::newRow("412x915") << QSize(412, 915);
        QTest::newRow("915x412") << QSize(915, 412);
    }
    static void shoot(Phone& phone, const QString& name) {
        const QString folder = qEnvironmentVariable("LAPWING_KEEP_SHOTS");
        if (folder.isEmpty()) return;
        settle(300);
        for (const QString& look : {QStringLiteral("daylight"), QStringLiteral("workshop")}) {
            phone.settings().setLook(look);
            settle(200);
            phone.window().grabWindow().save(
                QStringLiteral("%1/%2-%3-%4.png")
                    .arg(folder, name, QString::fromLatin1(QTest::currentDataTag()), look));
        }
    }
    static QString measured(Phone& phone) {
        const QString id = twin_ready_to_test(phone);
        Stock(phone.desk()).readings(*SessionId::parse(id.toStdString()), 2);
        settle(100);
        return id;
    }
};

void FiguresTest::a_figure_of_the_session_opens_where_it_comes_from() {
    QFETCH(QSize, size);
    Phone phone(size);
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    const QString id = measured(phone);
    phone.go(QStringLiteral("Session"), {{"sessionId", id}});
    DO(phone.arrives(QStringLiteral("Session")));
    DO(thumb.appears(QStringLiteral("figures_dry")));
    DO(thumb.reads(QStringLiteral("10.1 · 6.1 bar")));
    DO(thumb.touch(QStringLiteral("figures_dry")));
    shoot(phone, QStringLiteral("session-figures"));
    DO(thumb.touch(QStringLiteral("sheetLine_0")));
    DO(thumb.reads(QStringLiteral("Where does this come from")));
    shoot(phone, QStringLiteral("session-derivation"));
    thumb.key(Qt::Key_Escape);
    thumb.key(Qt::Key_Escape);
    QTRY_VERIFY(!thumb.overlay());
    shoot(phone, QStringLiteral("session"));
    // Spread: one figure, so its derivation opens at once.
    DO(thumb.touch(QStringLiteral("figures_findings")));
    DO(thumb.reads(QStringLiteral("Where does this come from")));
    thumb.key(Qt::Key_Escape);
    QTRY_VERIFY(!thumb.overlay());
    QCOMPARE(phone.page(), QStringLiteral("Session"));
    // The tile's own touch is its own.
    DO(thumb.touch(QStringLiteral("tile_dry")));
    DO(phone.arrives(QStringLiteral("Pad")));
}

void FiguresTest::the_leakage_in_the_head_of_the_leak_hunt_does_too() {
    QFETCH(QSize, size);
    Phone phone(size);
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    const QString id = measured(phone);
    phone.go(QStringLiteral("LeakHunt"), {{"sessionId", id}, {"cylinder", 2}});
    DO(phone.arrives(QStringLiteral("LeakHunt")));
    DO(thumb.reads(QStringLiteral("leakage 45 %")));
    shoot(phone, QStringLiteral("hunt"));
    DO(thumb.touch(QStringLiteral("explainHead")));
    DO(thumb.reads(QStringLiteral("Where does this come from")));
    const auto words = thumb.words().join(u'\n');
    QVERIFY2(words.contains(QStringLiteral("3.0 bar")) && words.contains(QStringLiteral("5.5 bar")),
             qPrintable(words));
}

void FiguresTest::a_photo_that_reads_otherwise_is_asked_about_before_keep() {
    QFETCH(QSize, size);
    Phone phone(size);
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    const QString id = twin_ready_to_test(phone);
    phone.go(QStringLiteral("Pad"), {{"sessionId", id}, {"test", "dry"}});
    DO(phone.arrives(QStringLiteral("Pad")));
    DO(errands.free_pad());
    DO(thumb.type(QStringLiteral("4.6")));
    // As the photo's page leaves it: the photo of this cylinder's gauge reads 4.06 bar (made up).
    Stock stock(phone.desk());
    const auto session = *SessionId::parse(id.toStdString());
    const auto kept = stock.attachment(session, AttachmentKind::photo, "\xff\xd8 a picture");
    auto photo = errands.visit()->attachments.front();
    QCOMPARE(photo.id, kept);
    photo.tie = {TiedTo::cylinder, {}, 1, {}};
    photo.photo_of = PhotoOf::gauge;
    photo.read_value = TypedPressure::make("4.06", units::bar).value();
    photo.read_uncertainty = TypedPressure::make("0.005", units::bar).value();
    photo.read_confidence = TypedRatio::make("0.9", units::one).value();
    stock.run(workflow::save_attachment(photo));
    settle(100);
    shoot(phone, QStringLiteral("pad-photo"));
    DO(thumb.touch(QStringLiteral("keep")));
    DO(thumb.reads(QStringLiteral("You typed 4.6 bar, the photo reads 4.06 bar ± 0.01.")));
    QVERIFY(errands.visit()->readings.empty());
    shoot(phone, QStringLiteral("pad-photo-asked"));
    DO(thumb.touch(QStringLiteral("photo_as read")));
    QTRY_COMPARE(errands.visit()->readings.size(), std::size_t(1));
    QCOMPARE(errands.visit()->readings.front().final->text(), std::string("4.06 bar"));
    QTRY_VERIFY(!thumb.overlay());
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::FiguresTest)
#include "figures_test.moc"
