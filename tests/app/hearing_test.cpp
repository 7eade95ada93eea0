// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// What a page is listened to for, on small scenes made for it: each bad one is found out by its own rule, and
// the good ones by none.
#include "tests/app/walk/hearing.h"

#include <QQmlComponent>
#include <QQmlEngine>
#include <QTest>
#include <memory>
#include <set>

#include "tests/app/harness/phone.h"

namespace lapwing::test {
namespace {

/// A button as the scenes have it: its name, where it stands, how wide it is.
QString button(const QString& name, int x, int y, const QString& more = {}) {
    return QStringLiteral(
               "T.AbstractButton { x: %2; y: %3; width: 100; height: 50; focusPolicy: Qt.StrongFocus; "
               "Accessible.role: Accessible.Button; Accessible.name: \"%1\"; %4 }\n")
        .arg(name)
        .arg(x)
        .arg(y)
        .arg(more);
}

}  // namespace

class HearingTest : public QObject {
    Q_OBJECT

private slots:
    void finds_out_data() {
        QTest::addColumn<QString>("scene");
        QTest::addColumn<bool>("right_to_left");
        QTest::addColumn<QString>("rules");
        const auto row = [](const char* what, const QString& scene, const QString& rules, bool rtl = false) {
            QTest::newRow(what) << scene << rtl << rules;
        };
        const auto left = [](const QString& name, int y) { return button(name, 0, y); };
        row("nothing in good order", left("Keep", 0) + button("Photo", 150, 0) + left("Next 2", 100), {});
        row("no name", left("", 0), "name");
        row("a space for a name", left(" ", 0), "name");
        row("a bare sign", left("+", 0), "name");
        row("a name of the program", left("key_7", 0), "name");
        row("a name of the program in one word", left("addNote", 0), "name");
        row("an id", left("01a21d66-fb13-71bc-9612-7bb6eb50cec4", 0), "name");
        row("a digit, and a unit", left("7", 0) + left("inHg", 100) + left("kPa", 200), {});
        row("the same name", left("Play", 0) + left("Play", 100), "same name");
        row("the same name in groups",
            QStringLiteral("Item { Accessible.role: Accessible.Grouping; Accessible.name: "
                           "\"Intake\"; %1 } %2")
                .arg(left("faint", 0), left("faint", 100)),
            {});
        row("not read out", button("Keep", 0, 0, "Accessible.ignored: true"), "name");
        row("back up", left("Keep", 300) + left("Photo", 0), "read order, tab order");
        row("back in a row", button("Photo", 150, 0) + left("Keep", 0), "read order, tab order");
        row("on to the next column", left("Keep", 300) + button("Photo", 150, 0), {});
        row("back to the column before", button("Photo", 150, 300) + left("Keep", 0),
            "read order, tab order");
        row("a row from the right", button("Keep", 150, 0) + left("Photo", 0), {}, true);
        row("a row from the right, back", left("Photo", 0) + button("Keep", 150, 0), "read order, tab order",
            true);
        // Digits and cylinders run from the left everywhere; what holds them is part of its page.
        const auto digits = [&](int x) {
            return QStringLiteral("Item { x: %1; width: 250; LayoutMirroring.enabled: false; %2 %3 } ")
                .arg(x)
                .arg(left("7", 0), button("8", 150, 0));
        };
        row("digits where a row runs from the right", digits(0), {}, true);
        row("digits in a list there",
            QStringLiteral("Flickable { width: 300; height: 300; LayoutMirroring.enabled: false; %1 %2 }")
                .arg(left("7", 0), button("8", 150, 0)),
            {}, true);
        row("digits there, from the right",
            QStringLiteral("Item { LayoutMirroring.enabled: false; %1 %2 }")
                .arg(button("8", 150, 0), left("7", 0)),
            "read order, tab order", true);
        row("a row of a part that hands nothing down",
            QStringLiteral("Item { LayoutMirroring.enabled: false; Item { %1 %2 } }")
                .arg(left("Photo", 0), button("Keep", 150, 0)),
            "read order, tab order", true);
        row("a row of a part that does",
            QStringLiteral("Item { LayoutMirroring.enabled: false; LayoutMirroring.childrenInherit: true; "
                           "Item { %1 %2 } }")
                .arg(left("Photo", 0), button("Keep", 150, 0)),
            {}, true);
        row("digits before the button on their right", digits(0) + button("Keep", 260, 0),
            "read order, tab order", true);
        row("out of sight", left("Keep", 0) + button("", 0, 100, "visible: false"), {});
    }
    void finds_out() {
        QFETCH(QString, scene);
        QFETCH(bool, right_to_left);
        QFETCH(QString, rules);
        const auto window =
            shown(QStringLiteral("Item { objectName: \"page\"; anchors.fill: parent; %1 }").arg(scene));
        QVERIFY(window);
        QCOMPARE(found(*window, *window->contentItem(), right_to_left), rules);
    }

    void a_sheet_covers_what_is_behind() {
        const auto window = shown(button("Keep", 0, 0) +
                                  QStringLiteral("Item { objectName: \"sheet\"; anchors.fill: parent; %1 }")
                                      .arg(button("Close", 0, 300)));
        QVERIFY(window);
        const auto* sheet = window->findChild<QQuickItem*>(QStringLiteral("sheet"));
        QVERIFY(sheet);
        QCOMPARE(found(*window, *sheet, false), QStringLiteral("behind"));
    }

    void a_sheet_covers_marks_too_data() {
        QTest::addColumn<QString>("more");
        QTest::addColumn<QString>("rules");
        QTest::newRow("a mark") << QString() << QStringLiteral("behind");
        QTest::newRow("a mark that is ignored") << QStringLiteral("Accessible.ignored: true") << QString();
        QTest::newRow("a mark out of sight") << QStringLiteral("visible: false") << QString();
    }
    void a_sheet_covers_marks_too() {
        QFETCH(QString, more);
        QFETCH(QString, rules);
        const auto window =
            shown(QStringLiteral("Item { width: 20; height: 20; Accessible.role: Accessible.Graphic; "
                                 "Accessible.name: \"Good\"; %1 } "
                                 "Item { objectName: \"sheet\"; anchors.fill: parent; %2 }")
                      .arg(more, button("Close", 0, 300)));
        QVERIFY(window);
        const auto* sheet = window->findChild<QQuickItem*>(QStringLiteral("sheet"));
        QVERIFY(sheet);
        QCOMPARE(found(*window, *sheet, false), rules);
    }

private:
    std::unique_ptr<QQuickWindow> shown(const QString& scene) {
        QQmlComponent made(&engine_);
        made.setData(QStringLiteral("import QtQuick\nimport QtQuick.Templates as T\n"
                                    "Window { width: 300; height: 400; visible: true; %1 }")
                         .arg(scene)
                         .toUtf8(),
                     {});
        std::unique_ptr<QQuickWindow> window(qobject_cast<QQuickWindow*>(made.create()));
        if (!window) qWarning("%s", qPrintable(made.errorString()));
        settle(20);
        return window;
    }
    /// The rules that were broken, each once.
    static QString found(QQuickWindow& window, const QQuickItem& top, bool right_to_left) {
        Hearing hearing(window, top, right_to_left);
        std::set<QString> rules;
        for (const auto& offence : hearing.names() + hearing.order())
            rules.insert(offence.rule);
        return QStringList(rules.begin(), rules.end()).join(QStringLiteral(", "));
    }

    QQmlEngine engine_;
};

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::HearingTest)
#include "hearing_test.moc"
