// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// As little as a Qt Quick program can be: a window with one line of text. Says when its first frame stands,
// and ends.
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <cstdio>

int main(int argc, char** argv) {
    QGuiApplication gui(argc, argv);
    QQmlApplicationEngine engine;
    engine.load(QUrl(QStringLiteral("qrc:/bare/Bare.qml")));
    if (engine.rootObjects().isEmpty()) return 1;
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    QObject::connect(
        window, &QQuickWindow::frameSwapped, &gui,
        [] {
            std::puts("first frame");
            std::fflush(stdout);
            QGuiApplication::quit();
        },
        Qt::QueuedConnection);
    return QGuiApplication::exec();
}
