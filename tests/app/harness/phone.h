// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QQmlApplicationEngine>
#include <QTemporaryDir>
#include <memory>

#include "platform/fake/fake_devices.h"
#include "qml/app/composition.h"
#include "tests/app/harness/thumb.h"

namespace lapwing::test {

/// The very app on scripted devices and a folder of its own. Switching it off and on again is what the end of
/// the process and a new start are, as far as the library can tell.
class Phone {
public:
    explicit Phone(QSize size = {412, 915});
    /// On a folder that someone else owns.
    Phone(const std::filesystem::path& folder, QSize size);
    ~Phone() { off(); }

    /// False with a reason in why(); then the thumb has the window that stands in for the app, if there is
    /// one.
    bool on();
    [[nodiscard]] bool has_window() const { return window_ != nullptr; }
    void off();
    void resize(QSize size);

    [[nodiscard]] Thumb& thumb() { return *thumb_; }
    [[nodiscard]] workflow::Desk& desk() { return app().desk(); }
    [[nodiscard]] AppContext& app() { return composition_->context(); }
    [[nodiscard]] AppSettings& settings() { return composition_->settings(); }
    [[nodiscard]] QQuickWindow& window() { return *window_; }
    [[nodiscard]] QString why() const { return why_; }
    [[nodiscard]] std::filesystem::path folder() const { return devices.paths.data(); }

    /// Opens a page as the app itself would, and gives it so long.
    void go(const QString& page, const QVariantMap& args, int ms = 20);
    void home(int ms = 20);
    /// Name of the page on top: "Pad".
    [[nodiscard]] QString page() const;
    [[nodiscard]] QQuickItem* page_item() const;
    bool arrives(const QString& page);

    /// Runs one command and waits for its commit.
    Result<workflow::Step> run(workflow::Intent intent);

    /// Called once, when the first frame stands.
    std::function<void(QQuickWindow&)> at_first_frame;
    std::unique_ptr<QTemporaryDir> own;
    platform::FakeDevices devices;

private:
    QSize size_;
    SystemClock clock_;
    std::unique_ptr<QQmlApplicationEngine> engine_;
    std::unique_ptr<Composition> composition_;
    QQuickWindow* window_ = nullptr;
    std::unique_ptr<Thumb> thumb_;
    QString why_;
};

/// Chooses a screen that needs no display before Qt starts, and a locale that everybody has.
void prepare_process();

}  // namespace lapwing::test

/// Like QTEST_MAIN, for tests that show the app.
#define LAPWING_APP_TEST_MAIN(Class)            \
    int main(int argc, char** argv) {           \
        lapwing::test::prepare_process();       \
        QGuiApplication gui(argc, argv);        \
        Class test;                             \
        return QTest::qExec(&test, argc, argv); \
    }
