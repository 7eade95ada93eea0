// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/bring_in_model.h"

#include <QFile>
#include <QPointer>

#include "core/store/attachment_files.h"

namespace lapwing {

BringInModel::BringInModel(QObject* parent) : QObject(parent) {
    pool_.setMaxThreadCount(1);
}

BringInModel::~BringInModel() {
    pool_.clear();
    pool_.waitForDone();
}

void BringInModel::setApp(AppContext* app) {
    if (app_ == app) return;
    app_ = app;
    emit appChanged();
}

bool BringInModel::possible() const {
    return useful_ > 0 && problem_.isEmpty();
}

void BringInModel::openSessionFile() {
    const platform::FileKind kind{tr("Session files"),
                                  {QStringLiteral("*.lapwing")},
                                  QStringLiteral("application/vnd.lapwing.session+zip")};
    app_->devices().filePicker.open(
        tr("Open a session file"), {kind},
        [self = QPointer<BringInModel>(this)](Result<std::optional<QString>> picked) {
            if (!self) return;
            if (!picked) return self->app_->tell(picked.error());
            if (*picked) self->read(tr("Session file"), {(*picked)->toStdString()});
        });
}

void BringInModel::openDemo() {
    // The reader wants real files; those inside the app are resources.
    const auto folder = app_->devices().paths.scratch() / "demo";
    std::error_code failed;
    std::filesystem::create_directories(folder, failed);
    std::vector<std::filesystem::path> files;
    for (const char* name : {"orchard-v-twin.lapwing", "harbour-six.lapwing"}) {
        files.push_back(folder / name);
        const QString copy = QString::fromStdString(files.back().string());
        QFile::remove(copy);
        if (!QFile::copy(QStringLiteral(":/demo/") + QLatin1String(name), copy))
            return app_->tell(fail("demo.no_room",
                                   "The demo can't be written to {}: free some space and try again.",
                                   files.back().string())
                                  .value());
        QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    }
    read(tr("Demo: two invented engines"), files);
}

void BringInModel::read(const QString& heading, const std::vector<std::filesystem::path>& files) {
    heading_ = heading;
    busy_ = true;
    emit refreshed();
    const auto scratch = app_->devices().paths.scratch();
    // The pool is waited for before this object goes.
    pool_.start([this, files, scratch] {
        auto read = std::make_shared<Read>();
        for (const auto& file : files) {
            auto one = exchange::read_session_file(file, scratch);
            if (one)
                read->fine.push_back(std::move(*one));
            else
                read->refused.push_back(one.error());
        }
        QMetaObject::invokeMethod(
            this, [this, read] { take(std::move(*read)); }, Qt::QueuedConnection);
    });
}

void BringInModel::take(Read read) {
    busy_ = false;
    lines_.clear();
    problem_.clear();
    waiting_ = std::move(read.fine);
    useful_ = 0;
    for (const auto& error : read.refused)
        problem_ = app_->format().text(error);
    for (const auto& one : waiting_) {
        const auto preview = workflow::preview(app_->desk(), one.dossier);
        lines_ << QVariantMap{{QStringLiteral("text"), QString::fromStdString(one.dossier.engine.name)},
                              {QStringLiteral("detail"), detail(preview)}};
        if (preview.refusal) problem_ = app_->format().text(*preview.refusal);
        if (preview.brings_something()) ++useful_;
    }
    emit refreshed();
    emit previewReady();
}

QString BringInModel::detail(const workflow::Preview& preview) const {
    QStringList sentences;
    if (preview.total(preview.added) > 0) sentences << added(preview);
    const auto say = [&](const std::map<RecordKind, int>& counts, const QString& one, const QString& many) {
        if (const int count = preview.total(counts); count > 0)
            sentences << (count == 1 ? one : many.arg(count));
    };
    say(preview.newer, tr("One record was changed and takes the place of the one here."),
        tr("%1 records were changed and take the place of those here."));
    say(preview.conflicts, tr("One record was changed here as well: both versions are kept."),
        tr("%1 records were changed here as well: both versions of each are kept."));
    say(preview.removed_here, tr("One record that you took out stays out."),
        tr("%1 records that you took out stay out."));
    return sentences.isEmpty() ? tr("All of it is here already.") : sentences.join(QLatin1Char(' '));
}

QString BringInModel::added(const workflow::Preview& preview) const {
    QStringList parts;
    const auto say = [&](RecordKind kind, const QString& one, const QString& many) {
        const auto found = preview.added.find(kind);
        if (found == preview.added.end() || found->second == 0) return;
        parts << (found->second == 1 ? one : many.arg(found->second));
    };
    say(RecordKind::session, tr("1 session"), tr("%1 sessions"));
    say(RecordKind::reading, tr("1 reading"), tr("%1 readings"));
    say(RecordKind::exit_note, tr("1 exit"), tr("%1 exits"));
    say(RecordKind::clearance, tr("1 clearance"), tr("%1 clearances"));
    say(RecordKind::attachment, tr("1 photo or voice note"), tr("%1 photos and voice notes"));
    say(RecordKind::note, tr("1 note"), tr("%1 notes"));
    say(RecordKind::plan_line, tr("1 line of the plan"), tr("%1 lines of the plan"));
    say(RecordKind::tester, tr("1 tester"), tr("%1 testers"));
    const QString what = parts.join(QStringLiteral(", "));
    if (preview.new_engine)
        return parts.isEmpty() ? tr("A new engine.") : tr("A new engine with %1.").arg(what);
    return tr("This engine is here already. New are %1.").arg(what);
}

void BringInModel::bringIn() {
    if (!possible()) return;
    const QString only =
        waiting_.size() == 1 ? QString::fromStdString(waiting_.front().dossier.engine.id.text()) : QString();
    busy_ = true;
    emit refreshed();
    next(std::make_shared<Waiting>(std::exchange(waiting_, {})), only);
}

void BringInModel::next(const std::shared_ptr<Waiting>& left, const QString& only) {
    if (left->empty()) {
        stop();
        emit broughtIn(only);
        return;
    }
    const exchange::Incoming one = std::move(left->back());
    left->pop_back();
    // Photos and voice notes first: a record must never name bytes that are not there.
    if (auto kept = workflow::keep_files(app_->desk(), one); !kept) {
        stop();
        return app_->tell(kept.error());
    }
    app_->run(workflow::bring_in(one.dossier), this, [this, left, only](const Result<workflow::Step>& step) {
        if (step)
            next(left, only);
        else
            stop();
    });
}

void BringInModel::stop() {
    busy_ = false;
    emit refreshed();
}

void BringInModel::cancel() {
    waiting_.clear();
    useful_ = 0;
    emit refreshed();
}

}  // namespace lapwing
