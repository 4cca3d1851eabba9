// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/usual_features.h"

#include <algorithm>
#include <cmath>

#include "catalog/shipped.h"

namespace seamward::viewer {

namespace {

using Where = HousePlaces::Where;
using Side = HousePlaces::Side;
using Foundation = NewHouse::Foundation;
using Roof = NewHouse::Roof;
using Cladding = NewHouse::Cladding;

/// Puts openings and features where there is room for them, and leaves out those that have none.
class UsualHouse {
public:
    UsualHouse(const NewHouse& house, HousePlaces& places) : house_(house), places_(places) {}

    UsualParts make() {
        hang_doors();
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
    [[nodiscard]] const std::string& wall(std::size_t at) const { return places_.walls()[at]; }

    /// What is usual in rooms of one use is called after the room, where there is one.
    static std::string id_in(const UsualRoom& room, const std::string& what) { return room.id + "-" + what; }
    static std::string name_in(const UsualRoom& room, const std::string& type) {
        return ", name: \"" + shipped_features().find(type)->name + ", " + room.name + "\"";
    }

    void add(const std::string& id, const std::string& type, const std::string& where) {
        parts_.features.push_back("id: " + id + ", type: " + type + (where.empty() ? "" : ", ") + where +
                                  ", evidence: {how: assumed}, note: \"usual place and width: check on site\"");
    }

    struct Opening {
        std::string id, name, kind;
        double width, height, sill;
        std::string more;
    };
    void add_opening(const Opening& opening, const std::string& in, int story, double along) {
        parts_.openings.push_back("id: " + opening.id + ", name: \"" + opening.name + "\", kind: " + opening.kind +
                                  ", in: " + in + story_key(story) + ", along: " + meters_text(along) +
                                  ", width: " + meters_text(opening.width) + ", height: " + meters_text(opening.height) +
                                  (opening.kind == "window" ? ", sill: " + meters_text(opening.sill) : "") + opening.more);
        made_.push_back(opening.id);
    }
    void open(const Opening& opening, const std::vector<Side>& sides, double share, Where where) {
        const auto spot = places_.on_sides(sides, 1, share, opening.width + 0.3, where);
        if (spot) add_opening(opening, wall(spot->wall), 1, spot->along);
    }
    void open(const Opening& opening, const UsualRoom& room, double share) {
        const auto spot = places_.on_room(room, share, opening.width + 0.3);
        if (spot) add_opening(opening, wall(spot->wall), room.story, spot->along);
    }
    [[nodiscard]] bool has(const std::string& opening) const { return std::ranges::count(made_, opening) > 0; }
    /// The first room of a use; there is one, or the story is not divided.
    [[nodiscard]] Where first(RoomUse use) const { return {Where::Of::room, places_.rooms(use, 1).front()}; }

    void hang_doors() {
        for (const UsualDoor& door : places_.plan().doors) {
            const UsualPartition& in = places_.plan().partitions[door.partition];
            add_opening({door.id, door.name, door.archway ? "archway" : "door", door.width, 2.03, 0, ""}, in.id, in.story,
                        door.along);
        }
    }

    void place_openings(int story) {
        if (story == 1) doors_outside();
        for (const UsualRoom* room : places_.rooms(RoomUse::bedroom, story)) {
            const std::string name = room->use == RoomUse::whole ? "window of the " + room->name : room->name + " window";
            open({id_in(*room, "window"), name, "window", 1.2, 1.2, 0.9, ""}, *room, 0.5);
        }
        if (story == 1) windows_by_day();
        for (const UsualRoom* room : places_.rooms(RoomUse::bath, story)) {
            if (room->use == RoomUse::whole) continue;
            open({id_in(*room, "window"), room->name + " window", "window", 0.6, 0.6, 1.4, ""}, *room, 0.5);
        }
        if (story == 1 && house_.foundation == Foundation::crawl_space)
            open({"crawl-door", "crawl door", "crawl-door", 0.75, 0.36, 0, ""}, {Side::left, Side::back}, 0.35,
                 HousePlaces::anywhere);
    }
    void doors_outside() {
        const double garage = garage_size(house_).x;
        const double front = places_.length(0);
        if (garage > 0) {
            const double wide = house_.garage == NewHouse::Garage::two_cars ? 4.8 : 2.6;
            open({"garage-door", "garage door", "garage-door", wide, 2.1, 0, ""}, {Side::front}, garage / 2 / front,
                 HousePlaces::in_garage);
        }
        const double share = (garage + (front - garage) * 0.25) / front;
        open({"front-door", "front door", "door", 0.91, 2.03, 0, ""}, {Side::front, Side::right, Side::back, Side::left}, share,
             first(RoomUse::living));
        const Opening patio{"patio-door",
                            "sliding door to the patio",
                            "sliding-door",
                            1.8,
                            2.05,
                            0,
                            ", frame: {id: patio-door-frame, name: \"sill of the sliding door\"}"};
        for (const RoomUse use : {RoomUse::living, RoomUse::kitchen}) {
            if (!has(patio.id)) open(patio, {Side::back, Side::right}, 0.35, first(use));
        }
    }
    void windows_by_day() {
        const double garage = garage_size(house_).x;
        const double front = places_.length(0);
        open({"front-window", "front window", "window", 1.4, 1.2, 0.9, ""}, {Side::front, Side::right, Side::left},
             (garage + (front - garage) * 0.72) / front, first(RoomUse::living));
        open({"kitchen-window", "kitchen window", "window", 1.2, 1, 1.1,
              ", frame: {id: kitchen-window-frame, name: \"frame of the kitchen window\"}"},
             *first(RoomUse::kitchen).room, 0.6);
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

    /// A feature on the first of these sides that has a place.
    void put(const std::string& id, const std::string& type, const std::vector<Side>& sides, double share, Where where,
             const std::string& more = "", double width = 0.3) {
        if (const auto spot = places_.on_sides(sides, 1, share, width, where))
            add(id, type, "on: " + wall(spot->wall) + ", along: " + meters_text(spot->along) + more);
    }
    /// A feature on an outside wall of a room, or on a partition of it.
    void put_in(const UsualRoom& room, const std::string& what, const std::string& type, double share,
                const std::string& more = "") {
        if (const auto spot = places_.on_room(room, share, 0.3)) {
            add(id_in(room, what), type,
                "on: " + wall(spot->wall) + story_key(room.story) + name_in(room, type) + ", along: " + meters_text(spot->along) +
                    more);
            return;
        }
        put_inside(room, what, type);
    }
    /// On a partition, with the wires that come down to it through the plate above.
    void put_inside(const UsualRoom& room, const std::string& what, const std::string& type) {
        const auto spot = places_.on_partition(room, 0.3);
        if (!spot) return;
        const std::string& partition = places_.plan().partitions[spot->wall].id;
        const std::string where = "on: " + partition + story_key(room.story) + ", along: " + meters_text(spot->along);
        add(id_in(room, what), type, where + name_in(room, type) + ", side: " + room.id);
        const bool wired = type == "switch" || type == "outlet";
        if (wired && std::ranges::count(wired_, partition) == 0) {
            add(partition + "-wires", "top-plate-hole", where);
            wired_.push_back(partition);
        }
    }

    void walking_round() {
        const Where anywhere = HousePlaces::anywhere;
        const Where house = HousePlaces::in_house;
        const bool garage = garage_size(house_).x > 0;
        const Where by_panel = garage ? HousePlaces::in_garage : house;
        const Where laundry = garage ? HousePlaces::in_garage : first(RoomUse::kitchen);
        put("bibb-front", "hose-bibb", {Side::front, Side::right}, 0.95, anywhere, ", inside: none");
        put("front-light", "exterior-light", {Side::front, Side::right}, 0.5, anywhere);
        put("front-outlet", "exterior-outlet", {Side::front, Side::left}, 0.6, anywhere);
        put("line-set", "line-set", {Side::right, Side::back}, 0.8, house);
        put("cable", "cable-entry", {Side::front, Side::right, Side::back}, 0.7, first(RoomUse::living));
        put("gas-riser", "gas-riser", {Side::right, Side::back}, 0.5, anywhere, ", inside: none");
        put("bibb-back", "hose-bibb", {Side::back, Side::right}, 0.9, house);
        put("patio-light", "exterior-light", {Side::back, Side::right}, 0.25, anywhere);
        // Never on the front, whose siding laps run at its height.
        put("dryer", "dryer-outlet", {Side::back, Side::left, Side::right}, 0.1, laundry,
            ", space: {id: dryer-duct, name: \"dryer duct\"}");
        put("laundry", "laundry-box", {Side::back, Side::left, Side::front}, 0.15, laundry);
        put("service", "service-conduit", {Side::left, Side::right}, 0.7, anywhere);
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
        for (const UsualRoom& room : places_.plan().rooms) {
            const std::string window = id_in(room, "window");
            if (has(window) && window != "kitchen-window") on(window.c_str(), (window + "-sash").c_str(), "window-sash");
        }
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
            if (const auto at = places_.under_roof(which)) {
                add(id, type, "at: " + point_text(*at) + more);
                on_roof_.push_back(*at);
            }
        };
        roof(0, "roof-vent", "roof-vent", "");
        roof(1, "vent-pipe", "vent-pipe-boot", ", space: {id: vent-piping, name: \"plumbing vent\"}");
        for (const auto& [side, id] : {std::pair{Side::front, "wires-front"}, std::pair{Side::back, "wires-back"}}) {
            if (const auto along = places_.on_wall(places_.wall(side), house_.stories, 0.8, 0.8, HousePlaces::anywhere))
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

    /// A feature in the ceiling or the floor of a room; whether there was a place.
    bool at_point(const UsualRoom& room, const std::string& what, const std::string& type, Point2 share, double clear,
                  const std::string& more = "") {
        const auto at = places_.in_plan(room.story, share, clear, {Where::Of::room, &room});
        if (at) add(id_in(room, what), type, "at: " + point_text(*at) + story_key(room.story) + name_in(room, type) + more);
        return at.has_value();
    }

    void through_the_floor() {
        if (house_.foundation == Foundation::slab) return;
        const UsualRoom& kitchen = *first(RoomUse::kitchen).room;
        at_point(kitchen, "waste", "waste-pipe-floor", {0.3, 0.9}, 0.2, ", on: floor");
        at_point(kitchen, "supply", "supply-pipes-floor", {0.4, 0.9}, 0.2, ", on: floor");
        for (const UsualRoom* bath : places_.rooms(RoomUse::bath, 1))
            at_point(*bath, "bath-waste", "waste-pipe-floor", {0.7, 0.75}, 0.2, ", on: floor");
        for (const RoomUse use : {RoomUse::living, RoomUse::bedroom}) {
            for (const UsualRoom* room : places_.rooms(use, 1)) {
                if (use == RoomUse::living || room->use != RoomUse::whole)
                    at_point(*room, "floor-register", "supply-register", {0.7, 0.2}, 0.3, ", on: floor");
            }
        }
        put("wires-floor", "bottom-plate-hole", {Side::back, Side::front}, 0.55, HousePlaces::in_house,
            ", count: 2, spacing: 0.15 m", 0.4);
        if (house_.foundation == Foundation::crawl_space) {
            put("crawl-vents-front", "crawl-vent", {Side::front}, 0.5, HousePlaces::anywhere, "", 0.6);
            put("crawl-vents-back", "crawl-vent", {Side::back, Side::right}, 0.5, HousePlaces::anywhere, "", 0.6);
        }
        put("water-main", "water-main", {Side::right, Side::left}, 0.5, HousePlaces::anywhere, ", up: -0.45 m");
    }

    void inside(int story) {
        const bool top = story == house_.stories;
        ceilings(story, top);
        for (const UsualRoom* bath : places_.rooms(RoomUse::bath, story)) {
            put_in(*bath, "toilet", "toilet-stub", 0.9);
            put_in(*bath, "shower", "shower-arm", 0.1);
            put_in(*bath, "sink", "sink-stubs", 0.3);
            put_in(*bath, "drain", "sink-drain", 0.4);
        }
        if (story == 1) {
            const UsualRoom& kitchen = *first(RoomUse::kitchen).room;
            put_in(kitchen, "sink-pipes", "sink-stubs", 0.8);
            put_in(kitchen, "sink-drain", "sink-drain", 0.85);
            put_in(kitchen, "counter-outlet", "outlet", 0.4);
        }
        for (const RoomUse use : {RoomUse::living, RoomUse::bedroom}) {
            for (const UsualRoom* room : places_.rooms(use, story)) {
                const bool again = use == RoomUse::bedroom && room->use == RoomUse::whole;
                put_in(*room, again ? "back-outlet" : "outlet", "outlet", again ? 0.2 : 0.85);
                if (!again) put_inside(*room, "switch", "switch");
            }
        }
        for (const UsualRoom* hall : places_.rooms(RoomUse::hall, story)) put_inside(*hall, "switch", "switch");
    }

    void ceilings(int story, bool top) {
        std::vector<const UsualRoom*> halls = places_.rooms(RoomUse::hall, story);
        for (const RoomUse use : {RoomUse::living, RoomUse::bedroom}) {
            for (const UsualRoom* room : places_.rooms(use, story)) halls.push_back(room);
        }
        for (const UsualRoom* room : halls) {
            if (at_point(*room, "smoke-alarm", "smoke-alarm", {0.5, 0.5}, 0.15, ", on: ceiling")) break;
        }
        for (const UsualRoom* room : halls) {
            if (top && at_point(*room, "attic-hatch", "attic-hatch", {0.35, 0.5}, room->use == RoomUse::hall ? 0.31 : 0.5)) break;
        }
        for (const RoomUse use : {RoomUse::living, RoomUse::kitchen}) {
            for (const UsualRoom* room : places_.rooms(use, story)) {
                const bool again = use == RoomUse::kitchen && room->use == RoomUse::whole;
                if (again) continue;
                if (!at_point(*room, "lights", "recessed-light", {0.6, 0.4}, 0.9, ", on: ceiling, count: 2, spacing: 0.9 m"))
                    at_point(*room, "light", "recessed-light", {0.5, 0.5}, 0.2, ", on: ceiling");
            }
        }
        if (!top) return;
        for (const RoomUse use : {RoomUse::living, RoomUse::bedroom}) {
            for (const UsualRoom* room : places_.rooms(use, story)) {
                const bool again = use == RoomUse::bedroom && room->use == RoomUse::whole;
                at_point(*room, again ? "back-register" : "register", "supply-register", {again ? 0.4 : 0.7, again ? 0.8 : 0.25},
                         0.3, ", on: ceiling");
            }
        }
        for (const UsualRoom* bath : places_.rooms(RoomUse::bath, story)) fan_of(*bath);
    }

    void fan_of(const UsualRoom& bath) {
        const auto at = places_.in_plan(bath.story, {0.5, 0.6}, 0.25, {Where::Of::room, &bath});
        if (!at || !has_roof_above(*at)) return;
        const std::string fan = id_in(bath, "fan");
        add(fan, "bath-fan",
            "at: " + point_text(*at) + story_key(bath.story) + name_in(bath, "bath-fan") + ", space: {id: " + fan +
                "-duct, name: \"bath fan duct\"}");
        add(fan + "-cap", "exhaust-cap", "space: " + fan + "-duct");
    }
    /// Whether a duct goes up there: not under the low edge of a shed roof, and clear of what stands on the roof.
    [[nodiscard]] bool has_roof_above(Point2 at) const {
        if (house_.roof == Roof::shed) {
            const Loop& outline = places_.outline();
            const std::size_t low = low_wall(outline);
            if (to_edge({outline[low], outline[low + 1 < outline.size() ? low + 1 : 0]}, at) < 2.5) return false;
        }
        return std::ranges::all_of(on_roof_, [&](Point2 other) { return std::hypot(other.x - at.x, other.y - at.y) > 0.8; });
    }

    const NewHouse& house_;
    HousePlaces& places_;
    UsualParts parts_;
    std::vector<Point2> on_roof_;
    std::vector<std::string> made_;   ///< ids of openings
    std::vector<std::string> wired_;  ///< ids of partitions
};

}  // namespace

UsualParts usual_parts(const NewHouse& house, HousePlaces& places) { return UsualHouse(house, places).make(); }

}  // namespace seamward::viewer
