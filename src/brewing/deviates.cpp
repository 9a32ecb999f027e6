#include "brewing/deviates.hpp"

#include <algorithm>

#include <boost/math/distributions/normal.hpp>
#include <boost/random/sobol.hpp>

namespace entrywise {

namespace {

constexpr std::size_t columns_at_first = 96;

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

}  // namespace

Deviates::Deviates(std::size_t draws) : standard_normal_(normal_slices(draws)) {
    if (draws == 1) {
        columns_.assign(1, {0.0});
    } else {
        widen(columns_at_first);
    }
}

void Deviates::widen(std::size_t columns) {
    // The first 2^n points of the sequence fall one each into 2^n equal slices of every dimension.
    boost::random::sobol sequence(columns);
    const double slices = static_cast<double>(draws());
    const double range = static_cast<double>((boost::random::sobol::max)()) + 1.0;
    columns_.assign(columns, std::vector<double>(draws()));
    for (std::size_t draw = 0; draw < draws(); ++draw) {
        for (std::vector<double>& column : columns_) {
            const double share = static_cast<double>(sequence()) / range;
            const auto slice = static_cast<std::size_t>(share * slices);
            column[draw] = standard_normal_[std::min(slice, draws() - 1)];
        }
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
