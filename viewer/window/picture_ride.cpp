// SPDX-License-Identifier: GPL-3.0-or-later
// The ride of the picture.
#include <algorithm>

#include "document/translations.h"
#include "document/way_text.h"
#include "window/picture_canvas.h"

namespace seamward::viewer {

bool PictureCanvas::can_ride() const {
    return scene_.has_house() && document_.chosen() != nullptr && Ride(scene_.chosen_line()).possible();
}

Ride PictureCanvas::ride() const {
    return Ride(scene_.chosen_line(), [this](const Point& from, const Point& to) { return scene_.house().is_free(from, to); });
}

void PictureCanvas::start_ride() {
    if (is_riding() || !can_ride()) return;
    set_tool(Tool::look);
    flight_.stop();
    ride_.emplace(ride());
    before_ride_ = camera_;
    open_before_ride_ = scene_.house().is_open();
    scene_.set_open(false);
    scene_.set_riding(true);
    at_rest_.stop();
    ride_at_ = 0;
    set_ride_going(animated_);
    ride_to(0);
}

void PictureCanvas::end_ride() {
    if (!is_riding()) return;
    ride_timer_.stop();
    ride_.reset();
    scene_.set_riding(false);
    scene_.set_open(open_before_ride_);
    camera_ = *before_ride_;
    before_ride_.reset();
    redraw();
    emit ride_ended();
}

void PictureCanvas::ride_to(double seconds) {
    if (!is_riding()) return;
    ride_at_ = std::clamp(seconds, 0.0, ride_->duration());
    camera_ = ride_->eye(ride_at_);
    redraw();
    emit ride_moved(ride_at_, ride_timer_.isActive());
}

void PictureCanvas::set_ride_going(bool going) {
    if (!is_riding()) return;
    if (going && ride_at_ >= ride_->duration()) ride_at_ = 0;
    if (going) {
        ride_clock_.start();
        ride_timer_.start();
    } else {
        ride_timer_.stop();
    }
    emit ride_moved(ride_at_, going);
}

void PictureCanvas::next_frame() {
    constexpr double longest_step = 0.12;  // seconds: a slow picture slows the ride and does not jump
    const double passed = static_cast<double>(ride_clock_.restart()) / 1000;
    const double to = ride_at_ + std::min(passed, longest_step) * ride_speed_;
    if (to >= ride_->duration()) ride_timer_.stop();
    ride_to(to);
}

void PictureCanvas::change_ride_speed(bool faster) {
    ride_speed_ = std::clamp(faster ? ride_speed_ * 2 : ride_speed_ / 2, slowest_ride, fastest_ride);
    if (is_riding()) emit ride_moved(ride_at_, ride_timer_.isActive());
}

QString PictureCanvas::ride_words() const {
    if (!is_riding() || document_.chosen() == nullptr) return {};
    const RankedPath& way = *document_.chosen();
    const Survey& survey = document_.job().survey;
    const WayLine& line = scene_.chosen_line();
    if (ride_->arrived(ride_at_)) return tr("Arrived in: %1").arg(spoken_name(survey[way.path.to()]));
    if (const auto stop = ride_->near(ride_at_)) {
        const std::size_t step = line.stops[*stop].step;
        const Gap& gap = survey[way.path.gaps[step]];
        const QString width = gap_width_text(gap);
        const QString name = spoken_name(gap);
        const QString words =
            way.path.gaps[step] == way.pinch_gap ? tr("Gap %1 of %2, the smallest: %3, %4") : tr("Gap %1 of %2: %3, %4");
        return words.arg(step + 1).arg(way.path.gaps.size()).arg(name, width);
    }
    const std::size_t passed = ride_->passed(ride_at_);
    const std::size_t space = passed == 0 ? 0 : line.stops[passed - 1].step + 1;
    return tr("In: %1").arg(spoken_name(survey[way.path.spaces[space]]));
}

}  // namespace seamward::viewer
