// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QObject>
#include <QString>
#include <QTimer>
#include <deque>
#include <optional>
#include <string>
#include <vector>

#include "document/draft_store.h"
#include "document/job_document.h"
#include "document/survey_step.h"
#include "job_file/job_edits.h"

namespace seamward::viewer {

/// The text of the open job as it is being edited: changes, taking them back, saving, and the draft that outlives a crash. The
/// job document is read again after each change. Lives on the window's thread.
class SurveyDocument : public QObject {
    Q_OBJECT

public:
    static constexpr std::size_t most_history = 64U << 20U;  ///< bytes; beyond, the oldest changes can no longer be taken back

    enum class Saved : std::uint8_t { done, changed_elsewhere, failed };
    enum class Overwrite : std::uint8_t { no, yes };

    explicit SurveyDocument(JobDocument& document, QObject* parent = nullptr);
    ~SurveyDocument() override;

    /// Another limit than most_history.
    void limit_history(std::size_t bytes) { limit_ = bytes; }

    [[nodiscard]] const std::string& text() const { return text_; }
    /// Makes changes that are taken back as one, in the job file and in that of its house, neither of which is written before it
    /// is saved; false, with edit_failed(), when one of them cannot be made. Where only the house can tell, edit_failed() comes
    /// later, and all are taken back. The first gives them their name.
    bool change(const std::vector<Edit>& edits);
    bool change(const Edit& edit) { return change(std::vector<Edit>{edit}); }
    /// Whether the open job is what the text says; otherwise it is being read.
    [[nodiscard]] bool is_read() const { return document_.text() == text_ && (!house_ || document_.newer() == newer()); }
    /// The id of what was changed or added last, by the first of several changes.
    [[nodiscard]] const std::string& changed_id() const { return changed_id_; }
    /// Makes some other change that shares the one history, such as what is closed on trial.
    void push(Command command);
    void undo();
    void redo();
    [[nodiscard]] bool can_undo() const { return position_ > 0; }
    [[nodiscard]] bool can_redo() const { return position_ < history_.size(); }
    /// "Undo: width of “hose bibb”"; without one, "Undo".
    [[nodiscard]] QString undo_text() const;
    [[nodiscard]] QString redo_text() const;

    [[nodiscard]] bool is_modified() const { return modified_; }
    /// Writes the job file, and that of its house where it was changed. `changed_elsewhere`, with file_changed_elsewhere():
    /// another program wrote it since it was read; ask, and save with Overwrite::yes, or open it again. `failed`, with
    /// save_failed(): it is as it was.
    Saved save(Overwrite overwrite = Overwrite::no);
    /// The same under another name, which is then the job's. What the file refers to is found from there. A house that was
    /// changed gets a file of its own beside it: that of the house as it was stays for the job as it was. Whether a file of the
    /// job's name may go is the caller's to ask.
    Saved save_as(const QString& path);
    /// Whether the file is not what was read or saved last.
    [[nodiscard]] bool differs_on_disk() const;
    /// Opens work that was left behind; false when another window has it.
    bool recover(const Draft& draft);

signals:
    void modified_changed(bool modified);
    /// What can be taken back or made again is another.
    void history_changed();
    /// A change was not made: why, in words.
    void edit_failed(const QString& why);
    void saved(const QString& path);
    void save_failed(const QString& why);
    void file_changed_elsewhere(const QString& path);
    /// No draft can be written.
    void draft_failed(const QString& why);

private:
    void take_opened();
    void take_back_failed(const OpenFault& fault);
    void add(SurveyStep step);
    void cut_history(std::size_t steps);
    void run(const SurveyStep& step, bool forward);
    [[nodiscard]] bool changes_solids(const Edit& edit) const;
    void load_house();
    [[nodiscard]] FileTexts newer() const { return newer_of(house_); }
    [[nodiscard]] static FileTexts newer_of(const std::optional<EditedFile>& house);
    [[nodiscard]] EditedFile job_file() const;
    void text_changed();
    void update_modified();
    [[nodiscard]] bool write(const QString& path);

    JobDocument& document_;
    DraftStore drafts_;
    QTimer draft_timer_;
    std::string text_;
    std::string changed_id_;
    std::optional<EditedFile> house_;  ///< once it was changed
    std::string house_as_read_;
    std::deque<SurveyStep> history_;
    std::size_t position_ = 0;         ///< steps made
    std::optional<std::size_t> good_;  ///< steps made when the text was read as a job last; nothing: they are gone
    std::size_t bytes_ = 0, limit_ = most_history;
    QByteArray disk_print_;  ///< of the file as it was read or saved last; empty: there was none
    std::optional<Draft> recovering_;
    bool modified_ = false;
};

}  // namespace seamward::viewer
