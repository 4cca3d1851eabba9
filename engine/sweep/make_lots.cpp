// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/make_lots.h"

#include <unistd.h>

#include <algorithm>
#include <fstream>
#include <unordered_map>
#include <vector>

#include "base/diagnostics.h"
#include "sweep/even_random.h"
#include "sweep/made_subdivision.h"
#include "sweep/shipped_plans.h"

namespace seamward {

namespace {

namespace fs = std::filesystem;

/// A new folder beside another, which takes its name at the end; else it is removed.
class FolderBeside {
public:
    explicit FolderBeside(const fs::path& target) : target_(target.has_filename() ? target : target.parent_path()) {
        std::error_code error;
        if (fs::exists(target_, error) && !(fs::is_directory(target_, error) && fs::is_empty(target_, error)))
            fail("is there already and not an empty folder", "name a new one");
        beside_ = target_.parent_path() / (".seamward-lots-" + std::to_string(getpid()));
        if (!fs::create_directories(beside_ / "plans", error))
            fail("cannot be made (" + error.message() + ')', "check the path and its permissions");
    }
    ~FolderBeside() {
        std::error_code error;
        if (!kept_) fs::remove_all(beside_, error);
    }
    FolderBeside(const FolderBeside&) = delete;
    FolderBeside& operator=(const FolderBeside&) = delete;

    void write(const std::string& name, std::string_view text) const {
        std::ofstream out(beside_ / name, std::ios::binary);
        out << text;
        out.close();
        if (!out) fail("cannot be filled: " + name + " could not be written", "check the disk");
    }

    void take_name() {
        std::error_code error;
        fs::rename(beside_, target_, error);
        if (error) fail("cannot be made (" + error.message() + ')', "check the path and its permissions");
        kept_ = true;
    }

private:
    [[noreturn]] void fail(const std::string& what, const std::string& mend) const {
        throw BadInput({{target_.string(), {}, what, mend}});
    }

    fs::path target_, beside_;
    bool kept_ = false;
};

/// The numbers of the bad lots and the kind of fault of each: the first of a shuffled pack.
std::unordered_map<std::uint32_t, std::size_t> draw_bad(const MadeLots& wanted) {
    std::vector<std::uint32_t> numbers(wanted.count);
    for (std::uint32_t i = 0; i < wanted.count; ++i) numbers[i] = i + 1;
    EvenRandom random(wanted.seed, 0);
    std::unordered_map<std::uint32_t, std::size_t> bad;
    for (std::uint32_t i = 0; i < std::min(wanted.bad, wanted.count); ++i) {
        std::swap(numbers[i], numbers[i + random.below(wanted.count - i)]);
        bad.emplace(numbers[i], i);
    }
    return bad;
}

std::string name_of_lot(std::uint32_t number) {
    const std::string digits = std::to_string(number);
    return "lot-" + std::string(digits.size() < 5 ? 5 - digits.size() : 0, '0') + digits + ".yaml";
}

}  // namespace

void make_lots(const MadeLots& wanted, const fs::path& folder, const RunContext& context) {
    const MadeSubdivision subdivision = make_subdivision(wanted.seed, context);
    FolderBeside fresh(folder);
    for (const ShippedPlan& plan : shipped_plans()) fresh.write("plans/" + std::string(plan.id) + ".yaml", plan.text);
    const std::unordered_map<std::uint32_t, std::size_t> bad = draw_bad(wanted);
    context.stage("making lots");
    for (std::uint32_t number = 1; number <= wanted.count; ++number) {
        context.check();
        const auto fault = bad.find(number);
        fresh.write(name_of_lot(number), fault == bad.end() ? made_lot(subdivision, number) : faulty_lot(number, fault->second));
    }
    fresh.take_name();
}

}  // namespace seamward
