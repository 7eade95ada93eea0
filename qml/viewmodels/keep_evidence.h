// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QImage>
#include <functional>

#include "core/store/recordings.h"
#include "qml/viewmodels/app_context.h"

/// The way of a photo or voice note into the library: its file on another thread, then its record. Leaving
/// the page, or the end of the app, costs nothing that was taken.
namespace lapwing {

/// Called on the UI thread after the commit, with the record as kept; not at all when the app is gone.
using Kept = std::function<void(const Result<Attachment>&)>;

/// A picture from the camera: no tags, upright.
void keep_photo(AppContext& app, const QImage& picture, Attachment photo, Kept kept);
/// A photo from a file: made upright, tags removed.
void keep_photo_file(AppContext& app, const QString& file, Attachment photo, Kept kept);

/// A finished recording. One too short to hold a word is forgotten: "voice.too_short".
void keep_voice(AppContext& app, const store::Recording& recording, Kept kept);
/// What was being said when the app was ended last time (left over when the library was opened, before
/// anything new was recorded): kept where it belongs, and the person is told.
void keep_cut_off(AppContext& app, const std::vector<store::Recording>& recordings);

}  // namespace lapwing
