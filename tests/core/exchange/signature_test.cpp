// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/signature.h"

#include <gmock/gmock.h>
#include <sys/stat.h>

#include "core/exchange/session_file.h"
#include "tests/core/exchange/packed.h"

namespace lapwing::exchange {
namespace {

using namespace lapwing::test;

TEST(SigningKey, IsThatOfRfc8032) {
    // RFC 8032, section 7.1, test 1: secret key, public key, and the signature of the empty message.
    const Folder folder;
    put(folder / "key", "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60\n");
    const auto key = SigningKey::open_or_make(folder / "key");
    ASSERT_TRUE(key) << key.error().english;
    EXPECT_EQ(key->public_key(), "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a");
    EXPECT_THAT(
        key->sign(""),
        testing::HasSubstr("e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33"
                           "bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b"));
    // SHA-256 of that public key, by sha256sum (GNU coreutils).
    EXPECT_EQ(fingerprint(key->public_key()), "21fe 31df a154 a261 626b");
}

TEST(SigningKey, IsMadeOnceForItsOwnerOnly) {
    const Folder folder;
    const auto file = folder / "signing.key";
    const auto made = SigningKey::open_or_make(file);
    ASSERT_TRUE(made);
    struct stat status {};
    ASSERT_EQ(::stat(file.c_str(), &status), 0);
    EXPECT_EQ(status.st_mode & 0777, 0600U);
    EXPECT_EQ(SigningKey::open_or_make(file)->public_key(), made->public_key());
    EXPECT_NE(SigningKey::open_or_make(folder / "other.key")->public_key(), made->public_key());
    EXPECT_EQ(folder.files(), 2u);
}

TEST(SigningKey, ADamagedOneIsNeverReplaced) {
    const Folder folder;
    for (const auto* bytes :
         {"", "no key", "9d61b19d", "9D61B19DEFFD5A60BA844AF492EC2CC44449C5697B326919703BAC031CAE7F60"}) {
        put(folder / "key", bytes);
        EXPECT_EQ(SigningKey::open_or_make(folder / "key").error().code, "signature.key_damaged");
        EXPECT_EQ(bytes_of(folder / "key"), bytes);
    }
    EXPECT_EQ(SigningKey::open_or_make(folder / "nowhere" / "key").error().code, "file.not_found");
}

TEST(Verify, ReadsOnlyWhatIsASignature) {
    const Folder folder;
    const auto key = SigningKey::open_or_make(folder / "key").value();
    const auto good = key.sign("list");
    EXPECT_EQ(verify(std::nullopt, "list"), Signature{});
    EXPECT_EQ(verify(good, "list"), (Signature{SignatureState::unaltered, key.public_key()}));
    EXPECT_EQ(verify(good, "lisp").state, SignatureState::altered);
    EXPECT_EQ(verify(SigningKey::open_or_make(folder / "b")->sign("other"), "list").state,
              SignatureState::altered);
    const auto spoilt = [&](const std::string& from, const std::string& to) {
        auto text = good;
        text.replace(text.find(from), from.size(), to);
        return verify(text, "list").state;
    };
    EXPECT_EQ(spoilt("Ed25519", "ed448"), SignatureState::unreadable);
    EXPECT_EQ(spoilt(key.public_key(), key.public_key().substr(2)), SignatureState::unreadable);
    EXPECT_EQ(spoilt(key.public_key(), std::string(64, '0')), SignatureState::altered);
    for (const std::string bad : {std::string{}, std::string("{}"), std::string("[1"), std::string("null"),
                                  std::string(20'000, ' ') + good})
        EXPECT_EQ(verify(bad, "list").state, SignatureState::unreadable) << bad.substr(0, 20);
}

class Signed : public testing::Test {
protected:
    void SetUp() override {
        auto outgoing = sample.outgoing();
        outgoing.key = &key;
        ASSERT_TRUE(write_session_file(file, outgoing));
        for (const auto& [path, bytes] : unpacked(file))
            bag[path.substr(2)] = bytes;
    }
    /// The bag packed again after a change.
    SignatureState state() {
        pack(folder / "again.lapwing", bag);
        return check_session_file(folder / "again.lapwing", folder.path()).signature.state;
    }

    Sample sample;
    Folder folder;
    SigningKey key = SigningKey::open_or_make(folder / "key").value();
    fs::path file = folder / "a.lapwing";
    std::map<std::string, std::string> bag;
};

TEST_F(Signed, IsUnalteredAsItWasHandedOverAndPackedAgain) {
    const auto incoming = read_session_file(file, folder.path());
    ASSERT_TRUE(incoming);
    EXPECT_EQ(incoming->signature, (Signature{SignatureState::unaltered, key.public_key()}));
    EXPECT_EQ(state(), SignatureState::unaltered);
}
TEST_F(Signed, WithoutItsSignatureItIsNotSigned) {
    bag.erase("signature.json");
    EXPECT_EQ(state(), SignatureState::not_signed);
}
TEST_F(Signed, IsAlteredWhenAPayloadFileIs) {
    bag["data/readings.csv"] += "x";
    EXPECT_EQ(state(), SignatureState::altered);
}
TEST_F(Signed, IsAlteredWhenAllChecksumsWereMadeToFitAgain) {
    bag["data/readings.csv"] += "x";
    list_payload(bag);
    bag.erase("bag-info.txt");
    EXPECT_EQ(state(), SignatureState::altered);
    pack(file, bag);
    EXPECT_TRUE(check_file(file, folder.path()).empty());  // in order otherwise: only the signature tells
}
TEST_F(Signed, IsAlteredWhenSomethingWasAddedOrTakenOut) {
    const auto whole = bag;
    bag["data/more.txt"] = "x";
    EXPECT_EQ(state(), SignatureState::altered);
    bag = whole;
    bag["beside.txt"] = "no list speaks of this one";
    EXPECT_EQ(state(), SignatureState::altered);
    bag = whole;
    bag.erase("data/readings.csv");
    EXPECT_EQ(state(), SignatureState::altered);
    bag = whole;
    bag.erase("tagmanifest-sha256.txt");
    EXPECT_EQ(state(), SignatureState::altered);
}
TEST_F(Signed, AnotherFilesSignatureDoesNotFit) {
    const Sample other(40);
    auto outgoing = other.outgoing();
    outgoing.key = &key;
    ASSERT_TRUE(write_session_file(folder / "b.lapwing", outgoing));
    bag["signature.json"] = unpacked(folder / "b.lapwing").at("b/signature.json");
    EXPECT_EQ(state(), SignatureState::altered);
}

}  // namespace
}  // namespace lapwing::exchange
