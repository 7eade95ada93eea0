// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// A diesel has no spark plugs: neither its card nor its list of preparations speaks of them.
#include "qml/viewmodels/engine_card_form.h"
#include "qml/viewmodels/prepare_model.h"
#include "tests/viewmodels/shop.h"

namespace lapwing {

class DieselTest : public QObject {
    Q_OBJECT

private:
    /// What the card and the preparations of an engine of that fuel are called.
    static QStringList words_for(Fuel fuel) {
        Shop shop;
        Engine engine = shop.add_engine(QStringLiteral("Harbour four"), 4);
        engine.fuel = fuel;
        shop.desk->run(workflow::save_engine(engine));
        const auto session = shop.open_session(engine, "As found");
        QStringList words;
        EngineCardForm card;
        card.setRecordId(text_id(engine.id));
        complete(card, shop);
        for (const QString& section : card.sections()) {
            words << section;
            for (const QString& key : card.keysOf(section))
                words << card.field(key)["label"].toString();
        }
        PrepareModel prepare;
        prepare.setSessionId(text_id(session));
        complete(prepare, shop);
        for (const auto& step : prepare.steps())
            words << step.toMap()["name"].toString() << step.toMap()["reason"].toString();
        return words.filter(QStringLiteral("plug"), Qt::CaseInsensitive);
    }

private slots:
    void every_plug_of_a_diesel_is_a_glow_plug() {
        const auto words = words_for(Fuel::diesel);
        QVERIFY(words.size() >= 5);
        for (const QString& one : words)
            QVERIFY2(one.contains(QStringLiteral("glow plug")), qPrintable(one));
    }

    void a_petrol_engine_has_plugs() {
        const auto words = words_for(Fuel::petrol);
        QVERIFY(words.contains(QStringLiteral("Plug thread")));
        QVERIFY(words.contains(QStringLiteral("All plugs out")));
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::DieselTest)
#include "diesel_test.moc"
