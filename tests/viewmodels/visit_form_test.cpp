// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/visit_form.h"

#include "tests/viewmodels/shop.h"

namespace lapwing {

class VisitFormTest : public QObject {
    Q_OBJECT

private:
    struct Visited {
        Visited() : session(shop.open_session(shop.add_engine(QStringLiteral("Pair"), 2), "As found")) {
            form.setRecordId(text_id(session));
            complete(form, shop);
        }
        QString enter(const char* key, const QVariantMap& entry) {
            const QString problem = form.enter(QString::fromLatin1(key), entry);
            shop.settle();
            return problem;
        }
        Session stored() const { return shop.desk->session(session).value(); }

        Shop shop;
        SessionId session;
        VisitForm form;
    };

private slots:
    void complaint_and_job_are_kept() {
        Visited visit;
        QCOMPARE(visit.enter("symptoms", chosen({QStringLiteral("noise"), QStringLiteral("power loss")})),
                 QString());
        QCOMPARE(visit.stored().complaint.symptoms,
                 (std::vector<Symptom>{Symptom::power_loss, Symptom::noise}));
        QCOMPARE(visit.enter("symptoms", chosen({})), QString());
        QVERIFY(visit.stored().complaint.symptoms.empty());
        QCOMPARE(visit.enter("job", typed(QStringLiteral("2026-014"))), QString());
        QCOMPARE(visit.stored().job_number, std::string("2026-014"));
        QCOMPARE(visit.enter("usage", typed(QStringLiteral("8000"), QStringLiteral("km"))), QString());
        QCOMPARE(visit.stored().usage->text(), std::string("8000 km"));
        // Thousands as they are written: asked about once.
        const auto thousands = typed(QStringLiteral("120,500"), QStringLiteral("km"));
        QVERIFY(visit.enter("usage", thousands).contains(QStringLiteral("thousands")));
        QCOMPARE(visit.stored().usage->text(), std::string("8000 km"));
        QCOMPARE(visit.enter("usage", thousands), QString());
        QCOMPARE(visit.stored().usage->text(), std::string("120.500 km"));
        QCOMPARE(visit.enter("usage", typed(QStringLiteral("1250.5"), QStringLiteral("hour"))), QString());
    }

    void conditions_have_steps_of_their_own() {
        Visited visit;
        QCOMPARE(visit.enter("altitude", typed(QStringLiteral("240"), QStringLiteral("m"))), QString());
        QCOMPARE(QString::fromStdString(visit.shop.desk->last_step()->name),
                 QStringLiteral("session.conditions"));
        QCOMPARE(visit.enter("heat", chosen({QStringLiteral("warm")})), QString());
        QVERIFY(visit.stored().conditions.heat == EngineHeat::warm);
        visit.shop.undo();
        QVERIFY(visit.stored().conditions.heat == EngineHeat::unknown);
        QCOMPARE(visit.stored().conditions.altitude->text(), std::string("240 m"));
    }

    void impossible_conditions_are_refused() {
        Visited visit;
        QVERIFY(!visit.enter("altitude", typed(QStringLiteral("24000"), QStringLiteral("m"))).isEmpty());
        QVERIFY(!visit.enter("station", typed(QStringLiteral("98"), QStringLiteral("hPa"))).isEmpty());
        QVERIFY(!visit.enter("battery", typed(QStringLiteral("12,,4"), QStringLiteral("V"))).isEmpty());
        QVERIFY(!visit.stored().conditions.altitude);
        QCOMPARE(visit.enter("station", typed(QStringLiteral("985"), QStringLiteral("hPa"))), QString());
        QCOMPARE(visit.enter("air", typed(QStringLiteral("-4"), QStringLiteral("degC"))), QString());
        QCOMPARE(visit.stored().conditions.air->digits(), std::string("-4"));
    }

    void testers_are_chosen_among_those_of_their_kind() {
        Visited visit;
        const auto add = [&](TesterKind kind, const char* name) {
            Tester tester;
            tester.id = visit.shop.desk->make_id<TesterId>();
            tester.made_at = visit.shop.clock.now();
            tester.kind = kind;
            tester.name = name;
            tester.gauge.full_scale = TypedPressure::make("16", units::bar).value();
            visit.shop.desk->run(workflow::save_tester(tester));
            visit.shop.settle();
            return text_id(tester.id);
        };
        const QString gauge = add(TesterKind::compression_gauge, "Gauge");
        const QString other = add(TesterKind::leak_down, "Tester");
        const auto options =
            visit.form.field(QStringLiteral("gauge"))[QStringLiteral("options")].toStringList();
        QVERIFY(options.contains(gauge));
        QVERIFY(!options.contains(other));
        QCOMPARE(visit.enter("gauge", chosen({gauge})), QString());
        QCOMPARE(text_id(*visit.stored().compression_gauge), gauge);
        QCOMPARE(QString::fromStdString(visit.shop.desk->last_step()->name),
                 QStringLiteral("session.tester"));
        QCOMPARE(visit.enter("gauge", chosen({QStringLiteral("none")})), QString());
        QVERIFY(!visit.stored().compression_gauge);
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::VisitFormTest)
#include "visit_form_test.moc"
