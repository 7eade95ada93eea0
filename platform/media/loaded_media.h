// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <memory>

#include "platform/api/media.h"
#include "platform/api/part.h"

namespace lapwing::platform {

/// Camera, microphone and speaker from their library, brought in when first wanted.
class LoadedMedia final : public MediaStore {
public:
    Result<Media*> media() override {
        if (media_) return media_.get();
        const auto make = load_part(QStringLiteral("lapwing_media"), "lapwing_media");
        if (!make) return tl::unexpected(make.error());
        media_.reset(reinterpret_cast<Media* (*)()>(*make)());
        return media_.get();
    }

private:
    std::unique_ptr<Media> media_;
};

}  // namespace lapwing::platform
