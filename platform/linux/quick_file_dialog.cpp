// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/linux/quick_file_dialog.h"

#include <QFileInfo>
#include <QGuiApplication>
#include <QQmlComponent>
#include <QStandardPaths>
#include <QUrl>
#include <QWindow>

namespace lapwing::platform {
namespace {

/// The name itself when it is free, else the next one with a number: "report (2).pdf".
QString beside(const QString& file) {
    const QFileInfo wanted(file);
    QString free = file;
    for (int number = 2; QFileInfo::exists(free); ++number)
        free = QStringLiteral("%1/%2 (%3)%4")
                   .arg(wanted.path(), wanted.completeBaseName())
                   .arg(number)
                   .arg(wanted.suffix().isEmpty() ? QString() : QLatin1Char('.') + wanted.suffix());
    return free;
}

/// Carries the dialog's answer to the caller, once, and ends the dialog.
class Bridge final : public QObject {
    Q_OBJECT

public:
    Bridge(QObject* dialog, FilePicker::Picked picked) : QObject(dialog), picked_(std::move(picked)) {
        connect(dialog, SIGNAL(chosen(QUrl)), this, SLOT(chosen(QUrl)));
        connect(dialog, SIGNAL(rejected()), this, SLOT(rejected()));
    }

private slots:
    void chosen(const QUrl& file) {
        // This dialog doesn't ask before a file is replaced, so none is.
        const bool saving = parent()->property("saving").toBool();
        if (file.isLocalFile())
            return finish(std::optional(saving ? beside(file.toLocalFile()) : file.toLocalFile()));
        finish(fail("picker.not_local", "{} is not on this computer. Copy it here first.",
                    file.toString().toStdString()));
    }
    void rejected() { finish(std::optional<QString>()); }

private:
    void finish(Result<std::optional<QString>> outcome) {
        parent()->deleteLater();
        if (const auto picked = std::exchange(picked_, nullptr)) picked(std::move(outcome));
    }

    FilePicker::Picked picked_;
};

QStringList nameFilters(const QList<FileKind>& kinds) {
    QStringList filters;
    for (const FileKind& kind : kinds)
        filters.append(QStringLiteral("%1 (%2)").arg(kind.label, kind.globs.join(QLatin1Char(' '))));
    return filters;
}

QUrl documents() {
    return QUrl::fromLocalFile(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
}

}  // namespace

void QuickFileDialog::openFile(const QString& title, const QList<FileKind>& kinds,
                               FilePicker::Picked picked) {
    show({{QStringLiteral("title"), title}, {QStringLiteral("nameFilters"), nameFilters(kinds)}}, {},
         std::move(picked));
}

void QuickFileDialog::saveFile(const QString& title, const QString& name, const FileKind& kind,
                               FilePicker::Picked picked) {
    show({{QStringLiteral("title"), title},
          {QStringLiteral("nameFilters"), nameFilters({kind})},
          {QStringLiteral("saving"), true}},
         QUrl(documents().toString() + QLatin1Char('/') + name), std::move(picked));
}

void QuickFileDialog::show(QVariantMap properties, const QUrl& proposed, FilePicker::Picked picked) {
    properties.insert(QStringLiteral("currentFolder"), documents());
    properties.insert(QStringLiteral("parentWindow"), QVariant::fromValue(QGuiApplication::focusWindow()));
    QQmlComponent component(&engine_, QUrl(QStringLiteral("qrc:/platform/linux/ChooseFile.qml")));
    QObject* dialog = component.createWithInitialProperties(properties);
    if (!dialog)
        return picked(fail("picker.no_dialog", "No file dialog could be opened: {}",
                           component.errorString().trimmed().toStdString()));
    dialog->setParent(&engine_);
    // Only now: a file can be proposed only to a dialog that already knows its folder.
    if (!proposed.isEmpty()) dialog->setProperty("selectedFile", proposed);
    QMetaObject::invokeMethod(dialog, "open");
    if (!dialog->property("visible").toBool()) {
        delete dialog;
        return picked(fail("picker.no_dialog",
                           "No file dialog could be opened. Is Qt's folder list module "
                           "(Qt.labs.folderlistmodel) installed?"));
    }
    new Bridge(dialog, std::move(picked));
}

}  // namespace lapwing::platform

#include "quick_file_dialog.moc"
