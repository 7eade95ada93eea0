// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/keep_evidence.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <optional>

#include "core/workflow/remarks.h"
#include "core/workflow/voice_notes.h"
#include "qml/viewmodels/photo_eye.h"

namespace lapwing {
namespace {

constexpr int longest_side = 4096;  ///< px
constexpr int jpeg_quality = 92;
constexpr qint64 largest_file = 64LL << 20;

using Made = Result<std::optional<Attachment>>;

/// Makes the file on another thread and then keeps its record. `committed` is called before `kept`.
void make_and_keep(AppContext& app, std::function<Made()> make, Kept kept,
                   std::function<void()> committed = {}) {
    app.background().start([guard = QPointer(&app), make = std::move(make), kept = std::move(kept),
                            committed = std::move(committed)] {
        auto made = make();
        QMetaObject::invokeMethod(
            qApp,
            [=, made = std::move(made)] {
                if (!guard) return;
                if (!made) {
                    guard->tell(made.error());
                    return kept(tl::unexpected(made.error()));
                }
                if (!*made) {
                    if (committed) committed();
                    return kept(
                        fail("voice.too_short", "That was too short. Hold the button while you speak."));
                }
                guard->run(workflow::save_attachment(**made), guard,
                           [=, attachment = **made](const Result<workflow::Step>& done) {
                               if (done && committed) committed();
                               kept(done.map([&](const workflow::Step&) { return attachment; }));
                           });
            },
            Qt::QueuedConnection);
    });
}

std::span<const unsigned char> bytes_of(const QByteArray& bytes) {
    return {reinterpret_cast<const unsigned char*>(bytes.constData()), std::size_t(bytes.size())};
}

Made stored(const store::AttachmentFiles& files, const Result<QByteArray>& jpeg, Attachment photo) {
    if (!jpeg) return tl::unexpected(jpeg.error());
    const auto kept = files.keep(bytes_of(*jpeg));
    if (!kept) return tl::unexpected(kept.error());
    photo.kind = AttachmentKind::photo;
    photo.media_type = "image/jpeg";
    photo.sha256 = kept->sha256;
    photo.bytes = kept->bytes;
    return photo;
}

Result<QByteArray> jpeg_of(QImage picture) {
    if (std::max(picture.width(), picture.height()) > longest_side)
        picture = picture.scaled(longest_side, longest_side, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    // A copy without what programs write into pictures.
    QImage bare = picture.convertToFormat(QImage::Format_RGB32);
    for (const auto& key : bare.textKeys())
        bare.setText(key, {});
    if (picture.isNull() || !bare.save(&buffer, "jpg", jpeg_quality))
        return fail("photo.not_written", "The camera's picture could not be kept. Take it again.");
    return bytes;
}

/// Opening a pipe would wait for who writes into it, reading a device might never end.
Status check_is_file(const QString& name) {
    if (const QFileInfo info(name); info.exists() && !info.isFile())
        return fail("photo.no_file", "{} is a folder, a pipe or a device. Choose a photo.",
                    name.toStdString());
    return {};
}

Result<QByteArray> read_whole(const QString& name) {
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly))
        return fail("photo.unreadable", "{} can't be read: {}. Choose another photo.", name.toStdString(),
                    file.errorString().toStdString());
    if (file.size() > largest_file)
        return fail("photo.too_large",
                    "{} is larger than a photo can be here ({} MB). Make it smaller first.",
                    name.toStdString(), largest_file >> 20);
    return file.readAll();
}

}  // namespace

void keep_photo(AppContext& app, const QImage& picture, Attachment photo, Kept kept) {
    make_and_keep(
        app,
        [files = app.desk().files(), picture, photo = std::move(photo)] {
            return stored(files, jpeg_of(picture), photo);
        },
        std::move(kept));
}

void keep_photo_file(AppContext& app, const QString& file, Attachment photo, Kept kept) {
    if (auto is_file = check_is_file(file); !is_file) return kept(tl::unexpected(is_file.error()));
    const auto eye = app.eye().eye();
    if (!eye) {
        app.tell(eye.error());
        return kept(tl::unexpected(eye.error()));
    }
    make_and_keep(
        app,
        [files = app.desk().files(), file, eye = *eye, photo = std::move(photo)]() -> Made {
            const auto bytes = read_whole(file);
            if (!bytes) return tl::unexpected(bytes.error());
            return stored(files, eye->keepable(*bytes), photo);
        },
        std::move(kept));
}

void keep_voice(AppContext& app, const store::Recording& recording, Kept kept) {
    const auto media = app.devices().media.media();
    const auto pack = media ? (*media)->packSpeech() : nullptr;
    make_and_keep(
        app,
        [files = app.desk().files(), recording, pack] {
            return workflow::keep_sound(files, recording, pack);
        },
        std::move(kept), [recordings = app.desk().recordings(), recording] { recordings.forget(recording); });
}

void keep_cut_off(AppContext& app, const std::vector<store::Recording>& recordings) {
    for (const auto& recording : recordings) {
        // Its session was deleted: the sound stays where it is, and Settings shows it.
        if (!app.desk().session(recording.note.session)) continue;
        keep_voice(app, recording, [guard = QPointer(&app)](const Result<Attachment>& kept) {
            if (guard && kept)
                emit guard->told(QCoreApplication::translate(
                                     "Evidence",
                                     "A voice note was cut off when Lapwing ended. What was said until then "
                                     "is kept: %1 s.")
                                     .arg(guard->format().locale().toString(kept->length->number(), 'f', 0)));
        });
    }
}

}  // namespace lapwing
