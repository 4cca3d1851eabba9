// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/integer_program.h"

#include <algorithm>
#include <cmath>
#include <coin/CbcModel.hpp>
#include <coin/CbcSolver.hpp>
#include <coin/CoinPackedMatrix.hpp>
#include <coin/OsiClpSolverInterface.hpp>
#include <mutex>

namespace seamward {

IntegerAnswer solve(const IntegerProgram& program, int most_nodes) {
    if (program.columns.empty()) {
        const auto holds = [](const IntegerProgram::Row& row) { return row.least <= 0 && row.most >= 0; };
        if (!std::all_of(program.rows.begin(), program.rows.end(), holds))
            return {IntegerAnswer::Found::none_exists, {}, true, 0};
        return {IntegerAnswer::Found::solution, {}, true, 0};
    }
    // CbcMain1 keeps what it reads in globals: two at once spoil each other's answers.
    static std::mutex one_at_a_time;
    const std::scoped_lock lock(one_at_a_time);
    OsiClpSolverInterface solver;
    solver.messageHandler()->setLogLevel(0);
    solver.setHintParam(OsiDoReducePrint, true, OsiHintTry);
    CoinPackedMatrix matrix(false, 0, 0);
    matrix.setDimensions(0, static_cast<int>(program.columns.size()));
    std::vector<double> row_least, row_most;
    for (const IntegerProgram::Row& row : program.rows) {
        CoinPackedVector terms;
        for (const auto& [column, factor] : row.terms) terms.insert(static_cast<int>(column), factor);
        matrix.appendRow(terms);
        row_least.push_back(row.least);
        row_most.push_back(row.most);
    }
    std::vector<double> least, most, cost;
    for (const IntegerProgram::Column& column : program.columns) {
        least.push_back(column.least);
        most.push_back(column.most);
        cost.push_back(column.cost);
    }
    solver.loadProblem(matrix, least.data(), most.data(), cost.data(), row_least.data(), row_most.data());
    for (std::size_t i = 0; i < program.columns.size(); ++i) {
        if (program.columns[i].whole) solver.setInteger(static_cast<int>(i));
    }
    CbcModel model(solver);
    CbcSolverUsefulData settings;
    CbcMain0(model, settings);
    model.setLogLevel(0);
    const std::string nodes = std::to_string(most_nodes);
    const char* words[] = {"seamward", "-log",          "0", "-slog",     "0",           "-threads", "0",    "-ratioGap",
                           "0",        "-allowableGap", "0", "-maxNodes", nodes.c_str(), "-solve",   "-quit"};
    CbcMain1(
        static_cast<int>(std::size(words)), words, model, [](CbcModel*, int) { return 0; }, settings);
    const double* best = model.bestSolution();
    IntegerAnswer answer;
    if (best == nullptr) {
        const bool none = model.isProvenInfeasible() || model.isInitialSolveProvenPrimalInfeasible();
        answer.found = none ? IntegerAnswer::Found::none_exists : IntegerAnswer::Found::none_within_limits;
        return answer;
    }
    answer.values.assign(best, best + program.columns.size());
    for (std::size_t i = 0; i < program.columns.size(); ++i) {
        if (program.columns[i].whole) answer.values[i] = std::round(answer.values[i]);
    }
    answer.proven = model.isProvenOptimal();
    answer.bound = model.getBestPossibleObjValue();
    return answer;
}

}  // namespace seamward
