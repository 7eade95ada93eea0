// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// As little as a Qt Quick program can be: a window with one line of text. Says when its first frame stands,
// and ends.
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <cstdio>
#include <ctime>

int main(int argc, char** argv) {
    QGuiApplication gui(argc, argv);
    QQmlApplicationEngine engine;
    engine.load(QUrl(QStringLiteral("qrc:/bare/Bare.qml")));
    if (engine.rootObjects().isEmpty()) return 1;
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    QObject::connect(
        window, &QQuickWindow::frameSwapped, &gui,
        [] {
            std::printf("first frame after %.1f ms of the processors' time\n",
                        1e3 * double(std::clock()) / CLOCKS_PER_SEC);
            std::fflush(stdout);
            QGuiApplication::quit();
        },
        Qt::QueuedConnection);
    return QGuiApplication::exec();
}
