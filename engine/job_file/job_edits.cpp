// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/job_edits.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <string_view>

#include "base/quantity.h"
#include "base/text.h"
#include "job_file/edit_text.h"

namespace seamward {

namespace {

using Kind = EditTree::Kind;

struct SizeWords {
    std::string_view shape, width, second;
};
constexpr std::array<SizeWords, 4> size_words{
    {{"slot", "width", "length"}, {"hole", "diameter", ""}, {"ring", "width", "around"}, {"mesh", "opening", "area"}}};
constexpr std::array<std::string_view, 4> how_words{"", "measured", "modeled", "assumed"};
constexpr std::array<std::string_view, 5> kind_words{"outdoors", "cavity", "attached", "living", "harborage"};

/// A coordinate in meters, to a tenth of a millimeter: a click is not more exact.
std::string coordinate_text(double meters) {
    const long long count = std::llround(meters * 1e4);
    std::string text = std::to_string(std::llabs(count));
    if (text.size() <= 4) text.insert(0, 5 - text.size(), '0');
    text.insert(text.size() - 4, 1, '.');
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return (count < 0 ? "-" : "") + text + " m";
}

EditTree point_tree(const Point& at) {
    return EditTree::list(
        {EditTree::word(coordinate_text(at.x)), EditTree::word(coordinate_text(at.y)), EditTree::word(coordinate_text(at.z))});
}

/// Small letters, digits and dashes from a name; `other` where it has none of these.
std::string id_from(std::string_view name, std::string_view other) {
    std::string id;
    for (char c : name) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
        const bool fits = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        if (fits)
            id += c;
        else if (c != '\'' && !id.empty() && id.back() != '-')
            id += '-';
    }
    while (!id.empty() && id.back() == '-') id.pop_back();
    return id.empty() ? std::string(other) : id;
}

class JobEditor {
public:
    JobEditor(EditTree job, const std::filesystem::path& path) : file_(path.string()), job_(std::move(job)) {
        if (job_.kind != Kind::map) fail("this is no job file and no house file", "a job file begins with seamward: 1");
    }

    [[nodiscard]] const EditTree& job() const { return job_; }

    std::string make(const ChangeGap& edit) {
        EditTree* gap = entry("gaps", "id", edit.id);
        if (gap == nullptr && has_house()) {
            gaps().push(EditTree::map({{"id", EditTree::line(edit.id)}}));
            gap = &gaps().children.back();
        }
        if (gap == nullptr) fail("there is no gap " + in_quotes(edit.id) + " in this file", "look at the list of gaps");
        const bool of_house = has_house() && gap->find("between") == nullptr;
        if (of_house && (edit.name || edit.at || edit.between || (edit.shape && edit.shape->second)))
            fail("gap " + in_quotes(edit.id) +
                     " belongs to the described house; a job can say its width, evidence, note and photo",
                 "change its name, place, length and spaces in the file of the house");
        if (edit.name) set_line(*gap, "name", *edit.name, "a name");
        if (edit.between) set_between(*gap, *edit.between);
        if (edit.shape) set_shape(*gap, *edit.shape, of_house);
        if (edit.at) {
            (*gap)["at"] = point_tree(*edit.at);
            gap->erase("through");
        }
        set_evidence(*gap, edit.how, edit.plus_minus, of_house);
        if (edit.note) set_text(*gap, "note", *edit.note);
        if (edit.photo) set_line(*gap, "photo", *edit.photo, "the path of a photo");
        return edit.id;
    }

    std::string make(const AddGap& edit) {
        EditTree gap = EditTree::map({{"id", EditTree::line(new_id(gaps(), edit.name, "gap", edit.taken))}});
        const std::string id(gap.text_of("id"));
        if (edit.name != id) set_line(gap, "name", edit.name, "a name");
        set_between(gap, edit.between);
        set_shape(gap, edit.shape, false);
        if (edit.at) gap["at"] = point_tree(*edit.at);
        set_evidence(gap, edit.how, edit.plus_minus, false);
        if (!edit.note.empty()) set_text(gap, "note", edit.note);
        if (!edit.photo.empty()) set_line(gap, "photo", edit.photo, "the path of a photo");
        gaps().push(std::move(gap));
        return id;
    }

    std::string make(const RemoveGap& edit) {
        const EditTree* gap = entry("gaps", "id", edit.id);
        if (gap == nullptr || (has_house() && gap->find("between") == nullptr))
            fail(has_house() ? "gap " + in_quotes(edit.id) + " belongs to the described house and cannot be removed here"
                             : "there is no gap " + in_quotes(edit.id) + " in this file",
                 has_house() ? "list it as closed, or remove it in the file of the house" : "look at the list of gaps");
        if (entry("occupied", "way", edit.id) != nullptr)
            fail("gap " + in_quotes(edit.id) + " is the way of an animal that lives here (occupied)", "change that entry first");
        erase_entry("gaps", "id", edit.id);
        erase_entry("closed", "gap", edit.id);
        return edit.id;
    }

    std::string make(const AddSpace& edit) {
        EditTree& spaces = list("spaces");
        EditTree space = EditTree::map({{"id", EditTree::line(new_id(spaces, edit.name, "space", edit.taken))}});
        const std::string id(space.text_of("id"));
        if (edit.name != id) set_line(space, "name", edit.name, "a name");
        space["kind"] = EditTree::word(std::string(kind_words.at(static_cast<std::size_t>(edit.kind))));
        if (edit.source) space["source"] = EditTree::word("true");
        spaces.push(std::move(space));
        return id;
    }

    std::string make(const CloseGap& edit) {
        if (entry("closed", "gap", edit.id) != nullptr) fail("gap " + in_quotes(edit.id) + " is listed as closed already", "");
        EditTree closed = EditTree::map({{"gap", EditTree::line(edit.id)}});
        if (!edit.with.empty()) closed["with"] = EditTree::word(edit.with);
        if (!edit.opening.empty()) closed["opening"] = size(edit.opening, "opening");
        if (!edit.date.empty()) closed["date"] = EditTree::word(edit.date);
        list("closed").push(std::move(closed));
        return edit.id;
    }

    std::string make(const OpenGap& edit) {
        if (entry("closed", "gap", edit.id) == nullptr) fail("gap " + in_quotes(edit.id) + " is not listed as closed", "");
        erase_entry("closed", "gap", edit.id);
        return edit.id;
    }

    std::string make(const MoveJob& edit) {
        const auto move = [&](EditTree* path) {
            if (path == nullptr || path->kind != Kind::scalar || path->text.empty()) return;
            const std::filesystem::path stated(path->text);
            if (stated.is_absolute()) return;
            const auto whole = [](const std::filesystem::path& some) {
                return std::filesystem::weakly_canonical(std::filesystem::absolute(some));
            };
            const std::filesystem::path there = whole(edit.from / stated).lexically_relative(whole(edit.to));
            if (there.empty()) fail("no way leads from the new folder to " + in_quotes(path->text), "save the job elsewhere");
            path->text = there.generic_string();
        };
        move(job_.find("house"));
        if (EditTree* model = job_.find("model")) move(model->find("file"));
        if (EditTree* gaps = job_.find("gaps")) {
            for (EditTree& gap : gaps->children) move(gap.find("photo"));
        }
        return "";
    }

    std::string make(const AddFeature& edit) {
        if (job_.find("seamward-house") == nullptr)
            fail("this file describes no house", "add a feature to the file that house names");
        EditTree& features = list("features");
        EditTree feature = EditTree::map({{"id", EditTree::line(new_id(features, edit.name, edit.type, edit.taken))}});
        const std::string id(feature.text_of("id"));
        feature["type"] = EditTree::word(edit.type);
        if (edit.name != id) set_line(feature, "name", edit.name, "a name");
        if (!edit.on.empty()) feature["on"] = EditTree::line(edit.on);
        for (const auto& [key, text] : {std::pair("along", &edit.along), std::pair("up", &edit.up)}) {
            if (text->empty()) continue;
            if (const auto place = parse_coordinate(*text); !place)
                fail(std::string(key) + ": " + place.fault.what, place.fault.mend);
            feature[key] = EditTree::word(*text);
        }
        if (edit.at)
            feature["at"] =
                EditTree::list({EditTree::word(coordinate_text((*edit.at)[0])), EditTree::word(coordinate_text((*edit.at)[1]))});
        if (!edit.side.empty()) feature["side"] = EditTree::line(edit.side);
        if (!edit.story.empty()) feature["story"] = EditTree::word(edit.story);
        if (!edit.gap.empty()) feature["gap"] = size(edit.gap, "gap");
        features.push(std::move(feature));
        return id;
    }

private:
    [[noreturn]] void fail(std::string what, std::string mend) const {
        throw BadInput({{file_, {}, std::move(what), std::move(mend)}});
    }

    [[nodiscard]] bool has_house() const { return !job_.text_of("house").empty(); }

    EditTree& list(std::string_view key) {
        EditTree& found = job_[key];
        if (found.kind == Kind::null) found.kind = Kind::list;
        if (found.kind != Kind::list) fail(std::string(key) + " is no list", "mend the file in a text editor");
        return found;
    }
    EditTree& gaps() { return list("gaps"); }

    /// The entry of a list that has this text under that key, or null.
    [[nodiscard]] EditTree* entry(std::string_view of, std::string_view key, std::string_view text) {
        EditTree* found = job_.find(of);
        if (found == nullptr || found->kind != Kind::list) return nullptr;
        const auto at = std::ranges::find_if(found->children, [&](const EditTree& item) { return item.text_of(key) == text; });
        return at == found->children.end() ? nullptr : &*at;
    }

    void erase_entry(std::string_view of, std::string_view key, std::string_view text) {
        if (EditTree* found = job_.find(of))
            std::erase_if(found->children, [&](const EditTree& item) { return item.text_of(key) == text; });
    }

    [[nodiscard]] std::string new_id(const EditTree& among, const std::string& name, std::string_view other,
                                     const std::vector<std::string>& taken) const {
        const std::string wish = id_from(name, other);
        const auto used = [&](const std::string& id) {
            return std::ranges::find(taken, id) != taken.end() ||
                   std::ranges::any_of(among.children, [&](const EditTree& item) { return item.text_of("id") == id; });
        };
        std::string id = wish;
        for (int i = 2; used(id); ++i) id = wish + '-' + std::to_string(i);
        return id;
    }

    [[nodiscard]] EditTree size(const std::string& text, std::string_view key) const {
        if (key == "area") {
            if (const auto area = parse_area(text); !area) fail(area.fault.what, area.fault.mend);
        } else if (const auto length = key == "length" ? parse_distance(text) : parse_length(text); !length) {
            fail(std::string(key) + ": " + length.fault.what, length.fault.mend);
        }
        return EditTree::word(text);
    }

    /// A size under a key. One that is the same in other words stays as it is written.
    void set_size(EditTree& sizes, std::string_view key, const std::string& text) const {
        EditTree made = size(text, key);
        EditTree& there = sizes[key];
        const auto value = key == "area" ? parse_area(text) : parse_distance(text);
        const auto before = key == "area" ? parse_area(there.text) : parse_distance(there.text);
        if (there.kind != Kind::scalar || before.value != value.value) there = std::move(made);
    }

    void set_text(EditTree& gap, std::string_view key, const std::string& text) const {
        if (!is_utf8(text) || has_control_character(text))
            fail(std::string(key) + " holds characters that are no text", "remove them");
        if (is_blank(text))
            gap.erase(key);
        else
            gap[key] = EditTree::line(text);
    }

    void set_line(EditTree& gap, std::string_view key, const std::string& text, std::string_view called) const {
        if (text.find_first_of("\r\n") != std::string::npos) fail(std::string(called) + " is one line", "remove the line ends");
        set_text(gap, key, text);
    }

    void set_between(EditTree& gap, const std::array<std::string, 2>& between) const {
        if (between[0] == between[1]) fail("this gap leads from a space to itself", "name the spaces on its two sides");
        gap["between"] = EditTree::list({EditTree::line(between[0]), EditTree::line(between[1])});
    }

    void set_shape(EditTree& gap, const ShapeText& shape, bool of_house) const {
        const auto* words = std::ranges::find(size_words, std::string_view(shape.word), &SizeWords::shape);
        if (words == size_words.end()) fail("unknown shape " + in_quotes(shape.word), "it is a slot, a hole, a ring or a mesh");
        const EditTree* there = gap.find(shape.word);
        const bool fresh = there == nullptr && !of_house;
        const bool two = !words->second.empty() && words->shape != "mesh";
        if (fresh && (!shape.width || (two && !shape.second)))
            fail("a " + shape.word + " needs " + std::string(words->width) + (two ? " and " + std::string(words->second) : ""),
                 "fill them in");
        for (const SizeWords& other : size_words) {
            if (other.shape != shape.word) gap.erase(other.shape);
        }
        EditTree& sizes = gap[shape.word];
        if (sizes.kind == Kind::null) sizes.kind = Kind::map;
        if (shape.width) set_size(sizes, words->width, *shape.width);
        if (!shape.second || words->second.empty()) return;
        if (shape.second->empty() && !two)
            sizes.erase(words->second);
        else
            set_size(sizes, words->second, *shape.second);
    }

    void set_evidence(EditTree& gap, const std::optional<Evidence::How>& how, const std::optional<std::string>& plus_minus,
                      bool of_house) const {
        if (!how && !plus_minus) return;
        EditTree& evidence = gap["evidence"];
        evidence.kind = Kind::map;
        if (how && *how == Evidence::How::unstated) evidence.erase("how");
        if (how && *how != Evidence::How::unstated)
            evidence["how"] = EditTree::word(std::string(how_words.at(static_cast<std::size_t>(*how))));
        if (plus_minus && plus_minus->empty()) evidence.erase("plus_minus");
        if (plus_minus && !plus_minus->empty()) set_size(evidence, "plus_minus", *plus_minus);
        if (!evidence.keys.empty()) return;
        if (of_house)  // without it, the house's own would stand
            evidence["plus_minus"] = EditTree::word("0 mm");
        else
            gap.erase("evidence");
    }

    std::string file_;
    EditTree job_;
};

TextChange difference(std::string_view before, std::string_view after) {
    const std::size_t most = std::min(before.size(), after.size());
    const auto head = static_cast<std::size_t>(
        std::mismatch(before.begin(), before.begin() + static_cast<std::ptrdiff_t>(most), after.begin()).first - before.begin());
    std::size_t tail = 0;
    while (tail < most - head && before[before.size() - 1 - tail] == after[after.size() - 1 - tail]) ++tail;
    return {head, std::string(before.substr(head, before.size() - head - tail)),
            std::string(after.substr(head, after.size() - head - tail))};
}

}  // namespace

std::string changed(std::string_view text, const TextChange& change) {
    std::string made(text.substr(0, change.at));
    return (made += change.inserted) += text.substr(change.at + change.removed.size());
}

bool is_of_house(const Edit& edit) { return std::holds_alternative<AddFeature>(edit); }

std::filesystem::path house_of(const std::string& text, const std::filesystem::path& path) {
    const std::string house(EditTree(with_spans(text, path).root()).text_of("house"));
    return house.empty() ? std::filesystem::path() : path.parent_path() / house;
}

Edited apply(const std::string& text, const std::filesystem::path& path, const Edit& edit) {
    const Document document = with_spans(text, path);
    JobEditor editor(EditTree(document.root()), path);
    std::string id = std::visit([&](const auto& one) { return editor.make(one); }, edit);
    std::string made = rewritten(text, document, editor.job());
    TextChange change = difference(text, made);
    return {std::move(made), std::move(change), std::move(id)};
}

}  // namespace seamward
