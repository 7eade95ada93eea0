// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/desk.h"

#include "core/workflow/writer.h"

namespace lapwing::workflow {

struct Desk::Parts {
    const Clock& clock;
    std::filesystem::path folder;
    Writer writer;
    mutable std::mutex read_mutex;
    std::unique_ptr<store::Reader> reader;  ///< closed before the writer, which then tidies up the journal
    std::mutex trouble_mutex;
    std::vector<std::function<void(const Error&)>> trouble_listeners;

    Parts(const Clock& the_clock, std::filesystem::path the_folder, std::unique_ptr<store::Library> library,
          std::unique_ptr<store::Reader> the_reader)
        : clock(the_clock),
          folder(std::move(the_folder)),
          writer(std::move(library), the_clock),
          reader(std::move(the_reader)) {}

    template <class Read>
    auto read(Read&& ask) const {
        const std::lock_guard lock(read_mutex);
        return ask(reader->queries());
    }

    /// The value read, or an empty one and a word to those who listen for trouble.
    template <class T>
    T or_empty(Result<T> result) {
        if (result) return std::move(*result);
        trouble(result.error());
        return T{};
    }

    void trouble(const Error& error) {
        if (error.code == "store.damaged") writer.suspect_damage();
        std::vector<std::function<void(const Error&)>> listeners;
        {
            const std::lock_guard lock(trouble_mutex);
            listeners = trouble_listeners;
        }
        for (const auto& listener : listeners)
            listener(error);
    }
};

Result<Opened> Desk::open(const std::filesystem::path& folder, const Clock& clock) {
    auto library = store::open_or_restore(folder, clock);
    if (!library) return tl::unexpected(library.error());
    auto reader = store::Reader::open(store::Places{folder});
    if (!reader) return tl::unexpected(reader.error());
    auto parts = std::make_unique<Parts>(clock, folder, std::move(library->library), std::move(*reader));
    return Opened{std::unique_ptr<Desk>(new Desk(std::move(parts))), std::move(library->told)};
}

Desk::Desk(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
Desk::~Desk() {
    // Before anything else goes: a Done may still read.
    parts_->writer.close();
}

void Desk::run(Command command, Done done) {
    run([command = std::move(command)](const Now&) -> Result<Command> { return command; }, std::move(done));
}

void Desk::run(Intent intent, Done done) {
    parts_->writer.run(std::move(intent), std::move(done));
}

void Desk::undo(std::int64_t step, Done done) {
    parts_->writer.undo(step, std::move(done));
}

void Desk::redo(std::int64_t step, Done done) {
    parts_->writer.redo(step, std::move(done));
}

std::optional<Step> Desk::last_step() const {
    return parts_->or_empty(parts_->read([](const auto& library) { return library.last_step(); }));
}

std::optional<Step> Desk::last_undone() const {
    return parts_->or_empty(parts_->read([](const auto& library) { return library.last_undone(); }));
}

std::vector<Step> Desk::steps() const {
    return parts_->or_empty(parts_->read([](const auto& library) { return library.steps(); }));
}

void Desk::keep_draft(std::string key, std::string text, std::function<void()> done) {
    parts_->writer.keep_draft(std::move(key), std::move(text), std::move(done));
}

std::string Desk::draft(const std::string& key) const {
    if (auto waiting = parts_->writer.waiting_draft(key)) return *waiting;
    return parts_->or_empty(parts_->read([&](const auto& library) { return library.draft(key); }));
}

std::vector<EngineSummary> Desk::engines() const {
    return parts_->or_empty(parts_->read([](const auto& library) { return library.engines(); }));
}

std::optional<Engine> Desk::engine(EngineId id) const {
    return parts_->or_empty(parts_->read([&](const auto& library) { return library.engine(id); }));
}

std::vector<Tester> Desk::testers() const {
    return parts_->or_empty(parts_->read([](const auto& library) { return library.testers(); }));
}

std::vector<Session> Desk::sessions(EngineId id) const {
    return parts_->or_empty(parts_->read([&](const auto& library) { return library.sessions(id); }));
}

std::optional<Session> Desk::session(SessionId id) const {
    return parts_->or_empty(parts_->read([&](const auto& library) { return library.session(id); }));
}

std::optional<Visit> Desk::visit(SessionId id) const {
    return parts_->or_empty(parts_->read([&](const auto& library) { return library.visit(id); }));
}

Result<Dossier> Desk::dossier(EngineId id) const {
    auto found = parts_->read([&](const auto& library) { return library.dossier(id); });
    if (!found) {
        parts_->trouble(found.error());
        return tl::unexpected(found.error());
    }
    if (!*found) return fail("engine.gone", "This engine is no longer in the library. Go back to Engines.");
    return std::move(**found);
}

std::vector<Note> Desk::requests(EngineId id) const {
    return parts_->or_empty(parts_->read([&](const auto& library) { return library.requests(id); }));
}

std::optional<EngineId> Desk::engine_of(SessionId id) const {
    return parts_->or_empty(parts_->read([&](const auto& library) { return library.engine_of(id); }));
}

std::optional<Record> Desk::record(RecordKind kind, Uuid id) const {
    return parts_->or_empty(parts_->read([&](const auto& library) { return library.record(kind, id); }));
}

Result<store::Sweep> Desk::sweep() const {
    // With a connection of its own: over thousands of photos this takes long enough for a page that waits its
    // turn to be seen waiting.
    const auto& places = parts_->writer.places();
    const auto named = store::Reader::open(places).and_then(
        [](const auto& reader) { return store::named_files(reader->queries()); });
    if (!named) {
        parts_->trouble(named.error());
        return tl::unexpected(named.error());
    }
    return store::sweep(places, *named);
}

void Desk::look(const std::function<void(const store::Queries&)>& ask) const {
    parts_->read(ask);
}

std::string Desk::name_of_key(const std::string& public_key) const {
    return parts_->or_empty(
        parts_->read([&](const auto& library) { return library.name_of_key(public_key); }));
}

std::vector<store::Queries::NamedKey> Desk::named_keys() const {
    return parts_->or_empty(parts_->read([](const auto& library) { return library.named_keys(); }));
}

void Desk::name_key(std::string public_key, std::string name, std::function<void(Status)> done,
                    std::optional<Timestamp> since) {
    parts_->writer.name_key(std::move(public_key), std::move(name), since, std::move(done));
}

void Desk::listen(std::function<void(const Change&)> listener) {
    parts_->writer.listen(std::move(listener));
}

void Desk::on_trouble(std::function<void(const Error&)> listener) {
    {
        const std::lock_guard lock(parts_->trouble_mutex);
        parts_->trouble_listeners.push_back(listener);
    }
    parts_->writer.on_trouble(std::move(listener));
}

void Desk::flush() {
    parts_->writer.flush();
}

const Clock& Desk::clock() const {
    return parts_->clock;
}

const std::filesystem::path& Desk::folder() const {
    return parts_->folder;
}

const store::AttachmentFiles& Desk::files() const {
    return parts_->writer.files();
}

store::Recordings Desk::recordings() const {
    return store::Recordings(parts_->writer.places().recordings());
}

}  // namespace lapwing::workflow
