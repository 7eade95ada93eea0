// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/backup_model.h"

#include <QFileInfo>
#include <QPointer>
#include <algorithm>

#include "core/exchange/backup_file.h"
#include "qml/viewmodels/record_items.h"

namespace lapwing {
namespace {

namespace fs = std::filesystem;

platform::FileKind backup_kind() {
    return {BackupModel::tr("Backups"),
            {QStringLiteral("*") + QString::fromUtf8(exchange::backup_file_ending.data())},
            QStringLiteral("application/zip")};
}

QString damaged_name(const exchange::Damaged& one) {
    return one.engine.empty() ? BackupModel::tr("Testers and names of signatures")
                              : QString::fromStdString(one.engine);
}

/// "2026-03-14 10.30", as file names may have it: two backups of one day don't replace each other.
std::string minute_of(Timestamp at) {
    std::string text = to_rfc3339(at).substr(0, 16);
    std::ranges::replace(text, 'T', ' ');
    std::ranges::replace(text, ':', '.');
    return text;
}

/// The names of what is damaged, each once.
QString left_out(const std::vector<exchange::Damaged>& damaged) {
    QStringList names;
    for (const auto& one : damaged)
        names << damaged_name(one);
    names.removeDuplicates();
    return names.join(QStringLiteral(", "));
}

}  // namespace

BackupModel::BackupModel(QObject* parent) : QObject(parent) {
    pool_.setMaxThreadCount(1);
}

BackupModel::~BackupModel() {
    stop_ = true;
    pool_.waitForDone();
    drop();
}

void BackupModel::setApp(AppContext* app) {
    if (app_ == app) return;
    app_ = app;
    emit appChanged();
}

/// Runs `job` on a thread of its own; what it hands back is done on the UI thread.
void BackupModel::work(const QString& doing, std::function<Finish(const workflow::Progress&)> job) {
    doing_ = doing;
    share_ = 0;
    result_.clear();
    problem_.clear();
    stop_ = false;
    app_->keepAwake(true);
    emit refreshed();
    emit progressed();
    // The pool is waited for before this object goes.
    pool_.start([this, job = std::move(job)] {
        const workflow::Progress progress = [this](std::size_t done, std::size_t of) {
            QMetaObject::invokeMethod(
                this, [this, done, of] { advance(done, of); }, Qt::QueuedConnection);
            return !stop_;
        };
        auto finish = job(progress);
        QMetaObject::invokeMethod(
            this,
            [this, finish = std::move(finish)] {
                doing_.clear();
                app_->keepAwake(false);
                finish();
                emit refreshed();
            },
            Qt::QueuedConnection);
    });
}

void BackupModel::advance(std::size_t done, std::size_t of) {
    const double share = of > 0 ? double(done) / double(of) : 0;
    if (share == share_) return;
    share_ = share;
    emit progressed();
}

void BackupModel::end(const QString& result) {
    result_ = result;
}

void BackupModel::fail_with(const Error& error) {
    if (error.code == "backup.stopped")
        result_ = app_->format().text(error);
    else
        problem_ = app_->format().text(error);
}

void BackupModel::drop() {
    std::error_code ignored;
    if (!made_.empty() && !saving_) fs::remove(made_, ignored);
    made_.clear();
}

void BackupModel::cancel() {
    stop_ = true;
}

// ---- Making one

bool BackupModel::nothing() const {
    return app_ && app_->desk().engines().empty() && app_->desk().testers().empty();
}

void BackupModel::backUp() {
    if (busy() || saving_ || nothing()) return;
    drop();
    const auto& desk = app_->desk();
    const auto folder = app_->devices().paths.scratch() / "backup";
    const auto name = "Lapwing " + minute_of(desk.clock().now()) + std::string(exchange::backup_file_ending);
    work(tr("Writing the backup"), [this, &desk, folder, name](const workflow::Progress& progress) -> Finish {
        std::error_code failed;
        fs::create_directories(folder, failed);
        const auto target = folder / name;
        auto written = workflow::back_up(desk, target, progress);
        if (!written) return [this, error = written.error()] { fail_with(error); };
        return [this, target, gaps = std::move(*written)] {
            made_ = target;
            lacks_ = gap_lines(app_->format(), gaps);
            save();
        };
    });
}

void BackupModel::save() {
    if (made_.empty() || saving_) return;
    const QString file = QString::fromStdString(made_.string());
    const QString size = app_->format().locale().formattedDataSize(QFileInfo(file).size(), 1);
    saving_ = true;
    emit refreshed();
    // Who leaves the page while it is copied still learns how that ended.
    app_->devices().filePicker.saveCopy(
        tr("Where the backup goes"), file, QString::fromStdString(made_.filename().string()), backup_kind(),
        [self = QPointer<BackupModel>(this), app = QPointer<AppContext>(app_), made = made_, size,
         lacks = lacks_](Result<std::optional<QString>> place) {
            std::error_code ignored;
            if (!self) fs::remove(made, ignored);
            if (!app) return;
            const QString said =
                !place            ? app->format().text(place.error())
                : !*place         ? QString()
                : lacks.isEmpty() ? tr("Everything is backed up, %1: %2").arg(size, **place)
                                  : tr("Backed up, %1: %2. Everything is in it but what is no longer on this "
                                       "device:")
                                            .arg(size, **place) +
                                        QLatin1Char('\n') + lacks;
            if (self)
                self->saved(place.has_value(), said);
            else if (!said.isEmpty())
                emit app->told(said);
        });
}

void BackupModel::saved(bool good, const QString& said) {
    saving_ = false;
    problem_ = good ? QString() : said;
    if (good && !said.isEmpty()) {
        drop();
        end(said);
    }
    emit refreshed();
}

// ---- Bringing one in

void BackupModel::choose() {
    if (busy()) return;
    app_->devices().filePicker.open(
        tr("Open a backup"), {backup_kind()},
        [self = QPointer<BackupModel>(this)](Result<std::optional<QString>> file) {
            if (!self) return;
            if (!file) return self->app_->tell(file.error());
            if (*file) self->open(**file);
        });
}

void BackupModel::open(const QString& file) {
    if (busy()) return;
    forget();
    file_ = QFileInfo(file).fileName();
    const auto scratch = app_->devices().paths.scratch();
    const auto& desk = app_->desk();
    work(tr("Checking the backup"),
         [this, &desk, scratch,
          path = fs::path(file.toStdString())](const workflow::Progress& progress) -> Finish {
             // Checking reads every byte; saying what is new reads it once more.
             std::size_t all = 0;
             auto opened = exchange::BackupReader::open(path, scratch, [&](std::size_t done, std::size_t of) {
                 all = of;
                 return progress(done, 2 * of);
             });
             if (!opened) return [this, error = opened.error()] { fail_with(error); };
             const auto backup = std::make_shared<const exchange::BackupReader>(std::move(*opened));
             auto preview = workflow::preview(
                 desk, *backup, [&](std::size_t done, std::size_t) { return progress(all + done, 2 * all); });
             if (!preview) return [this, error = preview.error()] { fail_with(error); };
             return [this, backup, preview = std::move(*preview)] {
                 backup_ = backup;
                 show(preview);
             };
         });
}

QVariantList BackupModel::keys() const {
    QVariantList list;
    for (const auto& one : keys_)
        list << QVariantMap{
            {"key", QString::fromStdString(one.key.public_key)},
            {"name", QString::fromStdString(one.key.name)},
            {"fingerprint", QString::fromStdString(exchange::fingerprint(one.key.public_key))},
            {"here", QString::fromStdString(one.here)},
            {"taken", trusted_.contains(one.key.public_key)}};
    return list;
}

void BackupModel::toggleKey(const QString& text) {
    const auto key = text.toStdString();
    if (trusted_.erase(key) == 0) trusted_.insert(key);
    emit refreshed();
}

void BackupModel::show(const workflow::BackupPreview& preview) {
    keys_ = preview.keys;
    int new_engines = 0, unchanged = 0;
    conflicts_ = 0;
    for (const auto& one : backup_->damaged())
        engines_ << QVariantMap{
            {"title", damaged_name(one)},
            {"text", (one.partly ? tr("Damaged in part: the rest of it can be restored. %1")
                                 : tr("Damaged in this backup: not restored. %1"))
                         .arg(app_->format().text(one.why))}};
    for (const auto& one : preview.engines) {
        const auto& p = one.preview;
        engines_ << QVariantMap{{"title", QString::fromStdString(one.engine)},
                                {"text", p.refusal ? app_->format().text(*p.refusal) : preview_sentence(p)}};
        new_engines += p.new_engine;
        unchanged += !p.refusal && !p.brings_something();
        conflicts_ += p.total(p.conflicts);
    }
    const int all = int(preview.engines.size());
    const auto partly = std::ranges::count(backup_->damaged(), true, &exchange::Damaged::partly);
    const int whole = std::max(0, all - int(partly));
    QStringList sentences{
        tr("The backup holds %n engines.", nullptr, all),
        tr("Not here yet: %1. Here already and unchanged: %2.").arg(new_engines).arg(unchanged)};
    if (!backup_->damaged().empty())
        sentences.prepend(
            tr("This backup is damaged: %1 of %2 engines in it are whole. Look for another copy of "
               "it; what is whole can be restored now.")
                .arg(whole)
                .arg(backup_->of()));
    if (!preview.gaps.empty())
        sentences << tr("What was lost already when it was made:") + QLatin1Char('\n') +
                         gap_lines(app_->format(), preview.gaps);
    if (!preview.whereabouts.empty())
        sentences << tr("These photos tell where they were taken. They are kept as they are:") +
                         QLatin1Char('\n') + whereabouts_lines(app_->format(), preview.whereabouts);
    if (preview.new_testers > 0) sentences << tr("Testers of its own: %1.").arg(preview.new_testers);
    holds_ = sentences.join(QLatin1Char(' '));
}

void BackupModel::restore() {
    if (busy() || !backup_) return;
    auto& desk = app_->desk();
    work(tr("Bringing it in"),
         [this, &desk, backup = backup_, trusted = trusted_](const workflow::Progress& progress) -> Finish {
             auto done = workflow::restore(desk, *backup, progress, trusted);
             if (!done) return [this, error = done.error()] { fail_with(error); };
             return [this, done = *done] {
                 if (done.stopped) {
                     end(tr("Stopped after %1 of %2 engines. Those are here whole; restore again to bring in "
                            "the "
                            "rest.")
                             .arg(done.engines)
                             .arg(done.of));
                     return;
                 }
                 const auto lacks = left_out(done.damaged);
                 forget();
                 QString said =
                     tr("Here now with all that was in it: %1 of %2 engines in the backup. Nothing that was "
                        "here was taken away.")
                         .arg(done.engines)
                         .arg(done.of);
                 if (!lacks.isEmpty())
                     said +=
                         QLatin1Char(' ') + tr("Not restored, because damaged in the backup: %1.").arg(lacks);
                 if (conflicts_ > 0)
                     said += QLatin1Char(' ') +
                             tr("Records with two versions: %1. The engine cards say where to choose.")
                                 .arg(conflicts_);
                 end(said);
             };
         });
}

void BackupModel::forget() {
    backup_.reset();
    engines_.clear();
    keys_.clear();
    trusted_.clear();
    holds_.clear();
    file_.clear();
    result_.clear();
    problem_.clear();
    emit refreshed();
}

}  // namespace lapwing
