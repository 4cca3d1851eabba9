// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/usual_rooms.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

#include "document/square_cuts.h"
#include "document/usual_doors.h"

namespace seamward::viewer {

namespace {

using Use = RoomUse;

constexpr double hall_wide = 1.2;    ///< between the middles of its walls
constexpr double least_front = 1.6;  ///< of the living room at the front wall: the front door is there
constexpr double least_hall_door = 1.1;

/// A room to be: the share of the area that it would like, and the smallest square that it is of any use with.
struct Wish {
    Use use;
    std::string id, name;
    double area, least;
};

const Wish& hall(int story) {
    static const Wish lower{Use::hall, "hall", "hall", 6, 1.1};
    static const Wish upper{Use::hall, "upper-hall", "upper hall", 6, 1.1};
    return story > 1 ? upper : lower;
}
const Wish& living() {
    static const Wish wish{Use::living, "living-room", "living room", 24, 2.4};
    return wish;
}
const Wish& kitchen() {
    static const Wish wish{Use::kitchen, "kitchen", "kitchen", 12, 2};
    return wish;
}
Wish lower_bath() { return {Use::bath, "lower-bath", "lower bath", 5, 1.5}; }

/// Bedrooms and baths, the main ones first; no two lists of the same counts differ.
std::vector<Wish> night_rooms(int bedrooms, int baths) {
    std::vector<Wish> wishes;
    const auto bath = [&](int number) {
        if (number > baths) return;
        const bool main = number == 1 && baths > 1;
        const std::string end = number > 2 ? std::to_string(number - 1) : "";
        wishes.push_back({Use::bath,
                          main          ? "main-bath"
                          : end.empty() ? "bath"
                                        : "bath-" + end,
                          main          ? "main bath"
                          : end.empty() ? "bath"
                                        : "bath " + end,
                          5, 1.5});
    };
    for (int number = 1; number <= bedrooms; ++number) {
        const std::string end = std::to_string(number);
        const bool main = number == 1;
        wishes.push_back({Use::bedroom, main ? "main-bedroom" : "bedroom-" + end, main ? "main bedroom" : "bedroom " + end,
                          main ? 14.0 : 11.0, 2.3});
        bath(number);
    }
    for (int number = bedrooms + 1; number <= baths; ++number) bath(number);
    return wishes;
}

double area_of(const std::vector<Wish>& wishes) {
    double sum = 0;
    for (const Wish& wish : wishes) sum += wish.area;
    return sum;
}

/// Part of a plan in the making. The lower the score, the nearer are its rooms to what was wished for.
struct Draft {
    std::vector<UsualRoom> rooms;
    std::vector<UsualPartition> partitions;
    double score = 0;

    void add(const Draft& other) {
        rooms.insert(rooms.end(), other.rooms.begin(), other.rooms.end());
        partitions.insert(partitions.end(), other.partitions.begin(), other.partitions.end());
        score += other.score;
    }
};

/// None of them is copied: they are shared out many times.
using Wishes = std::vector<const Wish*>;

Wishes all_of(const std::vector<Wish>& wishes) {
    Wishes all;
    for (const Wish& wish : wishes) all.push_back(&wish);
    return all;
}

/// Divides one story.
class Story {
public:
    Story(int story, const NewHouse& house)
        : story_(story), outline_(outline_of(house)), garage_(garage_size(house)), region_(outline_) {
        if (story > 1 || garage_.x == 0) return;
        region_ = {{garage_.x, 0}};
        region_.insert(region_.end(), outline_.begin() + 1, outline_.end());
        region_.push_back({0, garage_.y});
        region_.push_back(garage_);
    }

    /// Bedrooms and baths about a hall or in a row beside the rest, which is living room and kitchen, or a hall.
    std::optional<RoomPlan> divide(const std::vector<Wish>& night) {
        std::vector<Wish> all = night;
        for (const Wish& wish : rest()) all.push_back(wish);
        scale_ = doubled_area(region_) / 2 / (area_of(all) + hall(story_).area);
        double least = 0;
        for (const Wish& wish : all) least += wish.least * wish.least;
        if (least > doubled_area(region_) / 2) return std::nullopt;
        if (night.empty()) {
            if (const auto draft = split_rest(region_, {})) finish(*draft);
            return best_;
        }
        const bool upper = story_ > 1;
        for (const Axis axis : {Axis::x, Axis::y}) {
            if (upper) {
                if (const auto draft = about_hall(region_, axis, night, nullptr)) finish(*draft);
            }
            for (const bool low : {false, true}) {
                for (const double more : {1.0, 0.85, 1.15, 0.7, 1.3}) beside(axis, low, more, night);
            }
        }
        return best_;
    }

    [[nodiscard]] const Loop& region() const { return region_; }

private:
    [[nodiscard]] std::vector<Wish> rest() const {
        return story_ > 1 ? std::vector<Wish>{hall(story_)} : std::vector<Wish>{living(), kitchen()};
    }
    [[nodiscard]] UsualPartition partition(const std::string& id, const std::string& name, const LoopCut& cut) const {
        const bool upper = story_ > 1;
        return {upper ? id + "-up" : id, upper ? name + ", upper floor" : name, cut.from, cut.to, story_};
    }

    /// Puts a room into a draft; false when it is too narrow.
    bool place(Draft& draft, const Wish& wish, const Loop& loop) const {
        if (!holds_square(loop, wish.least)) return false;
        const auto [left, right] = std::ranges::minmax(loop, {}, &Point2::x);
        const auto [low, high] = std::ranges::minmax(loop, {}, &Point2::y);
        const double wide = right.x - left.x;
        const double deep = high.y - low.y;
        draft.score += std::abs(std::log(doubled_area(loop) / 2 / (wish.area * scale_)));
        if (wish.use != Use::hall) draft.score += 0.5 * std::max(0.0, std::max(wide / deep, deep / wide) - 1.7);
        draft.rooms.push_back({wish.use, wish.id, wish.name, story_, loop});
        return true;
    }

    /// Rooms side by side along an axis, in this order.
    std::optional<Draft> row(Loop loop, Axis axis, const Wishes& wishes) const {
        Draft draft;
        double left = 0;
        for (const Wish* wish : wishes) left += wish->area;
        for (std::size_t i = 0; i < wishes.size(); ++i) {
            const Wish& wish = *wishes[i];
            if (i + 1 == wishes.size()) {
                if (!place(draft, wish, loop)) return std::nullopt;
                continue;
            }
            auto cut = cut_share(loop, axis, wish.area / left);
            if (!cut || !place(draft, wish, cut->low)) return std::nullopt;
            draft.partitions.push_back(
                partition(wish.id + "-side", "wall between " + wish.name + " and " + wishes[i + 1]->name, *cut));
            left -= wish.area;
            loop = std::move(cut->high);
        }
        return draft;
    }

    /// A hall along an axis, with rooms on both sides; its end at `day`, if any.
    std::optional<Draft> about_hall(const Loop& loop, Axis axis, const std::vector<Wish>& night, const Loop* day) const {
        std::optional<Draft> best;
        const std::vector<Share> shares = shares_of(night);
        const auto [low, high] = std::ranges::minmax(loop, {}, [axis](Point2 point) { return along(point, across(axis)); });
        const double last = along(high, across(axis)) - 1.5 - hall_wide;
        for (double at = along(low, across(axis)) + 1.5; at < last + 1e-6; at += 0.35) {
            const double rounded = std::round(at * 100) / 100;
            const auto below = cut_at(loop, across(axis), rounded);
            if (!below) continue;
            const auto above = cut_at(below->high, across(axis), rounded + hall_wide);
            if (!above) continue;
            if (day != nullptr) {
                const Border end = border_of(above->low, *day);
                if (end.to - end.from < least_hall_door) continue;
            }
            for (const Share& share : shares) sides(axis, {*below, *above}, share, best);
        }
        return best;
    }

    /// Which of the rooms lie on the low and on the high side of a hall.
    using Share = std::array<Wishes, 2>;
    static std::vector<Share> shares_of(const std::vector<Wish>& night) {
        std::vector<Share> shares;
        for (std::size_t first = 1; first < night.size(); ++first) {
            const Wishes all = all_of(night);
            const auto middle = all.begin() + static_cast<std::ptrdiff_t>(first);
            Wishes main(all.begin(), middle);
            const Wishes others(middle, all.end());
            std::ranges::reverse(main);  // the main bedroom at the far end
            shares.push_back({others, main});
            shares.push_back({main, others});
        }
        return shares;
    }
    void sides(Axis axis, const std::array<LoopCut, 2>& cuts, const Share& share, std::optional<Draft>& best) const {
        Draft draft;
        if (!place(draft, hall(story_), cuts[1].low)) return;
        draft.partitions.push_back(partition("hall-wall", "wall of the hall, " + side_word(axis, false), cuts[0]));
        draft.partitions.push_back(partition("other-hall-wall", "wall of the hall, " + side_word(axis, true), cuts[1]));
        for (const bool high : {false, true}) {
            const auto side = row(high ? cuts[1].high : cuts[0].low, axis, share.at(high ? 1 : 0));
            if (!side) return;
            draft.add(*side);
            if (best && draft.score >= best->score - 1e-9) return;
        }
        best = std::move(draft);
    }
    static std::string side_word(Axis axis, bool high) {
        if (axis == Axis::x) return high ? "at its back" : "at its front";
        return high ? "at its right" : "at its left";
    }

    /// The kitchen with the bath before or behind it on one side of a cut, the living room on the other.
    void bath_by_kitchen(Axis axis, bool low, const Wish& bath) {
        const double share = (bath.area + kitchen().area) / (bath.area + kitchen().area + living().area);
        const auto cut = cut_share(region_, axis, low ? share : 1 - share);
        if (!cut) return;
        const Loop& day = low ? cut->high : cut->low;
        if (side_on(day, outline_[0], outline_[1]) < least_front) return;
        for (const bool bath_first : {true, false}) {
            const Wishes both = bath_first ? Wishes{&bath, &kitchen()} : Wishes{&kitchen(), &bath};
            const auto rooms = row(low ? cut->low : cut->high, across(axis), both);
            if (!rooms) continue;
            Draft draft;
            draft.partitions.push_back(partition("kitchen-wall", "wall between kitchen and living room", *cut));
            draft.add(*rooms);
            if (place(draft, living(), day)) finish(draft);
        }
    }

    /// The night's rooms on one side of a cut, the rest on the other.
    void beside(Axis axis, bool low, double more, const std::vector<Wish>& night) {
        const bool upper = story_ > 1;
        if (!upper && night.size() == 1 && night.front().use == Use::bath) return bath_by_kitchen(axis, low, night.front());
        for (const bool with_hall : {true, false}) {
            if (with_hall ? upper || night.size() < 3 : night.size() > 3) continue;
            const double wanted = area_of(night) + (with_hall ? hall(story_).area : 0);
            const double share = std::min(0.8, more * wanted / (wanted + area_of(rest())));
            const auto cut = cut_share(region_, axis, low ? share : 1 - share);
            if (!cut) continue;
            const Loop& side = low ? cut->low : cut->high;
            const Loop& day = low ? cut->high : cut->low;
            const auto rooms = with_hall ? about_hall(side, axis, night, &day) : row(side, across(axis), all_of(night));
            if (!rooms) continue;
            Draft draft;
            draft.partitions.push_back(partition("night-wall", "wall beside " + night.front().name, *cut));
            draft.score = low ? 0.4 : 0;  // by the street and by the garage it is loud
            draft.add(*rooms);
            if (const auto whole = split_rest(day, draft)) finish(*whole);
        }
    }

    /// Living room and kitchen, or a hall, beside what is there.
    std::optional<Draft> split_rest(const Loop& day, const Draft& night) const {
        if (story_ > 1) {
            Draft draft = night;
            return place(draft, hall(story_), day) ? std::optional(draft) : std::nullopt;
        }
        std::optional<Draft> best;
        for (const Axis axis : {Axis::x, Axis::y}) {
            for (double share = 0.25; share < 0.76; share += 0.05) {
                const auto cut = cut_share(day, axis, share);
                if (!cut) continue;
                for (const bool low : {false, true}) {
                    const Loop& front = low ? cut->high : cut->low;
                    if (side_on(front, outline_[0], outline_[1]) < least_front) continue;
                    Draft draft = night;
                    draft.partitions.push_back(partition("kitchen-wall", "wall between kitchen and living room", *cut));
                    if (!place(draft, kitchen(), low ? cut->low : cut->high) || !place(draft, living(), front)) continue;
                    if (best && draft.score >= best->score - 1e-9) continue;
                    if (with_doors(draft)) best = std::move(draft);
                }
            }
        }
        return best;
    }

    /// The plan of a draft with all its doors; nothing: a door has no place.
    [[nodiscard]] std::optional<RoomPlan> with_doors(const Draft& draft) const {
        RoomPlan plan;
        if (story_ == 1 && garage_.x > 0) {
            plan.rooms.push_back({Use::garage, "garage", "garage", 1, {{0, 0}, {garage_.x, 0}, garage_, {0, garage_.y}}});
            plan.partitions.push_back({"garage-side", "wall beside the garage", {garage_.x, 0}, garage_, 1});
            plan.partitions.push_back({"garage-back", "wall behind the garage", garage_, {0, garage_.y}, 1});
        }
        plan.rooms.insert(plan.rooms.end(), draft.rooms.begin(), draft.rooms.end());
        plan.partitions.insert(plan.partitions.end(), draft.partitions.begin(), draft.partitions.end());
        if (!hang_doors(outline_, plan)) return std::nullopt;
        return plan;
    }

    void finish(const Draft& draft) {
        if (best_ && draft.score >= score_ - 1e-9) return;
        auto plan = with_doors(draft);
        if (!plan) return;
        best_ = std::move(plan);
        score_ = draft.score;
    }

    int story_;
    Loop outline_;
    Point2 garage_;
    Loop region_;
    double scale_ = 1;  ///< square meters for each that was wished for
    double score_ = 0;
    std::optional<RoomPlan> best_;
};

std::optional<RoomPlan> undivided(const NewHouse& house) {
    RoomPlan plan;
    const Point2 garage = garage_size(house);
    if (garage.x > 0) {
        plan.rooms.push_back({Use::garage, "garage", "garage", 1, {{0, 0}, {garage.x, 0}, garage, {0, garage.y}}});
        plan.partitions.push_back({"garage-side", "wall beside the garage", {garage.x, 0}, garage, 1});
        plan.partitions.push_back({"garage-back", "wall behind the garage", garage, {0, garage.y}, 1});
    }
    for (int story = 1; story <= house.stories; ++story) {
        const bool upper = story > 1;
        plan.rooms.push_back({Use::whole, upper ? "upstairs" : "living-space", upper ? "upstairs rooms" : "living space", story,
                              Story(story, house).region()});
    }
    if (!hang_doors(outline_of(house), plan)) return std::nullopt;
    return plan;
}

std::optional<RoomPlan> divided(const NewHouse& house) {
    if (house.bedrooms == 0) return undivided(house);
    if (!is_square(outline_of(house))) return std::nullopt;
    if (house.stories == 1) return Story(1, house).divide(night_rooms(house.bedrooms, house.baths));
    const bool bath_below = house.baths > 1;
    auto plan = Story(1, house).divide(bath_below ? std::vector<Wish>{lower_bath()} : std::vector<Wish>{});
    const auto upper = Story(2, house).divide(night_rooms(house.bedrooms, house.baths - (bath_below ? 1 : 0)));
    if (!plan || !upper) return std::nullopt;
    const std::size_t below = plan->partitions.size();
    plan->rooms.insert(plan->rooms.end(), upper->rooms.begin(), upper->rooms.end());
    plan->partitions.insert(plan->partitions.end(), upper->partitions.begin(), upper->partitions.end());
    for (UsualDoor door : upper->doors) {
        door.partition += below;
        plan->doors.push_back(std::move(door));
    }
    return plan;
}

}  // namespace

std::optional<RoomPlan> usual_rooms(const NewHouse& house) {
    // A form asks for the same house several times with each letter typed, and for smaller ones when it does not fit.
    struct Asked {
        NewHouse house;
        std::optional<RoomPlan> plan;
    };
    constexpr std::size_t kept = 16;
    thread_local std::vector<Asked> answers;
    const auto plain = [](const NewHouse& one) {
        return std::tuple(one.shape, one.length, one.depth, one.wing_length, one.wing_depth, one.stories, one.garage,
                          one.bedrooms, one.baths);
    };
    const auto same = [&](const Asked& asked) {
        return plain(asked.house) == plain(house) && asked.house.corners == house.corners;
    };
    const auto known = std::ranges::find_if(answers, same);
    if (known != answers.end()) return known->plan;
    if (answers.size() == kept) answers.erase(answers.begin());
    answers.push_back({house, divided(house)});
    return answers.back().plan;
}

RoomCount most_rooms(const NewHouse& house) {
    NewHouse other = house;
    for (other.bedrooms = house.bedrooms; other.bedrooms > 0; --other.bedrooms) {
        for (const int baths : {house.baths, 1}) {
            other.baths = baths;
            if (usual_rooms(other)) return {other.bedrooms, other.baths};
        }
    }
    return {};
}

}  // namespace seamward::viewer
