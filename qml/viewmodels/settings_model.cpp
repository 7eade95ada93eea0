// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/settings_model.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>

namespace lapwing {
namespace {

using namespace findings;

QVariantMap item(const QString& text, const QString& figure, const QString& source) {
    return {{QStringLiteral("text"), text},
            {QStringLiteral("figure"), figure},
            {QStringLiteral("source"), source}};
}

QString source_line(const Basis& basis, const format::Formatter& format) {
    const QString kind = format.name(basis.kind);
    return basis.source.empty() ? kind : kind + QStringLiteral(": ") + QString::fromStdString(basis.source);
}

QString shown(const format::Formatter& format, Dimension dimension, double si) {
    return format.valueText(Figure{dimension, si, {}, {}, {}});
}

QByteArray licence_file(const QString& name) {
    QFile file(QStringLiteral(":/licences/") + name);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

}  // namespace

void SettingsModel::setApp(AppContext* app) {
    if (app_ == app) return;
    app_ = app;
    connect(app_, &AppContext::formatChanged, this, &SettingsModel::refreshed);
    emit appChanged();
    emit refreshed();
}

QVariantList SettingsModel::pressureUnits() {
    QVariantList list;
    for (const auto unit : {units::bar, units::psi, units::kpa, units::kgf_cm2, units::in_hg})
        list << QVariantMap{{QStringLiteral("value"), QString::fromUtf8(unit.symbol().data())},
                            {QStringLiteral("text"), QString::fromUtf8(unit.display().data())}};
    return list;
}

QVariantList SettingsModel::limits() const {
    QVariantList list;
    if (!app_) return list;
    const auto& format = app_->format();
    const auto& reference = app_->reference();
    for (const auto& rule : reference.spread) {
        QString text = rule.kind == SpreadKind::lowest_of_highest
                           ? tr("Lowest cylinder of the highest, at least")
                           : tr("Below the average of all cylinders, at most");
        if (rule.at_least)
            text += QStringLiteral("; ") +
                    tr("none under %1").arg(shown(format, Dimension::gauge_pressure, rule.at_least->si()));
        list << item(text, shown(format, Dimension::share, rule.share), source_line(rule.basis, format));
    }
    for (const auto& typical : reference.typical_cranking) {
        const QString range = tr("%1 to %2")
                                  .arg(shown(format, Dimension::gauge_pressure, typical.low.si()),
                                       shown(format, Dimension::gauge_pressure, typical.high.si()));
        list << item(typical.per_compression_ratio
                         ? tr("Usual cranking pressure (%1), for each unit of compression ratio")
                               .arg(format.name(typical.fuel))
                         : tr("Usual cranking pressure (%1)").arg(format.name(typical.fuel)),
                     range, source_line(typical.basis, format));
    }
    for (const auto& band : reference.leakage) {
        QString restrictor = shown(format, Dimension::length, band.restrictor.si());
        if (band.restrictor_by_bore)
            restrictor =
                tr("%1 (%2 for bores of %3 and over)")
                    .arg(restrictor,
                         shown(format, Dimension::length, reference.assumed("restrictor-diameter-large")),
                         shown(format, Dimension::length, reference.assumed("large-bore")));
        QString text = tr("Leakage on a tester of %1 and %2: in range up to, borderline up to")
                           .arg(shown(format, Dimension::gauge_pressure, band.set.si()), restrictor);
        if (band.scope == BandScope::maker) text = tr("As a tester's maker says. %1").arg(text);
        if (band.scope == BandScope::aircraft) text = tr("Aircraft. %1").arg(text);
        list << item(text,
                     tr("%1 and %2")
                         .arg(shown(format, Dimension::share, band.good),
                              shown(format, Dimension::share, band.borderline)),
                     source_line(band.basis, format));
    }
    list << item(tr("Rings are suspected when oil raises the reading by at least"),
                 shown(format, Dimension::share, reference.wet.rise),
                 source_line(reference.wet.basis, format));
    return list;
}

QVariantList SettingsModel::licences() {
    QVariantList list;
    for (const QJsonValue one :
         QJsonDocument::fromJson(licence_file(QStringLiteral("licences.json"))).array())
        list << QVariantMap{{"name", one["name"].toString()},
                            {"licence", one["licence"].toString()},
                            {"holders", one["holders"].toString()}};
    return list;
}

QString SettingsModel::licenceText(const QString& name) {
    QStringList parts;
    for (const QJsonValue one :
         QJsonDocument::fromJson(licence_file(QStringLiteral("licences.json"))).array()) {
        if (one["name"].toString() != name) continue;
        parts << one["holders"].toString();
        for (const QJsonValue text : one["texts"].toArray())
            parts << QString::fromUtf8(licence_file(text.toString())).trimmed();
    }
    return parts.join(QStringLiteral("\n\n"));
}

QString SettingsModel::version() {
    return QCoreApplication::applicationVersion();
}

bool SettingsModel::hapticsOffered() const {
    return app_ && app_->devices().haptics.available();
}

QString SettingsModel::folder() const {
    return app_ ? QString::fromStdString(app_->desk().folder().string()) : QString();
}

}  // namespace lapwing
