// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QBoxLayout>
#include <QLabel>
#include <QSlider>
#include <QToolButton>
#include <QWidget>

namespace seamward::viewer {

/// What steers a ride: going on and stopping, where one is, leaving, and saving it as a film.
class RideBar : public QWidget {
    Q_OBJECT

public:
    explicit RideBar(QWidget* parent = nullptr);

    /// Seconds that the ride takes.
    void set_duration(double seconds);
    void show_time(double seconds);
    void show_going(bool going);
    /// Where the ride is, in words.
    void set_words(const QString& words) { words_->setText(words); }
    [[nodiscard]] QString words() const { return words_->text(); }

signals:
    void going_wanted(bool going);
    void time_wanted(double seconds);
    void leave_wanted();
    void film_wanted();

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void retranslate();
    void arrange();

    QToolButton *going_, *film_, *leave_;
    QSlider* time_;
    QLabel* words_;
    QVBoxLayout* column_;
    QHBoxLayout* row_;
    bool goes_ = false;
};

}  // namespace seamward::viewer
