// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QWidget>
#include <cstdint>
#include <optional>

namespace seamward::viewer {

/// A line in which a size is typed in any unit, and under it what was understood, or what is wrong. Enter, or leaving the line,
/// enters it.
class SizeField : public QWidget {
    Q_OBJECT

public:
    enum class Of : std::uint8_t { width, plus_minus, length, area };

    explicit SizeField(QWidget* parent = nullptr);

    void set_of(Of of);
    /// What the survey has; nothing: an empty line. What somebody typed and was refused stays, unless `afresh`.
    void show_size(std::optional<double> size, bool afresh);
    /// Puts a text there as if it had been typed.
    void type(const QString& text);
    /// The size was understood, but cannot be taken: why.
    void refuse(const QString& why);
    void set_optional(bool optional) { optional_ = optional; }

    [[nodiscard]] QString text() const { return line_->text().trimmed(); }
    /// The size that stands there; nothing when the line is empty or wrong.
    [[nodiscard]] std::optional<double> size() const;
    [[nodiscard]] bool is_wrong() const { return wrong_; }
    /// Whether it can be used; says so under the line when not.
    bool check();
    /// Enters what is typed, as leaving the line does.
    void enter();
    [[nodiscard]] QLineEdit& line() const { return *line_; }

signals:
    /// Something else than what was shown was entered, and it is right.
    void entered(const QString& text);

protected:
    void changeEvent(QEvent* event) override;

private:
    void tell();
    void tell_wrong(const QString& why);

    QLineEdit* line_;
    QLabel* words_;
    Of of_ = Of::width;
    std::optional<double> shown_;
    QString refused_;
    bool optional_ = false;
    bool wrong_ = false;
};

}  // namespace seamward::viewer
