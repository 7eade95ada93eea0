// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QThreadPool>
#include <QVariant>
#include <memory>
#include <vector>

#include "core/exchange/session_file.h"
#include "core/workflow/bring_in.h"
#include "core/workflow/full_backup.h"
#include "qml/viewmodels/app_context.h"

namespace lapwing {

/// Brings session files into the library: reads them off the UI thread, says what is new in them, and changes
/// nothing before it is told to.
class BringInModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lapwing::AppContext* app READ app WRITE setApp NOTIFY appChanged REQUIRED)
    Q_PROPERTY(bool busy READ busy NOTIFY refreshed)
    Q_PROPERTY(QString heading READ heading NOTIFY refreshed)
    Q_PROPERTY(QVariantList lines READ lines NOTIFY refreshed)
    Q_PROPERTY(QString problem READ problem NOTIFY refreshed)
    Q_PROPERTY(bool possible READ possible NOTIFY refreshed)

public:
    explicit BringInModel(QObject* parent = nullptr);
    ~BringInModel() override;

    [[nodiscard]] AppContext* app() const { return app_; }
    void setApp(AppContext* app);
    [[nodiscard]] bool busy() const { return busy_; }
    [[nodiscard]] QString heading() const { return heading_; }
    [[nodiscard]] QVariantList lines() const { return lines_; }  ///< {text, detail}: one for each file
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] bool possible() const;  ///< something is new and nothing stands in the way

    /// Asks for a file and reads it; `previewReady` follows, unless the person changed their mind.
    Q_INVOKABLE void openSessionFile();
    /// Reads the demo sessions that the app carries.
    Q_INVOKABLE void openDemo();
    /// Brings in what the preview showed; `broughtIn` follows once it is stored.
    Q_INVOKABLE void bringIn();
    /// Forgets what was read.
    Q_INVOKABLE void cancel();

signals:
    void appChanged();
    void refreshed();
    void previewReady();
    /// The engine's id when there was just one file, else empty.
    void broughtIn(const QString& engineId);

private:
    /// Files that were read, their photos and voice notes waiting in folders that go with them.
    using Waiting = std::vector<exchange::Incoming>;
    struct Read {
        Waiting fine;
        std::vector<Error> refused;
    };

    void read(const QString& heading, const std::vector<std::filesystem::path>& files);
    void take(Read read);
    void next(const std::shared_ptr<Waiting>& left, const QString& only);
    void stop();
    [[nodiscard]] QString detail(const workflow::Preview& preview) const;
    [[nodiscard]] QString added(const workflow::Preview& preview) const;

    AppContext* app_ = nullptr;
    bool busy_ = false;
    QString heading_;
    QVariantList lines_;
    QString problem_;
    int useful_ = 0;  ///< files that would bring something
    Waiting waiting_;
    QThreadPool pool_;
};

}  // namespace lapwing
