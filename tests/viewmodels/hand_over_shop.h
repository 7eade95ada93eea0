// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/exchange/session_file.h"
#include "core/store/attachment_files.h"
#include "core/workflow/hand_over.h"
#include "core/workflow/readings.h"
#include "core/workflow/remarks.h"
#include "tests/viewmodels/shop.h"

namespace lapwing {

/// A shop that hands session files over, signed with its own key.
class HandingShop : public Shop {
public:
    /// One engine with one session and one dry reading of cylinder 2.
    void fill() {
        engine_id = add_engine(QStringLiteral("Orchard V-twin"), 2, Arrangement::vee).id;
        Reading reading;
        reading.session = session = open_session(*desk->engine(engine_id), "As found");
        reading.cylinder = 2;
        reading.final = TypedPressure::make("7.7", units::bar).value();
        reading.id = reading_id = desk->make_id<ReadingId>();
        run(workflow::keep_reading(reading));
    }
    void run(workflow::Intent intent) {
        clock.move_by(std::chrono::seconds(1));
        desk->run(std::move(intent), [](const Result<workflow::Step>& step) {
            if (!step) qFatal("%s", step.error().english.c_str());
        });
        settle();
    }
    QString hand_over(const QTemporaryDir& place, const QString& name, bool sign = true) {
        exchange::Outgoing outgoing;
        outgoing.dossier = workflow::hand_over(*desk, {engine_id, {}, false}).value();
        outgoing.at = clock.now();
        outgoing.stored_at = [this](const Attachment& one) { return desk->files().path(one.sha256); };
        const auto key = workflow::signing_key(*desk);
        if (sign) outgoing.key = &key.value();
        const QString file = place.filePath(name);
        const auto written = exchange::write_session_file(file.toStdString(), outgoing);
        if (!written) qFatal("%s", written.error().english.c_str());
        return file;
    }
    Note note(const char* text, NoteKind kind = NoteKind::note) {
        Note note;
        note.id = desk->make_id<NoteId>();
        note.session = session;
        note.kind = kind;
        note.text = text;
        note.author = "The mentor";
        return note;
    }
    /// A photo whose record is here and whose file is not, as after a bad sector.
    void lose_a_photo() {
        Attachment photo;
        photo.id = desk->make_id<AttachmentId>();
        photo.session = session;
        photo.media_type = "image/jpeg";
        photo.sha256 = std::string(64, '7');
        photo.bytes = 1000;
        photo.taken_at = clock.now();
        run([photo](const workflow::Now&) -> Result<workflow::Command> {
            return workflow::Command{"photo.add", {}, {Put{photo}}, true};
        });
    }
    /// No more than its header, with the position in its Exif if it tells where it was taken:
    /// Exif 2.32, 4.5.4 (APP1) and 4.6.2 (a directory's entries), GPS tag 0x8825.
    static QByteArray bare_photo(bool tells_where) {
        const QByteArray exif = QByteArray::fromHex(
            "ffe10022457869660000"
            "4d4d002a00000008000188250004000000010000001a00000000");
        return QByteArray::fromHex("ffd8") + (tells_where ? exif : QByteArray()) +
               QByteArray::fromHex("ffc0000b080010001001011100ffd9");
    }
    Attachment keep_a_photo(const QByteArray& bytes) {
        const auto kept = desk->files().keep(
            {reinterpret_cast<const unsigned char*>(bytes.constData()), std::size_t(bytes.size())});
        if (!kept) qFatal("%s", kept.error().english.c_str());
        Attachment photo;
        photo.id = desk->make_id<AttachmentId>();
        photo.session = session;
        photo.media_type = "image/jpeg";
        photo.sha256 = kept->sha256;
        photo.bytes = kept->bytes;
        photo.taken_at = clock.now();
        run([photo](const workflow::Now&) -> Result<workflow::Command> {
            return workflow::Command{"photo.add", {}, {Put{photo}}, true};
        });
        return photo;
    }
    Note kept(NoteId id) const { return std::get<Note>(*desk->record(RecordKind::note, id.uuid)); }

    EngineId engine_id;
    SessionId session;
    ReadingId reading_id;
};

}  // namespace lapwing
