// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <memory>

#include "core/workflow/background.h"
#include "qml/viewmodels/engine_backed.h"

namespace lapwing {

/// What thinks about one engine's whole history: off the UI thread, again when something in it was committed.
/// Derived classes name it lapwing::HistoryBacked in full, as with SessionBacked.
class HistoryBacked : public lapwing::EngineBacked {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(bool ready READ ready NOTIFY refreshed)

public:
    using EngineBacked::EngineBacked;
    ~HistoryBacked() override;

    /// Something was worked out.
    [[nodiscard]] bool ready() const { return ready_; }

protected:
    /// Asks for the work of this page once more.
    virtual void think() = 0;
    /// Says what was worked out, in the units and language chosen now.
    virtual void show() = 0;

    void refresh() override;
    /// The page was told all that it needs to think.
    [[nodiscard]] bool begun() const { return begun_; }
    // Bindings may ask before the page has handed the app over; nothing is shown before.
    [[nodiscard]] const format::Formatter& format() const { return app()->format(); }

    /// Runs `work` with the engine's dossier (or why there is none) off the UI thread, then `take` and `show`
    /// on it. A later call drops an earlier one.
    template <class T>
    void ask(std::function<T(const Result<Dossier>&)> work, std::function<void(T)> take) {
        if (!thinker_) thinker_ = std::make_unique<workflow::Background>();
        thinker_->ask<std::shared_ptr<T>>(
            [work = std::move(work), &desk = app()->desk(), id = engine()](const std::stop_token&) {
                return std::make_shared<T>(work(desk.dossier(id)));
            },
            // The thinker ends before the page does; a posted event dies with the page.
            [this, take = std::move(take)](std::shared_ptr<T> found) {
                QMetaObject::invokeMethod(
                    this,
                    [this, take, found] {
                        take(std::move(*found));
                        ready_ = true;
                        show();
                        emit refreshed();
                    },
                    Qt::QueuedConnection);
            });
    }

private:
    bool ready_ = false;
    bool begun_ = false;
    std::unique_ptr<workflow::Background> thinker_;
};

}  // namespace lapwing
