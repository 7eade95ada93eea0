// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QGuiApplication>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>
#include <QUrl>

#include "platform/fake/fake_devices.h"
#include "platform/linux/linux_devices.h"
#include "platform/linux/one_window.h"
#include "tests/platform/stand_in_desktop.h"

using namespace lapwing;
using namespace lapwing::platform;

/// Every service first without a desktop, then with the stand-in. The stand-in comes up once, so the order of
/// the functions matters.
class LinuxTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void cleanupTestCase();

    void nothingIsPromisedWithoutADesktop();
    void theAppsOwnDialogStandsInForThePortal();
    void theAppsOwnDialogTakesTheFileThatIsTouched();
    void anOldFileStaysWhereTheDialogCannotAsk();
    void pathsFollowTheStandardFolders();
    void aSecondStartHandsItsFileToTheOpenWindow();

    void desktopComesUp();
    void theScreenStaysLitWhileOn();
    void theFolderOpensWithTheFileInIt();
    void lookTextSizeAndMotionFollowTheDesktop();
    void thePortalOpensAFile();
    void thePortalSavesACopy();
    void changingOnesMindIsNoError();
    void aPortalThatFailsIsAnError();

private:
    QString write(const QString& name, const QByteArray& bytes) {
        const QString path = folder_.filePath(name);
        QFile file(path);
        if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size()) qFatal("no room");
        return path;
    }
    static QByteArray read(const QString& path) {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

    static void desktopChanges(const QString& group, const QString& key, const QVariant& value) {
        auto signal = QDBusMessage::createSignal(QStringLiteral("/org/freedesktop/portal/desktop"),
                                                 QStringLiteral("org.freedesktop.portal.Settings"),
                                                 QStringLiteral("SettingChanged"));
        signal << group << key << QVariant::fromValue(QDBusVariant(value));
        QDBusConnection(QStringLiteral("desktop")).send(signal);
    }

    QTemporaryDir folder_;
    QThread thread_;
    ScreenSaver screenSaver_;
    FileManager fileManager_;
    QObject portal_;
    PortalSettings* settings_ = new PortalSettings(&portal_);
    PortalFileChooserStandIn* chooser_ = new PortalFileChooserStandIn(&portal_);
    QDBusConnection bus_ = QDBusConnection::sessionBus();
    const QList<FileKind> pdf_{
        {QStringLiteral("Reports"), {QStringLiteral("*.pdf")}, QStringLiteral("application/pdf")}};
};

void LinuxTest::initTestCase() {
    QVERIFY2(bus_.isConnected(), "start this test below dbus-run-session");
    QVERIFY(folder_.isValid());
    qputenv("PATH", "/nonexistent");  // no xdg-open of the machine may answer
}

void LinuxTest::cleanupTestCase() {
    QDBusConnection::disconnectFromBus(QStringLiteral("desktop"));
    thread_.quit();
    thread_.wait();
}

void LinuxTest::nothingIsPromisedWithoutADesktop() {
    LinuxKeepAwake awake(bus_);
    QVERIFY(!awake.available());
    awake.keepAwake(true);
    QVERIFY(!awake.isOn());

    LinuxShare share(bus_);
    QCOMPARE(share.way(), Share::Way::none);
    const QString file = write(QStringLiteral("report.pdf"), "%PDF");
    Status told;
    share.share(file, QStringLiteral("application/pdf"), [&](Status status) { told = status; });
    QVERIFY(!told);
    QVERIFY(QString::fromStdString(told.error().english).contains(file));

    LinuxAppearance appearance(bus_);
    QVERIFY(!appearance.textScale());
    QVERIFY(!appearance.reducedMotion());

    NoHaptics haptics;
    QVERIFY(!haptics.available());
    OpenPermissions permissions;
    QCOMPARE(permissions.state(Permission::camera), Permissions::State::granted);
    QVERIFY(!permissions.openSystemSettings());
}

void LinuxTest::theAppsOwnDialogStandsInForThePortal() {
    QQmlEngine engine;
    QQuickWindow window;
    window.resize(412, 915);
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    LinuxFilePicker picker(bus_, engine);

    Result<std::optional<QString>> got;
    int calls = 0;
    picker.open(QStringLiteral("Open a report"), pdf_, [&](auto outcome) {
        got = std::move(outcome);
        ++calls;
    });
    auto* dialog = engine.findChild<QObject*>(QStringLiteral("chooseFile"));
    QVERIFY2(dialog, got ? "no dialog" : got.error().english.c_str());
    QTRY_VERIFY(dialog->property("visible").toBool());
    const QString file = write(QStringLiteral("chosen.pdf"), "%PDF");
    QMetaObject::invokeMethod(dialog, "chosen", Q_ARG(QUrl, QUrl::fromLocalFile(file)));
    QTRY_COMPARE(calls, 1);
    QVERIFY2(got.has_value(), got ? "" : got.error().english.c_str());
    QCOMPARE(*got, std::optional(file));

    QTRY_VERIFY(!engine.findChild<QObject*>(QStringLiteral("chooseFile")));
    picker.open(QStringLiteral("Open a report"), pdf_, [&](auto outcome) {
        got = std::move(outcome);
        ++calls;
    });
    dialog = engine.findChild<QObject*>(QStringLiteral("chooseFile"));
    QVERIFY(dialog);
    QMetaObject::invokeMethod(dialog, "reject");
    QTRY_COMPARE(calls, 2);
    QVERIFY(got && !*got);
}

void LinuxTest::theAppsOwnDialogTakesTheFileThatIsTouched() {
    QQmlEngine engine;
    QQuickWindow window;
    window.resize(412, 915);
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    LinuxFilePicker picker(bus_, engine);
    for (const char* name : {"a.pdf", "b.pdf", "c.pdf"})
        write(QString::fromLatin1(name), name);
    std::optional<QString> got;
    picker.open(QStringLiteral("Open a report"), pdf_, [&](auto outcome) {
        if (outcome && *outcome) got = **outcome;
    });
    auto* dialog = engine.findChild<QObject*>(QStringLiteral("chooseFile"));
    QVERIFY(dialog);
    dialog->setProperty("currentFolder", QUrl::fromLocalFile(folder_.path()));
    const auto shown = [&](const char* property, const QString& text) -> QQuickItem* {
        QList<QQuickItem*> left{window.contentItem()};
        while (!left.isEmpty()) {
            auto* item = left.takeLast();
            if (item->property(property).toString() == text && item->isVisible()) return item;
            left += item->childItems();
        }
        return nullptr;
    };
    const auto touch = [&](QQuickItem* item) {
        QTest::mouseClick(&window, Qt::LeftButton, {},
                          item->mapToScene({item->width() / 2, item->height() / 2}).toPoint());
    };
    QTRY_VERIFY(shown("fileName", QStringLiteral("b.pdf")));
    touch(shown("fileName", QStringLiteral("c.pdf")));
    QTest::qWait(50);
    touch(shown("fileName", QStringLiteral("b.pdf")));
    QTest::qWait(50);
    auto* open = shown("text", QStringLiteral("Open"));
    QVERIFY(open);
    touch(open);
    QTRY_VERIFY(got);
    QCOMPARE(*got, folder_.filePath(QStringLiteral("b.pdf")));
}

void LinuxTest::anOldFileStaysWhereTheDialogCannotAsk() {
    QQmlEngine engine;
    QQuickWindow window;
    window.resize(412, 915);
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    LinuxFilePicker picker(bus_, engine);
    const QString file = write(QStringLiteral("new.pdf"), "new");
    const QString old = write(QStringLiteral("old.pdf"), "an older and longer one");
    int calls = 0;
    picker.saveCopy(QStringLiteral("Save"), file, QStringLiteral("report.pdf"), pdf_.first(),
                    [&](auto outcome) {
                        calls += outcome && *outcome == folder_.filePath(QStringLiteral("old (2).pdf"));
                    });
    auto* dialog = engine.findChild<QObject*>(QStringLiteral("chooseFile"));
    QVERIFY(dialog);
    QMetaObject::invokeMethod(dialog, "chosen", Q_ARG(QUrl, QUrl::fromLocalFile(old)));
    QTRY_COMPARE(calls, 1);
    QCOMPARE(read(old), QByteArray("an older and longer one"));
    QCOMPARE(read(folder_.filePath(QStringLiteral("old (2).pdf"))), QByteArray("new"));
}

void LinuxTest::pathsFollowTheStandardFolders() {
    QStandardPaths::setTestModeEnabled(true);
    LinuxPaths paths;
    QCOMPARE(QString::fromStdString(paths.data().string()),
             QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
    QCOMPARE(
        QString::fromStdString(paths.documents().string()),
        QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) + QStringLiteral("/Lapwing"));
    QVERIFY(paths.scratch().is_absolute());
    QCOMPARE(LinuxPaths("/elsewhere").data(), std::filesystem::path("/elsewhere"));
}

void LinuxTest::aSecondStartHandsItsFileToTheOpenWindow() {
    const auto second_start = [this](const QString& library, const QString& file) {
        // As another process would: while this one's event loop goes on.
        std::optional<bool> taken;
        std::unique_ptr<QThread> other(QThread::create(
            [&] { taken = OneWindow(folder_.filePath(library).toStdString()).handOver(file); }));
        other->start();
        const bool ended = QTest::qWaitFor([&] { return other->isFinished(); }, 10'000);
        return ended && taken && *taken;
    };
    const QString umlaut = QString::fromUtf8("/tmp/Müller & Söhne.lapwing");
    QVERIFY(!second_start(QStringLiteral("library"), umlaut));  // nothing is open

    OneWindow window(folder_.filePath(QStringLiteral("library")).toStdString());
    QStringList opened;
    window.listen([&](const QString& file) { opened << file; });
    QVERIFY(second_start(QStringLiteral("library"), umlaut));
    QVERIFY(second_start(QStringLiteral("library"), QString()));
    QVERIFY(second_start(QStringLiteral("./library/../library"), umlaut));
    QCOMPARE(opened, (QStringList{umlaut, QString(), umlaut}));
    QVERIFY(!second_start(QStringLiteral("another library"), umlaut));
    QCOMPARE(opened.size(), 3);
}

void LinuxTest::desktopComesUp() {
    auto desktop = QDBusConnection::connectToBus(QDBusConnection::SessionBus, QStringLiteral("desktop"));
    screenSaver_.moveToThread(&thread_);
    fileManager_.moveToThread(&thread_);
    portal_.moveToThread(&thread_);
    thread_.start();
    settings_->values = {{QStringLiteral("org.freedesktop.appearance/color-scheme"), 1U},
                         {QStringLiteral("org.gnome.desktop.interface/text-scaling-factor"), 1.5},
                         {QStringLiteral("org.gnome.desktop.interface/enable-animations"), false}};
    QVERIFY(desktop.registerObject(QStringLiteral("/org/freedesktop/ScreenSaver"), &screenSaver_,
                                   QDBusConnection::ExportAllSlots));
    QVERIFY(desktop.registerObject(QStringLiteral("/org/freedesktop/FileManager1"), &fileManager_,
                                   QDBusConnection::ExportAllSlots));
    QVERIFY(desktop.registerObject(QStringLiteral("/org/freedesktop/portal/desktop"), &portal_));
    for (const char* name :
         {"org.freedesktop.ScreenSaver", "org.freedesktop.FileManager1", "org.freedesktop.portal.Desktop"})
        QVERIFY(desktop.registerService(QLatin1String(name)));
}

void LinuxTest::theScreenStaysLitWhileOn() {
    {
        LinuxKeepAwake awake(bus_);
        QVERIFY(awake.available());
        awake.keepAwake(true);
        awake.keepAwake(true);
        QVERIFY(awake.isOn());
        QCOMPARE(screenSaver_.inhibitions.size(), 1);
        awake.keepAwake(false);
        QTRY_COMPARE(screenSaver_.inhibitions.size(), 0);
        awake.keepAwake(true);
        QCOMPARE(screenSaver_.inhibitions.size(), 1);
    }
    QTRY_COMPARE(screenSaver_.inhibitions.size(), 0);
}

void LinuxTest::theFolderOpensWithTheFileInIt() {
    LinuxShare share(bus_);
    QCOMPARE(share.way(), Share::Way::show_folder);
    const QString file = write(QStringLiteral("März & co.pdf"), "%PDF");
    int good = 0;
    share.share(file, QStringLiteral("application/pdf"), [&](Status status) { good += status.has_value(); });
    QTRY_COMPARE(good, 1);
    QCOMPARE(QUrl(fileManager_.shown.value(0)).toLocalFile(), file);

    Status told;
    share.share(folder_.filePath(QStringLiteral("gone.pdf")), {}, [&](Status status) { told = status; });
    QVERIFY(!told);
    QCOMPARE(told.error().code, std::string("share.no_file"));
}

void LinuxTest::lookTextSizeAndMotionFollowTheDesktop() {
    LinuxAppearance appearance(bus_);
    int changes = 0;
    appearance.listen([&] { ++changes; });
    QTRY_VERIFY(appearance.dark() && appearance.textScale() && appearance.reducedMotion());
    QCOMPARE(*appearance.dark(), true);
    QCOMPARE(*appearance.textScale(), 1.5);
    QCOMPARE(*appearance.reducedMotion(), true);
    QVERIFY(changes >= 3);

    desktopChanges(QStringLiteral("org.freedesktop.appearance"), QStringLiteral("color-scheme"), 2U);
    QTRY_COMPARE(appearance.dark(), std::optional(false));
    desktopChanges(QStringLiteral("org.gnome.desktop.interface"), QStringLiteral("text-scaling-factor"), 2.0);
    QTRY_COMPARE(appearance.textScale(), std::optional(2.0));
}

void LinuxTest::thePortalOpensAFile() {
    QQmlEngine engine;
    LinuxFilePicker picker(bus_, engine);
    const QString file = write(QStringLiteral("a b.pdf"), "%PDF");
    chooser_->answer = 0;
    chooser_->uris = {QUrl::fromLocalFile(file).toString(QUrl::FullyEncoded)};
    Result<std::optional<QString>> got;
    int calls = 0;
    picker.open(QStringLiteral("Open a report"), pdf_, [&](auto outcome) {
        got = std::move(outcome);
        ++calls;
    });
    QTRY_COMPARE(calls, 1);
    QVERIFY2(got.has_value(), got ? "" : got.error().english.c_str());
    QCOMPARE(*got, std::optional(file));
    QCOMPARE(chooser_->method, QStringLiteral("OpenFile"));
    QCOMPARE(chooser_->title, QStringLiteral("Open a report"));
    QCOMPARE(chooser_->filterSignature, QStringLiteral("a(sa(us))"));
}

void LinuxTest::thePortalSavesACopy() {
    QQmlEngine engine;
    LinuxFilePicker picker(bus_, engine);
    const QString file = write(QStringLiteral("made.pdf"), "the report");
    const QString place = folder_.filePath(QStringLiteral("kept.pdf"));
    chooser_->uris = {QUrl::fromLocalFile(place).toString()};
    int calls = 0;
    picker.saveCopy(QStringLiteral("Save"), file, QStringLiteral("proposed.pdf"), pdf_.first(),
                    [&](auto outcome) { calls += outcome && *outcome == place; });
    QTRY_COMPARE(calls, 1);
    QCOMPARE(chooser_->method, QStringLiteral("SaveFile"));
    QCOMPARE(chooser_->options.value(QStringLiteral("current_name")).toString(),
             QStringLiteral("proposed.pdf"));
    QCOMPARE(read(place), QByteArray("the report"));

    const QString nowhere = folder_.filePath(QStringLiteral("no such folder/kept.pdf"));
    chooser_->uris = {QUrl::fromLocalFile(nowhere).toString()};
    Error told;
    picker.saveCopy(QStringLiteral("Save"), file, QStringLiteral("proposed.pdf"), pdf_.first(),
                    [&](auto outcome) { told = outcome ? Error{} : outcome.error(); });
    QTRY_COMPARE(told.code, std::string("picker.copy_write"));
    QVERIFY(QString::fromStdString(told.english).contains(nowhere));
}

void LinuxTest::changingOnesMindIsNoError() {
    QQmlEngine engine;
    LinuxFilePicker picker(bus_, engine);
    chooser_->answer = 1;
    chooser_->uris.clear();
    int calls = 0;
    picker.open(QStringLiteral("Open"), pdf_, [&](auto outcome) { calls += outcome && !*outcome; });
    QTRY_COMPARE(calls, 1);
}

void LinuxTest::aPortalThatFailsIsAnError() {
    QQmlEngine engine;
    LinuxFilePicker picker(bus_, engine);
    int calls = 0;
    chooser_->answer = 2;
    picker.open(QStringLiteral("Open"), pdf_, [&](auto outcome) { calls += !outcome; });
    QTRY_COMPARE(calls, 1);
    chooser_->answer = 0;
    chooser_->uris = {QStringLiteral("https://example.org/report.pdf")};
    picker.open(QStringLiteral("Open"), pdf_, [&](auto outcome) { calls += !outcome; });
    QTRY_COMPARE(calls, 2);
}

QTEST_MAIN(LinuxTest)
#include "linux_test.moc"
