// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/document.h"

#include "base/file_io.h"

namespace seamward {

Node Document::root() const { return {*this, 0}; }

Node::Node(const Document& document, std::uint32_t index) : document_(&document), written_(index), target_(index) {
    // An alias points at a finished node, never at another alias: the builder sees to it.
    if (document.records_[index].alias) target_ = document.records_[index].text_begin;
}

Place Node::place() const {
    if (document_ == nullptr) return {};
    const Document::Record& written = document_->records_[written_];
    return {written.line, written.column};
}

Span Node::span() const { return document_->spans_.at(written_); }

std::string_view Node::text() const {
    if (!is_scalar()) return {};
    return std::string_view(document_->text_).substr(record().text_begin, record().size);
}

Document read_document(const std::filesystem::path& path, const std::string& shown_as) {
    const std::string text = read_file(path, shown_as, Document::most_bytes);
    return path.extension() == ".json" ? parse_json(text, shown_as) : parse_yaml(text, shown_as);
}

}  // namespace seamward
