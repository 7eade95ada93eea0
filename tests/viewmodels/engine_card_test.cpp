// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/engine_card_form.h"
#include "tests/viewmodels/shop.h"

namespace lapwing {

class EngineCardTest : public QObject {
    Q_OBJECT

private:
    struct Card {
        explicit Card(int cylinders = 4, Arrangement arrangement = Arrangement::in_line)
            : engine(shop.add_engine(QStringLiteral("Tractor"), cylinders, arrangement)) {
            form.setRecordId(text_id(engine.id));
            complete(form, shop);
        }
        QString enter(const char* key, const QVariantMap& entry) {
            const QString problem = form.enter(QString::fromLatin1(key), entry);
            shop.settle();
            return problem;
        }
        QString enter(const char* key, const char* text) {
            return enter(key, typed(QString::fromUtf8(text)));
        }
        QString shown(const char* key) const {
            return form.field(QString::fromLatin1(key)).value(QStringLiteral("shown")).toString();
        }
        Engine stored() const { return shop.engine(engine); }

        Shop shop;
        Engine engine;
        EngineCardForm form;
    };

    static std::vector<int> numbers(const Engine& engine) {
        std::vector<int> all;
        for (const auto& cylinder : engine.cylinders)
            all.push_back(cylinder.number);
        return all;
    }

private slots:
    void a_figure_is_kept_as_typed_with_its_source() {
        Card card;
        QVariantMap entry = typed(QStringLiteral("73,40"), QStringLiteral("mm"));
        entry[QStringLiteral("origin")] = QStringLiteral("manual");
        entry[QStringLiteral("originNote")] = QStringLiteral("page 7-12");
        QCOMPARE(card.enter("bore", entry), QString());
        const auto bore = card.stored().bore.value();
        QCOMPARE(bore.value.digits(), std::string("73.40"));
        QVERIFY(bore.value.unit() == units::mm);
        QVERIFY(bore.origin == Origin::manual);
        QCOMPARE(bore.note, std::string("page 7-12"));
        QCOMPARE(card.shown("bore"), QStringLiteral("73.40 mm"));
        QCOMPARE(card.enter("bore", ""), QString());
        QVERIFY(!card.stored().bore);
    }

    void what_is_refused_changes_nothing_and_says_why() {
        Card card;
        for (const char* wrong : {"seventy", "7..3", "-5", "99999"})
            QVERIFY2(!card.enter("bore", typed(QString::fromLatin1(wrong), QStringLiteral("mm"))).isEmpty(),
                     wrong);
        QVERIFY(!card.stored().bore);
        QCOMPARE(card.enter("stroke", typed(QStringLiteral("90"), QStringLiteral("mm"))), QString());
        QVERIFY(card.enter("rod", typed(QStringLiteral("40"), QStringLiteral("mm")))
                    .contains(QStringLiteral("90")));
        QVERIFY(!card.stored().rod);
        QVERIFY(!card.enter("name", "   ").isEmpty());
        QCOMPARE(card.stored().name, std::string("Tractor"));
    }

    void two_quick_entries_both_count() {
        Card card;
        QCOMPARE(card.form.enter(QStringLiteral("owner"), typed(QStringLiteral("Mill Lane Engine Club"))),
                 QString());
        QCOMPARE(card.form.enter(QStringLiteral("tags"), typed(QStringLiteral("club, farm, club"))),
                 QString());
        card.shop.settle();
        QCOMPARE(card.stored().owner.name, std::string("Mill Lane Engine Club"));
        QCOMPARE(card.stored().tags, (std::vector<std::string>{"club", "farm"}));
    }

    void each_entry_is_one_step_that_can_be_undone() {
        Card card;
        card.enter("history", "stood since autumn");
        card.enter("plug_thread", "M14x1.25");
        card.shop.undo();
        QCOMPARE(card.stored().plug_thread, std::string());
        QCOMPARE(card.stored().history, std::string("stood since autumn"));
        QCOMPARE(card.shown("plug_thread"), QString());
    }

    void cylinders_that_stay_keep_their_numbers() {
        Card card;
        QCOMPARE(card.form.changeCylinder(1, QStringLiteral("7"), QStringLiteral("rear"), 0), QString());
        card.shop.settle();
        QCOMPARE(card.enter("count", "6"), QString());
        QCOMPARE(numbers(card.stored()), (std::vector<int>{1, 7, 3, 4, 2, 5}));
        QCOMPARE(card.enter("count", "3"), QString());
        QCOMPARE(numbers(card.stored()), (std::vector<int>{1, 7, 3}));
        QCOMPARE(card.stored().cylinders[1].name, std::string("rear"));
        QVERIFY(card.enter("count", "0").contains(QStringLiteral("16")));
        QVERIFY(!card.enter("count", "2.5").isEmpty());
        card.shop.undo();
        QCOMPARE(card.stored().cylinders.size(), 6u);
    }

    void a_number_changes_in_the_firing_order_too() {
        Card card;
        card.enter("order", "1-3-4-2");
        card.enter("intakes", "1-2, 3-4");
        QCOMPARE(card.form.changeCylinder(2, QStringLiteral("13"), {}, 0), QString());
        card.shop.settle();
        QCOMPARE(card.stored().firing_order, (std::vector<int>{1, 13, 4, 2}));
        QCOMPARE(card.stored().joined_intakes, (std::vector<std::vector<int>>{{1, 2}, {13, 4}}));
        QVERIFY(!card.form.changeCylinder(0, QStringLiteral("4"), {}, 0).isEmpty());
        QVERIFY(!card.form.changeCylinder(0, QStringLiteral("100"), {}, 0).isEmpty());
    }

    void the_firing_order_is_typed_in_any_of_the_usual_ways() {
        Card card;
        for (const char* text : {"1-3-4-2", "1,3,4,2", "1 3 4 2", "1 - 3 - 4 - 2", "1342"}) {
            QCOMPARE(card.enter("order", ""), QString());
            QCOMPARE(card.enter("order", text), QString());
            QCOMPARE(card.stored().firing_order, (std::vector<int>{1, 3, 4, 2}));
        }
        QVERIFY(!card.enter("order", "1-3-4").isEmpty());
        QVERIFY(!card.enter("order", "1-3-4-5").isEmpty());
        QVERIFY(!card.enter("order", "1-3-4-x").isEmpty());
        QVERIFY(!card.enter("order", "1-3-3-2").isEmpty());
        QCOMPARE(card.stored().firing_order, (std::vector<int>{1, 3, 4, 2}));
    }

    void intervals_are_even_or_add_up() {
        Card card(2, Arrangement::vee);
        QVERIFY(card.enter("intervals", "even").contains(QStringLiteral("order first")));
        card.enter("order", "1-2");
        QCOMPARE(card.enter("intervals", "270-450"), QString());
        QCOMPARE(card.stored().firing_intervals.size(), 2u);
        QCOMPARE(card.stored().firing_intervals[0].digits(), std::string("270"));
        QVERIFY(card.enter("intervals", "270-400").contains(QStringLiteral("720")));
        QCOMPARE(card.enter("intervals", "even"), QString());
        QCOMPARE(card.stored().firing_intervals[1].digits(), std::string("360"));
        QCOMPARE(card.enter("intervals", ""), QString());
        QVERIFY(card.stored().firing_intervals.empty());
    }

    void a_clearance_is_a_range() {
        Card card;
        QCOMPARE(card.enter("intake_clearance", typed(QStringLiteral("0.15-0.20"), QStringLiteral("mm"))),
                 QString());
        const auto range = card.stored().valves.intake_clearance.value().value;
        QCOMPARE(range.low.digits(), std::string("0.15"));
        QCOMPARE(range.high.digits(), std::string("0.20"));
        QVERIFY(!card.enter("intake_clearance", typed(QStringLiteral("0.20-0.15"), QStringLiteral("mm")))
                     .isEmpty());
        QVERIFY(
            !card.enter("intake_clearance", typed(QStringLiteral("1-2-3"), QStringLiteral("mm"))).isEmpty());
        QCOMPARE(card.enter("intake_clearance", typed(QStringLiteral("6"), QStringLiteral("thou"))),
                 QString());
        QCOMPARE(card.shown("intake_clearance"), QStringLiteral("6 thou"));
    }

    void a_clearance_of_millimetres_is_asked_about_once() {
        Card card;
        const auto entry = typed(QStringLiteral("2,5-3,5"), QStringLiteral("mm"));
        const QString asked = card.enter("exhaust_clearance", entry);
        QVERIFY2(asked.contains(QStringLiteral("is the point right?")), qPrintable(asked));
        QVERIFY(!card.stored().valves.exhaust_clearance);
        // Meant all the same: there are engines of every size.
        QCOMPARE(card.enter("exhaust_clearance", entry), QString());
        QCOMPARE(card.stored().valves.exhaust_clearance->value.high.digits(), std::string("3.5"));
        QVERIFY(card.enter("intake_clearance", typed(QStringLiteral("-0.25"), QStringLiteral("mm")))
                    .contains(QStringLiteral("minus")));
        QVERIFY(!card.stored().valves.intake_clearance);
    }

    void a_two_stroke_has_a_crankcase_test_and_no_valves() {
        Card card(1, Arrangement::single);
        QVERIFY(!card.form.field(QStringLiteral("intake_valves")).isEmpty());
        QCOMPARE(card.enter("cycle", chosen({QStringLiteral("two-stroke")})), QString());
        QVERIFY(card.form.field(QStringLiteral("intake_valves")).isEmpty());
        QVERIFY(!card.form.field(QStringLiteral("case_set")).isEmpty());
        QCOMPARE(card.stored().valves.intake_valves, 0);
        QCOMPARE(card.enter("cycle", chosen({QStringLiteral("four-stroke")})), QString());
        QCOMPARE(card.stored().valves.exhaust_valves, 1);
    }

    void limits_in_the_wrong_order_are_refused() {
        Card card;
        QCOMPARE(card.enter("low", typed(QStringLiteral("9.0"), QStringLiteral("bar"))), QString());
        QCOMPARE(card.enter("high", typed(QStringLiteral("160"), QStringLiteral("psi"))), QString());
        QVERIFY(!card.enter("lowest", typed(QStringLiteral("9.5"), QStringLiteral("bar"))).isEmpty());
        QCOMPARE(card.stored().limits.high->unit().symbol(), std::string_view("psi"));
    }

    void cylinders_swap_their_places_on_the_picture() {
        Card card(2, Arrangement::vee);
        card.form.swapCylinders(0, 1);
        card.shop.settle();
        QCOMPARE(card.stored().cylinders[0].bank, 1);
        QCOMPARE(card.stored().cylinders[1].row, 0);
        QCOMPARE(numbers(card.stored()), (std::vector<int>{1, 2}));
        card.form.swapCylinders(0, 9);
        QVERIFY(card.shop.told.isEmpty());
    }

    void half_typed_text_is_there_again() {
        Card card;
        card.form.keepDraft(QStringLiteral("bore"), QStringLiteral("73."));
        EngineCardForm again;
        again.setRecordId(text_id(card.engine.id));
        complete(again, card.shop);
        QCOMPARE(again.draft(QStringLiteral("bore")), QStringLiteral("73."));
        QCOMPARE(again.draft(QStringLiteral("stroke")), QString());
    }

    void sections_say_what_stands_in_them() {
        Card card;
        const QString section =
            card.form.field(QStringLiteral("bore")).value(QStringLiteral("section")).toString();
        QVERIFY(card.form.sections().contains(section));
        QVERIFY(card.form.keysOf(section).contains(QStringLiteral("bore")));
        QCOMPARE(card.form.summaryOf(section), QString());
        card.enter("bore", typed(QStringLiteral("84"), QStringLiteral("mm")));
        QVERIFY(card.form.summaryOf(section).contains(QStringLiteral("84 mm")));
    }

    void a_deleted_engine_comes_back_with_its_sessions() {
        Card card;
        card.shop.open_session(card.engine, "As found");
        QCOMPARE(card.form.sessionList().size(), 1);
        QSignalSpy removed(&card.form, &EngineCardForm::removed);
        card.form.remove();
        card.shop.settle();
        QCOMPARE(removed.size(), 1);
        QVERIFY(!card.form.found());
        card.shop.undo();
        QVERIFY(card.form.found());
        QCOMPARE(card.form.sessionList().size(), 1);
    }
};

}  // namespace lapwing

QTEST_GUILESS_MAIN(lapwing::EngineCardTest)
#include "engine_card_test.moc"
