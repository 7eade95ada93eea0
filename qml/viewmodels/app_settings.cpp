// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/app_settings.h"

#include <QSettings>
#include <algorithm>

namespace lapwing {
namespace {

// A file that someone edited by hand must not put the app into a state that its own switches can't reach.
QString one_of(const QString& value, std::initializer_list<const char*> allowed) {
    const bool known = std::any_of(allowed.begin(), allowed.end(),
                                   [&](const char* word) { return value == QLatin1String(word); });
    return known ? value : QString::fromLatin1(*allowed.begin());
}

}  // namespace

AppSettings::AppSettings(const QString& file, QObject* parent)
    : QObject(parent), file_(new QSettings(file, QSettings::IniFormat, this)) {}

QString AppSettings::pressureUnit() const {
    return one_of(file_->value("units/pressure").toString(), {"bar", "psi", "kPa", "kgf/cm2", "inHg"});
}
QString AppSettings::clearanceUnit() const {
    return one_of(file_->value("units/clearance").toString(), {"mm", "thou"});
}
QString AppSettings::look() const {
    return one_of(file_->value("look/look").toString(), {"system", "workshop", "daylight"});
}
int AppSettings::textPercent() const {
    return std::clamp(file_->value("look/text", 100).toInt(), 100, 200);
}
bool AppSettings::leftHand() const {
    return file_->value("hands/left", false).toBool();
}
bool AppSettings::bigKeys() const {
    return file_->value("hands/big_keys", false).toBool();
}
bool AppSettings::haptics() const {
    return file_->value("hands/haptics", true).toBool();
}
bool AppSettings::volumeKeeps() const {
    return file_->value("hands/volume_keeps", true).toBool();
}
QString AppSettings::author() const {
    return file_->value("person/name").toString();
}
bool AppSettings::callFirst() const {
    return file_->value("person/call_first", false).toBool();
}
QString AppSettings::paper() const {
    return one_of(file_->value("report/paper").toString(), {"A4", "Letter"});
}
QString AppSettings::language() const {
    return one_of(file_->value("language").toString(), {"system", "en", "de", "es"});
}

void AppSettings::setPressureUnit(const QString& symbol) {
    file_->setValue("units/pressure", symbol);
    emit unitsChanged();
}
void AppSettings::setClearanceUnit(const QString& symbol) {
    file_->setValue("units/clearance", symbol);
    emit unitsChanged();
}
void AppSettings::setLook(const QString& look) {
    file_->setValue("look/look", look);
    emit lookChanged();
}
void AppSettings::setTextPercent(int percent) {
    file_->setValue("look/text", std::clamp(percent, 100, 200));
    emit lookChanged();
}
void AppSettings::setLeftHand(bool on) {
    file_->setValue("hands/left", on);
    emit handlingChanged();
}
void AppSettings::setBigKeys(bool on) {
    file_->setValue("hands/big_keys", on);
    emit handlingChanged();
}
void AppSettings::setHaptics(bool on) {
    file_->setValue("hands/haptics", on);
    emit handlingChanged();
}
void AppSettings::setVolumeKeeps(bool on) {
    file_->setValue("hands/volume_keeps", on);
    emit handlingChanged();
}
void AppSettings::setAuthor(const QString& name) {
    file_->setValue("person/name", name.trimmed().left(80));
    emit authorChanged();
}
void AppSettings::setCallFirst(bool on) {
    file_->setValue("person/call_first", on);
    emit handlingChanged();
}
void AppSettings::setPaper(const QString& paper) {
    file_->setValue("report/paper", paper);
    emit unitsChanged();
}
void AppSettings::setLanguage(const QString& language) {
    file_->setValue("language", language);
    emit languageChanged();
}

}  // namespace lapwing
