// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDBusAbstractAdaptor>
#include <QDBusArgument>
#include <QDBusConnection>
#include <QDBusContext>
#include <QDBusMessage>
#include <QDBusObjectPath>
#include <QDBusVariant>
#include <QMap>
#include <QObject>
#include <QStringList>
#include <QVariantMap>

/// Plays the desktop's side of four freedesktop.org interfaces, as their published descriptions have them:
/// method names, arguments and signatures. Lives on a thread of its own, as a desktop does.
class ScreenSaver : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.ScreenSaver")

public:
    QMap<uint, QString> inhibitions;
    uint last = 40;

public slots:
    uint Inhibit(const QString& application, const QString& reason) {
        inhibitions.insert(++last, application + QStringLiteral(": ") + reason);
        return last;
    }
    void UnInhibit(uint cookie) { inhibitions.remove(cookie); }
};

class FileManager : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.FileManager1")

public:
    QStringList shown;

public slots:
    void ShowItems(const QStringList& uris, const QString& /*startupId*/) { shown = uris; }
};

class PortalSettings : public QDBusAbstractAdaptor {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.Settings")

public:
    explicit PortalSettings(QObject* portal) : QDBusAbstractAdaptor(portal) {}
    QMap<QString, QVariant> values;

public slots:
    /// The portal wraps the value twice, and its documents say so.
    QDBusVariant Read(const QString& group, const QString& key, const QDBusMessage& message) {
        const QString name = group + QLatin1Char('/') + key;
        if (!values.contains(name)) {
            message.setDelayedReply(true);
            QDBusConnection(QStringLiteral("desktop"))
                .send(
                    message.createErrorReply(QStringLiteral("org.freedesktop.portal.Error.NotFound"), name));
            return {};
        }
        return QDBusVariant(QVariant::fromValue(QDBusVariant(values[name])));
    }
};

class PortalFileChooserStandIn : public QDBusAbstractAdaptor {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.FileChooser")

public:
    explicit PortalFileChooserStandIn(QObject* portal) : QDBusAbstractAdaptor(portal) {}
    uint answer = 0;
    QStringList uris;
    QString method, title, filterSignature;
    QVariantMap options;

public slots:
    QDBusObjectPath OpenFile(const QString& /*parent*/, const QString& asked, const QVariantMap& with,
                             const QDBusMessage& message) {
        return respond(QStringLiteral("OpenFile"), asked, with, message);
    }
    QDBusObjectPath SaveFile(const QString& /*parent*/, const QString& asked, const QVariantMap& with,
                             const QDBusMessage& message) {
        return respond(QStringLiteral("SaveFile"), asked, with, message);
    }

private:
    QDBusObjectPath respond(const QString& name, const QString& asked, const QVariantMap& with,
                            const QDBusMessage& message) {
        method = name;
        title = asked;
        options = with;
        const QVariant filters = with.value(QStringLiteral("filters"));
        filterSignature = filters.canConvert<QDBusArgument>()
                              ? filters.value<QDBusArgument>().currentSignature()
                              : QString();
        const QString sender = message.service().mid(1).replace(QLatin1Char('.'), QLatin1Char('_'));
        const QString path = QStringLiteral("/org/freedesktop/portal/desktop/request/%1/%2")
                                 .arg(sender, with.value(QStringLiteral("handle_token")).toString());
        auto signal = QDBusMessage::createSignal(path, QStringLiteral("org.freedesktop.portal.Request"),
                                                 QStringLiteral("Response"));
        signal << answer << QVariantMap{{QStringLiteral("uris"), uris}};
        QDBusConnection(QStringLiteral("desktop")).send(signal);
        return QDBusObjectPath(path);
    }
};
