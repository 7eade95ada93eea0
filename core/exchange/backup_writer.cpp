// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <zip.h>

#include <fstream>
#include <list>
#include <nlohmann/json.hpp>

#include "core/base/atomic_file.h"
#include "core/base/sha256.h"
#include "core/exchange/backup_file.h"
#include "core/exchange/bag.h"
#include "core/exchange/portions.h"
#include "core/record/record.h"

namespace lapwing::exchange {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view folder = "lapwing-backup/";

/// One session file to be written: a portion of an engine.
struct Planned {
    EngineId engine;
    std::string name;
    std::size_t portion = 0;
    std::size_t of = 1;

    [[nodiscard]] std::string path() const {
        return fmt::format("data/engines/{}{}{}", engine.text(),
                           portion == 0 ? "" : fmt::format("_{:03}", portion + 1), session_file_ending);
    }
};

std::string rest_text(const BackupOrder& order, const std::vector<Planned>& plan) {
    nlohmann::ordered_json out;
    out["format"] = "lapwing-backup";
    out["version"] = "1.2";
    out["made_at"] = to_rfc3339(order.at);
    out["engines"] = order.engines.size();
    out["contents"] = nlohmann::ordered_json::array();
    for (const auto& one : plan)
        out["contents"].push_back({{"file", one.path()}, {"engine", one.name}});
    out["testers"] = nlohmann::ordered_json::array();
    for (const auto& tester : order.rest.testers)
        out["testers"].push_back(nlohmann::ordered_json::parse(to_json(Record(tester))));
    out["known_keys"] = nlohmann::ordered_json::array();
    for (const auto& key : order.rest.keys) {
        auto& one = out["known_keys"].emplace_back();
        one["public_key"] = key.public_key;
        one["name"] = key.name;
        if (key.since) one["since"] = to_rfc3339(*key.since);
    }
    return out.dump(1) + '\n';
}

/// Everything that the sources of the archive share. libzip asks for them one after the other while it closes
/// the archive, so each is made when its turn comes and gone before the next.
struct Making {
    const BackupOrder& order;
    const Progress& progress;
    fs::path scratch;  ///< of the session file in hand
    std::vector<Planned> plan;
    std::vector<Dossier> dealt;  ///< portions of the engine in hand, all of one moment
    std::vector<ManifestLine> payload;
    std::vector<Gap> gaps;
    std::size_t done = 0;
    std::optional<Error> error;

    bool stop(Error why) {
        if (!error) error = std::move(why);
        return false;
    }
    bool go_on() {
        return progress(done, order.engines.size()) ||
               stop(fail("backup.stopped", "The backup was stopped. Nothing was written.").value());
    }
};

/// One entry of the archive.
class Part {
public:
    Part(Making& making, std::string path) : making_(making), path_(std::move(path)) {}
    virtual ~Part() = default;
    [[nodiscard]] const std::string& path() const { return path_; }

    static zip_int64_t answer(void* self, void* data, zip_uint64_t length, zip_source_cmd_t command) {
        auto& part = *static_cast<Part*>(self);
        switch (command) {
            case ZIP_SOURCE_SUPPORTS:
                return zip_source_make_command_bitmap(ZIP_SOURCE_OPEN, ZIP_SOURCE_READ, ZIP_SOURCE_CLOSE,
                                                      ZIP_SOURCE_STAT, ZIP_SOURCE_ERROR, ZIP_SOURCE_FREE, -1);
            case ZIP_SOURCE_OPEN:
                part.sum_ = Sha256();
                return part.making_.go_on() && part.open() ? 0 : -1;
            case ZIP_SOURCE_READ: {
                if (!part.making_.go_on()) return -1;
                const auto count = part.read(static_cast<char*>(data), length);
                if (count > 0) part.sum_.add({static_cast<char*>(data), static_cast<std::size_t>(count)});
                return count;
            }
            case ZIP_SOURCE_CLOSE:
                if (part.path_.starts_with("data/"))
                    part.making_.payload.push_back({part.sum_.hex(), part.path_});
                part.close();
                return 0;
            case ZIP_SOURCE_STAT:
                zip_stat_init(static_cast<zip_stat_t*>(data));
                return sizeof(zip_stat_t);
            case ZIP_SOURCE_ERROR: {
                zip_error_t error;
                zip_error_init(&error);
                if (part.making_.error) zip_error_set(&error, ZIP_ER_READ, 0);
                return zip_error_to_data(&error, data, length);
            }
            default:
                return 0;
        }
    }

protected:
    virtual bool open() = 0;
    virtual zip_int64_t read(char* into, std::uint64_t most) = 0;
    virtual void close() {}
    Making& making() { return making_; }

private:
    Making& making_;
    std::string path_;
    Sha256 sum_;
};

class TextPart final : public Part {
public:
    TextPart(Making& making, std::string path, std::function<std::string()> text)
        : Part(making, std::move(path)), make_(std::move(text)) {}

private:
    bool open() override {
        text_ = make_();
        at_ = 0;
        return true;
    }
    zip_int64_t read(char* into, std::uint64_t most) override {
        const auto count = text_.copy(into, static_cast<std::size_t>(most), at_);
        at_ += count;
        return static_cast<zip_int64_t>(count);
    }
    std::function<std::string()> make_;
    std::string text_;
    std::size_t at_ = 0;
};

class EnginePart final : public Part {
public:
    EnginePart(Making& making, Planned planned)
        : Part(making, planned.path()), planned_(std::move(planned)) {}

private:
    bool open() override {
        auto outgoing = making().order.engine(planned_.engine);
        if (!outgoing) return making().stop(outgoing.error());
        outgoing->limits = making().order.limits;
        auto& dealt = making().dealt;
        // Dealt once for all its portions: what changes in between can't fall through between two of them.
        if (planned_.portion == 0) dealt = portions(std::move(outgoing->dossier), outgoing->limits);
        if (dealt.size() != planned_.of)
            return making().stop(
                fail("backup.changed",
                     "{} was changed while it was being backed up. Nothing was written: start it again.",
                     planned_.name)
                    .value());
        outgoing->dossier = std::move(dealt[planned_.portion]);
        auto gaps = write_session_file(making().scratch, *outgoing);
        if (!gaps) return making().stop(gaps.error());
        making().gaps.insert(making().gaps.end(), gaps->begin(), gaps->end());
        in_.open(making().scratch, std::ios::binary);
        return in_.good() || making().stop(file_error(EIO, making().scratch).value());
    }
    zip_int64_t read(char* into, std::uint64_t most) override {
        in_.read(into, static_cast<std::streamsize>(most));
        if (!in_.bad()) return in_.gcount();
        making().stop(file_error(EIO, making().scratch).value());
        return -1;
    }
    void close() override {
        in_.close();
        in_.clear();
        std::error_code ignored;
        fs::remove(making().scratch, ignored);
        if (planned_.portion + 1 == planned_.of) ++making().done;
    }
    Planned planned_;
    std::ifstream in_;
};

bool add(zip_t* archive, Part& part, Timestamp at) {
    auto* source = zip_source_function(archive, &Part::answer, &part);
    if (source == nullptr) return false;
    const auto index =
        zip_file_add(archive, (std::string(folder) + part.path()).c_str(), source, ZIP_FL_ENC_UTF_8);
    if (index < 0) {
        zip_source_free(source);
        return false;
    }
    const auto entry = static_cast<zip_uint64_t>(index);
    return zip_set_file_compression(archive, entry, ZIP_CM_STORE, 0) == 0 &&
           zip_file_set_mtime(archive, entry, static_cast<time_t>(at.unix_ms / 1000), 0) == 0;
}

/// Which session files there will be. Every engine is looked at beforehand, because an archive that grew too
/// large is no use to anybody.
Status make_plan(Making& making) {
    const auto& order = making.order;
    std::uint64_t bytes = 0;
    for (const auto& one : order.engines) {
        if (!making.go_on()) return tl::unexpected(*making.error);
        auto outgoing = order.engine(one.id);
        if (!outgoing) return tl::unexpected(outgoing.error());
        const auto dealt = portions(std::move(outgoing->dossier), order.limits);
        for (std::size_t portion = 0; portion < dealt.size(); ++portion) {
            making.plan.push_back({one.id, one.name, portion, dealt.size()});
            bytes += size_of(dealt[portion]).bytes;
        }
    }
    const auto limits = backup_limits();
    if (bytes > most_bytes(limits) || making.plan.size() + 100 > limits.entries)
        return fail("backup.too_large",
                    "All engines together are {} GB, more than a backup may be ({} GB): it could not be read "
                    "again. Hand over the engines one by one as session files instead. Nothing was written.",
                    bytes >> 30, most_bytes(limits) >> 30);
    return {};
}

Status pack(const fs::path& file, Making& making) {
    if (auto planned = make_plan(making); !planned) return planned;
    const auto& order = making.order;
    std::list<std::unique_ptr<Part>> parts;
    const auto text = [&](std::string path, std::function<std::string()> make) {
        parts.push_back(std::make_unique<TextPart>(making, std::move(path), std::move(make)));
    };
    text("bagit.txt", [] { return std::string(bag_declaration); });
    text("bag-info.txt", [&] {
        return bag_info_text(
            {{"Bag-Software-Agent", order.software}, {"Bagging-Date", to_rfc3339(order.at).substr(0, 10)}});
    });
    text("data/backup.json", [&] { return rest_text(order, making.plan); });
    for (const auto& planned : making.plan)
        parts.push_back(std::make_unique<EnginePart>(making, planned));
    // Last, when every sum is known.
    text("manifest-sha256.txt", [&] { return manifest_text(making.payload); });

    int error = 0;
    zip_t* archive = zip_open(file.c_str(), ZIP_CREATE | ZIP_EXCL, &error);
    if (archive == nullptr) return file_error(ENOENT, file);
    bool fine = true;
    for (const auto& part : parts)
        fine = fine && add(archive, *part, order.at);
    if (fine && zip_close(archive) == 0) return {};
    const zip_error_t* why = zip_get_error(archive);
    const int system = zip_error_system_type(why) == ZIP_ET_SYS ? zip_error_code_system(why) : EIO;
    zip_discard(archive);
    if (making.error) return tl::unexpected(*making.error);
    return file_error(system, file);
}

}  // namespace

Result<std::vector<Gap>> write_backup(const fs::path& target, const BackupOrder& order,
                                      const Progress& progress) {
    const auto temporary = temporary_beside(target);
    Making making{order, progress, temporary_beside(target), {}, {}, {}, {}, 0, {}};
    const auto packed = pack(temporary, making);
    std::error_code ignored;
    fs::remove(making.scratch, ignored);
    if (packed) return put_in_place(temporary, target).map([&] { return std::move(making.gaps); });
    fs::remove(temporary, ignored);
    return tl::unexpected(packed.error());
}

}  // namespace lapwing::exchange
