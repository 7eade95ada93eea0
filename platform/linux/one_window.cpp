// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/linux/one_window.h"

#include <QCryptographicHash>
#include <QDir>
#include <QLocalSocket>
#include <QStandardPaths>

namespace lapwing::platform {
namespace {

constexpr int patience_ms = 2000;
constexpr qint64 longest_message = 8192;
const QByteArray thanks = "ok\n";

/// Libraries are told apart by their folder. The socket lies where only this user comes; its whole path has
/// to stay under the system's limit of about 100 bytes, so it is not in the library's folder.
QString socket_of(const std::filesystem::path& library) {
    std::error_code unknown;
    auto whole = std::filesystem::weakly_canonical(library, unknown);
    if (unknown) whole = library;
    const auto hash =
        QCryptographicHash::hash(QByteArray::fromStdString(whole.string()), QCryptographicHash::Sha256);
    QString folder = QStandardPaths::writableLocation(QStandardPaths::RuntimeLocation);
    if (folder.isEmpty()) folder = QDir::tempPath();
    return folder + QStringLiteral("/lapwing-") + QString::fromLatin1(hash.toHex().left(16));
}

}  // namespace

OneWindow::OneWindow(const std::filesystem::path& library) : name_(socket_of(library)) {
    server_.setSocketOptions(QLocalServer::UserAccessOption);
}

bool OneWindow::handOver(const QString& file) const {
    QLocalSocket socket;
    socket.connectToServer(name_);
    if (!socket.waitForConnected(patience_ms)) return false;
    socket.write(file.toUtf8() + '\n');
    return socket.waitForBytesWritten(patience_ms) && socket.waitForReadyRead(patience_ms) &&
           socket.readLine() == thanks;
}

void OneWindow::listen(std::function<void(const QString&)> opened) {
    opened_ = std::move(opened);
    QObject::connect(&server_, &QLocalServer::newConnection, &server_, [this] {
        while (auto* socket = server_.nextPendingConnection())
            answer(socket);
    });
    // One that a killed window left behind: the library's own lock says that nobody has it open.
    QLocalServer::removeServer(name_);
    server_.listen(name_);
}

void OneWindow::answer(QLocalSocket* socket) {
    QObject::connect(socket, &QLocalSocket::disconnected, socket, &QObject::deleteLater);
    const auto read = [this, socket] {
        if (!socket->canReadLine()) {
            if (socket->bytesAvailable() > longest_message) socket->abort();
            return;
        }
        const QString file = QString::fromUtf8(socket->readLine(longest_message)).chopped(1);
        socket->write(thanks);
        socket->flush();
        opened_(file);
    };
    QObject::connect(socket, &QLocalSocket::readyRead, socket, read);
    read();
}

}  // namespace lapwing::platform
