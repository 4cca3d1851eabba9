// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QSlider>
#include <QToolButton>
#include <QWidget>
#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "layers/house_layer.h"

namespace seamward::viewer {

/// From where one looks at the house.
enum class Side : std::uint8_t { south, east, north, west, above };
inline constexpr std::size_t side_count = 5;

/// Where the house is cut: what is nearer than the plane, seen from a side, is taken away.
struct Cut {
    Side from = Side::south;
    double depth = 0.5;  ///< 0: nothing is taken away yet, 1: all
    friend bool operator==(const Cut&, const Cut&) = default;
};

/// The strip of tools under the picture: which layers of the house are whole, faint or hidden, from which side one looks, a cut,
/// measuring, and the ride along the chosen way.
class ViewTools : public QWidget {
    Q_OBJECT

public:
    explicit ViewTools(QWidget* parent = nullptr);

    /// Only layers that the house has can be changed.
    void set_present(const std::array<bool, coat_count>& present);
    void set_shown(Coat coat, Shown shown);
    [[nodiscard]] Shown shown(Coat coat) const { return shown_.at(static_cast<std::size_t>(coat)); }
    void set_open(bool open);
    void set_cut(const std::optional<Cut>& cut);
    [[nodiscard]] std::optional<Cut> cut() const;
    void set_measuring(bool measuring);
    void set_can_ride(bool can);
    /// Whether what the signs mean is shown.
    [[nodiscard]] bool shows_key() const { return key_->isChecked(); }
    /// Whole, then faint, then hidden, then whole again.
    void step(Coat coat);

signals:
    void shown_changed(seamward::viewer::Coat coat, seamward::viewer::Shown shown);
    void open_changed(bool open);
    void side_wanted(seamward::viewer::Side side);
    void cut_changed();
    void measuring_changed(bool measuring);
    void ride_wanted();
    void key_wanted(bool shown);

protected:
    void changeEvent(QEvent* event) override;

private:
    void retranslate();
    void show_coat(Coat coat);
    [[nodiscard]] QToolButton* button(const char* name);

    std::array<QToolButton*, coat_count> coats_{};
    std::array<Shown, coat_count> shown_;
    std::array<QToolButton*, side_count> sides_{};
    QToolButton *open_, *measure_, *ride_, *key_;
    QLabel *sides_label_, *cut_label_;
    QComboBox* cut_from_;
    QSlider* cut_depth_;
};

}  // namespace seamward::viewer
