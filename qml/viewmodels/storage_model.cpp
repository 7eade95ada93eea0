// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/storage_model.h"

#include <QCoreApplication>
#include <QFile>
#include <QThreadPool>

#include "core/store/recordings.h"
#include "core/workflow/remarks.h"
#include "qml/viewmodels/keep_evidence.h"

namespace lapwing {
namespace {

namespace fs = std::filesystem;

/// Reads on another thread and delivers on the UI thread, unless the app or `receiver` is gone by then. The
/// desk outlives the thread's work: its pool is waited for before the app ends.
void sweep_for(AppContext& app, QObject* receiver, std::function<void(Result<store::Sweep>)> found) {
    const auto job = [&desk = app.desk(), guard = QPointer(receiver), found = std::move(found)] {
        auto sweep = desk.sweep();
        QMetaObject::invokeMethod(
            qApp,
            [guard, found, sweep = std::move(sweep)] {
                if (guard) found(sweep);
            },
            Qt::QueuedConnection);
    };
    app.background().start(job);
}

QString name_of(const fs::path& file) {
    return QString::fromStdString(file.filename().string());
}

/// What a file is by its first bytes, as a file name's ending.
QString ending_of(const fs::path& path) {
    QFile file(QString::fromStdString(path.string()));
    if (!file.open(QIODevice::ReadOnly)) return QStringLiteral("bin");
    const QByteArray head = file.read(4);
    if (head.startsWith("\xff\xd8")) return QStringLiteral("jpg");
    if (head == "OggS") return QStringLiteral("opus");
    if (head == "RIFF") return QStringLiteral("wav");
    return QStringLiteral("bin");
}

QString kind_of(const QString& ending) {
    if (ending == QLatin1String("jpg")) return StorageModel::tr("Photo");
    if (ending == QLatin1String("opus") || ending == QLatin1String("wav"))
        return StorageModel::tr("Voice note");
    return StorageModel::tr("Unknown file");
}

}  // namespace

void StorageModel::setApp(AppContext* app) {
    if (app_ == app) return;
    app_ = app;
    connect(app_, &AppContext::changed, this, [this](const workflow::Change& change) {
        if (change.kinds.contains(RecordKind::attachment)) look();
    });
    look();
}

void StorageModel::look() {
    unkept_.clear();
    for (auto& recording : app_->desk().recordings().left_over())
        if (!app_->desk().session(recording.note.session)) unkept_.push_back(std::move(recording));
    sweep_for(*app_, this, [this](Result<store::Sweep> found) {
        if (found) sweep_ = std::move(*found);
        emit refreshed();
    });
}

QVariantList StorageModel::used() const {
    if (!sweep_) return {};
    const auto line = [&](const QString& text, long long bytes) {
        return QVariantMap{{"text", text}, {"figure", app_->format().locale().formattedDataSize(bytes, 1)}};
    };
    long long for_undo = 0;
    for (const auto& file : sweep_->for_undo)
        for_undo += file.bytes;
    QVariantList list{line(tr("Photos and voice notes"), sweep_->attachment_bytes),
                      line(tr("Records"), sweep_->library_bytes), line(tr("Backups"), sweep_->backup_bytes)};
    if (for_undo > 0) list << line(tr("Of these, deleted and kept for Undo"), for_undo);
    return list;
}

QVariantList StorageModel::strays() const {
    QVariantList list;
    if (!sweep_) return list;
    for (const auto& file : sweep_->without_record)
        list << QVariantMap{{"text", kind_of(ending_of(file.path))},
                            {"detail", app_->format().locale().formattedDataSize(file.bytes, 1) +
                                           QStringLiteral(" · ") + name_of(file.path).left(12)}};
    return list;
}

QVariantList StorageModel::lost() const {
    QVariantList list;
    if (!sweep_) return list;
    for (const auto& attachment : sweep_->without_file) {
        const auto engine = app_->desk().engine_of(attachment.session);
        const auto whose = engine ? app_->desk().engine(*engine) : std::nullopt;
        QStringList detail{app_->format().shortDateTime(attachment.taken_at)};
        if (whose) detail.prepend(QString::fromStdString(whose->name));
        list << QVariantMap{{"id", QString::fromStdString(attachment.id.text())},
                            {"text", app_->format().heading(attachment.kind)},
                            {"detail", detail.join(QStringLiteral(" · "))}};
    }
    return list;
}

QVariantList StorageModel::unkept() const {
    QVariantList list;
    for (const auto& recording : unkept_)
        list << QVariantMap{{"text", tr("Voice note")},
                            {"detail", app_->format().shortDateTime(recording.note.taken_at)}};
    return list;
}

void StorageModel::saveCopy(const fs::path& file, const QString& name) {
    app_->devices().filePicker.saveCopy(
        tr("Save a copy"), QString::fromStdString(file.string()), name,
        {tr("File"), {QStringLiteral("*")}, QStringLiteral("application/octet-stream")},
        [guard = QPointer(app_)](const Result<std::optional<QString>>& place) {
            if (guard && !place) guard->tell(place.error());
        });
}

void StorageModel::saveStray(int index) {
    if (!sweep_ || index < 0 || std::size_t(index) >= sweep_->without_record.size()) return;
    const auto& file = sweep_->without_record[std::size_t(index)].path;
    saveCopy(file, QStringLiteral("lapwing-%1.%2").arg(name_of(file).left(12), ending_of(file)));
}

void StorageModel::deleteStray(int index) {
    if (!sweep_ || index < 0 || std::size_t(index) >= sweep_->without_record.size()) return;
    const auto chosen = sweep_->without_record[std::size_t(index)].path;
    // Looked at again: a record may name it by now.
    sweep_for(*app_, this, [this, chosen](const Result<store::Sweep>& found) {
        std::error_code error;
        if (found)
            for (const auto& file : found->without_record)
                if (file.path == chosen) fs::remove(chosen, error);
        look();
    });
}

void StorageModel::saveUnkept(int index) {
    if (index < 0 || std::size_t(index) >= unkept_.size()) return;
    saveCopy(unkept_[std::size_t(index)].sound, QStringLiteral("lapwing-voice-note.wav"));
}

void StorageModel::deleteUnkept(int index) {
    if (index < 0 || std::size_t(index) >= unkept_.size()) return;
    app_->desk().recordings().forget(unkept_[std::size_t(index)]);
    look();
}

void StorageModel::deleteLost(const QString& id) {
    if (const auto attachment = AttachmentId::parse(id.toStdString()))
        app_->run(workflow::remove_attachment(*attachment), this);
}

void housekeeping(AppContext& app, const std::vector<store::Recording>& cut_off) {
    keep_cut_off(app, cut_off);
    sweep_for(app, &app, [&app](const Result<store::Sweep>& found) {
        if (!found) return;
        if (!found->without_file.empty())
            emit app.told(QCoreApplication::translate("Evidence",
                                                      "Some photos or voice notes have lost their files. "
                                                      "Settings, Storage lists them and says what "
                                                      "can be done."));
        else if (!found->without_record.empty())
            emit app.told(QCoreApplication::translate(
                "Evidence",
                "Some photos or voice notes belong to no entry any more, perhaps of ones deleted long ago. "
                "Settings, Storage lists them: keep a copy or let them go."));
    });
}

}  // namespace lapwing
