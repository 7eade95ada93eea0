// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFile>
#include <deque>
#include <map>
#include <utility>
#include <vector>

#include "platform/api/devices.h"
#include "platform/fake/fake_media.h"

namespace lapwing::platform {

/// Scripted services for tests and screenshots: each answers as it is told and notes what it was asked.

class FakeShare final : public Share {
public:
    Way offers = Way::share_sheet;
    Status answer;
    std::vector<std::pair<QString, QString>> shared;  ///< file, media type

    [[nodiscard]] Way way() const override { return offers; }
    void share(const QString& file, const QString& mediaType, Done done) override {
        shared.emplace_back(file, mediaType);
        done(answer);
    }
};

class FakeFilePicker final : public FilePicker {
public:
    struct Asked {
        QString title;
        QString file;  ///< empty for `open`
        QString name;
        QList<FileKind> kinds;
    };
    bool offered = true;
    /// Taken one by one; when none is left the person changes their mind. A place for `saveCopy` really gets
    /// the copy.
    std::deque<Result<std::optional<QString>>> answers;
    std::vector<Asked> asked;

    [[nodiscard]] bool available() const override { return offered; }
    void open(const QString& title, const QList<FileKind>& kinds, Picked picked) override {
        asked.push_back({title, {}, {}, kinds});
        picked(next());
    }
    void saveCopy(const QString& title, const QString& file, const QString& name, const FileKind& kind,
                  Picked picked) override {
        asked.push_back({title, file, name, {kind}});
        auto place = next();
        if (place && *place && !QFile::copy(file, **place))
            return picked(fail("picker.copy_write", "{} can't be written.", (*place)->toStdString()));
        picked(std::move(place));
    }

private:
    Result<std::optional<QString>> next() {
        if (answers.empty()) return std::optional<QString>();
        auto answer = std::move(answers.front());
        answers.pop_front();
        return answer;
    }
};

class FakePermissions final : public Permissions {
public:
    std::map<Permission, State> states{{Permission::camera, State::not_asked},
                                       {Permission::microphone, State::not_asked}};
    State answer = State::granted;  ///< what the person says when asked
    std::vector<Permission> asked;
    int settingsOpened = 0;

    [[nodiscard]] State state(Permission permission) const override { return states.at(permission); }
    void request(Permission permission, Done done) override {
        if (states[permission] == State::not_asked) {
            asked.push_back(permission);
            states[permission] = answer;
        }
        done(states[permission]);
    }
    bool openSystemSettings() override { return ++settingsOpened > 0; }
};

class FakeHaptics final : public Haptics {
public:
    bool offered = true;
    int ticks = 0;

    [[nodiscard]] bool available() const override { return offered; }
    void tick() override { ++ticks; }
};

class FakeKeepAwake final : public KeepAwake {
public:
    bool offered = true;
    std::vector<bool> told;

    [[nodiscard]] bool available() const override { return offered; }
    void keepAwake(bool on) override {
        told.push_back(on);
        on_ = on && offered;
    }
    [[nodiscard]] bool isOn() const override { return on_; }

private:
    bool on_ = false;
};

class FakeAppearance final : public Appearance {
public:
    struct Choice {
        std::optional<bool> dark;
        std::optional<double> textScale;
        std::optional<bool> reducedMotion;
    };

    void choose(Choice choice) {
        choice_ = choice;
        if (changed_) changed_();
    }

    [[nodiscard]] std::optional<bool> dark() const override { return choice_.dark; }
    [[nodiscard]] std::optional<double> textScale() const override { return choice_.textScale; }
    [[nodiscard]] std::optional<bool> reducedMotion() const override { return choice_.reducedMotion; }
    void listen(Changed changed) override { changed_ = std::move(changed); }

private:
    Choice choice_;
    Changed changed_;
};

/// Three folders in one that the test owns.
class FakePaths final : public Paths {
public:
    explicit FakePaths(std::filesystem::path root) : root_(std::move(root)) {}

    [[nodiscard]] std::filesystem::path data() const override { return root_ / "data"; }
    [[nodiscard]] std::filesystem::path documents() const override { return root_ / "documents"; }
    [[nodiscard]] std::filesystem::path scratch() const override { return root_ / "scratch"; }

private:
    std::filesystem::path root_;
};

struct FakeDevices {
    explicit FakeDevices(std::filesystem::path root) : paths(std::move(root)) {}

    FakeShare share;
    FakeFilePicker filePicker;
    FakePermissions permissions;
    FakeHaptics haptics;
    FakeKeepAwake keepAwake;
    FakeAppearance appearance;
    FakePaths paths;
    FakeMedia media;
    MediaStore* real_media = nullptr;  ///< stands in for `media` when set

    [[nodiscard]] Devices devices() {
        return {share,     filePicker, permissions, haptics,
                keepAwake, appearance, paths,       real_media ? *real_media : media};
    }
};

}  // namespace lapwing::platform
