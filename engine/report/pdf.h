// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "base/run_context.h"

namespace seamward {

/// The browser that prints pages: the first of `chromium` and `chromium-browser` on `path`, folders with colons between them.
[[nodiscard]] std::optional<std::filesystem::path> find_printer(std::string_view path);

/// A page as PDF: its own paper size, text as text, bookmarks from its headings, tags with the texts that stand for pictures.
/// Printed by a headless Chromium in a folder of its own, which is gone on return; nothing is loaded from anywhere. Throws
/// BadInput where there is none, or when it fails or takes longer than a minute, and Cancelled.
[[nodiscard]] std::string printed_page(std::string_view html, const RunContext& context);

}  // namespace seamward
