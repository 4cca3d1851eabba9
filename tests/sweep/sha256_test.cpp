// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/sha256.h"

#include <gtest/gtest.h>

namespace seamward::test {
namespace {

/// The examples of FIPS 180-4's companion, "Examples with Intermediate Values", and the empty message.
TEST(Sha256, PublishedExamples) {
    EXPECT_EQ(sha256_hex(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    EXPECT_EQ(sha256_hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256_hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    EXPECT_EQ(sha256_hex(std::string(1'000'000, 'a')), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST(Sha256, PiecesOfAnySizeGiveTheSame) {
    const std::string text(1000, 'x');
    const std::string whole = sha256_hex(text);
    for (std::size_t size = 1; size < 130; ++size) {
        Sha256 digest;
        for (std::size_t at = 0; at < text.size(); at += size) digest.add(text.substr(at, size));
        EXPECT_EQ(digest.hex(), whole) << size;
    }
}

TEST(Sha256, FieldsDoNotRunIntoEachOther) {
    EXPECT_NE(Sha256().add_field("ab").add_field("c").hex(), Sha256().add_field("a").add_field("bc").hex());
}

}  // namespace
}  // namespace seamward::test
