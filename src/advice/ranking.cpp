#include "advice/ranking.hpp"

#include <algorithm>
#include <cmath>
#include <future>
#include <numeric>
#include <set>

#include "advice/custom_fit.hpp"
#include "advice/number_fit.hpp"
#include "advice/separation.hpp"
#include "advice/special.hpp"
#include "judging/cost_of_miss.hpp"
#include "judging/declared.hpp"
#include "judging/kind.hpp"
#include "judging/specialty.hpp"
#include "judging/tasting.hpp"
#include "judging/verdict.hpp"
#include "quantity/printed_precision.hpp"

namespace entrywise {

namespace {

/// All styles are held against a tasting of few draws, which tells who comes first; the first of them then
/// against all draws.
constexpr std::size_t few_draws = 16;
constexpr std::size_t held_finely = 8;
constexpr std::size_t shown_in_full = 5;
constexpr std::size_t bases_tried = 3;

/// A tasting with what is the same for every style.
struct Table {
    Tasting tasting;
    NumberFit numbers;
};

Table table_for(const Recipe& recipe, const Handbook& handbook, std::size_t draws) {
    Tasting tasting = taste(recipe, handbook.perception, draws);
    NumberFit numbers(tasting.beer);
    return {std::move(tasting), numbers};
}

/// A style to enter, with the base where it stands on one, and what came of it so far.
struct Candidate {
    const Style* style = nullptr;
    const Style* base = nullptr;
    Style judged_on_base;  ///< of the two, where there is a base
    CustomFit custom;
    StyleFit fit;
    double distance = 0.0;
    Estimate<double> points;
    std::optional<Sheet> sheet;  ///< where it was held finely

    const Style& judged() const { return base == nullptr ? *style : judged_on_base; }
};

double mean_of(const Estimate<double>& estimate) {
    const auto& draws = estimate.draws();
    return std::accumulate(draws.begin(), draws.end(), 0.0) / static_cast<double>(draws.size());
}

std::vector<Finding> findings_of_kind(const Table& table, const Style& style, const Handbook& handbook) {
    std::vector<Finding> findings;
    for (const KindMiss& miss : kind_misses(table.tasting.recipe, table.tasting.beer, table.tasting.profile,
                                            style, handbook.score_sheet, handbook.phrases.kin)) {
        findings.push_back(miss.finding);
    }
    return findings;
}

class Ranker {
  public:
    Ranker(const Recipe& recipe, const Handbook& handbook)
        : recipe_(recipe),
          handbook_(handbook),
          cost_of_miss_(handbook.score_sheet),
          coarse_(table_for(recipe, handbook, few_draws)),
          specials_(specials_in(recipe)) {}

    Candidate held(const Style& style) const {
        Candidate candidate;
        candidate.style = &style;
        hold_all(candidate);
        return candidate;
    }

    Candidate held_on(const Style& specialty, const Style& base) const {
        Candidate candidate;
        candidate.style = &specialty;
        candidate.base = &base;
        candidate.judged_on_base = judged_style(specialty, base);
        welcome_specials(specialty, candidate.judged_on_base.custom);
        hold_all(candidate);
        return candidate;
    }

    bool can_enter(const Style& specialty) const { return has_what_it_asks_for(specialty, specials_); }

    /// Holds a candidate against all draws, with what is found.
    void hold_finely(Candidate& candidate, const Table& fine) const {
        const Style& style = candidate.judged();
        candidate.sheet = judge(fine.tasting.beer, fine.tasting.profile, style, handbook_.score_sheet,
                                findings_of_kind(fine, style, handbook_));
        count(candidate, candidate.sheet->points);
    }

    const Table& coarse() const { return coarse_; }

  private:
    /// What a specialty style asks for is not unusual in it, whatever its base says.
    void welcome_specials(const Style& specialty, Custom& custom) const {
        for (const Special special : specials_) {
            if (has_place_for(specialty, special)) {
                for (const std::string& name : ingredients_that_are(special, recipe_)) {
                    custom.grist_possible.push_back(name);
                    custom.yeast_possible.push_back(name);
                }
            }
        }
    }

    /// Other grains and sugars are in many beers that nobody enters for them; smoke, fruit, spice, wood and
    /// wild yeast are there to be entered for (working value).
    double rarity_of(const Candidate& candidate) const {
        constexpr double of_what_is_there_for_it = 0.4;
        if (candidate.base == nullptr) {
            return candidate.style->custom.seldom ? 1.0 : 0.0;
        }
        const bool is_there_for_it = std::any_of(specials_.begin(), specials_.end(), [&](Special special) {
            return special != Special::grain && special != Special::sugar &&
                   has_place_for(*candidate.style, special) && !has_place_for(*candidate.base, special);
        });
        return is_there_for_it ? of_what_is_there_for_it : 1.0;
    }

    void hold_all(Candidate& candidate) const {
        const Style& style = candidate.judged();
        candidate.custom = custom_fit(recipe_, coarse_.tasting.beer, style);
        candidate.fit = {.points = 0.0,
                         .numbers = coarse_.numbers.unlikeliness_in(style.ranges),
                         .breadth = breadth_of(style),
                         .yeast = candidate.custom.yeast,
                         .hops = candidate.custom.hops,
                         .grist = candidate.custom.grist,
                         .rarity = rarity_of(candidate)};
        count(candidate,
              points_at_risk(coarse_.tasting.beer, coarse_.tasting.profile, style, handbook_.score_sheet,
                             cost_of_miss_, findings_of_kind(coarse_, style, handbook_)));
    }

    static void count(Candidate& candidate, Estimate<double> points) {
        candidate.points = std::move(points);
        candidate.fit.points = mean_of(candidate.points);
        candidate.distance = distance_of(candidate.fit, usual_fit_weights());
    }

    const Recipe& recipe_;
    const Handbook& handbook_;
    CostOfMiss cost_of_miss_;
    Table coarse_;
    std::set<Special> specials_;
};

bool is_closer(const Candidate& first, const Candidate& second) {
    return first.distance < second.distance;
}

/// `25B` of `25B-table-pale`.
std::string entered_code(const Style& style) {
    return style.code.substr(0, style.code.find('-'));
}

/// Of a style and its variants only the closest stays; the candidates are in order.
void keep_one_of_each(std::vector<Candidate>& candidates) {
    std::set<std::string> seen;
    std::erase_if(candidates, [&](const Candidate& candidate) {
        return !seen.insert(candidate.style->guide + "/" + entered_code(*candidate.style)).second;
    });
}

/// Whether the style says enough by itself to hold a beer against it.
bool stands_alone(const Style& style) {
    const StyleRanges& ranges = style.ranges;
    return ranges.original_gravity || ranges.final_gravity || ranges.alcohol || ranges.bitterness;
}

/// Works on each of so many things that know nothing of one another, every second one at the side.
template <class Work>
void each_of(std::size_t count, Work work) {
    const auto every_second = [&](std::size_t first) {
        for (std::size_t index = first; index < count; index += 2) {
            work(index);
        }
    };
    std::future<void> at_the_side = std::async(std::launch::async, every_second, std::size_t{1});
    every_second(0);
    at_the_side.get();
}

std::vector<Candidate> candidates_of(const std::vector<Style>& styles, const Ranker& ranker) {
    std::vector<const Style*> alone;
    for (const Style& style : styles) {
        if (stands_alone(style)) {
            alone.push_back(&style);
        }
    }
    std::vector<Candidate> candidates(alone.size());
    each_of(alone.size(), [&](std::size_t index) { candidates[index] = ranker.held(*alone[index]); });
    std::stable_sort(candidates.begin(), candidates.end(), is_closer);
    const std::size_t bases = std::min(bases_tried, candidates.size());
    std::vector<Candidate> specialties;
    for (const Style& style : styles) {
        if (is_specialty(style) && ranker.can_enter(style)) {
            for (std::size_t base = 0; base < bases; ++base) {
                specialties.push_back(ranker.held_on(style, *candidates[base].style));
            }
        }
    }
    candidates.insert(candidates.end(), specialties.begin(), specialties.end());
    std::stable_sort(candidates.begin(), candidates.end(), is_closer);
    keep_one_of_each(candidates);
    return candidates;
}

template <class Quantity>
void keep_within(std::vector<bool>& within, const Estimate<Quantity>& estimate,
                 const std::optional<Range<Quantity>>& range) {
    for (std::size_t draw = 0; range && draw < within.size(); ++draw) {
        within[draw] = within[draw] && range->contains(at_printed_precision(estimate[draw]));
    }
}

double chance_within(const Beer& beer, const StyleRanges& ranges) {
    std::vector<bool> within(beer.alcohol.count(), true);
    keep_within(within, beer.original_gravity.total, ranges.original_gravity);
    keep_within(within, beer.final_gravity, ranges.final_gravity);
    keep_within(within, beer.alcohol, ranges.alcohol);
    keep_within(within, beer.bitterness.total, ranges.bitterness);
    keep_within(within, beer.color.total, ranges.color);
    return static_cast<double>(std::count(within.begin(), within.end(), true)) /
           static_cast<double>(within.size());
}

/// How far apart two styles must be, in points of distance, for the odds of the nearer to be e to one that it
/// is the better choice: as often as the order was right for real recipes (tools/measure-ranking).
constexpr double points_to_a_fold = 4.5;

/// The chance of each candidate to be the best choice, over the draws of the first few.
std::vector<double> chances_of(const std::vector<Candidate>& candidates, std::size_t finely,
                               std::size_t draws) {
    std::vector<double> chances(candidates.size(), 0.0);
    const double nearest = candidates.empty() ? 0.0 : candidates.front().distance;
    for (std::size_t draw = 0; draw < draws; ++draw) {
        std::vector<double> odds;
        odds.reserve(candidates.size());
        double all = 0.0;
        for (std::size_t index = 0; index < candidates.size(); ++index) {
            const Candidate& candidate = candidates[index];
            const double drawn = index < finely ? candidate.points[draw] - candidate.fit.points : 0.0;
            odds.push_back(std::exp((nearest - candidate.distance - drawn) / points_to_a_fold));
            all += odds.back();
        }
        for (std::size_t index = 0; index < candidates.size(); ++index) {
            chances[index] += odds[index] / all / static_cast<double>(draws);
        }
    }
    return chances;
}

/// Whether a style is the one of that name, or a variant of it, or what it is a variant of.
bool is_of(const Style& style, const StyleName& name) {
    const std::string parent = name.code.substr(0, name.code.find('-'));
    return style.guide == name.guide && (style.code == name.code || style.code == parent ||
                                         (name.code == parent && entered_code(style) == parent));
}

RankedStyle ranked_style(const Candidate& candidate, const Table& table) {
    RankedStyle ranked;
    ranked.name = {candidate.style->guide, candidate.style->code};
    ranked.title = candidate.style->name;
    if (candidate.base != nullptr) {
        ranked.base = StyleName{candidate.base->guide, candidate.base->code};
        ranked.base_title = candidate.base->name;
    }
    ranked.fit = candidate.fit;
    ranked.distance = candidate.distance;
    ranked.at_risk = summary(candidate.points);
    ranked.within = chance_within(table.tasting.beer, candidate.judged().ranges);
    ranked.departures = candidate.custom.departures;
    return ranked;
}

}  // namespace

Ranking rank(const Recipe& recipe, const std::vector<Style>& styles, const Handbook& handbook,
             const std::optional<StyleName>& declared) {
    // The tasting of all draws needs nothing of the one of few: they are worked out side by side.
    std::future<Table> all_draws = std::async(
        std::launch::async, [&recipe, &handbook] { return table_for(recipe, handbook, usual_draws); });
    const Ranker ranker(recipe, handbook);
    std::vector<Candidate> candidates = candidates_of(styles, ranker);
    const std::size_t finely = std::min(held_finely, candidates.size());
    const Table fine = all_draws.get();
    each_of(finely, [&](std::size_t index) { ranker.hold_finely(candidates[index], fine); });
    std::stable_sort(candidates.begin(), candidates.begin() + static_cast<std::ptrdiff_t>(finely), is_closer);
    const std::vector<double> chances = chances_of(candidates, finely, usual_draws);
    Ranking ranking;
    ranking.styles.reserve(candidates.size());
    for (std::size_t index = 0; index < candidates.size(); ++index) {
        Candidate& candidate = candidates[index];
        const bool is_declared = declared && is_of(*candidate.style, *declared);
        if (is_declared) {
            ranking.declared = index;
        }
        if (is_declared && !candidate.sheet) {
            ranker.hold_finely(candidate, fine);
        }
        RankedStyle ranked = ranked_style(candidate, candidate.sheet ? fine : ranker.coarse());
        ranked.best = chances[index];
        if (index < shown_in_full || is_declared) {
            ranked.sheet = std::move(candidate.sheet);
            ranked.declarations =
                missing_declarations(recipe, *candidate.style, handbook.phrases.declarations);
        }
        ranking.styles.push_back(std::move(ranked));
    }
    ranking.separations = separations_of(ranking.styles, shown_in_full);
    ranking.near_misses = near_misses_of(ranking.styles, shown_in_full);
    return ranking;
}

}  // namespace entrywise
