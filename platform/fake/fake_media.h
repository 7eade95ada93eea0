// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <vector>

#include "platform/api/media.h"

namespace lapwing::platform {

/// Hears what a test says.
class FakeMicrophone final : public Microphone {
public:
    bool offered = true;
    int starts = 0;

    [[nodiscard]] bool available() const override { return offered; }
    Status start(Listener listener) override {
        if (!offered) return fail("microphone.none", "No microphone was found. Connect one.");
        ++starts;
        listener_ = std::move(listener);
        return {};
    }
    void stop() override { listener_ = {}; }

    [[nodiscard]] bool listening() const { return bool(listener_.heard); }
    void say(std::span<const std::int16_t> samples) {
        if (listener_.heard) listener_.heard(samples);
    }
    /// As loud as `share` of the loudest, so many seconds long: a square wave.
    void hum(double seconds, double share = 0.5) {
        std::vector<std::int16_t> samples(std::size_t(seconds * rate));
        for (std::size_t i = 0; i < samples.size(); ++i)
            samples[i] = std::int16_t((i / 40 % 2 == 0 ? 32'767 : -32'767) * share);
        say(samples);
    }
    void lose() {
        const auto lost = std::exchange(listener_, {}).lost;
        if (lost) lost(fail("microphone.lost", "The microphone stopped.").value());
    }

private:
    Listener listener_;
};

/// Plays nothing, and goes where a test moves it.
class FakeSoundPlayer final : public SoundPlayer {
public:
    std::vector<std::filesystem::path> played;
    Now now;

    void play(const std::filesystem::path& file, double from, Listener listener) override {
        played.push_back(file);
        listener_ = std::move(listener);
        move({true, from, 4.0});
    }
    void seek(double seconds) override { move({now.playing, seconds, now.length}); }
    void pause() override { move({false, now.at, now.length}); }
    void stop() override {
        listener_ = {};
        now = {};
    }
    void move(Now to) {
        now = to;
        if (listener_.changed) listener_.changed(to);
    }
    void end() { move({false, 0, now.length}); }

private:
    Listener listener_;
};

/// Sees the picture that a test holds before it.
class FakeCamera final : public Camera {
public:
    bool offered = true;
    bool torchOffered = true;
    bool focusOffered = true;
    bool torch = false;
    std::optional<QPointF> focus;
    QImage scene;
    std::optional<Error> refusal;  ///< what taking a picture ends with, if not a picture
    int starts = 0;

    [[nodiscard]] bool available() const override { return offered; }
    Status start(Viewer viewer) override {
        if (!offered) return fail("camera.none", "No camera was found. Connect one.");
        ++starts;
        viewer_ = std::move(viewer);
        if (!scene.isNull()) viewer_.frame(scene);
        return {};
    }
    void stop() override { viewer_ = {}; }
    void take(Taken taken) override {
        if (refusal) return taken(tl::unexpected(*refusal));
        taken(scene);
    }
    [[nodiscard]] bool hasTorch() const override { return torchOffered; }
    void setTorch(bool on) override { torch = on; }
    [[nodiscard]] bool canFocus() const override { return focusOffered; }
    void focusAt(QPointF place) override { focus = place; }

    [[nodiscard]] bool on() const { return bool(viewer_.frame); }
    void fall_silent() {
        const auto lost = std::exchange(viewer_, {}).lost;
        if (lost) lost(fail("camera.silent", "The camera does not answer.").value());
    }

private:
    Viewer viewer_;
};

class FakeMedia final : public Media, public MediaStore {
public:
    FakeCamera eye;
    FakeMicrophone ear;
    FakeSoundPlayer mouth;
    bool installed = true;
    PackSpeech packer = nullptr;  ///< null: voice notes stay WAV files
    int asked = 0;

    Result<Media*> media() override {
        ++asked;
        if (!installed) return fail("part.missing", "This installation lacks a part of Lapwing.");
        return this;
    }
    [[nodiscard]] Camera& camera() override { return eye; }
    [[nodiscard]] Microphone& microphone() override { return ear; }
    [[nodiscard]] SoundPlayer& player() override { return mouth; }
    [[nodiscard]] PackSpeech packSpeech() const override { return packer; }
};

}  // namespace lapwing::platform
