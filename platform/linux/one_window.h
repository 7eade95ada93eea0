// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLocalServer>
#include <QString>
#include <filesystem>
#include <functional>

namespace lapwing::platform {

/// A library is open in one window only. A second start on the same library hands its file to the window that
/// is open, over a socket of the user's own.
class OneWindow {
public:
    explicit OneWindow(const std::filesystem::path& library);

    /// Hands a file (absolute path; empty: only come to the front) to the window that has the library open.
    /// False when there is none that answers within two seconds.
    [[nodiscard]] bool handOver(const QString& file) const;

    /// Calls `opened` with each file that a later start hands over, empty for none.
    void listen(std::function<void(const QString& file)> opened);

private:
    void answer(QLocalSocket* socket);

    QString name_;
    QLocalServer server_;
    std::function<void(const QString&)> opened_;
};

}  // namespace lapwing::platform
