#include "advice/ranking.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

#include "advice/ranker.hpp"
#include "advice/separation.hpp"
#include "judging/declared.hpp"
#include "quantity/printed_precision.hpp"
#include "style/variant.hpp"

namespace entrywise {

namespace {

/// The first so many are held against all draws, as few draws may mistake one of them for the best.
constexpr std::size_t held_finely = 8;
constexpr std::size_t shown_in_full = 5;

/// The draws of a beer's numbers at the precision in which guides print their ranges.
class PrintedNumbers {
  public:
    explicit PrintedNumbers(const Beer& beer)
        : original_gravity_(lift(printed, beer.original_gravity.total)),
          final_gravity_(lift(printed, beer.final_gravity)),
          alcohol_(lift(printed, beer.alcohol)),
          bitterness_(lift(printed, beer.bitterness.total)),
          color_(lift(printed, beer.color.total)) {}

    /// The chance that all of them are in the ranges.
    double chance_within(const StyleRanges& ranges) const {
        std::size_t within = 0;
        for (std::size_t draw = 0; draw < alcohol_.count(); ++draw) {
            const bool are_all_within = is_within(ranges.color, color_[draw]) &&
                                        is_within(ranges.bitterness, bitterness_[draw]) &&
                                        is_within(ranges.alcohol, alcohol_[draw]) &&
                                        is_within(ranges.original_gravity, original_gravity_[draw]) &&
                                        is_within(ranges.final_gravity, final_gravity_[draw]);
            within += are_all_within ? 1 : 0;
        }
        return static_cast<double>(within) / static_cast<double>(alcohol_.count());
    }

  private:
    static constexpr auto printed = [](const auto& draw) { return at_printed_precision(draw); };

    template <class Quantity>
    static bool is_within(const std::optional<Range<Quantity>>& range, const Quantity& value) {
        return !range || range->contains(value);
    }

    Estimate<SpecificGravity> original_gravity_;
    Estimate<SpecificGravity> final_gravity_;
    Estimate<AlcoholByVolume> alcohol_;
    Estimate<Bitterness> bitterness_;
    Estimate<Color> color_;
};

/// How far apart two styles must be, in points of distance, for the odds of the nearer to be e to one that it
/// is the better choice: as often as the order was right for real recipes (tools/measure-ranking).
constexpr double points_to_a_fold = 4.5;

/// The chance of each candidate to be the best choice, over the draws of the first so many.
std::vector<double> chances_of(const std::vector<Candidate>& candidates, std::size_t finely,
                               std::size_t draws) {
    std::vector<double> chances(candidates.size(), 0.0);
    const double nearest = candidates.empty() ? 0.0 : candidates.front().distance;
    std::vector<double> odds(candidates.size(), 0.0);
    for (std::size_t index = 0; index < candidates.size(); ++index) {
        odds[index] = std::exp((nearest - candidates[index].distance) / points_to_a_fold);
    }
    std::vector<double> drawn = odds;
    for (std::size_t draw = 0; draw < draws; ++draw) {
        for (std::size_t index = 0; index < finely; ++index) {
            const Candidate& candidate = candidates[index];
            const double above_mean = candidate.points[draw] - candidate.fit.points;
            drawn[index] = odds[index] * std::exp(-above_mean / points_to_a_fold);
        }
        const double all = std::accumulate(drawn.begin(), drawn.end(), 0.0);
        for (std::size_t index = 0; index < candidates.size(); ++index) {
            chances[index] += drawn[index] / all / static_cast<double>(draws);
        }
    }
    return chances;
}

RankedStyle ranked_style(const Candidate& candidate, const PrintedNumbers& numbers) {
    RankedStyle ranked;
    ranked.name = {candidate.style().guide, candidate.style().code};
    ranked.title = candidate.style().name;
    if (candidate.base != nullptr) {
        const Style& base = *candidate.base->style;
        ranked.base = StyleName{base.guide, base.code};
        ranked.base_title = base.name;
    }
    ranked.fit = candidate.fit;
    ranked.distance = candidate.distance;
    ranked.at_risk = summary(candidate.points);
    ranked.within = numbers.chance_within(candidate.judged->ranges);
    ranked.departures = departures_of(candidate.custom);
    return ranked;
}

}  // namespace

Ranking rank(const Recipe& recipe, const std::vector<Style>& styles, const Handbook& handbook,
             const std::optional<StyleName>& declared) {
    const Tasting tasting = taste(recipe, handbook.perception);
    const LineUp line_up(styles, handbook);
    const Impression impression(tasting.beer, tasting.profile);
    Ranker ranker(tasting, impression, line_up);
    std::vector<Candidate> candidates = ranker.all();
    const std::size_t finely = std::min(held_finely, candidates.size());
    const auto end_of_finely = candidates.begin() + static_cast<std::ptrdiff_t>(finely);
    std::for_each(candidates.begin(), end_of_finely,
                  [&](Candidate& candidate) { ranker.judge_fully(candidate); });
    std::stable_sort(candidates.begin(), end_of_finely, is_closer);
    const std::vector<double> chances = chances_of(candidates, finely, usual_draws);
    const PrintedNumbers numbers(tasting.beer);
    Ranking ranking;
    ranking.styles.reserve(candidates.size());
    for (std::size_t index = 0; index < candidates.size(); ++index) {
        Candidate& candidate = candidates[index];
        const bool is_declared =
            declared && are_one_entry({candidate.style().guide, candidate.style().code}, *declared);
        if (is_declared) {
            ranking.declared = index;
        }
        if (is_declared && !candidate.sheet) {
            ranker.judge_fully(candidate);
        }
        RankedStyle ranked = ranked_style(candidate, numbers);
        ranked.best = chances[index];
        if (index < shown_in_full || is_declared) {
            ranked.sheet = std::move(candidate.sheet);
            ranked.declarations =
                missing_declarations(recipe, candidate.style(), handbook.phrases.declarations);
        }
        ranking.styles.push_back(std::move(ranked));
    }
    ranking.separations = separations_of(ranking.styles, shown_in_full);
    ranking.near_misses = near_misses_of(ranking.styles, shown_in_full);
    return ranking;
}

}  // namespace entrywise
