// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QTranslator>

#include "qml/viewmodels/how_to_model.h"
#include "qml/viewmodels/session_model.h"
#include "tests/viewmodels/shop.h"

namespace lapwing {
namespace {

/// Another language, for the context that the texts of assets are looked up in.
class Shouting : public QTranslator {
public:
    QString translate(const char* context, const char* source, const char*, int) const override {
        return QString::fromLatin1(context) == QLatin1String("Reference")
                   ? QString::fromUtf8(source).toUpper()
                   : QString();
    }
    [[nodiscard]] bool isEmpty() const override { return false; }
};

}  // namespace

class HowToTest : public QObject {
    Q_OBJECT

private slots:
    void the_list_has_every_card_in_order() {
        Shop shop;
        HowToModel model;
        complete(model, shop);
        QCOMPARE(model.problem(), QString());
        QCOMPARE(model.groups().size(), 3);
        QStringList listed;
        const auto groups = model.groups();
        for (const auto& group : groups) {
            QVERIFY(!group.toMap()["title"].toString().isEmpty());
            const auto cards = group.toMap()["cards"].toList();
            for (const auto& card : cards) {
                QVERIFY(!card.toMap()["title"].toString().isEmpty());
                QVERIFY(!card.toMap()["brief"].toString().isEmpty());
                listed << card.toMap()["card"].toString();
            }
        }
        QCOMPARE(listed.first(), QStringLiteral("complaint"));
        // Reading on from the first card passes every other one.
        QStringList read{listed.first()};
        for (model.setCard(listed.first()); !model.nextCard().isEmpty(); model.setCard(model.nextCard()))
            read << model.nextCard();
        QCOMPARE(read, listed);
        // Each one shows something as well.
        for (const QString& card : std::as_const(listed)) {
            model.setCard(card);
            const auto pictures = model.pictures();
            QVERIFY2(!pictures.isEmpty(), qPrintable(card));
            for (const auto& picture : pictures)
                QVERIFY2(!picture.toMap()["strokes"].toList().isEmpty(), qPrintable(card));
        }
    }

    void a_card_says_everything() {
        Shop shop;
        HowToModel model;
        model.setCard(QStringLiteral("leak-down"));
        complete(model, shop);
        QVERIFY(model.found());
        QCOMPARE(model.title(), QStringLiteral("Leak-down"));
        QVERIFY(!model.why().isEmpty());
        QVERIFY(model.how().size() > 4);
        QVERIFY(!model.signs().isEmpty());
        QVERIFY(!model.slips().isEmpty());
        QCOMPARE(model.nextCard(), QStringLiteral("listening"));
        QVERIFY(!model.nextTitle().isEmpty());
        // The caution is the one of the reference data, word for word.
        QVERIFY(model.cautions().contains(
            QString::fromStdString(knowhow::caution_of(shop.reference, "air")->text)));
        // Jeep service manual 1982, cylinder leakage test: the claim names it.
        bool named = false;
        const auto sources = model.sources();
        for (const auto& source : sources)
            named = named || source.toMap()["text"].toString().contains(QStringLiteral("Jeep"));
        QVERIFY(named);
        const auto picture = model.pictures().value(0).toMap();
        QVERIFY(!picture["description"].toString().isEmpty());
        QVERIFY(!picture["strokes"].toList().isEmpty());
        QVERIFY(!picture["marks"].toList().isEmpty());
    }

    void what_has_no_publication_says_so() {
        Shop shop;
        HowToModel model;
        model.setCard(QStringLiteral("decompressor"));
        complete(model, shop);
        QStringList said;
        const auto sources = model.sources();
        for (const auto& source : sources)
            said << source.toMap()["text"].toString();
        QVERIFY2(said.contains(QStringLiteral("Common practice")), qPrintable(said.join(u'|')));
    }

    void a_card_that_is_not_there() {
        Shop shop;
        HowToModel model;
        model.setCard(QStringLiteral("no such card"));
        complete(model, shop);
        QVERIFY(!model.found());
        QCOMPARE(model.nextCard(), QString());
        QVERIFY(model.how().isEmpty());
        QVERIFY(model.pictures().isEmpty());
        model.setCard(QStringLiteral("dry"));
        QVERIFY(model.found());
    }

    void every_text_can_be_translated() {
        Shop shop;
        Shouting shouting;
        QVERIFY(QCoreApplication::installTranslator(&shouting));
        HowToModel model;
        complete(model, shop);
        QStringList quiet;
        const auto hear = [&](const QString& text) {
            if (text != text.toUpper()) quiet << text;
        };
        const auto groups = model.groups();
        for (const auto& group : groups) {
            hear(group.toMap()["title"].toString());
            const auto cards = group.toMap()["cards"].toList();
            for (const auto& card : cards) {
                model.setCard(card.toMap()["card"].toString());
                hear(model.title());
                hear(model.brief());
                QStringList texts = model.why() + model.how() + model.cautions();
                for (const auto& list : {model.signs(), model.slips()})
                    for (const auto& line : list)
                        texts << line.toMap()["term"].toString() << line.toMap()["text"].toString();
                const auto pictures = model.pictures();
                for (const auto& picture : pictures) {
                    texts << picture.toMap()["title"].toString() << picture.toMap()["description"].toString();
                    const auto marks = picture.toMap()["marks"].toList();
                    for (const auto& mark : marks)
                        texts << mark.toMap()["text"].toString();
                }
                // Names of publications stay as they are.
                const auto sources = model.sources();
                for (const auto& source : sources)
                    texts << source.toMap()["term"].toString();
                for (const auto& text : texts)
                    hear(text);
            }
        }
        QCoreApplication::removeTranslator(&shouting);
        QVERIFY2(quiet.isEmpty(), qPrintable(quiet.join(u'\n')));
    }

    void a_session_knows_the_card_of_its_next_step() {
        Shop shop;
        HowToModel cards;
        complete(cards, shop);
        const auto engine = shop.add_engine(QStringLiteral("Twin"), 2);
        SessionModel session;
        session.setSessionId(text_id(shop.open_session(engine, "As found")));
        complete(session, shop);
        QVERIFY(QTest::qWaitFor([&] { return !session.nextReason().isEmpty(); }, 5000));
        cards.setCard(session.nextCard());
        QVERIFY2(cards.found(), qPrintable(session.nextCard()));
        // The page that it leads to and the card that explains it belong together.
        if (session.nextPage() == QLatin1String("Pad"))
            QCOMPARE(session.nextCard(), session.nextArgs()["test"].toString());
        else if (session.nextPage() == QLatin1String("Clearances"))
            QCOMPARE(session.nextCard(), QStringLiteral("clearances"));
        else
            QFAIL(qPrintable(session.nextPage()));
    }
};

}  // namespace lapwing

QTEST_MAIN(lapwing::HowToTest)
#include "how_to_test.moc"
