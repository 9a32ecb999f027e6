#include "brewing/deviates.hpp"

#include <boost/math/distributions/normal.hpp>
#include <boost/random/sobol.hpp>

#include <algorithm>
#include <cstdint>
#include <functional>
#include <random>
#include <utility>

namespace entrywise {

namespace {

/// Hardly a recipe names more inputs: real ones some 75 to 105. Each column costs, and widening costs them
/// all.
constexpr std::size_t columns_at_first = 112;
constexpr std::size_t most_dimensions = BOOST_RANDOM_SOBOL_MAX_DIMENSION;

/// The middles of equally likely slices of the standard normal distribution, lowest first.
std::vector<double> normal_slices(std::size_t count) {
    const boost::math::normal standard;
    std::vector<double> middles;
    middles.reserve(count);
    for (std::size_t slice = 0; slice < count; ++slice) {
        const double share = (static_cast<double>(slice) + 0.5) / static_cast<double>(count);
        middles.push_back(boost::math::quantile(standard, share));
    }
    return middles;
}

/// The values in an order that depends on the seed alone, the same with every standard library.
std::vector<double> shuffled(std::vector<double> values, std::size_t seed) {
    std::mt19937_64 random(seed);
    for (std::size_t left = values.size(); left > 1; --left) {
        std::swap(values[left - 1], values[random() % left]);
    }
    return values;
}

}  // namespace

Deviates::Deviates(std::size_t draws) : standard_normal_(normal_slices(draws)) {
    if (draws == 1) {
        columns_.assign(1, {0.0});
    } else {
        widen(columns_at_first);
    }
}

void Deviates::widen(std::size_t columns) {
    const std::size_t first_new = columns_.size();
    const std::size_t dimensions = std::min(columns, most_dimensions);
    columns_.resize(columns, std::vector<double>(draws()));
    // The first 2^n points, of which the engine leaves out the very first, zero, fall one each into 2^n equal
    // slices of every dimension. A shift of each dimension's digits keeps that and takes point zero out of
    // the corner where every input is lowest.
    boost::random::sobol sequence(dimensions);
    std::mt19937_64 shifts;
    std::vector<std::uint64_t> shift(dimensions);
    std::generate(shift.begin(), shift.end(), std::ref(shifts));
    const auto slice_of = [slices = static_cast<std::uint64_t>(draws())](std::uint64_t point) {
        constexpr int half = 32;
        return static_cast<std::size_t>(((point >> half) * slices) >> half);
    };
    for (std::size_t draw = 0; draw < draws(); ++draw) {
        for (std::size_t column = 0; column < dimensions; ++column) {
            const std::uint64_t point = draw == 0 ? 0 : sequence();
            if (column >= first_new) {
                columns_[column][draw] = standard_normal_[slice_of(point ^ shift[column])];
            }
        }
    }
    for (std::size_t column = std::max(first_new, dimensions); column < columns; ++column) {
        columns_[column] = shuffled(standard_normal_, column);
    }
}

const std::vector<double>& Deviates::of(const std::string& input) {
    if (draws() == 1) {
        return columns_.front();
    }
    const auto [entry, is_new] = column_of_.try_emplace(input, column_of_.size());
    if (is_new && entry->second >= columns_.size()) {
        widen(columns_.size() * 2);
    }
    return columns_[entry->second];
}

}  // namespace entrywise
