// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/help_pages.h"

#include <QCoreApplication>
#include <QEvent>
#include <QFile>
#include <QHBoxLayout>
#include <QRegularExpression>
#include <QScrollBar>
#include <QShortcut>
#include <QTextBlock>
#include <QTextTable>
#include <QUrl>
#include <QVBoxLayout>
#include <array>
#include <utility>

#include "document/translations.h"
#include "layers/palette.h"

/// Resources of a static library have to be called in by name, outside of any namespace.
static void call_pages_in() { Q_INIT_RESOURCE(seamward_pages); }

namespace seamward::viewer {

namespace {

struct Page {
    const char* name;
    const char* title;
};

/// In the order in which somebody new would read them.
constexpr std::array pages{Page{"window", QT_TRANSLATE_NOOP("help", "The window")},
                           Page{"job-file", QT_TRANSLATE_NOOP("help", "Job files")},
                           Page{"house-file", QT_TRANSLATE_NOOP("help", "House files")},
                           Page{"catalog", QT_TRANSLATE_NOOP("help", "Animals, treatments and duties")},
                           Page{"ranked-paths", QT_TRANSLATE_NOOP("help", "How ways in are ranked")},
                           Page{"plans", QT_TRANSLATE_NOOP("help", "Plans: what to close")},
                           Page{"quotes", QT_TRANSLATE_NOOP("help", "Quotes")},
                           Page{"prices", QT_TRANSLATE_NOOP("help", "Your own prices")},
                           Page{"completion", QT_TRANSLATE_NOOP("help", "When the work is done")},
                           Page{"models", QT_TRANSLATE_NOOP("help", "3D files of others")},
                           Page{"exports", QT_TRANSLATE_NOOP("help", "3D files out")},
                           Page{"commands", QT_TRANSLATE_NOOP("help", "The command line")},
                           Page{"limits", QT_TRANSLATE_NOOP("help", "What it does not do yet")}};

QString markdown_of(const QString& page) {
    QFile file(":/seamward/pages/" + page + ".md");
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

/// "plans.md#sightings", "#sightings", "plans": the page and the heading meant; the page is empty for one not carried.
std::pair<QString, QString> target(const QString& link, const QString& here) {
    const QString heading = link.section('#', 1);
    QString page = link.section('#', 0, 0);
    if (page.endsWith(".md")) page.chop(3);
    if (page.isEmpty()) page = here;
    const bool known = std::any_of(pages.begin(), pages.end(), [&](const Page& one) { return page == one.name; });
    return {known ? page : QString(), heading};
}

/// As web pages name headings: "How sure it is" is "how-sure-it-is".
QString anchor_of(const QString& heading) {
    QString anchor;
    for (const QChar letter : heading.toLower()) {
        if (letter == QLatin1Char(' ')) anchor += '-';
        if (letter.isLetterOrNumber() || letter == '-' || letter == '_') anchor += letter;
    }
    return anchor;
}

/// Links that lead nowhere here become plain words, tables get room between their cells.
void tidy(QTextDocument& document, const QString& page) {
    std::vector<std::pair<int, int>> dead;
    std::vector<std::pair<int, int>> code;
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        for (QTextBlock::iterator at = block.begin(); !at.atEnd(); ++at) {
            const QTextFragment part = at.fragment();
            if (part.charFormat().isAnchor() && target(part.charFormat().anchorHref(), page).first.isEmpty())
                dead.emplace_back(part.position(), part.length());
            if (part.charFormat().fontFixedPitch()) code.emplace_back(part.position(), part.length());
        }
    }
    for (const auto& [from, length] : dead) {
        QTextCursor cursor(&document);
        cursor.setPosition(from);
        cursor.setPosition(from + length, QTextCursor::KeepAnchor);
        QTextCharFormat format = cursor.charFormat();
        for (const int property : {QTextFormat::IsAnchor, QTextFormat::AnchorHref, QTextFormat::AnchorName,
                                   QTextFormat::ForegroundBrush, QTextFormat::FontUnderline, QTextFormat::TextUnderlineStyle})
            format.clearProperty(property);
        cursor.setCharFormat(format);
    }
    // Code comes in a size of its own.
    QTextCharFormat as_large;
    as_large.setFontPointSize(document.defaultFont().pointSizeF());
    for (const auto& [from, length] : code) {
        QTextCursor cursor(&document);
        cursor.setPosition(from);
        cursor.setPosition(from + length, QTextCursor::KeepAnchor);
        cursor.mergeCharFormat(as_large);
    }
    for (QTextFrame* frame : document.rootFrame()->childFrames()) {
        auto* table = qobject_cast<QTextTable*>(frame);
        if (table == nullptr) continue;
        QTextTableFormat format = table->format();
        format.setCellPadding(5);
        format.setCellSpacing(0);
        format.setBorderCollapse(true);
        format.setBorderBrush(palette::hairline);
        table->setFormat(format);
    }
}

}  // namespace

HelpPages::HelpPages(QWidget* parent)
    : QWidget(parent),
      search_(new QLineEdit(this)),
      next_(new QToolButton(this)),
      back_(new QToolButton(this)),
      found_(new QLabel(this)),
      contents_(new QListWidget(this)),
      text_(new QTextBrowser(this)),
      in_english_(new QLabel(this)) {
    call_pages_in();
    setObjectName("help");
    search_->setObjectName("help_search");
    next_->setObjectName("help_next");
    back_->setObjectName("help_back");
    found_->setObjectName("help_found");
    contents_->setObjectName("help_contents");
    text_->setObjectName("help_text");
    search_->setClearButtonEnabled(true);
    found_->setWordWrap(true);
    in_english_->setWordWrap(true);
    contents_->setFrameShape(QFrame::NoFrame);
    contents_->setWordWrap(true);
    contents_->setSpacing(3);
    contents_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    contents_->setResizeMode(QListView::Adjust);
    text_->setFrameShape(QFrame::NoFrame);
    text_->setOpenLinks(false);
    for (const Page& page : pages) {
        auto* row = new QListWidgetItem(contents_);
        row->setData(Qt::UserRole, QString(page.name));
    }
    auto* halves = new QSplitter(this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(make_left());
    halves->addWidget(text_);
    halves->setStretchFactor(1, 1);
    halves->setSizes({280, 640});
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(halves);

    connect(search_, &QLineEdit::textChanged, this, &HelpPages::search);
    connect(search_, &QLineEdit::returnPressed, this, &HelpPages::to_next);
    connect(next_, &QToolButton::clicked, this, &HelpPages::to_next);
    connect(back_, &QToolButton::clicked, this, &HelpPages::go_back);
    connect(contents_, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* row) {
        if (row != nullptr) show_page(row->data(Qt::UserRole).toString());
    });
    connect(text_, &QTextBrowser::anchorClicked, this, [this](const QUrl& link) { show_page(link.toString()); });
    auto* to_search = new QShortcut(QKeySequence::Find, this, nullptr, nullptr, Qt::WidgetWithChildrenShortcut);
    connect(to_search, &QShortcut::activated, search_, qOverload<>(&QWidget::setFocus));
    auto* back = new QShortcut(QKeySequence::Back, this, nullptr, nullptr, Qt::WidgetWithChildrenShortcut);
    connect(back, &QShortcut::activated, this, &HelpPages::go_back);
    show_page(pages.front().name);
    retranslate();
}

QWidget* HelpPages::make_left() {
    auto* left = new QWidget(this);
    auto* line = new QHBoxLayout;
    line->addWidget(back_);
    line->addStretch(1);
    line->addWidget(next_);
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(14, 14, 10, 10);
    column->setSpacing(8);
    column->addWidget(search_);
    column->addLayout(line);
    column->addWidget(found_);
    column->addWidget(contents_, 1);
    column->addWidget(in_english_);
    return left;
}

void HelpPages::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
    const bool looks_other = event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange;
    if (looks_other && !page_.isEmpty()) {
        set_text(markdown_of(page_));
        mark_found();
    }
}

void HelpPages::retranslate() {
    setWindowTitle(tr("Help"));
    search_->setPlaceholderText(tr("Search"));
    search_->setAccessibleName(tr("Search all pages"));
    search_->setToolTip(tr("Search all pages"));
    next_->setText(tr("Next"));
    next_->setToolTip(tr("Next place with these words (Enter)"));
    back_->setText(tr("Back"));
    back_->setToolTip(tr("Back to the page before"));
    contents_->setAccessibleName(tr("Pages"));
    text_->setAccessibleName(tr("Page"));
    in_english_->setText(tr("These pages are in English."));
    in_english_->setVisible(spoken() != "en");
    for (int row = 0; row < contents_->count(); ++row)
        contents_->item(row)->setText(QCoreApplication::translate("help", pages.at(static_cast<std::size_t>(row)).title));
    tell_found();
}

bool HelpPages::show_page(const QString& link) {
    const auto [page, heading] = target(link, page_);
    if (page.isEmpty()) return false;
    if (page != page_) {
        if (!page_.isEmpty()) before_ << page_;
        page_ = page;
        set_text(markdown_of(page));
        mark_found();
    }
    back_->setEnabled(!before_.isEmpty());
    for (int row = 0; row < contents_->count(); ++row) {
        if (contents_->item(row)->data(Qt::UserRole) == page) contents_->setCurrentRow(row);
    }
    if (!heading.isEmpty()) scroll_to(heading);
    return true;
}

void HelpPages::set_text(const QString& markdown) {
    // Made out of sight: laid out once, not anew for each cell of a table.
    auto* document = new QTextDocument(this);
    document->setUndoRedoEnabled(false);
    document->setDefaultFont(text_->font());
    document->setDocumentMargin(24);
    // Pictures of the window are for readers elsewhere.
    static const QRegularExpression picture(QStringLiteral("^!\\[[^\\]]*\\]\\([^)]*\\)\\n"), QRegularExpression::MultilineOption);
    document->setMarkdown(QString(markdown).remove(picture), QTextDocument::MarkdownDialectGitHub);
    tidy(*document, page_);
    text_->setExtraSelections({});  // they are of the page before
    text_->setDocument(document);
    delete std::exchange(shown_, document);
    text_->verticalScrollBar()->setValue(0);
}

void HelpPages::go_back() {
    if (before_.isEmpty()) return;
    const QString page = before_.takeLast();
    show_page(page);
    before_.removeLast();  // where it came from, which show_page() noted
    back_->setEnabled(!before_.isEmpty());
}

void HelpPages::scroll_to(const QString& heading) {
    for (QTextBlock block = text_->document()->begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() == 0 || anchor_of(block.text()) != heading) continue;
        text_->setTextCursor(QTextCursor(block));
        text_->verticalScrollBar()->setValue(text_->verticalScrollBar()->value() + text_->cursorRect().top() - 12);
        return;
    }
}

void HelpPages::search(const QString& text) {
    if (search_->text() != text) {
        search_->setText(text);  // comes back here
        return;
    }
    int first = -1;
    for (int row = 0; row < contents_->count(); ++row) {
        QListWidgetItem* item = contents_->item(row);
        const bool has = text.isEmpty() || markdown_of(item->data(Qt::UserRole).toString()).contains(text, Qt::CaseInsensitive);
        item->setHidden(!has);
        if (has && first < 0) first = row;
    }
    const QListWidgetItem* current = contents_->currentItem();
    if (first >= 0 && (current == nullptr || current->isHidden())) contents_->setCurrentRow(first);
    mark_found();
    if (!text.isEmpty()) {
        text_->moveCursor(QTextCursor::Start);
        text_->find(text);
    }
    tell_found();
}

void HelpPages::tell_found() {
    int count = 0;
    for (int row = 0; row < contents_->count(); ++row) count += contents_->item(row)->isHidden() ? 0 : 1;
    const bool searching = !search_->text().isEmpty();
    found_->setVisible(searching);
    next_->setEnabled(searching && count > 0);
    found_->setText(count == 0 ? tr("No page has these words.") : tr("On %n page(s)", nullptr, count));
}

void HelpPages::mark_found() {
    QList<QTextEdit::ExtraSelection> marks;
    const QString text = search_->text();
    if (!text.isEmpty()) {
        QTextCursor at(text_->document());
        while (!(at = text_->document()->find(text, at)).isNull()) {
            QTextEdit::ExtraSelection mark;
            mark.cursor = at;
            mark.format.setBackground(palette::chosen_row);
            mark.format.setFontUnderline(true);
            marks << mark;
        }
    }
    text_->setExtraSelections(marks);
}

void HelpPages::to_next() {
    const QString text = search_->text();
    if (text.isEmpty() || text_->find(text)) return;
    // Past the last place: on with the next page that has it, or with this one from its beginning.
    for (int step = 1; step <= contents_->count(); ++step) {
        const int row = (contents_->currentRow() + step) % contents_->count();
        if (contents_->item(row)->isHidden()) continue;
        contents_->setCurrentRow(row);
        text_->moveCursor(QTextCursor::Start);
        text_->find(text);
        return;
    }
}

}  // namespace seamward::viewer
