// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/edit_text.h"

#include <algorithm>

#include "job_file/text_lines.h"

namespace seamward {

namespace {

using Kind = EditTree::Kind;

/// Where a value stands in what holds it.
struct Seat {
    std::size_t after = 0;     ///< the byte after its colon or dash
    std::size_t column = 0;    ///< of its key, from 0; what it holds line by line is indented deeper
    bool in_brackets = false;  ///< some list or mapping around it stands in brackets
};

struct Pair {
    Node key, value;
};

bool is_block_of_maps(const EditTree& tree) {
    return tree.kind == Kind::list && !tree.children.empty() &&
           std::ranges::all_of(tree.children, [](const EditTree& item) { return item.kind == Kind::map; });
}

class Rewriter {
public:
    Rewriter(std::string_view text, const Document& document)
        : text_(text), lines_(text), document_(document), syntax_(syntax_of(document.file())) {}

    std::string run(const EditTree& wanted) {
        change(document_.root(), wanted, {});
        return changes_.applied(text_);
    }

private:
    [[noreturn]] void fail(Node node, const std::string& what, const std::string& mend) const {
        throw BadInput({{document_.file(), node.place(), what, mend}});
    }

    void change(Node node, const EditTree& wanted, const Seat& seat) {
        if (same(node, wanted)) return;
        if (node.is_alias())
            fail(node, "this entry stands for another one through an alias (*)",
                 "write it out in the file before it is changed here");
        const Span span = node.span();
        if (node.is_mapping() && wanted.kind == Kind::map) {
            change_map(node, wanted, seat.in_brackets || span.in_brackets);
        } else if (node.is_sequence() && wanted.kind == Kind::list) {
            change_list(node, wanted, seat);
        } else if (span.anchored) {
            fail(node, "this value has an anchor (&) or a tag (!)", "remove it in the file before the value is changed here");
        } else if (node.is_null()) {
            fill(span, wanted, seat);
        } else {
            const std::string_view like = text_.substr(span.begin, span.end - span.begin);
            changes_.replace(span.begin, span.end,
                             node.is_scalar() ? written_like(wanted, like, syntax_) : in_one_line(wanted, syntax_));
        }
    }

    /// A value where none was.
    void fill(const Span& span, const EditTree& wanted, const Seat& seat) {
        if (span.end > span.begin)
            changes_.replace(span.begin, span.end, in_one_line(wanted, syntax_));
        else if (is_block_of_maps(wanted) && !seat.in_brackets)
            changes_.insert(lines_.end_of(seat.after), block(wanted, seat.column + 2));
        else
            changes_.insert(seat.after, ' ' + in_one_line(wanted, syntax_));
    }

    /// A list of maps, an item a line.
    [[nodiscard]] std::string block(const EditTree& list, std::size_t column) const {
        std::string made;
        for (const EditTree& item : list.children)
            made += lines_.newline() + std::string(column, ' ') + "- " + in_one_line(item, syntax_);
        return made;
    }

    void change_map(Node node, const EditTree& wanted, bool in_brackets) {
        std::vector<Pair> pairs;
        node.for_each_pair([&](Node key, Node value) { pairs.push_back({key, value}); });
        std::vector<bool> kept(pairs.size(), false);
        std::vector<std::size_t> added;
        std::size_t last_gone = 0;
        for (std::size_t i = 0; i < pairs.size(); ++i) {
            const EditTree* value = wanted.find(pairs[i].key.text());
            kept[i] = value != nullptr;
            if (!kept[i]) last_gone = i;
            if (kept[i]) change(pairs[i].value, *value, seat_of(pairs[i], in_brackets));
        }
        const auto is_new = [&](const std::string& key) {
            return std::ranges::none_of(pairs, [&](const Pair& pair) { return pair.key.text() == key; });
        };
        for (std::size_t i = 0; i < wanted.keys.size(); ++i) {
            if (is_new(wanted.keys[i])) added.push_back(i);
        }
        const auto gone = std::ranges::count(kept, false);
        if (gone == 1 && added.size() == 1) {  // such as another shape: in the place of the one that goes
            const Pair& old = pairs[last_gone];
            changes_.replace(old.key.span().begin, old.value.span().end, pair_text(wanted, added.front()));
            return;
        }
        if (gone > 0) erase_pairs(node, pairs, kept);
        if (!added.empty()) add_pairs(node, pairs, wanted, added);
    }

    [[nodiscard]] Seat seat_of(const Pair& pair, bool in_brackets) const {
        const std::size_t colon = text_.find(':', pair.key.span().end);
        return {colon == std::string_view::npos ? pair.key.span().end : colon + 1, pair.key.place().column - 1, in_brackets};
    }

    [[nodiscard]] std::string pair_text(const EditTree& map, std::size_t i) const {
        return written_key(map.keys[i], syntax_) + ": " + in_one_line(map.children[i], syntax_);
    }

    void add_pairs(Node node, const std::vector<Pair>& pairs, const EditTree& wanted, const std::vector<std::size_t>& added) {
        std::vector<std::string> texts;
        for (const std::size_t i : added) texts.push_back(pair_text(wanted, i));
        if (node.span().in_brackets || pairs.empty()) {
            const Span first = pairs.empty() ? Span{} : pairs.back().key.span();
            add_in_brackets(node.span(), pairs.size(), first.begin, pairs.empty() ? 0 : pairs.back().value.span().end, texts);
            return;
        }
        const std::size_t column = pairs.front().key.place().column - 1;
        std::string made;
        for (std::size_t i = 0; i < added.size(); ++i) {
            const EditTree& value = wanted.children[added[i]];
            made += lines_.newline() + std::string(column, ' ');
            made +=
                is_block_of_maps(value) ? written_key(wanted.keys[added[i]], syntax_) + ':' + block(value, column + 2) : texts[i];
        }
        // A block of text may own the blank lines after it, so that nothing is put behind one where that can be helped.
        const auto is_text_block = [&](const Pair& pair) {
            const Span span = pair.value.span();
            return span.end > span.begin && (text_[span.begin] == '|' || text_[span.begin] == '>');
        };
        const auto at = std::find_if_not(pairs.rbegin(), pairs.rend(), is_text_block);
        const Pair& before = at == pairs.rend() ? pairs.back() : *at;
        changes_.insert(lines_.end_of(std::max(before.value.span().end, seat_of(before, false).after)), made);
    }

    /// `last_begin` and `last_end`: of what stands last in the brackets, when there is anything.
    void add_in_brackets(const Span& brackets, std::size_t count, std::size_t last_begin, std::size_t last_end,
                         const std::vector<std::string>& texts) {
        std::string made;
        if (count == 0) {
            for (const std::string& text : texts) made += (made.empty() ? "" : ", ") + text;
            const std::size_t open = text_.find_first_of("[{", brackets.begin);
            changes_.insert(open + 1, made);
            return;
        }
        const std::size_t next = lines_.skip_blanks_and_comments(last_end);
        const bool comma_there = next < text_.size() && text_[next] == ',';
        const std::size_t from = comma_there ? next + 1 : last_end;
        const bool line_by_line = lines_.is_first_on_line(last_begin);
        const std::string glue = line_by_line ? lines_.newline() + std::string(lines_.indent_before(last_begin)) : " ";
        for (const std::string& text : texts) made += (made.empty() ? "" : ",") + glue + text;
        if (!comma_there) changes_.insert(last_end, ",");
        changes_.insert(line_by_line && lines_.rest_is_blank(from) ? lines_.end_of(from) : from, made);
    }

    void erase_pairs(Node node, const std::vector<Pair>& pairs, const std::vector<bool>& kept) {
        std::vector<Span> spans;
        for (const Pair& pair : pairs)
            spans.push_back({pair.key.span().begin, std::max(pair.value.span().end, pair.key.span().end)});
        if (std::ranges::none_of(kept, [](bool keep) { return keep; }))
            fail(node, "nothing would be left of this entry", "change it in the file");
        if (node.span().in_brackets) {
            erase_in_brackets(spans, kept);
            return;
        }
        for (std::size_t i = 0; i < pairs.size(); ++i) {
            if (kept[i]) continue;
            if (lines_.is_first_on_line(spans[i].begin))
                changes_.erase(lines_.whole_lines(spans[i].begin, spans[i].end));
            else  // after a dash: the next pair takes its place
                changes_.erase({spans[i].begin, i + 1 < spans.size() ? spans[i + 1].begin : spans[i].end});
        }
    }

    void erase_in_brackets(const std::vector<Span>& spans, const std::vector<bool>& kept) {
        const auto last_kept =
            static_cast<std::size_t>(std::ranges::find(kept.rbegin(), kept.rend(), true).base() - kept.begin());
        if (last_kept == 0) {  // none
            changes_.erase({spans.front().begin, spans.back().end});
            return;
        }
        for (std::size_t i = 0; i + 1 < last_kept; ++i) {
            if (kept[i]) continue;
            const std::size_t comma = lines_.skip_blanks_and_comments(spans[i].end);
            const bool own_lines = lines_.is_first_on_line(spans[i].begin) && lines_.rest_is_blank(comma + 1);
            if (own_lines)
                changes_.erase(lines_.whole_lines(spans[i].begin, comma + 1));
            else
                changes_.erase({spans[i].begin, lines_.skip_blanks(comma + 1)});
        }
        if (last_kept == spans.size()) return;
        // From behind the last that stays: its comma goes too, comments between stay.
        const std::size_t comma = lines_.skip_blanks_and_comments(spans[last_kept - 1].end);
        const std::size_t end = spans.back().end;
        if (lines_.is_first_on_line(spans[last_kept].begin) && lines_.rest_is_blank(end)) {
            changes_.erase({comma, comma + 1});
            changes_.erase(lines_.whole_lines(spans[last_kept].begin, end));
        } else if (lines_.is_blank(spans[last_kept - 1].end, comma)) {
            changes_.erase({spans[last_kept - 1].end, end});
        } else {
            changes_.erase({comma, comma + 1});
            changes_.erase({spans[last_kept].begin, end});
        }
    }

    void change_list(Node node, const EditTree& wanted, const Seat& seat) {
        std::vector<Node> items;
        node.for_each_item([&](Node item) { items.push_back(item); });
        const std::vector<EditTree>& goal = wanted.children;
        std::size_t head = 0, tail = 0;
        while (head < std::min(items.size(), goal.size()) && same(items[head], goal[head])) ++head;
        while (head + tail < std::min(items.size(), goal.size()) &&
               same(items[items.size() - 1 - tail], goal[goal.size() - 1 - tail]))
            ++tail;
        const std::size_t old_end = items.size() - tail, new_end = goal.size() - tail;
        const std::size_t both = std::min(old_end, new_end);
        for (std::size_t i = head; i < both; ++i)
            change(items[i], goal[i],
                   {dash_of(items[i]) + 1, items[i].place().column - 1, seat.in_brackets || node.span().in_brackets});
        if (new_end > both)
            add_items(node, items,
                      {goal.begin() + static_cast<std::ptrdiff_t>(both), goal.begin() + static_cast<std::ptrdiff_t>(new_end)},
                      both, seat);
        if (old_end > both) erase_items(node, items, both, old_end, goal.empty(), seat);
    }

    /// The dash of an item of a block, or where it would be.
    [[nodiscard]] std::size_t dash_of(Node item) const {
        const std::size_t at = text_.find_last_not_of(" \t\r\n", item.span().begin == 0 ? 0 : item.span().begin - 1);
        return at == std::string_view::npos ? 0 : at;
    }

    void add_items(Node node, const std::vector<Node>& items, const std::vector<EditTree>& added, std::size_t position,
                   const Seat& seat) {
        const Span span = node.span();
        if (span.in_brackets || items.empty()) {
            add_to_brackets(node, items, added, position, seat);
            return;
        }
        if (position == 0) fail(node, "nothing can be put before the first entry", "change it in the file");
        const Node before = items[position - 1];
        const std::size_t dash = dash_of(before);
        const std::string indent(lines_.indent_before(dash));
        const std::size_t width = std::max<std::size_t>(before.place().column - 1, indent.size() + 2);
        std::string made;
        for (const EditTree& item : added) {
            made += lines_.newline() + indent + '-';
            const bool in_lines =
                before.is_mapping() && !before.is_alias() && !before.span().in_brackets && item.kind == Kind::map;
            if (!in_lines) {
                made += ' ' + in_one_line(item, syntax_);
                continue;
            }
            for (std::size_t i = 0; i < item.keys.size(); ++i) {
                made += i == 0 ? std::string(width - indent.size() - 1, ' ') : lines_.newline() + std::string(width, ' ');
                made += pair_text(item, i);
            }
        }
        changes_.insert(lines_.end_of(std::max(before.span().end, dash + 1)), made);
    }

    void add_to_brackets(Node node, const std::vector<Node>& items, const std::vector<EditTree>& added, std::size_t position,
                         const Seat& seat) {
        const Span span = node.span();
        const EditTree all = EditTree::list(added);
        const bool blank = items.empty() && !span.anchored && lines_.is_blank(span.begin + 1, span.end - 1);
        if (blank && !seat.in_brackets && is_block_of_maps(all) && syntax_ == Syntax::yaml) {
            changes_.erase({seat.after, span.end});
            changes_.insert(lines_.end_of(span.end), block(all, seat.column + 2));
            return;
        }
        std::vector<std::string> texts;
        for (const EditTree& item : added) texts.push_back(in_one_line(item, syntax_));
        const Span last = position == 0 ? Span{} : items[position - 1].span();
        if (position == 0 && !items.empty()) fail(node, "nothing can be put before the first entry", "change it in the file");
        add_in_brackets(span, items.size(), last.begin, last.end, texts);
    }

    void erase_items(Node node, const std::vector<Node>& items, std::size_t from, std::size_t to, bool all, const Seat& seat) {
        std::vector<Span> spans;
        std::vector<bool> kept;
        for (std::size_t i = 0; i < items.size(); ++i) {
            spans.push_back(items[i].span());
            kept.push_back(i < from || i >= to);
        }
        if (node.span().in_brackets) {
            erase_in_brackets(spans, kept);
            return;
        }
        if (all) changes_.insert(seat.after, " []");
        for (std::size_t i = from; i < to; ++i) {
            const std::size_t dash = dash_of(items[i]);
            if (text_[dash] != '-' || !lines_.is_first_on_line(dash))
                fail(items[i], "this entry does not stand on lines of its own", "remove it in the file");
            changes_.erase(lines_.whole_lines(dash, std::max(spans[i].end, dash + 1)));
        }
    }

    std::string_view text_;
    TextLines lines_;
    const Document& document_;
    Syntax syntax_;
    TextChanges changes_;
};

}  // namespace

Syntax syntax_of(const std::filesystem::path& path) { return path.extension() == ".json" ? Syntax::json : Syntax::yaml; }

Document with_spans(std::string_view text, const std::filesystem::path& path) {
    const std::string shown_as = path.string();
    return syntax_of(path) == Syntax::json ? parse_json(text, shown_as, Spans::kept) : parse_yaml(text, shown_as, Spans::kept);
}

std::string rewritten(std::string_view text, const Document& document, const EditTree& wanted) {
    std::string made = Rewriter(text, document).run(wanted);
    const BadInput shared({{document.file(),
                            {},
                            "this change cannot be made here without changing something else in the file",
                            "open the file in a text editor; anchors (&) and aliases (*) are the usual reason"}});
    const bool right = [&] {
        try {
            return same(with_spans(made, document.file()).root(), wanted);
        } catch (const BadInput&) {
            return false;
        }
    }();
    if (!right) throw shared;
    return made;
}

}  // namespace seamward
