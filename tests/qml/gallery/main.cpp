// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QDir>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQmlExtensionPlugin>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTimer>

Q_IMPORT_QML_PLUGIN(Lapwing_ThemePlugin)
Q_IMPORT_QML_PLUGIN(Lapwing_ComponentsPlugin)

namespace {

struct Shot {
    QString scene;
    bool dark;
    double textScale;
    QSize size;

    QString name() const {
        return QString("%1-%2x%3-%4-%5.png")
            .arg(scene)
            .arg(size.width())
            .arg(size.height())
            .arg(dark ? "workshop" : "daylight")
            .arg(qRound(textScale * 100));
    }
};

QList<Shot> all_shots(const QStringList& scenes) {
    QList<Shot> shots;
    for (const auto& scene : scenes)
        for (const bool dark : {true, false})
            for (const double scale : {1.0, 2.0})
                for (const QSize size : {QSize(412, 915), QSize(320, 568)})
                    shots.append({scene, dark, scale, size});
    return shots;
}

}  // namespace

/// Draws every scene of the gallery in every look, text size and window size: gallery OUT_FOLDER.
int main(int argc, char** argv) {
    QGuiApplication app(argc, argv);
    if (argc < 2) {
        qCritical("usage: gallery OUT_FOLDER");
        return 2;
    }
    const QDir out(argv[1]);
    out.mkpath(".");

    QQmlApplicationEngine engine;
    engine.addImportPath("qrc:/qml");
    engine.load(QUrl("qrc:/gallery/Gallery.qml"));
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().value(0));
    if (!window) return 1;

    auto shots = all_shots(window->property("scenes").toStringList());
    QTimer next;
    QObject::connect(&next, &QTimer::timeout, [&] {
        static int done = -1;
        if (done >= 0) window->grabWindow().save(out.filePath(shots[done].name()));
        if (++done == shots.size()) return app.quit();
        window->resize(shots[done].size);
        QMetaObject::invokeMethod(window, "present", Q_ARG(QString, shots[done].scene),
                                  Q_ARG(bool, shots[done].dark), Q_ARG(double, shots[done].textScale));
    });
    next.start(350);
    return app.exec();
}
