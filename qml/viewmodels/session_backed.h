// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QObject>
#include <QQmlParserStatus>
#include <QString>
#include <QVariant>
#include <memory>
#include <optional>

#include "core/findings/findings.h"
#include "core/workflow/background.h"
#include "qml/viewmodels/app_context.h"

namespace lapwing {

/// What every page of one session has in common: it holds the session with its engine and testers, reads them
/// again when something in them was committed, and has the findings worked out off the UI thread. Derived
/// classes name it lapwing::SessionBacked in full: Qt 6.4 writes the name down as it stands, for qmllint to
/// look up.
class SessionBacked : public QObject, public QQmlParserStatus {
    Q_OBJECT
    Q_INTERFACES(QQmlParserStatus)
    QML_ANONYMOUS
    Q_PROPERTY(lapwing::AppContext* app READ app WRITE setApp NOTIFY appChanged REQUIRED)
    Q_PROPERTY(QString sessionId READ sessionId WRITE setSessionId NOTIFY sessionIdChanged REQUIRED)
    Q_PROPERTY(bool found READ found NOTIFY refreshed)
    Q_PROPERTY(QString engineId READ engineId NOTIFY refreshed)
    Q_PROPERTY(QString engineName READ engineName NOTIFY refreshed)
    Q_PROPERTY(QString visitLine READ visitLine NOTIFY refreshed)

public:
    explicit SessionBacked(QObject* parent = nullptr);

    [[nodiscard]] AppContext* app() const { return app_; }
    void setApp(AppContext* app);
    [[nodiscard]] QString sessionId() const { return session_id_; }
    void setSessionId(const QString& id);

    [[nodiscard]] bool found() const { return found_; }
    [[nodiscard]] QString engineId() const;
    [[nodiscard]] QString engineName() const;
    /// "As found · 14 March 2026"
    [[nodiscard]] QString visitLine() const;

    void classBegin() override {}
    void componentComplete() override;

signals:
    void appChanged();
    void sessionIdChanged();
    /// Everything shown may have changed.
    void refreshed();

protected:
    /// Called on the UI thread after the session was read, and again when its findings are there.
    virtual void refresh() {}
    [[nodiscard]] virtual bool wantsFindings() const { return true; }
    /// Called after the session was read: it may have changed.
    virtual void sessionRead() {}

    [[nodiscard]] const Engine& engine() const { return dossier_.engine; }
    [[nodiscard]] const Dossier& dossier() const { return dossier_; }  ///< with this one visit
    [[nodiscard]] const Visit& visit() const { return dossier_.visits.front(); }
    [[nodiscard]] const Session& session() const { return visit().session; }
    /// The newest that were worked out; absent until the first time.
    [[nodiscard]] const std::optional<findings::Findings>& findings() const { return findings_; }
    // Bindings may ask before the page has handed the app over: then there is nothing to say yet.
    [[nodiscard]] const format::Formatter& format() const;
    [[nodiscard]] const findings::Reference& reference() const;
    /// What the cranking model said so far, for this page.
    [[nodiscard]] findings::ModelCache& models() { return models_; }
    void reload();

private:
    void take(const workflow::Change& change);
    void think();

    AppContext* app_ = nullptr;
    QString session_id_;
    bool complete_ = false;
    bool found_ = false;
    mutable std::optional<QString>
        line_;  ///< made when first asked for: it takes the engine's other sessions
    Dossier dossier_;
    std::optional<findings::Findings> findings_;
    findings::ModelCache models_;  ///< used by the thinker, which ends first, and by pages' own
    std::unique_ptr<workflow::Background> thinker_;
};

}  // namespace lapwing
