// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QThreadPool>
#include <QVariant>
#include <atomic>
#include <filesystem>
#include <functional>
#include <memory>

#include "core/workflow/full_backup.h"
#include "qml/viewmodels/app_context.h"

namespace lapwing {

/// Everything into one file, and back from one: off the UI thread, with progress, and stopped at any moment
/// without loss. What is in a backup is said before any of it comes in.
class BackupModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lapwing::AppContext* app READ app WRITE setApp NOTIFY appChanged REQUIRED)
    Q_PROPERTY(bool busy READ busy NOTIFY refreshed)
    Q_PROPERTY(QString doing READ doing NOTIFY refreshed)
    Q_PROPERTY(double share READ share NOTIFY progressed)
    Q_PROPERTY(QString result READ result NOTIFY refreshed)
    Q_PROPERTY(QString problem READ problem NOTIFY refreshed)
    Q_PROPERTY(bool unsaved READ unsaved NOTIFY refreshed)
    Q_PROPERTY(QString file READ file NOTIFY refreshed)
    Q_PROPERTY(QVariantList engines READ engines NOTIFY refreshed)
    Q_PROPERTY(QVariantList keys READ keys NOTIFY refreshed)
    Q_PROPERTY(QString holds READ holds NOTIFY refreshed)
    Q_PROPERTY(bool possible READ possible NOTIFY refreshed)
    Q_PROPERTY(bool nothing READ nothing NOTIFY refreshed)

public:
    explicit BackupModel(QObject* parent = nullptr);
    ~BackupModel() override;

    [[nodiscard]] AppContext* app() const { return app_; }
    void setApp(AppContext* app);
    [[nodiscard]] bool busy() const { return !doing_.isEmpty(); }
    [[nodiscard]] QString doing() const { return doing_; }
    [[nodiscard]] double share() const { return share_; }       ///< of what is being done, 0..1
    [[nodiscard]] QString result() const { return result_; }    ///< how the last work ended, in a sentence
    [[nodiscard]] QString problem() const { return problem_; }  ///< why it failed
    [[nodiscard]] bool unsaved() const { return !made_.empty() && !saving_; }  ///< made, and lies nowhere yet
    [[nodiscard]] QString file() const { return file_; }             ///< name of the backup that was opened
    [[nodiscard]] QVariantList engines() const { return engines_; }  ///< {title, text} of each engine in it
    /// {key, name, fingerprint, here, taken}: names of signatures in it that are not known here; `here` is
    /// what such a key is called here already. None is taken over before it is chosen.
    [[nodiscard]] QVariantList keys() const;
    [[nodiscard]] QString holds() const { return holds_; }  ///< all of it in a sentence
    [[nodiscard]] bool possible() const { return backup_ != nullptr; }

    /// The library holds nothing that a backup could keep.
    [[nodiscard]] bool nothing() const;

    /// Makes a backup and asks where it goes; not of an empty library.
    Q_INVOKABLE void backUp();
    /// Asks again where the backup that was made goes.
    Q_INVOKABLE void save();
    /// Asks for a backup and opens it.
    Q_INVOKABLE void choose();
    /// Checks a backup and says what is in it.
    Q_INVOKABLE void open(const QString& file);
    /// Chooses, or no longer, to take over the name of that key.
    Q_INVOKABLE void toggleKey(const QString& key);
    /// Brings the opened backup in.
    Q_INVOKABLE void restore();
    /// Stops what is being done; what is whole by then stays whole.
    Q_INVOKABLE void cancel();
    /// Puts the opened backup aside.
    Q_INVOKABLE void forget();

signals:
    void appChanged();
    void refreshed();
    void progressed();

private:
    using Backup = std::shared_ptr<const exchange::BackupReader>;
    using Finish = std::function<void()>;  ///< on the UI thread

    void work(const QString& doing, std::function<Finish(const workflow::Progress&)> job);
    void advance(std::size_t done, std::size_t of);
    void end(const QString& result);
    void fail_with(const Error& error);
    void show(const workflow::BackupPreview& preview);
    void saved(bool good, const QString& said);
    void drop();

    AppContext* app_ = nullptr;
    QString doing_, result_, problem_, file_, holds_;
    QString lacks_;  ///< what the backup that was made could not take in, a line each
    double share_ = 0;
    QVariantList engines_;
    std::filesystem::path made_;
    Backup backup_;
    std::vector<workflow::BackupPreview::Key> keys_;
    workflow::TrustedKeys trusted_;
    int conflicts_ = 0;
    bool saving_ = false;
    std::atomic<bool> stop_ = false;
    QThreadPool pool_;
};

}  // namespace lapwing
