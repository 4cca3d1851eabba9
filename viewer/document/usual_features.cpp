// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/usual_features.h"

#include <algorithm>
#include <cmath>

namespace seamward::viewer {

namespace {

using Room = HousePlaces::Room;
using Side = HousePlaces::Side;
using Foundation = NewHouse::Foundation;
using Roof = NewHouse::Roof;
using Cladding = NewHouse::Cladding;

/// Puts openings and features where there is room for them, and leaves out those that have none.
class UsualHouse {
public:
    UsualHouse(const NewHouse& house, HousePlaces& places) : house_(house), places_(places) {}

    UsualParts make() {
        for (int story = 1; story <= house_.stories; ++story) place_openings(story);
        foot_of_the_walls();
        walking_round();
        on_openings();
        eaves_and_roof();
        through_the_floor();
        for (int story = 1; story <= house_.stories; ++story) inside(story);
        return std::move(parts_);
    }

private:
    static std::string story_key(int story) { return story > 1 ? ", story: " + std::to_string(story) : ""; }
    /// An id in each story: "sink", "sink-up".
    static std::string in_story(const std::string& id, int story) { return story > 1 ? id + "-up" : id; }
    [[nodiscard]] const std::string& wall(std::size_t at) const { return places_.walls()[at]; }

    void add(const std::string& id, const std::string& type, const std::string& where) {
        parts_.features.push_back("id: " + id + ", type: " + type + (where.empty() ? "" : ", ") + where +
                                  ", evidence: {how: assumed}, note: \"usual place and width: check on site\"");
    }

    struct Opening {
        const char* id;
        const char* name;
        const char* kind;
        double width, height, sill;
        const char* more;
    };
    /// Whether there was room.
    bool open(const Opening& opening, const std::vector<Side>& sides, int story, double share, Room room) {
        const auto spot = places_.on_sides(sides, story, share, opening.width + 0.3, room);
        if (!spot) return false;
        const std::string kind = opening.kind;
        parts_.openings.push_back("id: " + std::string(opening.id) + ", name: \"" + opening.name + "\", kind: " + kind +
                                  ", in: " + wall(spot->wall) + story_key(story) + ", along: " + meters_text(spot->along) +
                                  ", width: " + meters_text(opening.width) + ", height: " + meters_text(opening.height) +
                                  (kind == "window" ? ", sill: " + meters_text(opening.sill) : "") + opening.more);
        made_.push_back(opening.id);
        return true;
    }
    [[nodiscard]] bool has(const std::string& opening) const { return std::ranges::count(made_, opening) > 0; }

    void place_openings(int story) {
        if (story > 1) {
            open({"upper-front-window", "upper front window", "window", 1.4, 1.2, 0.9, ""}, {Side::front}, story, 0.35,
                 Room::any);
            open({"upper-back-window", "upper back window", "window", 1.4, 1.2, 0.9, ""}, {Side::back}, story, 0.6, Room::any);
            return;
        }
        const Point2 garage = garage_size(house_);
        const double front = places_.length(0);
        if (garage.x > 0) {
            const double wide = house_.garage == NewHouse::Garage::two_cars ? 4.8 : 2.6;
            open({"garage-door", "garage door", "garage-door", wide, 2.1, 0, ""}, {Side::front}, 1, garage.x / 2 / front,
                 Room::garage);
            parts_.openings.push_back(
                "id: garage-house-door, name: \"door from the garage into the house\", kind: door, in: "
                "garage-side, along: " +
                meters_text(garage.y / 2) + ", width: 0.81 m, height: 2.03 m");
            made_.emplace_back("garage-house-door");
        }
        const auto share = [&](double of_living) { return (garage.x + (front - garage.x) * of_living) / front; };
        const std::vector<Side> any{Side::front, Side::right, Side::back, Side::left};
        open({"front-door", "front door", "door", 0.91, 2.03, 0, ""}, any, 1, share(0.25), Room::living);
        open({"patio-door", "sliding door to the patio", "sliding-door", 1.8, 2.05, 0,
              ", frame: {id: patio-door-frame, name: \"sill of the sliding door\"}"},
             {Side::back, Side::right}, 1, 0.35, Room::living);
        open({"front-window", "front window", "window", 1.4, 1.2, 0.9, ""}, {Side::front, Side::right}, 1, share(0.72),
             Room::living);
        open({"kitchen-window", "kitchen window", "window", 1.2, 1, 1.1,
              ", frame: {id: kitchen-window-frame, name: \"frame of the kitchen window\"}"},
             {Side::back, Side::left}, 1, 0.75, Room::living);
        open({"side-window", "side window", "window", 1, 1.2, 0.9, ""}, {Side::right}, 1, 0.6, Room::living);
        if (house_.foundation == Foundation::crawl_space)
            open({"crawl-door", "crawl door", "crawl-door", 0.75, 0.36, 0, ""}, {Side::left, Side::back}, 1, 0.35, Room::any);
    }

    void foot_of_the_walls() {
        for (std::size_t i = 0; i < places_.walls().size(); ++i) {
            const std::string on = "on: " + wall(i);
            if (house_.cladding == Cladding::stucco) add("screed-" + wall(i), "weep-screed", on);
            if (house_.cladding == Cladding::brick) add("brick-weeps-" + wall(i), "brick-weep", on);
            // Behind a weep screed or open joints in the brick there is no room for a second joint at the foot of the wall.
            if (house_.cladding == Cladding::siding && house_.foundation == Foundation::slab)
                add("sill-joint-" + wall(i), "slab-sill-joint", on);
            if (house_.cladding != Cladding::stucco && house_.foundation != Foundation::slab)
                add("sill-plate-" + wall(i), "sill-plate-joint", on);
        }
        if (house_.cladding == Cladding::siding) add("siding-laps", "siding-laps", "on: " + wall(0));
        if (house_.cladding == Cladding::brick && house_.roof != Roof::flat)
            add("brick-top", "brick-top", "on: " + wall(low_side()) + story_key(house_.stories));
    }

    /// A wall under an eave.
    [[nodiscard]] std::size_t low_side() const {
        if (house_.roof == Roof::shed) return low_wall(places_.outline());
        if (house_.roof != Roof::gable) return 0;
        const std::vector<std::size_t> gables = gable_walls(places_.outline());
        for (std::size_t i = 0; i < places_.walls().size(); ++i) {
            if (std::ranges::count(gables, i) == 0) return i;
        }
        return 0;
    }

    /// A feature on the first of these sides that has a place; whether there was one.
    bool put(const std::string& id, const std::string& type, const std::vector<Side>& sides, double share, Room room,
             const std::string& more = "", int story = 1, double width = 0.3) {
        const auto spot = places_.on_sides(sides, story, share, width, room);
        if (!spot) return false;
        add(id, type, "on: " + wall(spot->wall) + story_key(story) + ", along: " + meters_text(spot->along) + more);
        return true;
    }

    void walking_round() {
        put("bibb-front", "hose-bibb", {Side::front, Side::right}, 0.95, Room::any, ", inside: none");
        put("front-light", "exterior-light", {Side::front, Side::right}, 0.5, Room::any);
        put("front-outlet", "exterior-outlet", {Side::front, Side::left}, 0.6, Room::any);
        put("line-set", "line-set", {Side::right, Side::back}, 0.8, Room::living);
        put("cable", "cable-entry", {Side::right, Side::back}, 0.3, Room::living);
        put("gas-riser", "gas-riser", {Side::right, Side::back}, 0.5, Room::any, ", inside: none");
        put("bibb-back", "hose-bibb", {Side::back, Side::right}, 0.9, Room::living);
        put("patio-light", "exterior-light", {Side::back, Side::right}, 0.25, Room::any);
        put("dryer", "dryer-outlet", {Side::back, Side::left}, 0.1, Room::living,
            ", space: {id: dryer-duct, name: \"dryer duct\"}");
        put("service", "service-conduit", {Side::left, Side::right}, 0.7, Room::any);
        const Room by_panel = garage_size(house_).x > 0 ? Room::garage : Room::living;
        put("panel-knockout", "panel-knockout", {Side::left, Side::right}, 0.8, by_panel, ", up: 1.5 m");
    }

    void on_openings() {
        const auto on = [&](const char* opening, const char* id, const char* type) {
            if (has(opening)) add(id, type, "on: " + std::string(opening));
        };
        on("front-door", "front-door-sweep", "door-sweep");
        on("front-door", "front-door-weatherstrip", "door-weatherstrip");
        on("garage-door", "garage-door-bottom", "garage-door-bottom");
        on("garage-door", "garage-door-sides", "garage-door-side");
        on("garage-door", "garage-door-corners", "garage-door-corner");
        on("garage-house-door", "garage-house-sweep", "door-sweep");
        on("patio-door", "patio-door-weeps", "slider-weep");
        on("patio-door", "patio-door-track", "slider-track");
        on("kitchen-window", "kitchen-window-weeps", "window-weep");
        on("kitchen-window", "kitchen-window-sash", "window-sash-inner");
        on("front-window", "front-window-sash", "window-sash");
        on("front-window", "front-window-sides", "window-perimeter");
        on("side-window", "side-window-sash", "window-sash");
        on("upper-front-window", "upper-front-sash", "window-sash");
        on("upper-back-window", "upper-back-sash", "window-sash");
        on("crawl-door", "crawl-door-sides", "crawl-door");
    }

    void eaves_and_roof() {
        if (house_.roof != Roof::flat) {
            add("soffit-joint", "soffit-joint", "");
            add("soffit-vents", "soffit-vent", "");
            add("eave-baffles", "eave-baffle", "");
        }
        if (house_.roof == Roof::gable) gable_vents();
        const auto roof = [&](std::size_t which, const char* id, const char* type, const std::string& more) {
            if (const auto at = places_.under_roof(which)) add(id, type, "at: " + point_text(*at) + more);
        };
        roof(0, "roof-vent", "roof-vent", "");
        roof(1, "vent-pipe", "vent-pipe-boot", ", space: {id: vent-piping, name: \"plumbing vent\"}");
        for (const auto& [side, id] : {std::pair{Side::front, "wires-front"}, std::pair{Side::back, "wires-back"}}) {
            if (const auto along = places_.on_wall(places_.wall(side), house_.stories, 0.8, 0.8, Room::any))
                add(id, "top-plate-hole",
                    "on: " + wall(places_.wall(side)) + story_key(house_.stories) + ", along: " + meters_text(*along) +
                        ", count: 3, spacing: 0.2 m");
        }
    }

    void gable_vents() {
        const std::vector<std::size_t> gables = gable_walls(places_.outline());
        for (const std::size_t gable : gables) {
            const double rise = places_.length(gable) / 2 * 4 / 12;  // as the roof is pitched
            if (rise < 1) continue;
            add("gable-vent-" + wall(gable), "gable-vent",
                "on: " + wall(gable) + story_key(house_.stories) + ", along: " + meters_text(places_.length(gable) / 2) +
                    ", up: " + meters_text(std::round((UsualSizes::story + rise * 0.45) * 100) / 100));
        }
    }

    void at_point(const std::string& id, const std::string& type, int story, Point2 share, double clear,
                  const std::string& more = "") {
        if (const auto at = places_.in_plan(story, share, clear))
            add(id, type, "at: " + point_text(*at) + story_key(story) + more);
    }

    void through_the_floor() {
        if (house_.foundation == Foundation::slab) return;
        at_point("kitchen-waste", "waste-pipe-floor", 1, {0.3, 0.9}, 0.2, ", on: floor");
        at_point("kitchen-supply", "supply-pipes-floor", 1, {0.35, 0.9}, 0.2, ", on: floor");
        at_point("bath-waste", "waste-pipe-floor", 1, {0.75, 0.8}, 0.2, ", on: floor");
        at_point("register-floor-front", "supply-register", 1, {0.7, 0.15}, 0.3, ", on: floor");
        at_point("register-floor-back", "supply-register", 1, {0.4, 0.75}, 0.3, ", on: floor");
        put("wires-floor", "bottom-plate-hole", {Side::back, Side::front}, 0.55, Room::living, ", count: 2, spacing: 0.15 m", 1,
            0.4);
        if (house_.foundation == Foundation::crawl_space) {
            put("crawl-vents-front", "crawl-vent", {Side::front}, 0.5, Room::any, "", 1, 0.6);
            put("crawl-vents-back", "crawl-vent", {Side::back, Side::right}, 0.5, Room::any, "", 1, 0.6);
        }
        put("water-main", "water-main", {Side::right, Side::left}, 0.5, Room::any, ", up: -0.45 m");
    }

    void inside(int story) {
        const bool top = story == house_.stories;
        at_point(in_story("lights", story), "recessed-light", story, {0.65, 0.3}, 0.9, ", on: ceiling, count: 2, spacing: 0.9 m");
        at_point(in_story("smoke-alarm", story), "smoke-alarm", story, {0.5, 0.5}, 0.2, ", on: ceiling");
        if (top) {
            at_point("register-front", "supply-register", story, {0.75, 0.2}, 0.35, ", on: ceiling");
            at_point("register-back", "supply-register", story, {0.45, 0.8}, 0.35, ", on: ceiling");
            at_point("attic-hatch", "attic-hatch", story, {0.5, 0.5}, 0.55);
            at_point("bath-fan", "bath-fan", story, {0.8, 0.75}, 0.3, ", space: {id: fan-duct, name: \"bath fan duct\"}");
            if (!parts_.features.empty() && parts_.features.back().starts_with("id: bath-fan"))
                add("fan-cap", "exhaust-cap", "space: fan-duct");
        }
        const auto along = [&](const std::string& id, const char* type, const std::vector<Side>& sides, double share) {
            put(in_story(id, story), type, sides, share, Room::living, "", story);
        };
        along("outlet", "outlet", {Side::front, Side::right}, 0.85);
        along("outlet-back", "outlet", {Side::back, Side::right}, 0.65);
        along("switch", "switch", {Side::front, Side::right}, 0.5);
        along("bath-sink", "sink-stubs", {Side::right, Side::back}, 0.7);
        along("bath-drain", "sink-drain", {Side::right, Side::back}, 0.75);
        along("toilet", "toilet-stub", {Side::right, Side::back}, 0.9);
        along("shower", "shower-arm", {Side::right, Side::back}, 0.4);
        if (story > 1) return;
        along("kitchen-sink", "sink-stubs", {Side::back, Side::left}, 0.8);
        along("kitchen-drain", "sink-drain", {Side::back, Side::left}, 0.85);
        along("laundry", "laundry-box", {Side::back, Side::left}, 0.15);
    }

    const NewHouse& house_;
    HousePlaces& places_;
    UsualParts parts_;
    std::vector<std::string> made_;
};

}  // namespace

UsualParts usual_parts(const NewHouse& house, HousePlaces& places) { return UsualHouse(house, places).make(); }

}  // namespace seamward::viewer
