// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/work_off.h"

#include <oneapi/tbb/parallel_pipeline.h>
#include <oneapi/tbb/task_arena.h>

namespace seamward {

void work_off(unsigned threads, const std::function<std::optional<std::string>()>& next, const LotDoer& doer,
              const std::function<void(LotRow)>& done, const RunContext& context) {
    namespace tbb = oneapi::tbb;
    const auto take = [&](tbb::flow_control& control) -> std::string {
        context.check();
        std::optional<std::string> name = next();
        if (name) return *std::move(name);
        control.stop();
        return {};
    };
    tbb::task_arena arena(static_cast<int>(threads));
    arena.execute([&] {
        tbb::parallel_pipeline(
            std::size_t{2} * threads,
            tbb::make_filter<void, std::string>(tbb::filter_mode::serial_in_order, take) &
                tbb::make_filter<std::string, LotRow>(tbb::filter_mode::parallel,
                                                      [&](const std::string& name) { return doer(name, context); }) &
                tbb::make_filter<LotRow, void>(tbb::filter_mode::serial_out_of_order, [&](LotRow row) { done(std::move(row)); }));
    });
}

}  // namespace seamward
