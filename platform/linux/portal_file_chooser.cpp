// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/linux/portal_file_chooser.h"

#include <QDBusArgument>
#include <QDBusMessage>
#include <QDBusMetaType>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QGuiApplication>
#include <QUrl>
#include <QWindow>

#include "platform/linux/session_bus.h"

namespace lapwing::platform {

/// (u s): 0 and a glob, or 1 and a media type.
struct PortalPattern {
    uint kind = 0;
    QString pattern;
};
/// (s a(us))
struct PortalFilter {
    QString label;
    QList<PortalPattern> patterns;
};

static QDBusArgument& operator<<(QDBusArgument& out, const PortalPattern& pattern) {
    out.beginStructure();
    out << pattern.kind << pattern.pattern;
    out.endStructure();
    return out;
}
static const QDBusArgument& operator>>(const QDBusArgument& in, PortalPattern& pattern) {
    in.beginStructure();
    in >> pattern.kind >> pattern.pattern;
    in.endStructure();
    return in;
}
static QDBusArgument& operator<<(QDBusArgument& out, const PortalFilter& filter) {
    out.beginStructure();
    out << filter.label << filter.patterns;
    out.endStructure();
    return out;
}
static const QDBusArgument& operator>>(const QDBusArgument& in, PortalFilter& filter) {
    in.beginStructure();
    in >> filter.label >> filter.patterns;
    in.endStructure();
    return in;
}

}  // namespace lapwing::platform

Q_DECLARE_METATYPE(lapwing::platform::PortalPattern)
Q_DECLARE_METATYPE(lapwing::platform::PortalFilter)

namespace lapwing::platform {
namespace {

const QString portal = QStringLiteral("org.freedesktop.portal.Desktop");
const QString portalPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString fileChooser = QStringLiteral("org.freedesktop.portal.FileChooser");
const QString requestInterface = QStringLiteral("org.freedesktop.portal.Request");

QVariant filters(const QList<FileKind>& kinds) {
    qDBusRegisterMetaType<PortalPattern>();
    qDBusRegisterMetaType<QList<PortalPattern>>();
    qDBusRegisterMetaType<PortalFilter>();
    qDBusRegisterMetaType<QList<PortalFilter>>();
    QList<PortalFilter> list;
    for (const FileKind& kind : kinds) {
        PortalFilter filter{kind.label, {}};
        for (const QString& glob : kind.globs)
            filter.patterns.append({0, glob});
        if (!kind.mediaType.isEmpty()) filter.patterns.append({1, kind.mediaType});
        list.append(filter);
    }
    return QVariant::fromValue(list);
}

/// The portal keeps its dialog above this window; Wayland has no such name for a window in Qt's public API.
QString parentWindow() {
    const QWindow* window = QGuiApplication::focusWindow();
    if (!window || QGuiApplication::platformName() != QLatin1String("xcb")) return {};
    return QStringLiteral("x11:%1").arg(window->winId(), 0, 16);
}

}  // namespace

bool PortalFileChooser::available() const {
    return serviceOffered(bus_, portal);
}

void PortalFileChooser::openFile(const QString& title, const QList<FileKind>& kinds, Chosen chosen) {
    QVariantMap options;
    if (!kinds.isEmpty()) options.insert(QStringLiteral("filters"), filters(kinds));
    ask(QStringLiteral("OpenFile"), title, options, std::move(chosen));
}

void PortalFileChooser::saveFile(const QString& title, const QString& name, const FileKind& kind,
                                 Chosen chosen) {
    ask(QStringLiteral("SaveFile"), title,
        {{QStringLiteral("current_name"), name}, {QStringLiteral("filters"), filters({kind})}},
        std::move(chosen));
}

void PortalFileChooser::ask(const QString& method, const QString& title, QVariantMap options, Chosen chosen) {
    // The portal answers by a signal of an object whose path follows from our bus name and the token, so that
    // we can listen before the dialog is there.
    const QString token = QStringLiteral("lapwing%1").arg(++asked_);
    const QString sender = bus_.baseService().mid(1).replace(QLatin1Char('.'), QLatin1Char('_'));
    const QString request = portalPath + QStringLiteral("/request/%1/%2").arg(sender, token);
    waiting_[request] = std::move(chosen);
    bus_.connect(portal, request, requestInterface, QStringLiteral("Response"), this,
                 SLOT(response(uint, QVariantMap, QDBusMessage)));

    options.insert(QStringLiteral("handle_token"), token);
    auto call = QDBusMessage::createMethodCall(portal, portalPath, fileChooser, method);
    call << parentWindow() << title << options;
    auto* watcher = new QDBusPendingCallWatcher(bus_.asyncCall(call), this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, watcher, request] {
        watcher->deleteLater();
        if (watcher->isError())
            finish(request, fail("picker.portal", "The desktop's file dialog did not open: {}",
                                 watcher->error().message().toStdString()));
    });
}

void PortalFileChooser::response(uint answer, const QVariantMap& results, const QDBusMessage& message) {
    const QStringList uris = results.value(QStringLiteral("uris")).toStringList();
    const QString file = uris.isEmpty() ? QString() : QUrl(uris.first()).toLocalFile();
    if (answer == 1) return finish(message.path(), std::optional<QString>());
    if (answer == 0 && !file.isEmpty()) return finish(message.path(), std::optional(file));
    finish(message.path(), fail("picker.no_file",
                                "The desktop's file dialog closed without naming a file on "
                                "this computer. Choose one from a folder of this computer."));
}

void PortalFileChooser::finish(const QString& request, Result<std::optional<QString>> outcome) {
    bus_.disconnect(portal, request, requestInterface, QStringLiteral("Response"), this,
                    SLOT(response(uint, QVariantMap, QDBusMessage)));
    if (const Chosen chosen = waiting_.take(request)) chosen(std::move(outcome));
}

}  // namespace lapwing::platform
