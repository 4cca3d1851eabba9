// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/sweep_command.h"

#include <malloc.h>

#include <array>

#include "base/nearest_word.h"
#include "base/text.h"
#include "catalog/shipped.h"
#include "tool/find_ids.h"
#include "tool/interrupt.h"
#include "tool/wrong_usage.h"

namespace seamward {

namespace {

constexpr std::size_t most_threads = 1024;

LotWork work_of(const std::string& word) {
    constexpr std::array works{LotWork::trace, LotWork::plan, LotWork::audit};
    std::vector<std::string_view> known;
    for (const LotWork work : works) {
        if (word == work_word(work)) return work;
        known.emplace_back(work_word(work));
    }
    throw WrongUsage("--do: unknown word " + in_quotes(word) + "; " + suggestion(word, known));
}

SweepSettings settings_of(const SweepRequest& request) {
    SweepSettings settings;
    settings.work = work_of(request.work);
    settings.version = request.version;
    // Any job knows the animals of the catalog.
    settings.against = pests_asked_for(Job(), "--against", request.against);
    if (request.date) {
        const Parsed<Date> date = parse_date(*request.date);
        if (!date) throw WrongUsage("--on: " + date.fault.what + "; " + date.fault.mend);
    }
    if (request.prices) {
        if (request.prices->empty()) throw WrongUsage("--prices: no file is named");
        settings.prices = read_prices(*request.prices, *request.prices);
        settings.prices_file = *request.prices;
    }
    if (request.threads > most_threads)
        throw WrongUsage("--threads: more than " + std::to_string(most_threads) +
                         "; name at most as many as there are processors");
    return settings;
}

Date day_from(const std::string& text) {
    const Parsed<Date> date = parse_date(text);
    if (!date) throw BadInput({{"sweep.sqlite", {}, "holds no day but " + in_quotes(text), "say the day with --on"}});
    return *date;
}

LotDoer doer_for(const LotFiles& files, const SweepSettings& settings, HouseCache& houses) {
    return [&](const std::string& name, const RunContext& context) { return do_lot(files, name, settings, houses, context); };
}

/// A rank that is not rank 0: it works and says nothing, not even that it was called off.
void serve(const SweepRequest& request, SweepSettings& settings, unsigned threads, Ranks& ranks, const RunContext& context) {
    const std::optional<std::string> day = wait_to_begin(ranks, context);
    if (!day) return;
    settings.date = day_from(*day);
    const LotFiles files{folder_of_lots(request.lots), {}};
    HouseCache houses;
    serve_sweep(doer_for(files, settings, houses), threads, ranks, context);
}

/// Lots and results, ready to begin; or the other ranks are told that there will be nothing.
struct Ground {
    LotFiles files;
    std::unique_ptr<SweepResults> results;
};

Ground prepare(const SweepRequest& request, SweepSettings& settings, Ranks& ranks, const RunContext& context) {
    try {
        Ground ground{read_lot_files(request.lots, context), nullptr};
        ground.results = std::make_unique<SweepResults>(request.folder, settings.work);
        const std::string day = ground.results->day(request.date.value_or(""), date_text(today()));
        settings.date = day_from(day);
        begin_together(ranks, day);
        return ground;
    } catch (...) {
        call_off(ranks);
        throw;
    }
}

void direct(const SweepRequest& request, SweepSettings& settings, unsigned threads, Ranks& ranks, const Console& console,
            const RunContext& context) {
    const Ground ground = prepare(request, settings, ranks, context);
    HouseCache houses;
    SweepTally tally;
    try {
        sweep(ground.files, settings_digest(settings), doer_for(ground.files, settings, houses), threads, *ground.results, ranks,
              context, tally);
        ground.results->keep_only(ground.files.names);
        const RollUp sums = roll_up(ground.files, settings.work, *ground.results, context);
        write_tables(request.folder, ground.files, settings.work, sums, *ground.results);
        print_sweep_table({ground.files, settings, tally, sums, request.folder, ranks.count(), threads}, console);
    } catch (const Cancelled&) {
        console.err << "seamward: stopped; " << tally.kept + tally.done << " of " << tally.lots << " lots are done and kept in "
                    << printable(request.folder) << "; the same command goes on from there\n";
        console.err.flush();
        end_by_signal(CancelOnSignal::signal_seen());
    }
}

/// What one lot took serves the next: given back to the system and asked for again with each, it cost a tenth of the time.
void keep_memory() {
#ifdef M_MMAP_THRESHOLD
    constexpr int large = 1 << 30, ahead = 64 << 20;  // bytes
    mallopt(M_MMAP_THRESHOLD, large);
    mallopt(M_TRIM_THRESHOLD, large);
    mallopt(M_TOP_PAD, ahead);
#endif
}

}  // namespace

void run_sweep(const SweepRequest& request, const Console& console, RunContext& context) {
    SweepSettings settings = settings_of(request);
    keep_memory();
    const CancelOnSignal guard(context);
    const std::shared_ptr<Ranks> ranks = open_ranks();
    const unsigned threads = request.threads > 0 ? static_cast<unsigned>(request.threads) : threads_for_one_rank();
    // mpirun has a terminal between, also where its output goes to a file.
    const Console plain{console.out, console.err, console.columns, console.styled && !started_by_mpirun()};
    if (ranks->rank() == 0)
        direct(request, settings, threads, *ranks, plain, context);
    else
        serve(request, settings, threads, *ranks, context);
}

}  // namespace seamward
