// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QBoxLayout>
#include <QLabel>
#include <QSlider>
#include <QToolButton>
#include <QWidget>
#include <cstdint>
#include <vector>

namespace seamward::viewer {

/// What steers a ride: going on and stopping, how fast, where one is, leaving, and saving it as a film.
class RideBar : public QWidget {
    Q_OBJECT

public:
    explicit RideBar(QWidget* parent = nullptr);

    /// Seconds that the ride takes.
    void set_duration(double seconds);
    void show_time(double seconds);
    void show_going(bool going);
    /// `speed`: times the usual one.
    void show_speed(double speed, bool can_slow, bool can_hasten);
    /// Where the ride is, in words.
    void set_words(const QString& words) { words_->setText(words); }
    [[nodiscard]] QString words() const { return words_->text(); }

signals:
    void going_wanted(bool going);
    void time_wanted(double seconds);
    void speed_wanted(bool faster);
    void leave_wanted();
    void film_wanted();

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void retranslate();
    void arrange();
    [[nodiscard]] std::vector<QWidget*> steering() const { return {going_, slower_, speed_, faster_}; }

    enum class Lines : std::uint8_t { unknown, one, slider_apart, three };

    QToolButton *going_, *slower_, *faster_, *film_, *leave_;
    QLabel* speed_;
    QSlider* time_;
    QLabel* words_;
    QVBoxLayout* column_;
    QHBoxLayout *row_, *second_row_;
    Lines lines_ = Lines::unknown;
    double times_ = 1;
    bool goes_ = false;
};

}  // namespace seamward::viewer
