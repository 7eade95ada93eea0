// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QAudioSource>
#include <QObject>
#include <memory>
#include <vector>

#include "platform/api/microphone.h"

namespace lapwing::platform {

class QtMicrophone final : public QObject, public Microphone {
    Q_OBJECT

public:
    [[nodiscard]] bool available() const override;
    Status start(Listener listener) override;
    void stop() override;

private:
    void read();
    void lookWhy(QAudio::State state);

    std::unique_ptr<QAudioSource> source_;
    QIODevice* sound_ = nullptr;
    std::vector<std::int16_t> samples_;
    Listener listener_;
};

}  // namespace lapwing::platform
