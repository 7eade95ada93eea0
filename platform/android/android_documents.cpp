// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/android/android_documents.h"

#include <QHash>

#include "platform/android/java.h"

namespace lapwing::platform {
namespace {

constexpr auto documents = "org/lapwing/lapwing/Documents";

/// What Java calls back. On the main thread only; Java's own threads post here.
QHash<int, FilePicker::Picked>& waiting() {
    static QHash<int, FilePicker::Picked> requests;
    return requests;
}

std::function<void(const QString&)>& receiver() {
    static std::function<void(const QString&)> one;
    return one;
}

void JNICALL picked(JNIEnv*, jclass, jint request, jstring path, jstring error) {
    on_main_thread([request = int(request), path = text_of(path), error = text_of(error)] {
        const auto done = waiting().take(request);
        if (!done) return;
        if (!error.isEmpty())
            return done(fail("picker.copy_read",
                             "The file can't be copied: {}. Make room, or choose another place.",
                             error.toStdString()));
        done(path.isEmpty() ? std::optional<QString>() : std::optional(path));
    });
}

void JNICALL opened(JNIEnv*, jclass, jstring path, jstring error) {
    // What could not be copied is opened all the same: the reader says that there is no such file.
    on_main_thread([path = text_of(path), error = text_of(error)] {
        if (receiver()) receiver()(error.isEmpty() ? path : error);
    });
}

void hear_from_java() {
    static const bool heard = register_natives(
        documents, {{"picked", "(ILjava/lang/String;Ljava/lang/String;)V", reinterpret_cast<void*>(&picked)},
                    {"opened", "(Ljava/lang/String;Ljava/lang/String;)V", reinterpret_cast<void*>(&opened)}});
    Q_UNUSED(heard)
}

void wait_for(int request, FilePicker::Picked done) {
    if (request < 0)
        return done(fail("picker.no_dialog", "This phone has no file chooser. Share the file instead."));
    waiting().insert(request, std::move(done));
}

}  // namespace

void AndroidFilePicker::open(const QString& /*title*/, const QList<FileKind>& kinds, Picked picked) {
    hear_from_java();
    const QString type = kinds.isEmpty() ? QString() : kinds.constFirst().mediaType;
    wait_for(call<jint>(documents, "open", "(Landroid/app/Activity;Ljava/lang/String;)I", activity().object(),
                        java_text(type).object<jstring>()),
             std::move(picked));
}

void AndroidFilePicker::saveCopy(const QString& /*title*/, const QString& file, const QString& name,
                                 const FileKind& kind, Picked picked) {
    hear_from_java();
    wait_for(call<jint>(documents, "save",
                        "(Landroid/app/Activity;Ljava/lang/String;Ljava/lang/String;Ljava/lang/String;)I",
                        activity().object(), java_text(file).object<jstring>(),
                        java_text(name).object<jstring>(), java_text(kind.mediaType).object<jstring>()),
             std::move(picked));
}

void AndroidReceivedFiles::listen(std::function<void(const QString&)> opened) {
    receiver() = std::move(opened);
    hear_from_java();
    call<void>(documents, "listen", "()V");
}

}  // namespace lapwing::platform
