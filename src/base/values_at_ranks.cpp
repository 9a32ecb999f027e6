#include "base/values_at_ranks.hpp"

#include <algorithm>
#include <cstdint>
#include <iterator>
#include <numeric>
#include <vector>

#include "base/reach.hpp"

namespace entrywise {

namespace {

/// Fewer values are sorted as quickly.
constexpr std::size_t few_values = 48;

/// The values in drawers of equal width from the least to the greatest, one drawer behind the other. Which
/// drawer a value goes to is calculated and not decided, as a processor guesses half of the decisions of a
/// sort wrongly, and each wrong guess costs as much as a dozen sums.
class Drawers {
  public:
    Drawers(std::span<const double> values, double least, double greatest) : values_(values.size()) {
        const double drawers_per_unit = (count_of_drawers - 1) / (greatest - least);
        std::vector<std::uint8_t> drawer_of(values.size());
        for (std::size_t index = 0; index < values.size(); ++index) {
            drawer_of[index] =
                static_cast<std::uint8_t>(static_cast<int>((values[index] - least) * drawers_per_unit));
        }
        for (const std::uint8_t drawer : drawer_of) {
            ++end_of_[drawer];
        }
        std::partial_sum(end_of_.begin(), end_of_.end(), end_of_.begin());
        std::array<std::size_t, count_of_drawers> next{};
        std::copy(end_of_.begin(), end_of_.end() - 1, next.begin() + 1);
        for (std::size_t index = 0; index < values.size(); ++index) {
            values_[next[drawer_of[index]]++] = values[index];
        }
    }

    double at_rank(std::size_t rank) {
        const auto end = std::upper_bound(end_of_.begin(), end_of_.end(), rank);
        const std::size_t begin = end == end_of_.begin() ? 0 : *std::prev(end);
        std::nth_element(place(begin), place(rank), place(*end));
        return values_[rank];
    }

  private:
    static constexpr int count_of_drawers = 256;

    std::vector<double>::iterator place(std::size_t index) {
        return values_.begin() + static_cast<std::ptrdiff_t>(index);
    }

    std::vector<double> values_;
    std::array<std::size_t, count_of_drawers> end_of_{};
};

}  // namespace

void find_at_ranks(std::span<const double> values, std::span<const std::size_t> ranks,
                   std::span<double> found) {
    const auto [least, greatest] = reach_of(values);
    const double width = greatest - least;
    if (!(width > 0.0)) {
        std::fill(found.begin(), found.end(), least);
        return;
    }
    const bool can_be_divided = width > 1e-300 && width < 1e300;
    if (values.size() <= few_values || !can_be_divided) {
        std::vector<double> sorted(values.begin(), values.end());
        std::sort(sorted.begin(), sorted.end());
        std::transform(ranks.begin(), ranks.end(), found.begin(),
                       [&](std::size_t rank) { return sorted[rank]; });
        return;
    }
    Drawers drawers(values, least, greatest);
    std::transform(ranks.begin(), ranks.end(), found.begin(),
                   [&](std::size_t rank) { return drawers.at_rank(rank); });
}

}  // namespace entrywise
