// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/portions.h"

#include <algorithm>
#include <set>
#include <string>
#include <utility>

#include "core/record/record.h"
#include "core/record/walk.h"

namespace lapwing::exchange {
namespace {

/// What the archive and the lists say about an entry beside its own bytes.
constexpr std::uint64_t bytes_an_entry = 1200;
/// session.json, the table, the report, the lists and the signature.
constexpr std::uint64_t standing_entries = 8;

/// The texts: session.json, and the table, which says less.
Size size_of_texts(const Dossier& dossier) {
    const auto json = to_json(dossier).size();
    return {2 * json + standing_entries * bytes_an_entry, standing_entries, json, count_records(dossier)};
}

/// Counts attachments; the same photo a second time is no further file.
class Counting {
public:
    Size add(const Attachment& attachment) {
        // Within session.json each field has a line of its own, with room before it.
        const auto json = 2 * to_json(Record(attachment)).size();
        Size size{2 * json, 0, json, 1};
        if (seen_.insert(attachment.sha256).second)
            size += {static_cast<std::uint64_t>(attachment.bytes) + bytes_an_entry, 1, 0, 0};
        return size;
    }

private:
    std::set<std::string> seen_;
};

class Dealing {
public:
    Dealing(Engine engine, std::vector<Tester> testers, const Limits& limits)
        : frame_{std::move(engine), std::move(testers), {}, {}}, limits_(limits) {
        begin();
    }

    void add(Visit visit) {
        const auto attachments = std::exchange(visit.attachments, {});
        const Session session = visit.session;
        take(std::move(visit));
        for (const auto& attachment : attachments) {
            auto more = counting_.add(attachment);
            if (!has_room(more)) {
                flush();
                Visit same;
                same.session = session;
                take(std::move(same));
                more = counting_.add(attachment);
            }
            size_ += more;
            current_.visits.back().attachments.push_back(attachment);
        }
    }

    std::vector<Dossier> done() {
        flush();
        return std::move(done_);
    }

private:
    void begin() {
        current_ = frame_;
        counting_ = {};
        size_ = size_of_texts(current_);
    }
    void flush() {
        if (!current_.visits.empty()) done_.push_back(std::move(current_));
        begin();
    }
    [[nodiscard]] bool has_room(const Size& more) const {
        auto size = size_;
        return fits(size += more, limits_);
    }
    void take(Visit visit) {
        Dossier alone = frame_;
        alone.visits.push_back(std::move(visit));
        const auto more = size_of_texts(alone);
        if (!current_.visits.empty() && !has_room(more)) flush();
        size_ += more;
        current_.visits.push_back(std::move(alone.visits.front()));
    }

    Dossier frame_;
    Limits limits_;
    Dossier current_;
    Size size_;
    Counting counting_;
    std::vector<Dossier> done_;
};

}  // namespace

Size& Size::operator+=(const Size& more) {
    bytes += more.bytes;
    entries += more.entries;
    json += more.json;
    records += more.records;
    return *this;
}

Size size_of(const Dossier& dossier) {
    auto size = size_of_texts(dossier);
    Counting counting;
    for (const auto& visit : dossier.visits)
        for (const auto& attachment : visit.attachments) {
            const auto more = counting.add(attachment);
            // The records are part of the texts already.
            size.bytes += more.bytes - 2 * more.json;
            size.entries += more.entries;
        }
    return size;
}

std::uint64_t most_bytes(const Limits& limits) {
    return std::min(limits.packed_bytes, limits.unpacked_bytes);
}

bool fits(const Size& size, const Limits& limits) {
    return size.bytes <= most_bytes(limits) && size.entries <= limits.entries &&
           size.json <= longest_written_json && size.records <= most_records;
}

std::vector<Dossier> portions(Dossier whole, const Limits& limits) {
    std::vector<Dossier> out;
    if (fits(size_of(whole), limits)) {
        out.push_back(std::move(whole));
        return out;
    }
    Dealing dealing(std::move(whole.engine), std::move(whole.testers), limits);
    for (auto& visit : whole.visits)
        dealing.add(std::move(visit));
    out = dealing.done();
    return out;
}

}  // namespace lapwing::exchange
