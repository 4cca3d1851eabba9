// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/make_drill.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <fstream>
#include <random>

#include "base/file_io.h"
#include "base/text.h"
#include "catalog/passage.h"
#include "catalog/shipped.h"
#include "teach/key.h"
#include "teach/score.h"
#include "teach/way_through.h"
#include "teach/yaml_text.h"

namespace seamward {

namespace {

constexpr std::uint64_t most_bytes = 16ULL << 20;
/// What the files begin with, by which they are known again.
constexpr std::string_view house_comment = "# The house of a random round, copied by seamward drill make.";
constexpr std::string_view job_comment = "# A random round: made by seamward drill make, all of it invented.";
constexpr std::string_view drill_comment = "# Made by: seamward drill make";
constexpr int most_rounds = 30;  ///< drawn anew as often, when what came out has a flaw
constexpr int most_widths = 12;  ///< tried at one gap

/// How much is planted. Common practice of ours: what a class does in ten, thirty and sixty minutes.
struct Size {
    std::size_t open = 0, stays_open = 0, tight = 0;
};
constexpr std::array<Size, 3> sizes{{{4, 2, 2}, {8, 4, 4}, {13, 6, 6}}};

/// Animals of drills, from few to many.
const std::array<std::vector<std::vector<const char*>>, 3> herds{
    {{{"bark-scorpion"}, {"american-cockroach"}, {"house-mouse"}},
     {{"bark-scorpion", "house-mouse"}, {"american-cockroach", "house-mouse"}},
     {{"bark-scorpion-young", "american-cockroach", "house-mouse"},
      {"bark-scorpion", "german-cockroach", "roof-rat", "house-mouse"}}}};

/// A gap as it is planted.
struct Planted {
    GapIndex gap;
    double width = 0;  ///< meters
    PlaceState state = PlaceState::tight;
};

class Maker {
public:
    Maker(const std::filesystem::path& house, std::uint64_t seed, Difficulty difficulty, const RunContext& context)
        : house_(house),
          seed_(seed),
          difficulty_(difficulty),
          context_(context),
          engine_(seed * 3 + static_cast<std::uint64_t>(difficulty)),
          text_(read_file(house, house.string(), most_bytes)),
          path_(house.parent_path() / "made-drill.yaml"),
          job_path_(house.parent_path() / "made-job.yaml") {
        base_.job = parse_job("seamward: 1\nhouse: " + yaml_quoted(house.filename().string()) + '\n', job_path_, context);
    }

    MadeDrill make() {
        for (int round = 0; round < most_rounds; ++round) {
            context_.check();
            choose();
            if (!enough()) continue;
            const MadeDrill made{drill_text(), job_text("house.yaml"), house_text()};
            if (works(made.drill)) return made;
        }
        throw BadInput(
            {{house_.string(), {}, "the house has too few gaps to make a drill of", "name a house with more features"}});
    }

private:
    std::size_t below(std::size_t n) { return static_cast<std::size_t>(engine_() % n); }

    template <class Value>
    void shuffle(std::vector<Value>& values) {
        for (std::size_t i = values.size(); i > 1; --i) std::swap(values[i - 1], values[below(i)]);
    }

    [[nodiscard]] const Size& size() const { return sizes.at(static_cast<std::size_t>(difficulty_)); }

    /// The key of one gap with that width.
    [[nodiscard]] PlaceKey key_with(GapIndex gap, double width) {
        Gap& there = base_.job.survey.gaps[gap.value];
        const Gap before = there;
        there.shape = widened(there.shape, width - clear_width(there.shape));
        there.evidence = {Evidence::How::measured, 0};
        base_.places = {{gap, {}, there.at, std::nullopt}};
        PlaceKey key = drill_key(base_).front();
        there = before;
        return key;
    }

    void choose() {
        planted_.clear();
        occupied_.clear();
        base_.drill.animals.clear();
        const auto& herd = herds.at(static_cast<std::size_t>(difficulty_));
        for (const char* id : herd[below(herd.size())]) base_.drill.animals.push_back(*shipped_pests().find(id));
        std::vector<std::uint32_t> order(base_.job.survey.gaps.size());
        for (std::uint32_t i = 0; i < order.size(); ++i) order[i] = i;
        shuffle(order);
        Size left = size();
        for (const std::uint32_t i : order) plant({i}, left);
        std::sort(planted_.begin(), planted_.end(), [](const Planted& a, const Planted& b) { return a.gap < b.gap; });
        if (difficulty_ == Difficulty::hard) settle();
    }

    void plant(GapIndex gap, Size& left) {
        const Gap& there = base_.job.survey[gap];
        if (!there.at || is_shut(there.shape)) return;
        const PlaceKey as_it_is = key_with(gap, clear_width(there.shape));
        if (as_it_is.state == PlaceState::stays_open) {
            if (left.stays_open == 0 || !as_it_is.treatment_asked()) return;
            --left.stays_open;
            planted_.push_back({gap, clear_width(there.shape), PlaceState::stays_open});
        } else if (left.open > 0) {
            const std::optional<double> width = open_width(gap);
            if (!width) return;
            --left.open;
            planted_.push_back({gap, *width, PlaceState::open});
        } else if (left.tight > 0) {
            --left.tight;
            planted_.push_back({gap, 0, PlaceState::tight});
        }
    }

    /// A width at which an animal surely gets through on some way into a room, and something fits; tenths of a millimeter.
    [[nodiscard]] std::optional<double> open_width(GapIndex gap) {
        constexpr double tenth = 1e-4;
        constexpr std::array<double, 6> factors{0.7, 0.85, 1, 1.2, 1.5, 2};
        if (!way_through(base_.job.survey, gap, {}, context_)) return std::nullopt;
        const double usual = clear_width(base_.job.survey[gap].shape);
        for (int i = 0; i < most_widths; ++i) {
            const double width = std::round(usual * factors.at(below(factors.size())) / tenth) * tenth;
            if (!(width > 0)) continue;
            // As it will be read: the text has the same tenths.
            const double read = *parse_length(width_text(width)).value;
            const PlaceKey key = key_with(gap, read);
            if (key.state == PlaceState::open && !key.right.empty()) return read;
        }
        return std::nullopt;
    }

    static std::string width_text(double width) {
        const long long tenths = std::llround(width * 1e4);
        return std::to_string(tenths / 10) + '.' + std::to_string(tenths % 10) + " mm";
    }

    /// A house mouse in some cavity that a planted gap leads out of.
    void settle() {
        std::vector<SpaceIndex> cavities;
        for (const Planted& one : planted_) {
            if (one.state != PlaceState::open) continue;
            for (const SpaceIndex end : base_.job.survey[one.gap].between) {
                const Space& space = base_.job.survey[end];
                if (space.kind == SpaceKind::cavity && !space.source) cavities.push_back(end);
            }
        }
        if (!cavities.empty()) occupied_ = base_.job.survey[cavities[below(cavities.size())]].id;
    }

    [[nodiscard]] bool enough() const {
        const auto open =
            std::count_if(planted_.begin(), planted_.end(), [](const Planted& one) { return one.state == PlaceState::open; });
        return open >= 2 && planted_.size() >= 4;
    }

    /// The house as it is; one that a random drill was made of has its first line already.
    [[nodiscard]] std::string house_text() const {
        if (is_made_by_us(text_)) return text_;
        const std::string_view mark = "\xef\xbb\xbf";  // of UTF-8: at the very beginning or nowhere
        return std::string(house_comment) + '\n' + (text_.starts_with(mark) ? text_.substr(mark.size()) : text_);
    }

    [[nodiscard]] std::string job_text(const std::string& house) const {
        std::string text = std::string(job_comment) + "\nseamward: 1\njob: {name: " + yaml_quoted(base_.job.house.name) +
                           "}\nhouse: " + yaml_quoted(house) + "\ngaps:\n";
        for (const Planted& one : planted_) {
            const Gap& gap = base_.job.survey[one.gap];
            constexpr std::array keys{"width", "diameter", "width", "opening"};
            const bool as_it_is = one.state == PlaceState::stays_open;
            const std::string width = one.width == 0 ? "0 mm" : as_it_is ? yaml_length(one.width) : width_text(one.width);
            text += "  - {id: " + yaml_quoted(gap.id) + ", " + shape_word(gap.shape) + ": {" + keys.at(gap.shape.index()) + ": " +
                    width + "}, evidence: {how: measured, plus_minus: 0 mm}}\n";
        }
        text += "pests: [";
        for (const Pest& pest : base_.drill.animals) text += (text.back() == '[' ? "" : ", ") + pest.id;
        text += "]\n";
        if (!occupied_.empty()) text += "occupied:\n  - {space: " + yaml_quoted(occupied_) + ", animal: house-mouse}\n";
        return text;
    }

    /// A text in both languages under a key.
    [[nodiscard]] static std::string both(const std::string& key, const Message& text) {
        return key + ": {en: " + yaml_quoted(Translator(Language::english)(text)) +
               ", es: " + yaml_quoted(Translator(Language::spanish)(text)) + "}";
    }

    [[nodiscard]] std::string drill_text() const {
        const char* word = difficulty_word(difficulty_);
        const Message house = as_it_stands(base_.job.house.name);
        std::string text = std::string(drill_comment) + " --seed " + std::to_string(seed_) + " --difficulty " + word +
                           "\nseamward-drill: 1\nid: random-" + word + '-' + std::to_string(seed_) + '\n';
        text += both("title", message("Random round {}: {}", {as_it_stands(std::to_string(seed_)), house})) + '\n';
        text += std::string("difficulty: ") + word + "\njob: job.yaml\n";
        text +=
            both("story",
                 message("You are sent to {}. Somebody saw an animal and nobody knows where it came in. Look at each place on "
                         "the list: some are open, some are tight, and some have to stay open. Say which, and what you would do.",
                         {house})) +
            '\n';
        text += "scope:\n  gaps: [";
        for (const Planted& one : planted_) text += (text.back() == '[' ? "" : ", ") + yaml_quoted(base_.job.survey[one.gap].id);
        text += "]\ndecoys:\n";
        for (const Planted& one : planted_) {
            if (one.state == PlaceState::tight)
                text += "  - {gap: " + yaml_quoted(base_.job.survey[one.gap].id) + ", " +
                        both("looks", "Such places are often open. This one was closed well.") + "}\n";
        }
        return text;
    }

    /// Whether the drill can be read and answered: all points, and no harm.
    [[nodiscard]] bool works(const std::string& drill) const {
        std::error_code error;
        const FileTexts texts{{std::filesystem::weakly_canonical(job_path_, error), job_text(house_.filename().string())}};
        std::string text = drill;
        const std::string made = "\njob: job.yaml\n";
        text.replace(text.find(made), made.size(), "\njob: " + job_path_.filename().string() + '\n');
        try {
            const DrillRound round = parse_drill(text, path_, context_, Make::survey, texts);
            const DrillResult result = score(round, perfect_answers(round, "nobody"));
            return result.points == result.most && result.passed;
        } catch (const BadInput&) {
            return false;  // such as a feature that cannot be that wide where it is
        }
    }

    std::filesystem::path house_;
    std::uint64_t seed_;
    Difficulty difficulty_;
    const RunContext& context_;
    std::mt19937_64 engine_;
    std::string text_;
    std::filesystem::path path_, job_path_;  ///< where files would stand beside the house; none is written there
    DrillRound base_;                        ///< the house as it is described
    std::vector<Planted> planted_;
    std::string occupied_;  ///< id of the space that an animal lives in; empty: none
};

}  // namespace

bool is_made_by_us(std::string_view text) {
    return text.starts_with(house_comment) || text.starts_with(job_comment) || text.starts_with(drill_comment);
}

void refuse_files_of_others(const std::filesystem::path& folder) {
    std::vector<Diagnostic> faults;
    for (const char* name : {"house.yaml", "job.yaml", "drill.yaml"}) {
        const std::filesystem::path path = folder / name;
        std::error_code error;
        if (!std::filesystem::exists(std::filesystem::symlink_status(path, error))) continue;
        std::ifstream file(path, std::ios::binary);
        std::string begin(std::max({house_comment.size(), job_comment.size(), drill_comment.size()}), '\0');
        file.read(begin.data(), static_cast<std::streamsize>(begin.size()));
        begin.resize(static_cast<std::size_t>(file.gcount()));
        if (!is_made_by_us(begin))
            faults.push_back(
                {path.string(), {}, "is there already, and is no file of seamward drill make", "name another folder"});
    }
    if (!faults.empty()) throw BadInput(std::move(faults));
}

MadeDrill make_drill(const std::filesystem::path& house, std::uint64_t seed, Difficulty difficulty, const RunContext& context) {
    return Maker(house, seed, difficulty, context).make();
}

}  // namespace seamward
