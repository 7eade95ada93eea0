// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "platform/android/android_documents.h"
#include "platform/api/devices.h"
#include "platform/media/asked_permissions.h"
#include "platform/media/loaded_media.h"

class QQmlEngine;

namespace lapwing::platform {

/// The share sheet (ACTION_SEND), with a file lent by the FileProvider of the manifest.
class AndroidShare final : public Share {
public:
    [[nodiscard]] Way way() const override { return Way::share_sheet; }
    void share(const QString& file, const QString& mediaType, Done done) override;
};

class AndroidHaptics final : public Haptics {
public:
    [[nodiscard]] bool available() const override;
    void tick() override;
};

class AndroidKeepAwake final : public KeepAwake {
public:
    [[nodiscard]] bool available() const override { return true; }
    void keepAwake(bool on) override;
    [[nodiscard]] bool isOn() const override { return on_; }

private:
    bool on_ = false;
};

class AndroidAppearance final : public Appearance {
public:
    [[nodiscard]] std::optional<bool> dark() const override;
    [[nodiscard]] std::optional<double> textScale() const override;
    [[nodiscard]] std::optional<bool> reducedMotion() const override;
    void listen(Changed changed) override;
};

class AndroidPaths final : public Paths {
public:
    explicit AndroidPaths(std::optional<std::filesystem::path> data) : data_(std::move(data)) {}

    [[nodiscard]] std::filesystem::path data() const override;
    [[nodiscard]] std::filesystem::path documents() const override;
    [[nodiscard]] std::filesystem::path scratch() const override;

private:
    std::optional<std::filesystem::path> data_;
};

bool open_android_settings();

/// Every service of an Android phone, ready to hand down.
class AndroidDevices {
public:
    explicit AndroidDevices(QQmlEngine& /*engine*/, std::optional<std::filesystem::path> data = {})
        : permissions_(open_android_settings), paths_(std::move(data)) {}

    [[nodiscard]] Devices devices() {
        return {share_, filePicker_, permissions_, haptics_, keepAwake_, appearance_, paths_, media_};
    }

private:
    AndroidShare share_;
    AndroidFilePicker filePicker_;
    AskedPermissions permissions_;
    AndroidHaptics haptics_;
    AndroidKeepAwake keepAwake_;
    AndroidAppearance appearance_;
    AndroidPaths paths_;
    LoadedMedia media_;
};

}  // namespace lapwing::platform
