#include "base/values_at_ranks.hpp"

#include <algorithm>
#include <cstdint>
#include <vector>

#include "base/reach.hpp"

namespace entrywise {

namespace {

/// Fewer values are sorted as quickly.
constexpr std::size_t few_values = 48;

/// The values in drawers of equal width from the least to the greatest. Which drawer a value goes to is
/// calculated and not decided, as a processor guesses half of the decisions of a sort wrongly, and each wrong
/// guess costs as much as a dozen sums.
class Drawers {
  public:
    Drawers(std::span<const double> values, double least, double greatest)
        : values_(values), drawer_of_(values.size()) {
        const double drawers_per_unit = (count_of_drawers - 1) / (greatest - least);
        for (std::size_t index = 0; index < values.size(); ++index) {
            drawer_of_[index] =
                static_cast<std::uint8_t>(static_cast<int>((values[index] - least) * drawers_per_unit));
        }
        for (const std::uint8_t drawer : drawer_of_) {
            ++held_[drawer];
        }
    }

    double at_rank(std::size_t rank) {
        std::size_t drawer = 0;
        while (rank >= held_[drawer]) {
            rank -= held_[drawer];
            ++drawer;
        }
        take_out(drawer);
        const auto wanted = taken_out_.begin() + static_cast<std::ptrdiff_t>(rank);
        const auto end = taken_out_.begin() + static_cast<std::ptrdiff_t>(held_[drawer]);
        std::nth_element(taken_out_.begin(), wanted, end);
        return *wanted;
    }

  private:
    static constexpr int count_of_drawers = 256;

    void take_out(std::size_t drawer) {
        taken_out_.resize(values_.size() + 1);
        std::size_t taken = 0;
        for (std::size_t index = 0; index < values_.size(); ++index) {
            taken_out_[taken] = values_[index];
            taken += drawer_of_[index] == drawer ? 1U : 0U;
        }
    }

    std::span<const double> values_;
    std::vector<std::uint8_t> drawer_of_;
    std::array<std::size_t, count_of_drawers> held_{};
    std::vector<double> taken_out_;
};

}  // namespace

void find_at_ranks(std::span<const double> values, std::span<const std::size_t> ranks,
                   std::span<double> found) {
    const auto [least, greatest] = reach_of(values);
    const double width = greatest - least;
    const bool can_be_divided = width > 0.0 && 1.0 / width < 1e300 && width < 1e300;
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
