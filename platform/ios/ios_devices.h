// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QObject>
#include <optional>

#include "platform/api/devices.h"
#include "platform/media/asked_permissions.h"
#include "platform/media/loaded_media.h"

class QQmlEngine;

namespace lapwing::platform {

class IosShare final : public Share {
public:
    [[nodiscard]] Way way() const override { return Way::share_sheet; }
    void share(const QString& file, const QString& mediaType, Done done) override;
};

/// The system's file chooser. A chosen file is a copy in the app's own folder.
class IosFilePicker final : public FilePicker {
public:
    [[nodiscard]] bool available() const override { return true; }
    void open(const QString& title, const QList<FileKind>& kinds, Picked picked) override;
    void saveCopy(const QString& title, const QString& file, const QString& name, const FileKind& kind,
                  Picked picked) override;
};

class IosHaptics final : public Haptics {
public:
    [[nodiscard]] bool available() const override;
    void tick() override;
};

class IosKeepAwake final : public KeepAwake {
public:
    [[nodiscard]] bool available() const override { return true; }
    void keepAwake(bool on) override;
    [[nodiscard]] bool isOn() const override;
};

class IosAppearance final : public Appearance {
public:
    [[nodiscard]] std::optional<bool> dark() const override;
    [[nodiscard]] std::optional<double> textScale() const override;
    [[nodiscard]] std::optional<bool> reducedMotion() const override;
    void listen(Changed changed) override;
};

/// The library in Application Support, what the person asked for in Documents, which Info.plist shows in
/// Files.
class IosPaths final : public Paths {
public:
    explicit IosPaths(std::optional<std::filesystem::path> data) : data_(std::move(data)) {}

    [[nodiscard]] std::filesystem::path data() const override;
    [[nodiscard]] std::filesystem::path documents() const override;
    [[nodiscard]] std::filesystem::path scratch() const override;

private:
    std::optional<std::filesystem::path> data_;
};

/// Files that another program opens with the app. iOS starts it once only, so there is no other window to
/// hand a file to.
class IosReceivedFiles final : public QObject {
public:
    explicit IosReceivedFiles(const std::filesystem::path& library);

    [[nodiscard]] bool handOver(const QString& /*file*/) const { return false; }
    void listen(std::function<void(const QString& file)> opened);

private:
    bool eventFilter(QObject* watched, QEvent* event) override;

    QStringList early_;
    std::function<void(const QString&)> opened_;
};

bool open_ios_settings();

/// Every service of an iPhone or iPad, ready to hand down.
class IosDevices {
public:
    explicit IosDevices(QQmlEngine& /*engine*/, std::optional<std::filesystem::path> data = {})
        : permissions_(open_ios_settings), paths_(std::move(data)) {}

    [[nodiscard]] Devices devices() {
        return {share_, filePicker_, permissions_, haptics_, keepAwake_, appearance_, paths_, media_};
    }

private:
    IosShare share_;
    IosFilePicker filePicker_;
    AskedPermissions permissions_;
    IosHaptics haptics_;
    IosKeepAwake keepAwake_;
    IosAppearance appearance_;
    IosPaths paths_;
    LoadedMedia media_;
};

}  // namespace lapwing::platform
