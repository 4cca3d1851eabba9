// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/name_guid.h"

#include <uuid/uuid.h>

#include <array>
#include <stdexcept>

namespace seamward {

std::string name_guid(const std::string& within, std::string_view name) {
    uuid_t space, made;
    if (uuid_parse(within.c_str(), space) != 0) throw std::invalid_argument("no GUID: " + within);
    uuid_generate_sha1(made, space, name.data(), name.size());
    std::array<char, UUID_STR_LEN> text{};
    uuid_unparse_lower(made, text.data());
    return text.data();
}

}  // namespace seamward
