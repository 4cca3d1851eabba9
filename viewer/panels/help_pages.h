// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QSplitter>
#include <QTextBrowser>
#include <QToolButton>
#include <QWidget>

namespace seamward::viewer {

/// The pages of docs/ that a user needs, as they are carried in the program: a list of them, the one chosen, and a search through
/// all. Links between pages work; links to anywhere else are plain text. Nothing is fetched from anywhere.
class HelpPages : public QWidget {
    Q_OBJECT

public:
    explicit HelpPages(QWidget* parent = nullptr);

    /// Shows a page, "plans" or "plans#sightings"; false when there is none such.
    bool show_page(const QString& page);
    /// The page that shows, "plans".
    [[nodiscard]] QString page() const { return page_; }
    /// Keeps only pages in the list that have this text, and marks it in the one that shows.
    void search(const QString& text);

protected:
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] QWidget* make_left();
    void retranslate();
    void set_text(const QString& markdown);
    void mark_found();
    void to_next();
    void tell_found();
    void scroll_to(const QString& heading);
    void go_back();

    QLineEdit* search_;
    QToolButton* next_;
    QToolButton* back_;
    QLabel* found_;
    QListWidget* contents_;
    QTextBrowser* text_;
    QTextDocument* shown_ = nullptr;
    QLabel* in_english_;
    QString page_;
    QStringList before_;  ///< pages that were shown, the last one last
};

}  // namespace seamward::viewer
