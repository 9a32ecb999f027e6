#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "judging/cost_of_miss.hpp"
#include "judging/deviation.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// Everything that is sensed and charged: the attributes, and color behind them.
inline constexpr std::size_t sensed_count = attribute_count + 1;
inline constexpr std::size_t place_of_color = attribute_count;

/// A score sheet made ready to judge many beers by: what misses cost, and which cause and which shared miss
/// each thing sensed belongs to, looked up once. The score sheet must last as long as it does.
class Tariff {
  public:
    explicit Tariff(const ScoreSheet& score_sheet);

    const ScoreSheet& score_sheet() const { return *score_sheet_; }
    const CostOfMiss& cost_of_miss() const { return cost_of_miss_; }

    /// Everything that shows a cause of the sheet, named by its place, in the order of the attributes.
    const std::vector<std::size_t>& shown_by(std::size_t cause) const { return shown_by_[cause]; }

    /// The place among the sheet's causes of the one that this shows, if any.
    std::optional<std::size_t> cause_of(std::size_t sensed) const { return cause_[sensed]; }
    /// Which of the sheet's lists of findings that are one miss it is in, for too much and for too little.
    std::optional<std::size_t> miss_above(std::size_t sensed) const { return miss_above_[sensed]; }
    std::optional<std::size_t> miss_below(std::size_t sensed) const { return miss_below_[sensed]; }

  private:
    using ByPlace = std::array<std::optional<std::size_t>, sensed_count>;

    const ScoreSheet* score_sheet_;
    CostOfMiss cost_of_miss_;
    std::vector<std::vector<std::size_t>> shown_by_;
    ByPlace cause_;
    ByPlace miss_above_;
    ByPlace miss_below_;
};

/// The place among all that is sensed of what deviates.
std::size_t place_of(const Deviation& deviation);

/// `flavor.bitterness`, `appearance.color`.
std::string_view name_of_sensed(std::size_t sensed);

}  // namespace entrywise
