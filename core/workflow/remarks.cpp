// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/remarks.h"

#include "core/workflow/needs.h"

namespace lapwing::workflow {
namespace {

template <class RecordId, class T>
Intent remove_one(RecordId id, std::string name, std::string (*arg)(const T&)) {
    return [=](const Now& now) -> Result<Command> {
        const auto old = need<T>(now, id.uuid);
        if (!old) return tl::unexpected(old.error());
        return Command{name, {arg(*old)}, {Remove{static_cast<RecordKind>(Record(T{}).index()), id.uuid}}};
    };
}

/// A verdict given before the findings were seen is worth nothing when it can be changed afterwards.
Status free_to_change(const Now& now, NoteId id) {
    const auto old = now.library.record(RecordKind::note, id.uuid);
    if (!old) return tl::unexpected(old.error());
    if (*old && std::get<Note>(**old).kind == NoteKind::my_call)
        return fail("note.call_stands",
                    "\"My call\" stands as it was committed. Write a note or another cause beside it.");
    return {};
}

}  // namespace

Intent save_note(Note note) {
    return [note = std::move(note)](const Now& now) -> Result<Command> {
        if (auto session = need_session(now, note.session); !session) return tl::unexpected(session.error());
        if (auto free = free_to_change(now, note.id); !free) return tl::unexpected(free.error());
        Note wanted = note;
        complete(wanted, wanted.at, now);
        return put_checked("note.keep", {std::string(word(note.kind))}, std::move(wanted));
    };
}

Intent remove_note(NoteId id) {
    return [id](const Now& now) -> Result<Command> {
        if (auto free = free_to_change(now, id); !free) return tl::unexpected(free.error());
        return remove_one<NoteId, Note>(id, "note.remove",
                                        [](const Note& note) { return std::string(word(note.kind)); })(now);
    };
}

Intent commit_calls(std::vector<Note> calls) {
    return [calls = std::move(calls)](const Now& now) -> Result<Command> {
        Command command{"note.call", {std::to_string(calls.size())}, {}};
        for (Note call : calls) {
            if (auto session = need_session(now, call.session); !session)
                return tl::unexpected(session.error());
            if (auto free = free_to_change(now, call.id); !free) return tl::unexpected(free.error());
            call.kind = NoteKind::my_call;
            complete(call, call.at, now);
            auto sound = checked(std::move(call));
            if (!sound) return tl::unexpected(sound.error());
            command.edits.emplace_back(Put{std::move(*sound)});
        }
        return command;
    };
}

Intent save_attachment(Attachment attachment) {
    return [attachment = std::move(attachment)](const Now& now) -> Result<Command> {
        if (auto session = need_session(now, attachment.session); !session)
            return tl::unexpected(session.error());
        if (!now.files.has(attachment.sha256))
            return fail("attachment.no_file",
                        "The file of this {} is missing, so it was not added. Take it again.",
                        word(attachment.kind));
        Attachment wanted = attachment;
        complete(wanted, wanted.taken_at, now);
        return put_checked("attachment.keep", {std::string(word(attachment.kind))}, std::move(wanted));
    };
}

Intent note_needle(Attachment attachment) {
    return [save = save_attachment(std::move(attachment))](const Now& now) -> Result<Command> {
        auto command = save(now);
        if (command) command->part_of_last = true;
        return command;
    };
}

Intent remove_attachment(AttachmentId id) {
    return remove_one<AttachmentId, Attachment>(id, "attachment.remove", [](const Attachment& attachment) {
        return std::string(word(attachment.kind));
    });
}

Intent save_plan_line(PlanLine line) {
    return [line = std::move(line)](const Now& now) -> Result<Command> {
        if (auto session = need_session(now, line.session); !session) return tl::unexpected(session.error());
        PlanLine wanted = line;
        if (wanted.id.is_nil()) wanted.id = PlanLineId::make(now.clock);
        return put_checked("plan.keep", {std::string(word(line.option))}, std::move(wanted));
    };
}

Intent remove_plan_line(PlanLineId id) {
    return remove_one<PlanLineId, PlanLine>(
        id, "plan.remove", [](const PlanLine& line) { return std::string(word(line.option)); });
}

}  // namespace lapwing::workflow
