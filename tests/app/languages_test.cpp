// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The app in each of its languages: chosen by touch or by the system, numbers, dates, one and many.
#include <QTest>

#include "qml/app/language.h"
#include "tests/app/harness/errands.h"

namespace lapwing::test {

#define DO(action) \
    QVERIFY2(action, qPrintable(errands.why() + " / " + phone.thumb().why() + " / " + phone.why()))

namespace {

const char* const settings_title = "Settings";

QString shown(Phone& phone, const char* name) {
    const auto* item = phone.thumb().find(QString::fromLatin1(name), phone.page_item());
    return item ? item->property("text").toString() : QString();
}

}  // namespace

class LanguagesTest : public QObject {
    Q_OBJECT

private slots:
    void the_systems_language_is_spoken_when_there_are_texts();
    void formats_are_the_systems_where_they_fit();
    void a_language_is_chosen_by_touch_and_kept();
    void numbers_and_dates_data();
    void numbers_and_dates();
    void one_and_many_data();
    void one_and_many();
    void an_error_is_said_in_the_language();
};

void LanguagesTest::the_systems_language_is_spoken_when_there_are_texts() {
    QCOMPARE(Language::spoken("system", {"C"}), QStringLiteral("en"));
    QCOMPARE(Language::spoken("system", {"fr-FR", "de-AT", "en-US"}), QStringLiteral("de"));
    QCOMPARE(Language::spoken("system", {"es_MX"}), QStringLiteral("es"));
    QCOMPARE(Language::spoken("system", {"fr-FR"}), QStringLiteral("en"));
    QCOMPARE(Language::spoken("es", {"de-DE"}), QStringLiteral("es"));
}

// Decimal marks of the countries: QLocale's, that is CLDR's.
void LanguagesTest::formats_are_the_systems_where_they_fit() {
    const QLocale swiss(QLocale::German, QLocale::Switzerland);
    QCOMPARE(Language::formats("system", "de", swiss), swiss);
    QCOMPARE(Language::formats("de", "de", swiss), swiss);
    QCOMPARE(Language::formats("de", "de", QLocale(QLocale::English, QLocale::Switzerland)), swiss);
    QCOMPARE(Language::formats("de", "de", QLocale::c()), QLocale(QLocale::German, QLocale::Germany));
    // No French texts: English ones, with the numbers that the person is used to.
    QCOMPARE(Language::formats("system", "en", QLocale(QLocale::French)).decimalPoint(), QStringLiteral(","));
}

void LanguagesTest::a_language_is_chosen_by_touch_and_kept() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    Errands errands(phone);
    phone.go(QStringLiteral("Settings"), {});
    DO(phone.thumb().reads(QString::fromLatin1(settings_title)));
    for (const char* language : {"de", "es"}) {
        auto& thumb = phone.thumb();
        DO(thumb.touch_in(QStringLiteral("language"), QStringLiteral("choice_") + QLatin1String(language)));
        QTRY_VERIFY(QCoreApplication::translate("SettingsPage", settings_title) !=
                    QLatin1String(settings_title));
        settle(100);
        const QString title = QCoreApplication::translate("SettingsPage", settings_title);
        // At once, and on the same page.
        DO(thumb.reads(title));
        QCOMPARE(phone.page(), QStringLiteral("Settings"));
        QVERIFY(!thumb.words(phone.page_item()).contains(QString::fromLatin1(settings_title)));
        // The list under it speaks it too.
        phone.home();
        settle(100);
        QVERIFY(!thumb.words().contains(QStringLiteral("Add an engine")));
        phone.off();
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        phone.go(QStringLiteral("Settings"), {});
        QVERIFY2(phone.thumb().reads(title), qPrintable(phone.thumb().words().join(u'|')));
    }
    auto& thumb = phone.thumb();
    DO(thumb.touch_in(QStringLiteral("language"), QStringLiteral("choice_en")));
    DO(thumb.reads(QString::fromLatin1(settings_title)));
}

// Day and month in the country's order: CLDR's, by way of QLocale; the month as a word is the house's.
void LanguagesTest::numbers_and_dates_data() {
    QTest::addColumn<QString>("language");
    QTest::addColumn<QString>("number");
    QTest::addColumn<QString>("date");
    QTest::newRow("English") << "en"
                             << "9.1"
                             << "Mar 14, 2026";
    QTest::newRow("German") << "de"
                            << "9,1" << QStringLiteral("14. März 2026");
    QTest::newRow("Spanish") << "es"
                             << "9,1"
                             << "14 mar 2026";
}

void LanguagesTest::numbers_and_dates() {
    QFETCH(QString, language);
    QFETCH(QString, number);
    QFETCH(QString, date);
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    phone.settings().setLanguage(language);
    settle(100);
    const auto& format = phone.app().format();
    QCOMPARE(format.shortDate(*parse_rfc3339("2026-03-14T12:00:00.000Z")), date);

    // Typed with a comma or a point, it is the same number, shown as the language writes it.
    for (const char* typed : {"9,1", "9.1"}) {
        phone.go(QStringLiteral("Pad"), {{"sessionId", twin_ready_to_test(phone)}, {"test", "dry"}});
        settle(100);
        DO(thumb.type(QString::fromLatin1(typed)));
        QTRY_COMPARE(shown(phone, "figure"), number);
        const auto before = phone.desk().last_step();
        DO(thumb.touch(QStringLiteral("keep")));
        QTRY_VERIFY(phone.desk().last_step() &&
                    (!before || phone.desk().last_step()->number != before->number));
        phone.home();
    }
    // The file keeps a point, whatever was shown.
    int kept = 0;
    for (const auto& engine : phone.desk().engines()) {
        const auto dossier = phone.desk().dossier(engine.id);
        QVERIFY(dossier.has_value());
        for (const auto& visit : dossier->visits)
            for (const auto& reading : visit.readings) {
                QCOMPARE(QString::fromStdString(reading.final->digits()), QStringLiteral("9.1"));
                ++kept;
            }
    }
    QCOMPARE(kept, 2);
}

void LanguagesTest::one_and_many_data() {
    QTest::addColumn<QString>("language");
    for (const char* language : {"en", "de", "es"})
        QTest::newRow(language) << QString::fromLatin1(language);
}

void LanguagesTest::one_and_many() {
    QFETCH(QString, language);
    Language spoken;
    spoken.choose(language);
    const auto say = [](int n) {
        return QCoreApplication::translate("WipeLock", "Touches count again in %n second(s).", nullptr, n);
    };
    QVERIFY2(!say(1).contains(u'(') && !say(7).contains(u'('), qPrintable(say(7)));
    QVERIFY2(say(7).contains(u'7'), qPrintable(say(7)));
    // Not only the number differs.
    QVERIFY2(say(1) != say(7).replace(u'7', u'1'), qPrintable(say(1)));
}

void LanguagesTest::an_error_is_said_in_the_language() {
    Language spoken;
    // A sentence of core/physics.
    const Error error =
        fail("leakdown.restrictor",
             "A restrictor of {} mm cannot be right. Give 0.01 to 50 mm; most are 1 mm.", 0.005)
            .value();
    spoken.choose(QStringLiteral("en"));
    QCOMPARE(format::Formatter().text(error), QString::fromStdString(error.english));
    spoken.choose(QStringLiteral("de"));
    const QString german = format::Formatter({}, QLocale()).text(error);
    QVERIFY2(german != QString::fromStdString(error.english), qPrintable(german));
    QVERIFY2(german.contains(QStringLiteral("0,005")), qPrintable(german));
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::LanguagesTest)
#include "languages_test.moc"
