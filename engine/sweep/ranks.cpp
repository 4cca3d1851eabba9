// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/ranks.h"

#include <dlfcn.h>
#include <oneapi/tbb/info.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>

#include "base/diagnostics.h"
#include "base/quantity.h"

namespace seamward {

namespace {

class OneRank : public Ranks {
public:
    [[nodiscard]] int rank() const override { return 0; }
    [[nodiscard]] int count() const override { return 1; }
    void send(int, const std::string&) override {}
    [[nodiscard]] std::optional<std::pair<int, std::string>> receive() override { return std::nullopt; }
};

/// A whole number from 1 out of the environment; 1 where there is none.
unsigned from_environment(const char* name) {
    const char* text = std::getenv(name);
    if (text == nullptr) return 1;
    const Parsed<std::uint32_t> number = parse_count(text);
    return number ? *number : 1;
}

std::filesystem::path module_file() {
    std::error_code error;
    const std::filesystem::path own = std::filesystem::read_symlink("/proc/self/exe", error);
    if (error) return {};
    for (const std::filesystem::path& folder : {own.parent_path(), own.parent_path().parent_path() / "bin"}) {
        const std::filesystem::path file = folder / "seamward-ranks.so";
        if (access(file.c_str(), R_OK) == 0) return file;
    }
    return {};
}

}  // namespace

bool started_by_mpirun() { return from_environment("OMPI_COMM_WORLD_SIZE") > 1; }

std::shared_ptr<Ranks> open_ranks() {
    if (!started_by_mpirun()) return std::make_shared<OneRank>();
    const std::filesystem::path file = module_file();
    if (file.empty())
        throw BadInput({{"seamward-ranks.so",
                         {},
                         "is not beside the program: it was built without MPI",
                         "build it with Open MPI, or run it without mpirun"}});
    // Parts that Open MPI loads itself look for its names among those of everybody.
    void* module = dlopen(file.c_str(), RTLD_NOW | RTLD_GLOBAL);
    void* symbol = module != nullptr ? dlsym(module, "seamward_open_ranks") : nullptr;
    if (symbol == nullptr)
        throw BadInput({{file.string(), {}, std::string("cannot be loaded (") + dlerror() + ')', "install Open MPI again"}});
    using Open = Ranks* (*)();
    return std::shared_ptr<Ranks>(reinterpret_cast<Open>(symbol)());
}

unsigned threads_for_one_rank() {
    const auto usable = static_cast<unsigned>(oneapi::tbb::info::default_concurrency());
    const auto there = static_cast<unsigned>(std::max(1L, sysconf(_SC_NPROCESSORS_ONLN)));
    // mpirun may have given each its own processors already.
    if (usable < there) return usable;
    return std::max(1U, usable / from_environment("OMPI_COMM_WORLD_LOCAL_SIZE"));
}

}  // namespace seamward
