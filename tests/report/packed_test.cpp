// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/packed.h"

#include <gtest/gtest.h>

#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

TEST(Base64, VectorsOfRfc4648) {
    const std::vector<std::pair<std::string, std::string>> vectors{{"", ""},
                                                                   {"f", "Zg=="},
                                                                   {"fo", "Zm8="},
                                                                   {"foo", "Zm9v"},
                                                                   {"foob", "Zm9vYg=="},
                                                                   {"fooba", "Zm9vYmE="},
                                                                   {"foobar", "Zm9vYmFy"}};
    for (const auto& [bytes, text] : vectors) EXPECT_EQ(base64(bytes), text);
    EXPECT_EQ(base64(std::string("\x00\xff\xfe", 3)), "AP/+");
}

TEST(Gzipped, IsReadByGzip) {
    std::string bytes;
    for (int i = 0; i < 100000; ++i) bytes += static_cast<char>(i * i % 251);
    for (const std::string& each : {std::string(), std::string("a"), bytes}) {
        const ScratchFolder folder;
        const std::string packed = gzipped(each);
        const Ran ran = run_shell("gzip -dc " + shell_word(folder.write("packed.gz", packed).string()));
        EXPECT_EQ(ran.exit_code, 0) << ran.err;
        EXPECT_EQ(ran.out, each);
        EXPECT_EQ(packed, gzipped(each));
    }
    EXPECT_LT(gzipped(bytes).size(), bytes.size() / 2);
}

}  // namespace
}  // namespace seamward::test
