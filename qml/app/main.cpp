// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QCommandLineParser>
#include <QFileInfo>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QQmlComponent>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTimer>
#include <algorithm>
#include <cstdio>
#include <ctime>
#include <thread>

#include "qml/app/composition.h"
#include "qml/app/this_device.h"
#include "qml/app/tour.h"
#include "qml/fonts/typeface.h"

namespace {

int fail_with(const lapwing::Error& error) {
    std::fprintf(stderr, "lapwing: %s\n", error.english.c_str());
    return 4;
}

/// Whether the engines can be seen and a key of the keyboard does something: Tab takes the focus to what can
/// be pressed. Of an empty library there are none to see.
bool list_is_usable(QQuickWindow& window) {
    const auto* list = window.findChild<QQuickItem*>(QStringLiteral("engines"));
    const auto* content = list ? list->property("contentItem").value<QQuickItem*>() : nullptr;
    if (!content) return false;
    const auto tiles = content->childItems();
    const bool seen = std::any_of(tiles.begin(), tiles.end(), [](const QQuickItem* tile) {
        return tile->objectName().startsWith(QLatin1String("engine_")) && tile->isVisible() &&
               tile->height() > 0;
    });
    if (!seen && list->property("count").toInt() > 0) return false;
    const auto* before = window.activeFocusItem();
    QKeyEvent tab(QEvent::KeyPress, Qt::Key_Tab, Qt::NoModifier, QStringLiteral("\t"));
    QCoreApplication::sendEvent(&window, &tab);
    const auto* now = window.activeFocusItem();
    return now && now != before && now->property("visualFocus").toBool();
}

}  // namespace

int main(int argc, char** argv) {
    QGuiApplication::setApplicationName(QStringLiteral("lapwing"));
    QGuiApplication::setApplicationVersion(QStringLiteral(LAPWING_VERSION));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Lapwing"));
    QGuiApplication::setDesktopFileName(QStringLiteral("lapwing"));

    QCommandLineParser options;
    options.setApplicationDescription(QStringLiteral("Tests of how well an engine's cylinders seal."));
    const auto help = options.addHelpOption();
    const auto version = options.addVersionOption();
    const QCommandLineOption data(QStringLiteral("data"), QStringLiteral("Keep the library in FOLDER."),
                                  QStringLiteral("FOLDER"));
    const QCommandLineOption tour(
        QStringLiteral("demo-tour"),
        QStringLiteral("Do the main job on the demo session without hands, write report, session file and "
                       "screenshots into FOLDER, and end."),
        QStringLiteral("FOLDER"));
    const QCommandLineOption once(QStringLiteral("usable-list"),
                                  QStringLiteral("Say when the list of engines is drawn and takes a "
                                                 "key, and end (for timing)."));
    const QCommandLineOption size(QStringLiteral("size"),
                                  QStringLiteral("Open the window WIDTHxHEIGHT large, for example 320x568."),
                                  QStringLiteral("WIDTHxHEIGHT"));
    const QCommandLineOption look(QStringLiteral("look"),
                                  QStringLiteral("Choose the look: system, workshop or daylight."),
                                  QStringLiteral("LOOK"));
    const QCommandLineOption text(QStringLiteral("text"), QStringLiteral("Choose the text size, 100 to 200."),
                                  QStringLiteral("PERCENT"));
    const QCommandLineOption language(QStringLiteral("language"),
                                      QStringLiteral("Choose the language: system, en, de or es."),
                                      QStringLiteral("LANGUAGE"));
    options.addOptions({data, tour, once, size, look, text, language});
    options.addPositionalArgument(QStringLiteral("file"),
                                  QStringLiteral("Show what is in this session file or backup; nothing is "
                                                 "brought in before you say so."),
                                  QStringLiteral("[FILE]"));
    QStringList words;
    for (int i = 0; i < argc; ++i)
        words << QString::fromLocal8Bit(argv[i]);
    // What it can do is said without a display, too.
    if (options.parse(words) && (options.isSet(help) || options.isSet(version))) {
        const QCoreApplication screenless(argc, argv);
        options.process(screenless);
    }
    QGuiApplication gui(argc, argv);
    options.process(gui);
    // A file name is relative to where the second start stands, not to where the open window was started.
    QString file = options.positionalArguments().value(0);
    if (!file.isEmpty()) file = QFileInfo(file).absoluteFilePath();

    std::optional<std::filesystem::path> folder;
    if (options.isSet(data)) folder = options.value(data).toStdString();
    if (options.isSet(tour) && !folder)
        folder = std::filesystem::path(options.value(tour).toStdString()) / "library";

    // Letters as they were drawn, alike on every screen; fitting them to the pixels costs time and has no
    // use on a phone's.
    QFont letters = QGuiApplication::font();
    letters.setHintingPreference(QFont::PreferNoHinting);
    QGuiApplication::setFont(letters);

    // The first text waits for the fonts, ours and the list of the system's; one that came later would lay
    // every text out a second time.
    const std::jthread fonts([] {
        lapwing::fonts::typeface();
        QFontDatabase::families();
    });

    const lapwing::SystemClock clock;
    QQmlApplicationEngine engine;
    // The engine reads the first page on a thread of its own while the library opens here.
    lapwing::Composition::addImports(engine);
    const QQmlComponent ahead(&engine, QUrl(QStringLiteral("qrc:/qml/Lapwing/Pages/EnginesPage.qml")),
                              QQmlComponent::Asynchronous);
    lapwing::ThisDevice devices(engine, folder);
    auto made = lapwing::Composition::make(devices.devices(), clock);
    lapwing::FilesFromOutside outside(devices.devices().paths.data());
    if (!made && made.error().code == "store.in_use" && !options.isSet(tour) && outside.handOver(file)) {
        std::puts("lapwing: the window that is open already was brought to the front.");
        return 0;
    }
    if (!made) {
        // Without hands there is nobody to read a window.
        if (!options.isSet(tour) && !options.isSet(once) &&
            lapwing::Composition::showTrouble(engine, devices.devices(), made.error()))
            QGuiApplication::exec();
        return fail_with(made.error());
    }
    auto* window = (*made)->show(engine);
    if (!window) return 4;
    if (options.isSet(look)) (*made)->settings().setLook(options.value(look));
    if (options.isSet(text)) (*made)->settings().setTextPercent(options.value(text).toInt());
    if (options.isSet(language)) (*made)->settings().setLanguage(options.value(language));
    if (const auto sides = options.value(size).split(QLatin1Char('x')); sides.size() == 2)
        window->resize(sides[0].toInt(), sides[1].toInt());
    outside.listen([&](const QString& handed_over) {
        window->show();
        window->raise();
        window->requestActivate();
        if (!handed_over.isEmpty()) (*made)->context().openFile(handed_over);
    });
    // After a language that was asked for, which builds every page anew.
    if (!file.isEmpty())
        QMetaObject::invokeMethod(
            &(*made)->context(), [&context = (*made)->context(), file] { context.openFile(file); },
            Qt::QueuedConnection);
    if (options.isSet(tour)) return lapwing::run_tour(**made, *window, options.value(tour));
    if (options.isSet(once))
        QObject::connect(
            window, &QQuickWindow::frameSwapped, &gui,
            [window] {
                if (!list_is_usable(*window)) return window->update();
                std::printf("usable list after %.1f ms of the processors' time\n",
                            1e3 * double(std::clock()) / CLOCKS_PER_SEC);
                std::fflush(stdout);
                QGuiApplication::quit();
            },
            Qt::QueuedConnection);
    return QGuiApplication::exec();
}
