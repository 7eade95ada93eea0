// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QThreadPool>
#include <QVariant>
#include <memory>
#include <vector>

#include "core/exchange/whereabouts.h"
#include "core/workflow/bring_in.h"
#include "core/workflow/hand_over.h"
#include "qml/viewmodels/app_context.h"

namespace lapwing {

/// Brings session files into the library: reads them off the UI thread, says whose they are, what is new in
/// them and what differs, and changes nothing before it is told to.
class BringInModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lapwing::AppContext* app READ app WRITE setApp NOTIFY appChanged REQUIRED)
    Q_PROPERTY(bool busy READ busy NOTIFY refreshed)
    Q_PROPERTY(QString heading READ heading NOTIFY refreshed)
    Q_PROPERTY(QVariantList files READ files NOTIFY refreshed)
    Q_PROPERTY(QString refusal READ refusal NOTIFY refreshed)
    Q_PROPERTY(QVariantList refusedSignature READ refusedSignature NOTIFY refreshed)
    Q_PROPERTY(bool possible READ possible NOTIFY refreshed)
    Q_PROPERTY(bool altered READ altered NOTIFY refreshed)
    Q_PROPERTY(bool leavesOut READ leavesOut NOTIFY refreshed)
    Q_PROPERTY(bool bringBack READ bringBack WRITE setBringBack NOTIFY refreshed)

public:
    explicit BringInModel(QObject* parent = nullptr);
    ~BringInModel() override;

    [[nodiscard]] AppContext* app() const { return app_; }
    void setApp(AppContext* app);
    [[nodiscard]] bool busy() const { return busy_; }
    [[nodiscard]] QString heading() const { return heading_; }
    /// One for each file that can be read: {title, text, signature (see signature_item), gaps (see
    /// gap_lines), whereabouts (see whereabouts_lines), news: [{title, text}], more: how many news are not
    /// listed, differences: [{title, text, fields: [{name, one, other}]}]}; `one` is what stands here,
    /// `other` what the file says.
    [[nodiscard]] QVariantList files() const { return files_; }
    /// Why there is nothing to bring in; empty when there is no fault.
    [[nodiscard]] QString refusal() const { return refusal_; }
    /// What a refused file was signed with, if it was (see signature_item).
    [[nodiscard]] QVariantList refusedSignature() const { return refused_signature_; }
    [[nodiscard]] bool possible() const;   ///< something is new and nothing stands in the way
    [[nodiscard]] bool altered() const;    ///< a file is not as its sender signed it
    [[nodiscard]] bool leavesOut() const;  ///< records that were taken out here are in the files
    [[nodiscard]] bool bringBack() const { return removed_ == workflow::RemovedHere::come_back; }
    void setBringBack(bool back);

    /// Asks for a file; `chosen` follows, unless the person changed their mind.
    Q_INVOKABLE void choose();
    /// Reads a file; `previewReady` follows.
    Q_INVOKABLE void open(const QString& file);
    /// Reads the demo sessions that the app carries, told in its language.
    Q_INVOKABLE void openDemo();
    /// Names the owner of the key that signed the file at that place; an empty name forgets them.
    Q_INVOKABLE void nameKey(int file, const QString& name);
    /// Brings in what the preview showed; `broughtIn` follows once it is stored.
    Q_INVOKABLE void bringIn();

signals:
    void appChanged();
    void refreshed();
    void chosen(const QString& file);
    void previewReady();
    /// With just one file: the engine's id, whether it was not here before, and its newest session, if any;
    /// else empty.
    void broughtIn(const QString& engineId, bool newEngine, const QString& sessionId);

private:
    /// A file that was read; its photos and voice notes wait in a folder that goes with it.
    struct Waiting {
        exchange::Incoming incoming;
        workflow::Preview preview;
        workflow::SignedBy by;
        std::vector<exchange::Whereabouts> whereabouts;
    };
    struct Read {
        std::vector<Waiting> fine;
        std::optional<Error> refused;
        exchange::Signature refused_signature;
    };
    struct Arrived {
        QString engine;
        bool new_engine = false;
        QString session;
    };

    /// `language` for the demo, whose words are then the app's.
    void read(const QString& heading, const std::vector<std::filesystem::path>& files,
              const QString& language = {});
    void take(Read read);
    void show();
    void stop();
    [[nodiscard]] QVariantMap item(const Waiting& one) const;

    AppContext* app_ = nullptr;
    bool busy_ = false;
    QString heading_;
    QVariantList files_;
    QString refusal_;
    QVariantList refused_signature_;
    workflow::RemovedHere removed_ = workflow::RemovedHere::stay_out;
    std::vector<Waiting> waiting_;
    QThreadPool pool_;
};

}  // namespace lapwing
