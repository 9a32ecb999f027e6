#include "tools/validation/comparison.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace entrywise {

namespace {

double median_of(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    const std::size_t middle = values.size() / 2;
    return values.size() % 2 == 1 ? values[middle] : 0.5 * (values[middle - 1] + values[middle]);
}

}  // namespace

std::string word_of(Evidence evidence) {
    switch (evidence) {
        case Evidence::measured:
            return "measured";
        case Evidence::measured_seen:
            return "measured, seen";
        case Evidence::printed:
            return "printed table";
        case Evidence::own_formula:
            break;
    }
    return "own formula";
}

Errors errors_of(const std::vector<Comparison>& values) {
    Errors errors;
    errors.count = values.size();
    std::vector<double> absolute;
    double squares = 0.0;
    for (const Comparison& value : values) {
        absolute.push_back(std::abs(value.error()));
        errors.bias += value.error() / static_cast<double>(values.size());
        squares += value.error() * value.error();
        errors.with_interval += value.interval ? 1U : 0U;
        errors.inside += value.is_inside() ? 1U : 0U;
    }
    if (!values.empty()) {
        errors.median_absolute = median_of(std::move(absolute));
        errors.root_mean_square = std::sqrt(squares / static_cast<double>(values.size()));
    }
    return errors;
}

std::string inside_in_words(const Errors& errors) {
    return errors.with_interval == 0 ? "–" : fmt::format("{} of {}", errors.inside, errors.with_interval);
}

}  // namespace entrywise
