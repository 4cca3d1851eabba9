// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <functional>
#include <string>
#include <vector>

#include "tests/docs/schema_judge.h"

namespace seamward::test {

struct Key {
    std::string name;
    std::string good;              ///< a value that stands there while other keys are tried; empty: none
    bool program_decides = false;  ///< good values are more than a schema can say: an id that is known, a size within limits
};

/// A mapping of a file: the whole file with `@` in its place, and its keys.
struct Mapping {
    std::string file;
    std::vector<Key> keys;
};

/// An item of a list: the whole file with `@` in its place.
struct Item {
    std::string file;
    bool program_decides = false;
};

/// Empty, and of every type; then texts and quantities of every sort.
inline const std::vector<std::string>& values_of_every_type() {
    static const std::vector<std::string> all{
        "~",          "''",        "'  '",      "word",       "5",          "-5",           "0",
        "1.5",        "true",      "false",     "'true'",     "'1'",        "'5'",          "[]",
        "[~]",        "[5]",       "[a, b]",    "{}",         "{zzz: 1}",   "{id: ~}",      "1 mm",
        "-1 mm",      "0 mm",      "1/16 in",   "12 ft 6 in", "1 cm2",      "5 %",          "$5",
        "'$1,250'",   "\"a\\nb\"", "\"a\\tb\"", "\" a \"",    "drain",      "cavity",       "measured",
        "bat",        "mesh",      "bead",      "attic",      "1000000001", "'1000000001'", "2026-06-15",
        "2026-13-15", "06-15",     "1984",      "'1984'",     "AZ",         "tile"};
    return all;
}

/// A schema and the program, which must say the same of every file.
struct Judges {
    std::string (*schema)(const std::string& yaml);
    bool (*program)(const std::string& yaml);

    void expect_agreement(const std::string& file, bool program_decides) const {
        const std::string said = schema(file);
        const bool accepted = program(file);
        if (program_decides && !accepted) return;
        EXPECT_EQ(said.empty(), accepted) << file << "\nschema: " << (said.empty() ? "accepts" : said);
    }

    void expect_good(const std::string& file) const {
        EXPECT_TRUE(program(file)) << file;
        EXPECT_EQ(schema(file), "") << file;
    }

    /// Every key left out, empty, and with each of `values`.
    void try_keys(const Mapping& mapping, const std::vector<std::string>& values) const {
        for (const Key& key : mapping.keys) {
            expect_agreement(text_of(mapping, key.name, ""), key.program_decides);
            for (const std::string& value : values) expect_agreement(text_of(mapping, key.name, value), key.program_decides);
        }
        for (const std::string& value : values) expect_agreement(put(mapping.file, value), false);
    }

    /// A key that there is none of.
    void try_wrong_key(const Mapping& mapping) const {
        std::string text = mapping_text(mapping, "", "");
        const std::string file = put(mapping.file, text.insert(1, text.size() > 2 ? "zzz: 1, " : "zzz: 1"));
        EXPECT_FALSE(program(file)) << file;
        EXPECT_NE(schema(file), "") << file;
    }

    /// The whole file with one key of the mapping changed: left out when `value` is empty.
    static std::string text_of(const Mapping& mapping, const std::string& changed, const std::string& value) {
        return put(mapping.file, mapping_text(mapping, changed, value));
    }

private:
    static std::string mapping_text(const Mapping& mapping, const std::string& changed, const std::string& value) {
        std::string text;
        for (const Key& key : mapping.keys) {
            const std::string& stands = key.name == changed ? value : key.good;
            if (!stands.empty()) text += (text.empty() ? "" : ", ") + key.name + ": " + stands;
        }
        return '{' + text + '}';
    }
};

}  // namespace seamward::test
