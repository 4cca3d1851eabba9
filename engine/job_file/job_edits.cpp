// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/job_edits.h"

#include <algorithm>
#include <string_view>

#include "base/quantity.h"
#include "base/text.h"
#include "job_file/edit_text.h"
#include "job_file/house_edits.h"

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

EditTree point_tree(const Point& at) { return EditTree::list({coordinate(at.x), coordinate(at.y), coordinate(at.z)}); }

class JobEditor : public FileEditor {
public:
    using FileEditor::FileEditor;

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
        forget_gap(edit.id);
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
        if (edit.house.empty())
            move(tree_.find("house"));
        else
            tree_["house"] = EditTree::line(edit.house);
        if (EditTree* model = tree_.find("model")) move(model->find("file"));
        if (EditTree* gaps = tree_.find("gaps")) {
            for (EditTree& gap : gaps->children) move(gap.find("photo"));
        }
        return "";
    }

    /// The job's part: what it says of the gaps that go.
    std::string make(const RemoveFeature& edit) {
        for (const std::string& gap : edit.gaps) forget_gap(gap);
        return edit.id;
    }

    template <class OfHouse>
    std::string make(const OfHouse&) {
        fail("this file describes no house", "features stand in the file that house names");
    }

private:
    /// Takes out what the file says of a gap.
    void forget_gap(const std::string& id) {
        if (entry("occupied", "way", id) != nullptr)
            fail("gap " + in_quotes(id) + " is the way of an animal that lives here (occupied)", "change that entry first");
        erase_entry("gaps", "id", id);
        erase_entry("closed", "gap", id);
        while (entry("details", "gap", id) != nullptr) erase_entry("details", "gap", id);
    }

    [[nodiscard]] bool has_house() const { return !tree_.text_of("house").empty(); }

    EditTree& gaps() { return list("gaps"); }

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

bool is_of_house(const Edit& edit) {
    return std::holds_alternative<AddFeature>(edit) || std::holds_alternative<ChangeFeature>(edit) ||
           std::holds_alternative<RemoveFeature>(edit);
}

bool is_of_job(const Edit& edit) { return !is_of_house(edit) || std::holds_alternative<RemoveFeature>(edit); }

std::filesystem::path house_of(const std::string& text, const std::filesystem::path& path) {
    const std::string house(EditTree(with_spans(text, path).root()).text_of("house"));
    return house.empty() ? std::filesystem::path() : path.parent_path() / house;
}

Edited apply(const std::string& text, const std::filesystem::path& path, const Edit& edit) {
    const Document document = with_spans(text, path);
    const auto made_by = [&](auto editor) {
        std::string id = std::visit([&](const auto& one) { return editor.make(one); }, edit);
        std::string made = rewritten(text, document, editor.tree());
        TextChange change = difference(text, made);
        return Edited{std::move(made), std::move(change), std::move(id)};
    };
    EditTree tree(document.root());
    const auto* removal = std::get_if<RemoveFeature>(&edit);
    if (removal != nullptr && removal->gaps.size() > 1 && tree.find("seamward-house") == nullptr) {
        // One after the other: entries between two that go stay where they are, with their comments.
        std::string made = text;
        for (const std::string& gap : removal->gaps) made = apply(made, path, RemoveFeature{removal->id, {gap}}).text;
        TextChange change = difference(text, made);
        return {std::move(made), std::move(change), removal->id};
    }
    if (tree.find("seamward-house") != nullptr) return made_by(HouseEditor(std::move(tree), path));
    return made_by(JobEditor(std::move(tree), path));
}

}  // namespace seamward
