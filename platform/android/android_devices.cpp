// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/android/android_devices.h"

#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>
#include <QStandardPaths>
#include <QStyleHints>

#include "platform/android/java.h"

namespace lapwing::platform {
namespace {

constexpr auto phone = "org/lapwing/lapwing/Phone";

std::filesystem::path path_of(const QString& text) {
    return QFile::encodeName(text).toStdString();
}

Appearance::Changed& listener() {
    static Appearance::Changed one;
    return one;
}

void look_changed() {
    if (listener()) listener()();
}

void JNICALL changed(JNIEnv*, jclass) {
    on_main_thread(look_changed);
}

}  // namespace

void AndroidShare::share(const QString& file, const QString& mediaType, Done done) {
    if (!QFileInfo::exists(file))
        return done(fail("share.no_file", "There is no file at {}. Make it again.", file.toStdString()));
    const bool shown = call<jboolean>(
        phone, "share", "(Landroid/app/Activity;Ljava/lang/String;Ljava/lang/String;)Z", activity().object(),
        java_text(file).object<jstring>(), java_text(mediaType).object<jstring>());
    if (!shown)
        return done(fail("share.no_receiver", "No program on this phone takes this file. It lies at {}.",
                         file.toStdString()));
    done({});
}

bool AndroidHaptics::available() const {
    static const bool has_motor =
        call<jboolean>(phone, "canTick", "(Landroid/app/Activity;)Z", activity().object());
    return has_motor;
}

void AndroidHaptics::tick() {
    call<void>(phone, "tick", "(Landroid/app/Activity;)V", activity().object());
}

void AndroidKeepAwake::keepAwake(bool on) {
    if (on == on_) return;
    on_ = on;
    call<void>(phone, "keepAwake", "(Landroid/app/Activity;Z)V", activity().object(), jboolean(on));
}

std::optional<bool> AndroidAppearance::dark() const {
#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0)
    if (const auto scheme = QGuiApplication::styleHints()->colorScheme(); scheme != Qt::ColorScheme::Unknown)
        return scheme == Qt::ColorScheme::Dark;
#endif
    return {};
}

std::optional<double> AndroidAppearance::textScale() const {
    const auto scale =
        double(call<jfloat>(phone, "textScale", "(Landroid/app/Activity;)F", activity().object()));
    return scale > 0 ? std::optional(scale) : std::nullopt;
}

std::optional<bool> AndroidAppearance::reducedMotion() const {
    return call<jboolean>(phone, "reducedMotion", "(Landroid/app/Activity;)Z", activity().object());
}

void AndroidAppearance::listen(Changed changed_look) {
    listener() = std::move(changed_look);
    static const bool heard =
        register_natives(phone, {{"changed", "()V", reinterpret_cast<void*>(&changed)}});
    if (heard) call<void>(phone, "listen", "()V");
#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0)
    QObject::connect(QGuiApplication::styleHints(), &QStyleHints::colorSchemeChanged, qApp, &look_changed);
#endif
}

std::filesystem::path AndroidPaths::data() const {
    return data_ ? *data_ : path_of(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
}

std::filesystem::path AndroidPaths::documents() const {
    return path_of(
        call_for_text(phone, "documents", "(Landroid/app/Activity;)Ljava/lang/String;", activity().object()));
}

std::filesystem::path AndroidPaths::scratch() const {
    return path_of(QStandardPaths::writableLocation(QStandardPaths::CacheLocation));
}

bool open_android_settings() {
    return call<jboolean>(phone, "openSettings", "(Landroid/app/Activity;)Z", activity().object());
}

}  // namespace lapwing::platform
