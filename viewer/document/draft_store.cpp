// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/draft_store.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <QUuid>
#include <algorithm>

#include "base/diagnostics.h"
#include "base/document.h"
#include "exchange/write_whole_file.h"

namespace seamward::viewer {

namespace {

constexpr int wait_for_lock = 100;  ///< milliseconds; whoever looks what there is holds one for a moment
const QByteArray first_line = "seamward-draft 1\n";

QString file_of(const QString& folder, const QString& id) { return folder + '/' + id + ".draft"; }
QString lock_of(const QString& folder, const QString& id) { return folder + '/' + id + ".lock"; }

/// A few lines of what it is, and the text as it is.
QByteArray bytes_of(const Draft& draft) {
    QByteArray bytes = first_line + draft.written.toUTC().toString(Qt::ISODateWithMs).toLatin1() + '\n';
    for (const EditedFile* file : {&draft.job, draft.house ? &*draft.house : nullptr}) {
        if (file == nullptr) continue;
        bytes += file->path.toUtf8().toPercentEncoding() + '\n' + file->disk_print.toHex() + '\n';
        bytes += QByteArray::number(static_cast<qulonglong>(file->text.size())) + '\n';
        bytes.append(file->text.data(), static_cast<int>(file->text.size()));
    }
    return bytes;
}

/// Nothing where it is not whole.
std::optional<EditedFile> file_from(QFile& draft) {
    EditedFile file;
    file.path = QString::fromUtf8(QByteArray::fromPercentEncoding(draft.readLine().trimmed()));
    file.disk_print = QByteArray::fromHex(draft.readLine().trimmed());
    const qint64 size = draft.readLine().trimmed().toLongLong();
    const QByteArray text = draft.read(size);
    if (file.path.isEmpty() || text.size() != size) return std::nullopt;
    file.text = text.toStdString();
    return file;
}

/// Nothing for a file that is no draft, or half of one.
std::optional<Draft> draft_of(const QString& folder, const QString& id) {
    QFile file(file_of(folder, id));
    if (!file.open(QIODevice::ReadOnly) || file.readLine() != first_line) return std::nullopt;
    Draft draft;
    draft.id = id;
    draft.written = QDateTime::fromString(QString::fromLatin1(file.readLine().trimmed()), Qt::ISODateWithMs);
    std::optional<EditedFile> job = file_from(file);
    if (!job) return std::nullopt;
    draft.job = std::move(*job);
    if (!file.atEnd()) draft.house = file_from(file);
    return draft;
}

std::unique_ptr<QLockFile> locked(const QString& folder, const QString& id) {
    auto lock = std::make_unique<QLockFile>(lock_of(folder, id));
    lock->setStaleLockTime(0);  // only the end of the program that holds it frees it
    return lock->tryLock(wait_for_lock) ? std::move(lock) : nullptr;
}

/// The text at a chain of keys of a mapping; empty where there is none.
std::string text_at(Node node, std::initializer_list<std::string_view> keys) {
    for (const std::string_view wanted : keys) {
        Node found;
        if (node.present() && node.is_mapping()) {
            node.for_each_pair([&](Node key, Node value) {
                if (key.text() == wanted) found = value;
            });
        }
        node = found;
    }
    return node.present() && node.is_scalar() ? std::string(node.text()) : std::string();
}

std::string text_at(const EditedFile& file, std::initializer_list<std::string_view> keys) {
    try {
        const bool json = file.path.endsWith(".json", Qt::CaseInsensitive);
        const Document document = (json ? parse_json : parse_yaml)(file.text, {}, Spans::dropped);
        return text_at(document.root(), keys);
    } catch (const BadInput&) {
        return {};  // whoever brings it back is told
    }
}

}  // namespace

DraftStore::DraftStore(QString folder, QObject* parent)
    : QObject(parent), folder_(std::move(folder)), task_(std::make_unique<NewestTask>()) {}

DraftStore::~DraftStore() {
    task_.reset();  // nothing is written any more
    if (!id_.isEmpty()) QFile::remove(file_of(folder_, id_));
}

QString DraftStore::usual_folder() { return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + "/drafts"; }

bool DraftStore::begin(const QString& id) {
    QDir().mkpath(folder_);
    std::unique_ptr<QLockFile> lock = locked(folder_, id);
    if (lock == nullptr) return false;
    id_ = id;
    lock_ = std::move(lock);
    return true;
}

void DraftStore::keep(const EditedFile& job, const std::optional<EditedFile>& house) {
    if (id_.isEmpty() && !begin(QUuid::createUuid().toString(QUuid::WithoutBraces))) {
        emit failed(tr("No draft can be kept in %1. Save often.").arg(folder_));
        return;
    }
    const Draft draft{id_, job, house, QDateTime::currentDateTimeUtc()};
    task_->start([this, draft, file = file_of(folder_, id_)](const RunContext&) {
        try {
            const QByteArray bytes = bytes_of(draft);
            write_whole_file(file.toStdString(), file.toStdString(), {bytes.constData(), static_cast<std::size_t>(bytes.size())});
        } catch (const std::exception& fault) {
            const QString why = tr("The draft could not be written. Save often. (%1)").arg(QString::fromUtf8(fault.what()));
            QMetaObject::invokeMethod(
                this, [this, why] { emit failed(why); }, Qt::QueuedConnection);
        }
    });
}

void DraftStore::forget() {
    if (id_.isEmpty()) return;
    task_->start([file = file_of(folder_, id_)](const RunContext&) { QFile::remove(file); });
}

std::optional<Draft> DraftStore::adopt(const QString& id) {
    const QString before = id_;
    std::unique_ptr<QLockFile> lock = std::move(lock_);
    std::optional<Draft> draft;
    if (id == before || begin(id)) draft = draft_of(folder_, id);  // as it is now, whatever was seen of it before
    if (!draft || id == before) {
        id_ = before;
        lock_ = std::move(lock);
        return draft;
    }
    task_ = std::make_unique<NewestTask>();  // what it wrote of the other is written or will never be
    if (!before.isEmpty()) QFile::remove(file_of(folder_, before));
    return draft;
}

void DraftStore::let_go() {
    id_.clear();
    lock_.reset();
}

QString Draft::job_name() const {
    std::string name = text_at(job, {"job", "name"});
    if (name.empty() && house) name = text_at(*house, {"name"});
    return name.empty() ? QFileInfo(job.path).fileName() : QString::fromStdString(name);
}

std::vector<Draft> DraftStore::left_behind(const QString& folder) {
    std::vector<Draft> all;
    for (const QFileInfo& file : QDir(folder).entryInfoList({"*.draft"}, QDir::Files)) {
        const QString id = file.completeBaseName();
        if (locked(folder, id) == nullptr) continue;
        if (std::optional<Draft> draft = draft_of(folder, id)) all.push_back(std::move(*draft));
    }
    std::ranges::sort(all, [](const Draft& a, const Draft& b) { return a.written > b.written; });
    return all;
}

void DraftStore::discard(const Draft& draft, const QString& folder) {
    if (const auto lock = locked(folder, draft.id)) QFile::remove(file_of(folder, draft.id));
}

}  // namespace seamward::viewer
