// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/readings.h"
#include "qml/viewmodels/tester_card_form.h"
#include "qml/viewmodels/tester_list_model.h"
#include "tests/viewmodels/shop.h"

namespace lapwing {

class TesterCardTest : public QObject {
    Q_OBJECT

private:
    struct Bench {
        explicit Bench(const char* kind = "leak-down tester") {
            complete(list, shop);
            QSignalSpy added(&list, &TesterListModel::added);
            const QString problem = list.add(QString::fromLatin1(kind), QStringLiteral("Home-made"),
                                             QStringLiteral("10"), QStringLiteral("bar"));
            if (!problem.isEmpty()) qFatal("%s", qPrintable(problem));
            shop.settle();
            if (added.size() != 1) qFatal("not added");
            form.setRecordId(added.at(0).at(0).toString());
            complete(form, shop);
        }
        QString enter(const char* key, const QVariantMap& entry) {
            const QString problem = form.enter(QString::fromLatin1(key), entry);
            shop.settle();
            return problem;
        }
        Tester stored() const { return shop.desk->testers().front(); }
        QVariantMap check(const QString& kind) const {
            for (const auto& item : form.checks())
                if (item.toMap().value(QStringLiteral("kind")).toString() == kind) return item.toMap();
            return {};
        }

        Shop shop;
        TesterListModel list;
        TesterCardForm form;
    };

    static QVariantMap bar(const char* text) {
        return typed(QString::fromLatin1(text), QStringLiteral("bar"));
    }

private slots:
    void set_pressure_and_hole_are_asked_when_a_leak_down_tester_is_added() {
        Shop shop;
        TesterListModel list;
        complete(list, shop);
        const auto add = [&](const char* kind, const char* set, const char* hole) {
            const QString problem =
                list.add(QString::fromLatin1(kind), QString::fromLatin1(kind), QStringLiteral("10"),
                         QStringLiteral("bar"), QString::fromLatin1(set), QString::fromLatin1(hole),
                         QStringLiteral("in"));
            shop.settle();
            return problem;
        };
        QVERIFY(!add("leak-down tester", "12", "0.04").isEmpty());  // above the dial's last figure
        QVERIFY(!add("leak-down tester", "6", "a hole").isEmpty());
        QCOMPARE(list.count(), 0);
        QCOMPARE(add("leak-down tester", "6", "0.04"), QString());
        const Tester made = shop.desk->testers().front();
        QCOMPARE(made.set_pressure->text(), std::string("6 bar"));
        QCOMPARE(made.restrictor->text(), std::string("0.04 in"));
        // A compression gauge has neither, whatever was typed before its kind was chosen.
        QCOMPARE(add("compression gauge", "6", "0.04"), QString());
        for (const Tester& tester : shop.desk->testers())
            if (tester.kind == TesterKind::compression_gauge)
                QVERIFY(!tester.set_pressure && !tester.restrictor);
        QCOMPARE(add("crankcase tester", "", ""), QString());
    }

    void a_tester_needs_a_name_and_a_scale() {
        Shop shop;
        TesterListModel list;
        complete(list, shop);
        const auto add = [&](const char* name, const char* scale) {
            return list.add(QStringLiteral("compression gauge"), QString::fromLatin1(name),
                            QString::fromLatin1(scale), QStringLiteral("psi"));
        };
        QVERIFY(!add("", "300").isEmpty());
        QVERIFY(!add("Gauge", "").isEmpty());
        QVERIFY(!add("Gauge", "0").isEmpty());
        shop.settle();
        QCOMPARE(list.count(), 0);
        QCOMPARE(add("Gauge", "300"), QString());
        shop.settle();
        QCOMPARE(list.count(), 1);
        QVERIFY(list.data(list.index(0), TesterListModel::DetailRole)
                    .toString()
                    .contains(QStringLiteral("300 psi")));
    }

    void the_set_pressure_stays_within_the_scale() {
        Bench bench;
        QVERIFY(!bench.enter("set", bar("12")).isEmpty());
        QCOMPARE(bench.enter("set", bar("5.5")), QString());
        QCOMPARE(bench.stored().set_pressure->digits(), std::string("5.5"));
        QVERIFY(!bench.enter("gauge/scale", bar("4")).isEmpty());
        QVERIFY(!bench.enter("gauge/scale", bar("")).isEmpty());
        QCOMPARE(bench.stored().gauge.full_scale.digits(), std::string("10"));
    }

    void a_class_belongs_to_its_standard() {
        Bench bench;
        QCOMPARE(bench.enter("gauge/accuracy", typed(QStringLiteral("1.6"))), QString());
        QCOMPARE(bench.stored().gauge.scheme, AccuracyScheme::en_837_1);
        QVERIFY(!bench.enter("gauge/accuracy", typed(QStringLiteral("2A"))).isEmpty());
        QVERIFY(!bench.enter("gauge/scheme", chosen({QStringLiteral("ASME B40.100")})).isEmpty());
    }

    void a_grade_names_its_standard_and_a_slip_of_unit_is_asked_about() {
        Bench bench;
        QCOMPARE(bench.enter("gauge/accuracy", typed(QStringLiteral("2A"))), QString());
        QCOMPARE(bench.stored().gauge.scheme, AccuracyScheme::asme_b40_100);
        // 0.040 in, typed while the unit says mm.
        QVERIFY(!bench.enter("restrictor", typed(QStringLiteral("0.040"), QStringLiteral("mm"))).isEmpty());
        QCOMPARE(bench.enter("restrictor", typed(QStringLiteral("0.040"), QStringLiteral("in"))), QString());
    }

    void a_second_gauge_has_lines_of_its_own() {
        Bench bench;
        QVERIFY(bench.form.field(QStringLiteral("supply/scale")).isEmpty());
        QCOMPARE(bench.enter("two_gauges", chosen({QStringLiteral("on")})), QString());
        QCOMPARE(bench.enter("supply/scale", bar("16")), QString());
        QCOMPARE(bench.stored().supply_gauge->full_scale.digits(), std::string("16"));
        QCOMPARE(bench.stored().gauge.full_scale.digits(), std::string("10"));
        QCOMPARE(bench.enter("two_gauges", chosen({})), QString());
        QVERIFY(!bench.stored().supply_gauge);
    }

    void adapters_are_added_and_taken_out() {
        Bench bench("compression gauge");
        QCOMPARE(bench.enter("adapter_add", {}), QString());
        QCOMPARE(bench.enter("adapter_add", {}), QString());
        QCOMPARE(bench.enter("adapter/1/thread", typed(QStringLiteral("M12x1.25"))), QString());
        QCOMPARE(bench.enter("adapter/1/volume", typed(QStringLiteral("1.2"), QStringLiteral("cm3"))),
                 QString());
        QVERIFY(!bench.enter("adapter/1/name", typed(QString())).isEmpty());
        QCOMPARE(bench.enter("adapter/0/remove", {}), QString());
        QCOMPARE(bench.stored().adapters.size(), 1u);
        QCOMPARE(bench.stored().adapters[0].thread, std::string("M12x1.25"));
        QVERIFY(!bench.enter("adapter/1/name", typed(QStringLiteral("gone"))).isEmpty());
    }

    void a_self_check_is_kept_with_its_date() {
        Bench bench;
        QCOMPARE(bench.check(QStringLiteral("outlet blocked"))[QStringLiteral("state")].toString(),
                 QStringLiteral("none"));
        QVERIFY(bench.check(QStringLiteral("holds after cranking")).isEmpty());
        QVERIFY(!bench.form
                     .keepCheck(QStringLiteral("drilled hole"), true,
                                {{QStringLiteral("hole"), QStringLiteral("x")}})
                     .isEmpty());
        QVERIFY(bench.stored().checks.empty());
        QCOMPARE(bench.form.keepCheck(QStringLiteral("drilled hole"), false,
                                      {{QStringLiteral("hole"), QStringLiteral("1.0")},
                                       {QStringLiteral("set"), QStringLiteral("5.5")},
                                       {QStringLiteral("shown"), QStringLiteral("3,1")}}),
                 QString());
        bench.shop.settle();
        const auto check = bench.stored().checks.front();
        QCOMPARE(check.at.unix_ms, bench.shop.clock.now().unix_ms);
        QCOMPARE(check.hole->text(), std::string("1.0 mm"));
        QCOMPARE(check.shown->text(), std::string("3.1 bar"));
        QCOMPARE(bench.check(QStringLiteral("drilled hole"))[QStringLiteral("state")].toString(),
                 QStringLiteral("fault"));
        bench.shop.undo();
        QVERIFY(bench.stored().checks.empty());
        QCOMPARE(bench.check(QStringLiteral("drilled hole"))[QStringLiteral("state")].toString(),
                 QStringLiteral("none"));
    }

    void a_tester_in_use_is_not_deleted() {
        Bench bench;
        const Engine engine = bench.shop.add_engine(QStringLiteral("Pair"), 2);
        const SessionId session = bench.shop.open_session(engine, "As found");
        bench.shop.desk->run(
            workflow::choose_tester(session, workflow::TesterUse::leak_down, bench.stored().id));
        bench.shop.settle();
        // Said on the card, before anybody asks for it.
        QCOMPARE(bench.form.uses(), 1);
        Reading reading;
        reading.session = session;
        reading.test = TestKind::dry;
        reading.cylinder = 1;
        reading.final = TypedPressure::make("9.0", units::bar).value();
        reading.tester = bench.stored().id;
        bench.shop.desk->run(workflow::keep_reading(reading));
        bench.shop.settle();
        QCOMPARE(bench.form.uses(), 2);
        bench.form.remove();
        bench.shop.settle();
        QCOMPARE(bench.shop.told.size(), 1);
        QVERIFY(bench.form.found());
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::TesterCardTest)
#include "tester_card_test.moc"
