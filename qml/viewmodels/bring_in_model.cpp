// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/bring_in_model.h"

#include <QFile>
#include <QFileInfo>
#include <QPointer>
#include <algorithm>

#include "core/store/attachment_files.h"
#include "core/workflow/full_backup.h"
#include "core/workflow/together.h"
#include "qml/viewmodels/demo_texts.h"
#include "qml/viewmodels/news.h"
#include "qml/viewmodels/record_items.h"

namespace lapwing {
namespace {

/// Of a new engine everything is new: nobody reads it line by line.
constexpr std::size_t most_news = 40;

}  // namespace

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
    connect(app_, &AppContext::formatChanged, this, &BringInModel::show);
    emit appChanged();
}

bool BringInModel::possible() const {
    return refusal_.isEmpty() &&
           std::ranges::any_of(waiting_, [](const Waiting& one) { return one.preview.brings_something(); });
}

bool BringInModel::altered() const {
    return std::ranges::any_of(
        waiting_, [](const Waiting& one) { return one.by.who == workflow::SignedBy::Who::altered; });
}

bool BringInModel::leavesOut() const {
    return bringBack() || std::ranges::any_of(waiting_, [](const Waiting& one) {
               return one.preview.total(one.preview.removed_here) > 0;
           });
}

void BringInModel::setBringBack(bool back) {
    if (back == bringBack()) return;
    removed_ = back ? workflow::RemovedHere::come_back : workflow::RemovedHere::stay_out;
    for (auto& one : waiting_)
        one.preview = workflow::preview(app_->desk(), one.incoming.dossier, removed_);
    show();
}

void BringInModel::choose() {
    const platform::FileKind kind{tr("Session files"),
                                  {QStringLiteral("*.lapwing")},
                                  QStringLiteral("application/vnd.lapwing.session+zip")};
    app_->devices().filePicker.open(
        tr("Open a session file"), {kind},
        [self = QPointer<BringInModel>(this)](Result<std::optional<QString>> picked) {
            if (!self) return;
            if (!picked) return self->app_->tell(picked.error());
            if (*picked) emit self->chosen(**picked);
        });
}

void BringInModel::open(const QString& file) {
    read(QFileInfo(file).fileName(), {file.toStdString()});
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
    read(tr("Demo: two invented engines"), files, app_->format().locale().name().first(2));
}

void BringInModel::read(const QString& heading, const std::vector<std::filesystem::path>& files,
                        const QString& language) {
    heading_ = heading;
    busy_ = true;
    emit refreshed();
    const auto scratch = app_->devices().paths.scratch();
    // The pool is waited for before this object goes.
    pool_.start([this, files, language, scratch, removed = removed_, &desk = app_->desk()] {
        auto read = std::make_shared<Read>();
        for (const auto& file : files) {
            auto incoming = exchange::read_session_file(file, scratch);
            if (!incoming) {
                read->refused = incoming.error();
                read->refused_signature = exchange::check_session_file(file, scratch).signature;
                continue;
            }
            if (!language.isEmpty())
                if (auto told = demo_told_in(language, incoming->dossier))
                    incoming->dossier = std::move(*told);
            auto preview = workflow::preview(desk, incoming->dossier, removed);
            auto by = workflow::signed_by(desk, incoming->signature);
            if (preview.refusal) read->refused = preview.refusal;
            auto whereabouts = exchange::whereabouts_of(*incoming);
            read->fine.push_back(
                {std::move(*incoming), std::move(preview), std::move(by), std::move(whereabouts)});
        }
        QMetaObject::invokeMethod(
            this, [this, read] { take(std::move(*read)); }, Qt::QueuedConnection);
    });
}

void BringInModel::take(Read read) {
    busy_ = false;
    refusal_ = read.refused ? app_->format().text(*read.refused) : QString();
    refused_signature_.clear();
    waiting_ = std::move(read.fine);
    // "Not signed" would be no news of a file that is none.
    if (read.refused_signature.state != exchange::SignatureState::not_signed)
        refused_signature_ << signature_item(workflow::signed_by(app_->desk(), read.refused_signature),
                                             read.refused_signature);
    show();
    emit previewReady();
}

void BringInModel::show() {
    files_.clear();
    for (const auto& one : waiting_)
        files_ << item(one);
    emit refreshed();
}

QVariantMap BringInModel::item(const Waiting& one) const {
    const auto& format = app_->format();
    const auto name_of = names_in(app_->desk(), format);
    const auto& preview = one.preview;
    QVariantList news, differences;
    const std::size_t listed = preview.new_engine ? 0 : std::min(most_news, preview.new_records.size());
    for (std::size_t at = 0; at < listed; ++at)
        news << record_item(format, preview.new_records[at]);
    for (const auto& change : preview.differences) {
        auto item = record_item(format, change.here);
        item[QStringLiteral("text")] =
            change.arrival == workflow::Arrival::conflict
                ? tr("Changed on both sides: both versions are kept, and you choose.")
                : tr("Changed by the sender after it was here: takes its place.");
        item[QStringLiteral("fields")] = difference_items(format, change.here, change.incoming, name_of);
        differences << item;
    }
    return {{QStringLiteral("title"), QString::fromStdString(one.incoming.dossier.engine.name)},
            {QStringLiteral("text"), preview_sentence(preview)},
            {QStringLiteral("signature"), signature_item(one.by, one.incoming.signature)},
            {QStringLiteral("gaps"), gap_lines(format, exchange::gaps_of(one.incoming.dossier))},
            {QStringLiteral("whereabouts"), whereabouts_lines(format, one.whereabouts)},
            {QStringLiteral("news"), news},
            {QStringLiteral("more"), preview.new_engine ? 0 : int(preview.new_records.size() - listed)},
            {QStringLiteral("differences"), differences}};
}

void BringInModel::nameKey(int file, const QString& name) {
    if (file < 0 || std::size_t(file) >= waiting_.size()) return;
    const auto key = waiting_[std::size_t(file)].incoming.signature.public_key;
    app_->desk().name_key(key, name.trimmed().toStdString(),
                          [self = QPointer<BringInModel>(this), app = app_](const Status& named) {
                              QMetaObject::invokeMethod(
                                  app,
                                  [self, app, named] {
                                      if (!named) return app->tell(named.error());
                                      if (!self) return;
                                      for (auto& one : self->waiting_)
                                          one.by =
                                              workflow::signed_by(self->app_->desk(), one.incoming.signature);
                                      self->show();
                                  },
                                  Qt::QueuedConnection);
                          });
}

void BringInModel::bringIn() {
    if (!possible() || busy_) return;
    Arrived only;
    if (waiting_.size() == 1) {
        const auto& one = waiting_.front();
        only.engine = QString::fromStdString(one.incoming.dossier.engine.id.text());
        only.new_engine = one.preview.new_engine;
        if (!one.incoming.dossier.visits.empty())
            only.session = QString::fromStdString(one.incoming.dossier.visits.back().session.id.text());
    }
    busy_ = true;
    emit refreshed();
    const auto all = std::make_shared<std::vector<Waiting>>(std::exchange(waiting_, {}));
    const auto give_up = [this, all] {
        waiting_ = std::move(*all);
        stop();
    };
    std::vector<std::string> names;
    std::vector<workflow::Intent> intents;
    for (const auto& one : *all) {
        // Photos and voice notes first: a record must never name bytes that are not there.
        if (auto kept = workflow::keep_files(app_->desk(), one.incoming); !kept) {
            give_up();
            return app_->tell(kept.error());
        }
        names.push_back(one.incoming.dossier.engine.name);
        intents.push_back(workflow::bring_in(one.incoming.dossier, removed_));
    }
    const char* step_name = names.size() == 1 ? "dossier.bring_in" : "dossier.bring_in_all";
    app_->run(workflow::together(step_name, std::move(names), std::move(intents)), this,
              [this, all, only, give_up](const Result<workflow::Step>& step) {
                  if (!step) return give_up();
                  for (const auto& one : *all)
                      if (!one.preview.new_engine)
                          add_news(app_->desk(), one.incoming.dossier.engine.id, one.preview,
                                   QString::fromStdString(one.by.name));
                  stop();
                  emit broughtIn(only.engine, only.new_engine, only.session);
              });
}

void BringInModel::stop() {
    busy_ = false;
    emit refreshed();
}

}  // namespace lapwing
