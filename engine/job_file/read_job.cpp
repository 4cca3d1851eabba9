// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <string>
#include <unordered_set>

#include "base/nearest_word.h"
#include "base/record.h"
#include "base/text.h"
#include "catalog/shipped.h"
#include "job_file/id_index.h"
#include "job_file/job.h"
#include "job_file/read_details.h"
#include "job_file/read_gap.h"
#include "job_file/read_history.h"
#include "job_file/read_model_reference.h"

namespace seamward {

namespace {

constexpr std::string_view version = "1";
constexpr std::array<std::string_view, 15> job_file_keys{"seamward", "job",    "house",        "spaces",    "gaps",
                                                         "pests",    "closed", "occupied",     "sightings", "checks",
                                                         "site",     "model",  "construction", "details",   "appliances"};
constexpr std::array<std::string_view, 7> job_keys{"name", "address", "surveyed", "surveyor", "notes", "lot", "option"};
constexpr std::array<std::string_view, 7> space_keys{"id", "kind", "source", "name", "note", "floor", "burns"};
constexpr std::array<std::string_view, 5> kind_words{"outdoors", "cavity", "attached", "living", "harborage"};
constexpr std::array<std::string_view, 6> pest_keys{"id", "name", "slit", "hole", "margin", "gnaws"};

/// What people write for a kind, and the kind that is meant.
constexpr std::array<std::pair<std::string_view, std::string_view>, 16> everyday_kinds{{
    {"outside", "outdoors"},
    {"outdoor", "outdoors"},
    {"exterior", "outdoors"},
    {"yard", "outdoors"},
    {"wall", "cavity"},
    {"attic", "cavity"},
    {"chase", "cavity"},
    {"soffit", "cavity"},
    {"crawl", "cavity"},
    {"crawlspace", "cavity"},
    {"garage", "attached"},
    {"porch", "attached"},
    {"room", "living"},
    {"interior", "living"},
    {"inside", "living"},
    {"block-wall", "harborage"},
}};

class JobReader {
public:
    JobReader(const Document& document, const RunContext& context, Make make, const FileTexts& newer, HouseSource* houses)
        : context_(context),
          make_(make),
          newer_(newer),
          houses_(houses),
          diagnostics_(document.file()),
          file_(document.root(), job_file_keys, "job file", diagnostics_) {}

    Job read() {
        check_version();
        read_head();
        read_house();
        read_drawn_on();
        read_spaces();
        read_gaps();
        read_pests();
        read_history({file_, spaces_, gaps_, diagnostics_}, job_);
        read_details({file_, spaces_, gaps_, diagnostics_}, has_house_, job_);
        diagnostics_.throw_if_any();
        if (has_house_ || make_ == Make::solids) finish_house();
        return std::move(job_);
    }

private:
    void check_version() {
        if (!file_.require({"seamward"})) return;
        const Node node = file_["seamward"];
        if (node.kind() == Document::Kind::plain && node.text() == version) return;
        const std::string found = node.is_scalar() ? " " + in_quotes(node.text()) : "";
        const bool only_quotes = node.kind() == Document::Kind::quoted && node.text() == version;
        file_.report(node.place(), "unknown format version" + found,
                     only_quotes ? "write seamward: 1 without quotes" : "this program reads seamward: 1");
    }

    void read_head() {
        const Record head(file_["job"], job_keys, "job", diagnostics_);
        job_.name = head.line("name").value_or("");
        job_.address = head.line("address").value_or("");
        job_.surveyed = head.line("surveyed").value_or("");
        job_.surveyor = head.line("surveyor").value_or("");
        job_.notes = head.text("notes").value_or("");
        job_.lot = head.line("lot").value_or("");
        job_.option = head.line("option").value_or("");
    }

    /// Spaces and gaps of a described house come before the job's own. Widths that the job measured anew go into it, so that
    /// its solids are open as wide as was measured.
    void read_house() {
        const std::optional<std::string> house = file_.line("house");
        if (!house) return;
        const std::filesystem::path path = std::filesystem::path(diagnostics_.file()).parent_path() / *house;
        std::error_code error;
        if (!std::filesystem::exists(path, error)) {
            file_.report(file_["house"].place(), "no such file: " + path.string(),
                         "check the path; it is taken from the folder of the job file");
            diagnostics_.throw_if_any();  // without the house, no id of the job can be judged
        }
        const std::string ending = path.extension().string();
        if (ending != ".yaml" && ending != ".yml" && ending != ".json") {
            file_.report(file_["house"].place(), "house names a described house (.yaml, .json), not 3D files: " + path.string(),
                         "run seamward find on that file with -o, and use the job file that it writes");
            diagnostics_.throw_if_any();
        }
        has_house_ = true;
        job_.house_file = path;
        std::map<std::string, double> widths;
        file_.each("gaps", [&](Node node) {
            if (!is_update(node)) return;
            Diagnostics later(diagnostics_.file());  // reported when the list is read
            const GapUpdate update = read_gap_update(node, later);
            if (!update.width || !update.id.present()) return;
            if (const auto id = read_line(update.id, "id", later)) widths.emplace(*id, *update.width);
        });
        try {
            const auto text = newer_.find(newer_.empty() ? path : std::filesystem::weakly_canonical(path, error));
            const auto described =
                text != newer_.end() ? std::make_shared<const HouseDescription>(parse_house_yaml(text->second, path.string()))
                : houses_ != nullptr
                    ? houses_->described(path, context_)
                    : std::make_shared<const HouseDescription>(read_house_description(path, path.string(), context_));
            job_.house = build_house(*described, widths, make_, context_);
        } catch (const BadInput& bad) {
            std::vector<Diagnostic> faults = bad.diagnostics();
            for (Diagnostic& fault : faults) fault.what += " (in the house of " + diagnostics_.file() + ")";
            throw BadInput(std::move(faults));
        }
        job_.survey = std::move(job_.house.survey);
        job_.vented = job_.house.vented;
        job_.built_of = job_.house.built_of;
        if (job_.name.empty()) job_.name = job_.house.name;
    }

    void read_drawn_on() {
        job_.model = read_model_reference(file_, diagnostics_);
        if (job_.model && has_house_)
            file_.report(file_["model"].place(), "a job is about a described house or drawn on a 3D file, not both",
                         "remove house or model");
    }

    /// An entry that only says something new of a gap of the house.
    [[nodiscard]] bool is_update(Node node) const {
        if (!has_house_ || !node.is_mapping()) return false;
        bool between = false;
        node.for_each_pair([&](Node key, Node) { between = between || key.text() == "between"; });
        return !between;
    }

    void update_gap(Node node, const IdIndex& of_house, std::vector<bool>& updated) {
        const GapUpdate update = read_gap_update(node, diagnostics_);
        if (!update.id.present()) return;
        const auto position = of_house.resolve(update.id, "gap of the house", diagnostics_);
        if (!position) return;
        Gap& gap = job_.survey.gaps[*position];
        if (updated[*position])
            diagnostics_.add(update.place, "gap \"" + gap.id + "\" of the house is measured twice", "keep one entry");
        updated[*position] = true;
        if (update.shape != nullptr && std::string_view(shape_word(gap.shape)) != update.shape)
            diagnostics_.add(update.place, "gap \"" + gap.id + "\" is a " + shape_word(gap.shape) + ", not a " + update.shape,
                             "measure it as what it is, or describe it anew in the house");
        else if (update.width)
            gap.shape = widened(gap.shape, *update.width - clear_width(gap.shape));
        if (update.evidence)
            gap.evidence = *update.evidence;
        else if (update.width && gap.evidence.how == Evidence::How::assumed)
            gap.evidence.how = Evidence::How::unstated;  // the house's starting value was assumed, this one was typed
        if (update.duty) gap.duty = *update.duty;
        if (update.closing) gap.closing = *update.closing;
        if (update.note) gap.note = *update.note;
        if (update.photo) gap.photo = *update.photo;
    }

    /// Gaps and spaces that the job added have no solids.
    void finish_house() {
        job_.house.survey = job_.survey;
        job_.house.middles.resize(job_.survey.spaces.size());
        while (job_.house.places.size() < job_.survey.gaps.size())
            job_.house.places.push_back({{static_cast<std::uint32_t>(job_.house.places.size())}, {}});
    }

    /// Reports ids that stand twice. Ids are indexed once all are read, when their texts no longer move.
    template <class Thing>
    IdIndex index(const std::vector<Thing>& things, const std::vector<Place>& places, std::string_view called) {
        IdIndex ids(things.size());
        for (std::size_t i = 0; i < things.size(); ++i) {
            if (ids.add(things[i].id) || things[i].id.empty()) continue;
            const std::uint32_t line = places[ids.find(things[i].id).value_or(0)].line;
            diagnostics_.add(places[i],
                             std::string(called) + " id \"" + things[i].id + "\" stands twice, first " +
                                 (line > 0 ? "on line " + std::to_string(line) : "in the house"),
                             "give each its own");
        }
        return ids;
    }

    void read_spaces() {
        std::vector<Place> places(job_.survey.spaces.size());  // the house's own stand in its file
        file_.each("spaces", [&](Node node) {
            const Record record(node, space_keys, "space", diagnostics_);
            record.require({"kind"});
            Space space;
            space.id = record.required_line("id");
            space.name = record.line("name").value_or("");
            (void)record.text("note");
            space.kind = read_kind(record);
            space.source = record.truth("source").value_or(false);
            places.push_back(node.place());
            read_air(record, space);
            job_.survey.spaces.push_back(std::move(space));
        });
        spaces_ = index(job_.survey.spaces, places, "space");
    }

    /// What the air of a space is reckoned by: its floor where it is vented, and what burns in it.
    void read_air(const Record& record, const Space& space) {
        const SpaceIndex index{static_cast<std::uint32_t>(job_.survey.spaces.size())};
        const bool crawl = (space.id + " " + space.name).find("crawl") != std::string::npos;
        if (const auto floor = record.area("floor")) job_.vented.push_back({index, *floor, crawl ? "under-floor" : "attic"});
        const std::optional<std::string> burns = record.line("burns");
        if (!burns) return;
        const std::optional<double> input = parse_input(*burns);
        if (input)
            job_.inputs.push_back({index, *input});
        else
            record.report(record["burns"].place(), "burns is the input of the appliances, not " + in_quotes(*burns),
                          "write for example 40000 Btu/h or 12 kW");
    }

    static SpaceKind read_kind(const Record& record) {
        const Node node = record["kind"];
        for (const auto& [word, meant] : everyday_kinds) {
            if (!node.present() || node.text() != word) continue;
            record.report(node.place(), "unknown kind " + in_quotes(word), "a space like that is of kind " + std::string(meant));
            return SpaceKind::cavity;
        }
        return static_cast<SpaceKind>(record.word("kind", kind_words).value_or(1));
    }

    void read_gaps() {
        job_.gaps_of_house = house_gaps_ = job_.survey.gaps.size();
        std::vector<Place> places(house_gaps_);
        if (file_.has("gaps")) {
            job_.survey.gaps.reserve(house_gaps_ + file_["gaps"].size());
            places.reserve(house_gaps_ + file_["gaps"].size());
        }
        IdIndex of_house(house_gaps_);  // the texts of ids no longer move
        for (std::size_t i = 0; i < house_gaps_; ++i) of_house.add(job_.survey.gaps[i].id);
        std::vector<bool> updated(house_gaps_, false);
        file_.each("gaps", [&](Node node) {
            if (places.size() % 1024 == 0) context_.check();
            if (is_update(node)) {
                update_gap(node, of_house, updated);
                return;
            }
            std::vector<Point> through;
            job_.survey.gaps.push_back(read_gap(node, spaces_, diagnostics_, &through));
            places.push_back(node.place());
            if (!has_house_)
                job_.house.places.push_back({{static_cast<std::uint32_t>(job_.house.places.size())}, std::move(through)});
        });
        for (std::size_t i = 0; i < job_.survey.gaps.size(); ++i) check_price(job_.survey.gaps[i], places[i]);
        gaps_ = index(job_.survey.gaps, places, "gap");
    }

    /// The price of all pieces of a gap must stay far from the largest number of cents there is.
    void check_price(const Gap& gap, Place place) {
        constexpr std::int64_t most_cents = 1'000'000'000'000'000;
        if (gap.closing.cost && gap.closing.cost->cents > most_cents / gap.count)
            diagnostics_.add(place, "gap \"" + gap.id + "\": its cost times its count is more than $10,000,000,000,000",
                             "check both");
    }

    void read_pests() {
        std::unordered_set<std::string> ids;
        file_.each("pests", [&](Node node) {
            Pest pest;
            if (node.is_mapping()) {
                const Record record(node, pest_keys, "pest", diagnostics_);
                record.require({"slit", "hole"});
                pest.id = record.required_line("id");
                pest.name = record.line("name").value_or(pest.id);
                pest.size = {record.length("slit").value_or(0), record.length("hole").value_or(0)};
                pest.margin = record.percent("margin").value_or(pest.margin);
                pest.gnaws = record.truth("gnaws").value_or(false);
            } else {
                const std::optional<std::string> id = read_line(node, "pest", diagnostics_);
                if (!id) return;
                const Pest* shipped = shipped_pests().find(*id);
                if (shipped == nullptr) {
                    std::string mend = suggestion(*id, shipped_pests().ids());
                    if (mend.empty()) mend = "docs/catalog.md lists them; or write your own, {id: ..., slit: ..., hole: ...}";
                    diagnostics_.add(node.place(), "unknown pest \"" + *id + '"', mend);
                    return;
                }
                pest = *shipped;
            }
            if (!ids.insert(pest.id).second) diagnostics_.add(node.place(), "pest \"" + pest.id + "\" stands twice", "keep one");
            job_.pests.push_back(std::move(pest));
        });
    }

    const RunContext& context_;
    Make make_;
    const FileTexts& newer_;
    HouseSource* houses_;
    bool has_house_ = false;
    std::size_t house_gaps_ = 0;
    Diagnostics diagnostics_;
    Record file_;
    Job job_;
    IdIndex spaces_{0};
    IdIndex gaps_{0};
};

/// A house file in the place of a job would be called wrong key by key.
void check_not_a_house(const Document& document) {
    if (!document.root().is_mapping()) return;
    Node house;
    bool job = false;
    document.root().for_each_pair([&](Node key, Node) {
        if (key.text() == "seamward-house") house = key;
        job = job || key.text() == "seamward";
    });
    if (job || !house.present()) return;
    const std::string name = std::filesystem::path(document.file()).filename().string();
    throw BadInput({{document.file(), house.place(), "this file describes a house; what is asked for is a job",
                     "write a job file of two lines, seamward: 1 and house: " + name + ", and give that"}});
}

}  // namespace

Job read_job(const std::filesystem::path& path, const RunContext& context, Make make) {
    const Document document = read_document(path, path.string());
    context.stage("checking the job");
    check_not_a_house(document);
    const FileTexts none;
    return JobReader(document, context, make, none, nullptr).read();
}

Job parse_job(std::string_view text, const std::filesystem::path& path, const RunContext& context, Make make,
              const FileTexts& newer, HouseSource* houses) {
    const std::string shown_as = path.string();
    const Document document = path.extension() == ".json" ? parse_json(text, shown_as) : parse_yaml(text, shown_as);
    context.stage("checking the job");
    check_not_a_house(document);
    return JobReader(document, context, make, newer, houses).read();
}

std::string heading(const Job& job, const std::filesystem::path& path) {
    return job.name.empty() ? path.filename().string() : job.name;
}

}  // namespace seamward
