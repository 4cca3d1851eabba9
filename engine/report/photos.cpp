// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/photos.h"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <memory>
#include <mutex>

// The library's headers use names that are ours elsewhere; they come last.
#include <magick/api.h>

#include "base/diagnostics.h"
#include "base/file_io.h"
#include "base/text.h"

namespace seamward {

namespace {

constexpr std::uint64_t most_bytes = 64U << 20U;
constexpr std::int64_t most_read = 100'000'000;  ///< pixels of the file itself
constexpr std::int64_t most_side = 30'000;       ///< pixels
constexpr std::int64_t most_memory = 1LL << 30;
constexpr unsigned long quality = 80;       ///< of the JPEG, of 100: artifacts are not seen on a phone
constexpr std::size_t photo_pixels = 1000;  ///< on the longer side: a phone's width at twice its pixels, with room to look closer

void start_library() {
    static std::once_flag once;
    std::call_once(once, [] {
        ExceptionInfo fault;
        GetExceptionInfo(&fault);
        (void)InitializeMagickEx(nullptr, MAGICK_OPT_NO_SIGNAL_HANDER, &fault);
        DestroyExceptionInfo(&fault);
        SetMagickResourceLimit(PixelsResource, most_read);
        SetMagickResourceLimit(WidthResource, most_side);
        SetMagickResourceLimit(HeightResource, most_side);
        SetMagickResourceLimit(MemoryResource, most_memory);
        SetMagickResourceLimit(DiskResource, 0);
        SetMagickResourceLimit(MapResource, 0);
        SetMagickResourceLimit(ThreadsResource, 1);
    });
}

/// What the library says when it cannot do something.
class Fault {
public:
    Fault() { GetExceptionInfo(&info_); }
    ~Fault() { DestroyExceptionInfo(&info_); }
    Fault(const Fault&) = delete;
    Fault& operator=(const Fault&) = delete;

    ExceptionInfo* info() { return &info_; }
    [[nodiscard]] std::string text() const { return info_.reason == nullptr ? "it is damaged" : printable(info_.reason); }

private:
    ExceptionInfo info_{};
};

struct Destroy {
    void operator()(Image* image) const { DestroyImageList(image); }
    void operator()(ImageInfo* info) const { DestroyImageInfo(info); }
    void operator()(void* memory) const { MagickFree(memory); }
};
using ImagePointer = std::unique_ptr<Image, Destroy>;
using InfoPointer = std::unique_ptr<ImageInfo, Destroy>;

[[noreturn]] void refuse(const std::string& shown_as, const std::string& what) {
    throw BadInput({{.file = shown_as, .what = what, .mend = "take a photo as JPEG or PNG"}});
}

/// The kind that the bytes begin like: nothing else is ever handed to the library.
const char* kind_of(std::string_view bytes) {
    if (bytes.starts_with("\xff\xd8\xff")) return "JPEG";
    if (bytes.starts_with("\x89PNG\r\n\x1a\n")) return "PNG";
    return nullptr;
}

ImagePointer decoded(std::string_view bytes, const char* kind, const std::string& shown_as) {
    const InfoPointer info(CloneImageInfo(nullptr));
    std::strncpy(info->magick, kind, sizeof info->magick - 1);
    std::strncpy(info->filename, (std::string(kind) + ":").c_str(), sizeof info->filename - 1);
    Fault fault;
    ImagePointer image(BlobToImage(info.get(), bytes.data(), bytes.size(), fault.info()));
    if (image == nullptr) refuse(shown_as, "the photo cannot be read: " + fault.text());
    return image;
}

}  // namespace

const ReportPhoto* ReportPhotos::of(GapIndex gap) const {
    const auto found = std::find_if(shown.begin(), shown.end(), [&](const ReportPhoto& photo) { return photo.gap == gap; });
    return found == shown.end() ? nullptr : &*found;
}

ReportPhoto scaled_photo(const std::filesystem::path& file, const std::string& shown_as, std::size_t most_pixels) {
    const std::string bytes = read_file(file, shown_as, most_bytes);
    const char* kind = kind_of(bytes);
    if (kind == nullptr) refuse(shown_as, "the photo is neither a JPEG nor a PNG image");
    start_library();
    ImagePointer image = decoded(bytes, kind, shown_as);
    Fault fault;
    // Upright before it loses what says how it was held.
    image.reset(AutoOrientImage(image.get(), image->orientation, fault.info()));
    if (image == nullptr) refuse(shown_as, "the photo cannot be turned upright: " + fault.text());
    const double longer = static_cast<double>(std::max(image->columns, image->rows));
    const double scale = std::min(1.0, static_cast<double>(most_pixels) / longer);
    const auto scaled = [&](unsigned long side) {
        return std::max(1UL, static_cast<unsigned long>(std::lround(static_cast<double>(side) * scale)));
    };
    if (scale < 1)
        image.reset(ResizeImage(image.get(), scaled(image->columns), scaled(image->rows), LanczosFilter, 1.0, fault.info()));
    if (image == nullptr) refuse(shown_as, "the photo cannot be scaled: " + fault.text());
    (void)StripImage(image.get());
    (void)ProfileImage(image.get(), "*", nullptr, 0, MagickFalse);
    const InfoPointer info(CloneImageInfo(nullptr));
    info->quality = quality;
    std::strncpy(info->magick, "JPEG", sizeof info->magick - 1);
    std::strncpy(image->magick, "JPEG", sizeof image->magick - 1);
    std::size_t size = 0;
    const std::unique_ptr<void, Destroy> jpeg(ImageToBlob(info.get(), image.get(), &size, fault.info()));
    if (jpeg == nullptr) refuse(shown_as, "the photo cannot be written: " + fault.text());
    return {{}, std::string(static_cast<const char*>(jpeg.get()), size), image->columns, image->rows};
}

ReportPhotos read_photos(const Job& job, const std::filesystem::path& folder, const RunContext& context) {
    ReportPhotos photos;
    for (std::uint32_t i = 0; i < job.survey.gaps.size(); ++i) {
        const std::string& name = job.survey.gaps[i].photo;
        if (name.empty()) continue;
        context.check();
        try {
            photos.shown.push_back(scaled_photo(folder / name, name, photo_pixels));
            photos.shown.back().gap = GapIndex{i};
        } catch (const BadInput&) {
            photos.unreadable.push_back(GapIndex{i});
        }
    }
    return photos;
}

}  // namespace seamward
