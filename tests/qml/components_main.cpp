// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QtQuickTest/quicktest.h>

#include <QQmlEngine>
#include <QQmlExtensionPlugin>

Q_IMPORT_QML_PLUGIN(Lapwing_ThemePlugin)
Q_IMPORT_QML_PLUGIN(Lapwing_ComponentsPlugin)

/// Lets the tests import the app's own modules, which are compiled into this program.
class Setup : public QObject {
    Q_OBJECT

public slots:
    void qmlEngineAvailable(QQmlEngine* engine) { engine->addImportPath("qrc:/qml"); }
};

QUICK_TEST_MAIN_WITH_SETUP(components, Setup)

#include "components_main.moc"
