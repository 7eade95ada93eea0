// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/app/composition.h"

#include <QDir>
#include <QQmlEngine>
#include <QTimer>
#include <QtQml/QQmlExtensionPlugin>
#include <algorithm>
#include <chrono>
#include <future>

#include "qml/viewmodels/storage_model.h"

Q_IMPORT_QML_PLUGIN(Lapwing_ThemePlugin)
Q_IMPORT_QML_PLUGIN(Lapwing_ComponentsPlugin)
Q_IMPORT_QML_PLUGIN(Lapwing_CapturePlugin)
Q_IMPORT_QML_PLUGIN(Lapwing_ViewModelsPlugin)
Q_IMPORT_QML_PLUGIN(Lapwing_PagesPlugin)
Q_IMPORT_QML_PLUGIN(Lapwing_AppPlugin)

namespace lapwing {
namespace {

constexpr auto housekeeping_after = std::chrono::milliseconds(1500);

QString settings_file(const platform::Devices& devices) {
    return QString::fromStdString((devices.paths.data() / "settings.ini").string());
}

/// "Pad" of PadPage.qml.
QStringList names_of_pages() {
    QStringList names;
    const QString ending = QStringLiteral("Page.qml");
    for (const QString& file : QDir(QStringLiteral(":/qml/Lapwing/Pages")).entryList({u'*' + ending}))
        names << file.chopped(ending.size());
    return names;
}

}  // namespace

Result<std::unique_ptr<Composition>> Composition::make(platform::Devices devices, const Clock& clock) {
    // Reading these and opening the library take about as long, and neither needs the other.
    auto reading = std::async(std::launch::async, [] { return findings::built_in_reference(); });
    auto opened = workflow::Desk::open(devices.paths.data(), clock);
    auto reference = reading.get();
    if (!reference) return tl::unexpected(reference.error());
    if (!opened) return tl::unexpected(opened.error());
    return std::unique_ptr<Composition>(new Composition(devices, std::move(*opened), std::move(*reference)));
}

Composition::Composition(platform::Devices devices, workflow::Opened opened, findings::Reference reference)
    : devices_(devices),
      desk_(std::move(opened.desk)),
      told_(std::move(opened.told)),
      reference_(std::move(reference)),
      settings_(std::make_unique<AppSettings>(settings_file(devices))),
      look_(std::make_unique<LookModel>(devices_.appearance, *settings_)) {
    // Before anything is said or formatted.
    language_.choose(settings_->language());
    context_ = std::make_unique<AppContext>(*desk_, devices_, *settings_, reference_);
    // Queued: the page that it was chosen on is built anew.
    QObject::connect(
        settings_.get(), &AppSettings::languageChanged, context_.get(),
        [this] {
            language_.choose(settings_->language());
            context_->changeLanguage();
        },
        Qt::QueuedConnection);
}

// Pages hold the context, and the desk's threads call back into it: both go before it does.
Composition::~Composition() {
    delete window_.data();
    context_->background().waitForDone();
    desk_.reset();
}

void Composition::addImports(QQmlEngine& engine) {
    engine.addImportPath(QStringLiteral("qrc:/qml"));
}

QQuickWindow* Composition::showTrouble(QQmlApplicationEngine& engine, const platform::Devices& devices,
                                       const Error& error) {
    addImports(engine);
    auto* language = new Language(&engine);
    language->choose(AppSettings(settings_file(devices)).language());
    const format::Formatter format({}, QLocale());
    engine.setInitialProperties(
        {{QStringLiteral("message"), format.text(error)},
         {QStringLiteral("dark"), devices.appearance.dark().value_or(true)},
         {QStringLiteral("textScale"), std::clamp(devices.appearance.textScale().value_or(1.0), 1.0, 2.0)}});
    engine.load(QUrl(QStringLiteral("qrc:/qml/Lapwing/App/Trouble.qml")));
    return engine.rootObjects().isEmpty() ? nullptr
                                          : qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
}

QQuickWindow* Composition::show(QQmlApplicationEngine& engine) {
    addImports(engine);
    QStringList told;
    for (const auto& error : told_)
        // Phones end apps all day: that all was found sound is nothing to lay over a page.
        if (error.code != "store.was_checked") told << context_->format().text(error);
    engine.setInitialProperties({{QStringLiteral("app"), QVariant::fromValue(context_.get())},
                                 {QStringLiteral("look"), QVariant::fromValue(look_.get())},
                                 {QStringLiteral("pages"), names_of_pages()},
                                 {QStringLiteral("greetings"), told}});
    engine.load(QUrl(QStringLiteral("qrc:/qml/Lapwing/App/Main.qml")));
    // What stands outside the pages, which are built anew.
    QObject::connect(context_.get(), &AppContext::languageChanged, &engine, &QQmlEngine::retranslate);
    if (!engine.rootObjects().isEmpty())
        window_ = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    // When the person can see the app and it has nothing else to do.
    // What was cut off is looked for now: later a new recording may be under way.
    QTimer::singleShot(housekeeping_after, context_.get(), [this, cut_off = desk_->recordings().left_over()] {
        housekeeping(*context_, cut_off);
    });
    return window_;
}

}  // namespace lapwing
