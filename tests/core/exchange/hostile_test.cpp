// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gmock/gmock.h>
#include <sys/stat.h>

#include "core/exchange/session_file.h"
#include "tests/core/exchange/packed.h"

namespace lapwing::exchange {
namespace {

using namespace lapwing::test;

class Hostile : public testing::Test {
protected:
    /// The file must be refused with this code, and nothing may stay behind.
    void expect_refused(std::string_view code, const Limits& limits = {}) {
        const auto before = folder.files();
        const auto incoming = read_session_file(file, folder.path(), limits);
        ASSERT_FALSE(incoming);
        EXPECT_EQ(incoming.error().code, code) << incoming.error().english;
        EXPECT_GT(incoming.error().english.size(), 30u);
        EXPECT_EQ(folder.files(), before);
        EXPECT_FALSE(check_file(file, folder.path(), limits).empty());
        EXPECT_EQ(folder.files(), before);
    }
    void pack_with(const std::string& name, const std::string& bytes, Zip::Options options = {}) {
        Zip zip(file);
        for (const auto& [path, content] : bag)
            zip.add("bag/" + path, content);
        zip.add(name, bytes, options);
        zip.close();
    }
    void patch_all(const std::string& from, const std::string& to) {
        auto bytes = bytes_of(file);
        for (auto at = bytes.find(from); at != std::string::npos; at = bytes.find(from, at + 1))
            bytes.replace(at, from.size(), to);
        put(file, bytes);
    }
    void repack() {
        list_payload(bag);
        pack(file, bag);
    }
    std::string photo_path() {
        for (const auto& [path, bytes] : bag)
            if (path.starts_with("data/photos/")) return path;
        return {};
    }

    Sample sample;
    Folder folder;
    fs::path file = folder / "a.lapwing";
    std::map<std::string, std::string> bag = sample_bag(sample);
};

TEST_F(Hostile, TheUnspoiledBagIsFine) {
    repack();
    EXPECT_TRUE(read_session_file(file, folder.path()));
}

TEST_F(Hostile, NoArchiveAtAll) {
    expect_refused("file.not_found");
    for (const std::string bytes : {"", "PK", "%PDF-1.4", "PK\x03\x04 nonsense"}) {
        put(file, bytes);
        expect_refused("archive.not_a_zip");
    }
    fs::remove(file);
    fs::create_directory(file);
    expect_refused("archive.not_a_zip");
}

TEST_F(Hostile, CutShortAnywhere) {
    repack();
    const auto whole = bytes_of(file);
    for (std::size_t length = 0; length < whole.size(); length += 97) {
        put(file, whole.substr(0, length));
        expect_refused("archive.not_a_zip");
    }
}

TEST_F(Hostile, EveryChangedByteIsNoticedOrHarmless) {
    repack();
    const auto whole = bytes_of(file);
    for (std::size_t at = 0; at < whole.size(); at += 13) {
        auto changed = whole;
        changed[at] = static_cast<char>(changed[at] ^ 0x41);
        put(file, changed);
        // A date or a comment may change; what is handed over may not.
        const auto incoming = read_session_file(file, folder.path());
        if (incoming) EXPECT_EQ(incoming->dossier, sample.dossier) << at;
    }
    EXPECT_EQ(folder.files(), 1u);
}

TEST_F(Hostile, PathsThatLeadElsewhere) {
    for (const auto* name :
         {"../evil", "bag/../../evil", "/etc/evil", "bag/data/../../evil", "bag\\data\\evil", "C:/evil",
          "bag//evil", "bag/./evil", "bag/data/a\nb", "bag/data/a\x7f", "bag/data/..", "/", "//"}) {
        pack_with(name, "x");
        SCOPED_TRACE(name);
        expect_refused("bag.path");
    }
    pack_with("bag/data/" + std::string(1200, 'a'), "x");
    expect_refused("bag.path");
    pack_with("bag/data/brokeXXn", "x");
    patch_all("brokeXXn", "broke\xc0\xafn");
    expect_refused("bag.path");
    EXPECT_FALSE(fs::exists(folder.path().parent_path() / "evil"));
}

TEST_F(Hostile, NamesTwiceOrInOtherLetters) {
    pack_with("bag/data/session.jsoX", "{}");
    patch_all("session.jsoX", "session.json");
    expect_refused("archive.name_twice");
    pack_with("bag/data/Session.JSON", "{}");
    expect_refused("archive.name_twice");
    pack_with("bag/DATA", "{}");
    expect_refused("archive.name_twice");
    pack_with("bag/data/session.json/deeper", "{}");
    expect_refused("archive.name_twice");
}

TEST_F(Hostile, LinksAndDevices) {
    pack_with("bag/data/photos/link.jpg", "/etc/passwd", {ZIP_CM_STORE, S_IFLNK | 0777, false});
    expect_refused("archive.link");
    pack_with("bag/data/photos/pipe.jpg", "", {ZIP_CM_STORE, S_IFIFO | 0777, false});
    expect_refused("archive.link");
}

TEST_F(Hostile, LockedOrPackedUnusually) {
    pack_with("bag/data/secret.bin", "x", {ZIP_CM_STORE, 0, true});
    expect_refused("archive.encrypted");
    pack_with("bag/data/odd.bin", std::string(5000, 'x'), {ZIP_CM_BZIP2, 0, false});
    expect_refused("archive.method");
}

TEST_F(Hostile, Bombs) {
    pack_with("bag/data/report.pdf", std::string(8 << 20, '\0'));
    expect_refused("archive.ratio");
    pack_with("bag/data/readings.csv", std::string(32 << 20, '\0'));
    expect_refused("archive.ratio");
    repack();
    expect_refused("archive.too_many", {.entries = 3});
    expect_refused("archive.too_large", {.packed_bytes = 1000});
    expect_refused("archive.unpacks_too_large", {.unpacked_bytes = 1000});
    expect_refused("archive.text_too_large", {.text_bytes = 20});
}

TEST_F(Hostile, EntriesThatShareTheirBytes) {
    Zip zip(file);
    for (const auto& [path, content] : bag)
        zip.add("bag/" + path, content);
    std::string noise;
    std::mt19937 random(1);
    for (int i = 0; i < 60'000; ++i)
        noise += static_cast<char>(random());
    zip.add("bag/data/aaaa", noise, {ZIP_CM_STORE, 0, false});
    zip.add("bag/data/bbbb", noise, {ZIP_CM_STORE, 0, false});
    zip.close();
    // The central entry of bbbb (its name follows 46 bytes of header) points to aaaa's bytes.
    auto bytes = bytes_of(file);
    const auto first = bytes.rfind("bag/data/aaaa") - 46;
    const auto second = bytes.rfind("bag/data/bbbb") - 46;
    bytes.replace(second + 42, 4, bytes.substr(first + 42, 4));
    put(file, bytes);
    const auto incoming = read_session_file(file, folder.path());
    ASSERT_FALSE(incoming);
    EXPECT_THAT(incoming.error().code, testing::AnyOf("archive.not_a_zip", "archive.overlap"));
}

TEST_F(Hostile, SizesThatLie) {
    pack_with("bag/data/zzzz", std::string(3000, 'x'), {ZIP_CM_STORE, 0, false});
    auto bytes = bytes_of(file);
    const auto central = bytes.rfind("bag/data/zzzz") - 46;
    bytes.replace(central + 24, 4, std::string("\x10\x00\x00\x00", 4));
    put(file, bytes);
    const auto incoming = read_session_file(file, folder.path());
    ASSERT_FALSE(incoming);
    EXPECT_THAT(incoming.error().code, testing::StartsWith("archive."));
}

TEST_F(Hostile, BesideOrWithoutABag) {
    pack_with("other/bagit.txt", "x");
    expect_refused("bag.beside");
    pack_with("readme.txt", "x");
    expect_refused("bag.beside");
    bag.erase("bagit.txt");
    pack(file, bag);
    expect_refused("bag.none");
}

TEST_F(Hostile, AttachmentsThatAreMissingOrNotWhatTheySay) {
    const auto path = photo_path();
    const auto right = bag[path];
    bag.erase(path);
    repack();
    expect_refused("session_file.attachment_missing");
    bag[path] = right + "more";
    repack();
    expect_refused("session_file.attachment_differs");
}

/// A dossier whose only attachment is this file.
class HostileMedia : public Hostile {
protected:
    void pack_one(AttachmentKind kind, const std::string& media_type, const std::string& bytes) {
        auto dossier = sample.dossier;
        for (auto& visit : dossier.visits)
            visit.attachments.clear();
        Attachment one;
        one.id.uuid = Drawn(3).uuid();
        one.session = dossier.visits.front().session.id;
        one.kind = kind;
        one.media_type = media_type;
        one.sha256 = sha256_hex(bytes);
        one.bytes = static_cast<long long>(bytes.size());
        dossier.visits.front().attachments = {one};
        std::erase_if(bag, [](const auto& item) { return item.first.starts_with("data/"); });
        bag["data/session.json"] = to_json(dossier);
        bag[attachment_path(one)] = bytes;
        repack();
    }
};

TEST_F(HostileMedia, PhotosAreJpegOfBoundedSize) {
    pack_one(AttachmentKind::photo, "image/jpeg", jpeg("ok", 9999, 6000));
    EXPECT_TRUE(read_session_file(file, folder.path()));
    pack_one(AttachmentKind::photo, "image/jpeg", jpeg("huge", 10'001, 6000));
    expect_refused("media.photo_too_large");
    const auto good = jpeg("cut");
    for (std::size_t length = 1; length < good.size() - 8; ++length) {
        pack_one(AttachmentKind::photo, "image/jpeg", good.substr(0, length));
        expect_refused("media.not_a_photo");
    }
    pack_one(AttachmentKind::photo, "image/jpeg", jpeg("flat", 100, 0));
    expect_refused("media.not_a_photo");
    pack_one(AttachmentKind::photo, "image/jpeg", "<script>");
    expect_refused("media.not_a_photo");
}

TEST_F(HostileMedia, VoiceNotesAreAudio) {
    pack_one(AttachmentKind::voice, "audio/webm", "\x1a\x45\xdf\xa3 and on");
    EXPECT_TRUE(read_session_file(file, folder.path()));
    for (const auto* media_type : {"audio/ogg", "audio/wav", "audio/webm"}) {
        pack_one(AttachmentKind::voice, media_type, "MZ, a program");
        expect_refused("media.not_a_voice_note");
    }
}

TEST_F(Hostile, SessionsThatAreNotRight) {
    bag["data/session.json"] = "{";
    repack();
    expect_refused("record.not_json");
    bag.erase("data/session.json");
    repack();
    expect_refused("session_file.no_session");
    auto dossier = sample.dossier;
    dossier.engine.cylinders.clear();
    bag["data/session.json"] = to_json(dossier);
    repack();
    expect_refused("record.impossible");
}

}  // namespace
}  // namespace lapwing::exchange
