// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/harness/phone.h"

#include <QLocale>
#include <utility>

namespace lapwing::test {
namespace {

std::unique_ptr<QTemporaryDir> fresh_folder() {
    return std::make_unique<QTemporaryDir>();
}

}  // namespace

void prepare_process() {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    qputenv("QT_SCALE_FACTOR", "1");
    qputenv("LC_ALL", "C.UTF-8");  // the app asks for the system's language
    QLocale::setDefault(QLocale::c());
}

Phone::Phone(QSize size) : own(fresh_folder()), devices(own->path().toStdString()), size_(size) {
    devices.appearance.choose({true, 1.0, true});
}

Phone::Phone(const std::filesystem::path& folder, QSize size) : devices(folder), size_(size) {
    devices.appearance.choose({true, 1.0, true});
}

bool Phone::on() {
    engine_ = std::make_unique<QQmlApplicationEngine>();
    auto made = Composition::make(devices.devices(), clock_);
    if (!made) {
        why_ = QString::fromStdString(made.error().english);
        window_ = Composition::showTrouble(*engine_, devices.devices(), made.error());
        if (window_) thumb_ = std::make_unique<Thumb>(*window_);
        return false;
    }
    composition_ = std::move(*made);
    window_ = composition_->show(*engine_);
    if (!window_) {
        why_ = QStringLiteral("The app's first page can't be made.");
        return false;
    }
    thumb_ = std::make_unique<Thumb>(*window_);
    if (at_first_frame)
        QObject::connect(window_, &QQuickWindow::frameSwapped, window_, [this, called = false]() mutable {
            if (!std::exchange(called, true)) at_first_frame(*window_);
        });
    resize(size_);
    return true;
}

void Phone::off() {
    thumb_.reset();
    window_ = nullptr;
    composition_.reset();
    engine_.reset();
}

void Phone::resize(QSize size) {
    size_ = size;
    window_->resize(size);
    settle(30);
}

void Phone::go(const QString& page, const QVariantMap& args, int ms) {
    QMetaObject::invokeMethod(window_->findChild<QQuickItem*>(QStringLiteral("shell")), "go",
                              Q_ARG(QString, page), Q_ARG(QVariant, QVariant(args)));
    settle(ms);
}

void Phone::home(int ms) {
    QMetaObject::invokeMethod(window_->findChild<QQuickItem*>(QStringLiteral("shell")), "home");
    settle(ms);
}

QQuickItem* Phone::page_item() const {
    auto* stack = window_->findChild<QQuickItem*>(QStringLiteral("stack"));
    return stack ? stack->property("currentItem").value<QQuickItem*>() : nullptr;
}

QString Phone::page() const {
    const auto* item = page_item();
    if (!item) return {};
    // The type's name is that of its file with a number behind it: PadPage_QMLTYPE_31.
    const QString type = QString::fromLatin1(item->metaObject()->className()).section(QLatin1Char('_'), 0, 0);
    if (type == QLatin1String("QQuickLoader")) return QStringLiteral("Engines");
    return QString(type).replace(QStringLiteral("Page"), QString());
}

bool Phone::arrives(const QString& wanted) {
    if (wait_until([&] { return page() == wanted; })) {
        settle(20);
        return true;
    }
    why_ = QStringLiteral("The page is %1, not %2; it reads: %3")
               .arg(page(), wanted, thumb_->words().join(QStringLiteral(" | ")));
    return false;
}

Result<workflow::Step> Phone::run(workflow::Intent intent) {
    auto result = std::make_shared<std::optional<Result<workflow::Step>>>();
    app().run(std::move(intent), window_, [result](const Result<workflow::Step>& done) { *result = done; });
    if (!wait_until([&] { return result->has_value(); }))
        return fail("test.slow", "The library did not answer within 5 seconds.");
    return **result;
}

}  // namespace lapwing::test
