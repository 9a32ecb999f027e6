#include "advice/ranking.hpp"

#include <algorithm>
#include <cmath>
#include <deque>
#include <iterator>
#include <numeric>
#include <set>
#include <string_view>
#include <utility>

#include "advice/custom_fit.hpp"
#include "advice/number_fit.hpp"
#include "advice/separation.hpp"
#include "advice/special.hpp"
#include "judging/declared.hpp"
#include "judging/kind.hpp"
#include "judging/specialty.hpp"
#include "quantity/printed_precision.hpp"
#include "style/variant.hpp"

namespace entrywise {

namespace {

/// All styles are held against the first few draws of a tasting, which tells who comes first; the first of
/// them then against all draws.
constexpr std::size_t few_draws = 16;
constexpr std::size_t held_finely = 8;
constexpr std::size_t shown_in_full = 5;
constexpr std::size_t bases_tried = 3;

/// By how many points of distance few draws may mistake a style against another (working value).
constexpr double mistaken_by_few_draws = 3.0;

/// A style to enter, with the base where it stands on one, and what came of it so far.
struct Candidate {
    const Contender* entered = nullptr;
    const Contender* base = nullptr;
    const Style* judged = nullptr;         ///< the entered style, or what it and its base make together
    const Yardstick* yardstick = nullptr;  ///< of that
    CustomFit custom;
    StyleFit fit;
    double distance = 0.0;
    Estimate<double> points;
    bool is_fine = false;
    std::optional<Sheet> sheet;  ///< where it was asked for

    const Style& style() const { return *entered->style; }
};

/// Whether a style is the one of that name, or a variant of it, or what it is a variant of.
bool is_of(const Style& style, const StyleName& name) {
    const std::string parent = entered_code(name.code);
    return style.guide == name.guide && (style.code == name.code || style.code == parent ||
                                         (name.code == parent && entered_code(style.code) == parent));
}

double mean_of(const Estimate<double>& estimate) {
    const auto& draws = estimate.draws();
    return std::accumulate(draws.begin(), draws.end(), 0.0) / static_cast<double>(draws.size());
}

bool is_closer(const Candidate& first, const Candidate& second) {
    return first.distance < second.distance;
}

/// A specialty style and a base of it as one.
struct OnBase {
    OnBase(const Style& specialty, const Style& base, const Perception& perception)
        : style(judged_style(specialty, base)), yardstick(style, perception) {}
    OnBase(const OnBase&) = delete;
    OnBase& operator=(const OnBase&) = delete;

    Style style;
    Yardstick yardstick;
};

class Ranker {
  public:
    Ranker(const Tasting& tasting, const LineUp& line_up)
        : tasting_(tasting),
          line_up_(line_up),
          coarse_(tasting.beer, tasting.profile, few_draws),
          fine_(tasting.beer, tasting.profile),
          numbers_(tasting.beer),
          custom_(tasting.recipe, tasting.beer),
          specials_(specials_in(tasting.recipe)) {}

    /// The styles that stand alone, closest first, held against few draws. With a limit, only the declared
    /// one and as many as it takes to know the first so many of different entry.
    std::vector<Candidate> plain(std::optional<std::size_t> first_so_many,
                                 const std::optional<StyleName>& declared) const {
        std::vector<Candidate> candidates;
        for (const Contender& contender : line_up_.contenders()) {
            const Style& style = *contender.style;
            const bool lacks_something = is_made_of_another(style) && !has_what_it_asks_for(style, specials_);
            if (contender.stands_alone && !lacks_something) {
                candidates.push_back(before_tasting(contender));
            }
        }
        std::stable_sort(candidates.begin(), candidates.end(), is_closer);
        std::size_t held = 0;
        while (held < candidates.size() &&
               !(first_so_many && are_settled(candidates, held, *first_so_many))) {
            hold_coarsely(candidates[held++]);
        }
        const auto passed_over = candidates.begin() + static_cast<std::ptrdiff_t>(held);
        const auto end = std::remove_if(passed_over, candidates.end(), [&](const Candidate& candidate) {
            return !declared || !is_of(candidate.style(), *declared);
        });
        candidates.erase(end, candidates.end());
        for (; held < candidates.size(); ++held) {
            hold_coarsely(candidates[held]);
        }
        std::stable_sort(candidates.begin(), candidates.end(), is_closer);
        return candidates;
    }

    /// The specialty styles that the recipe has what it takes for, each on the closest plain styles.
    std::vector<Candidate> specialties(const std::vector<Candidate>& plain) {
        std::vector<Candidate> candidates;
        for (const Contender& contender : line_up_.contenders()) {
            if (contender.stands_on_another && has_what_it_asks_for(*contender.style, specials_)) {
                for (const Contender* base : bases_for(contender, plain)) {
                    candidates.push_back(held_on(contender, *base));
                }
            }
        }
        return candidates;
    }

    /// Holds a candidate against all draws.
    void hold_finely(Candidate& candidate) const {
        if (!candidate.is_fine) {
            candidate.is_fine = true;
            count(candidate, points_at_risk(fine_, *candidate.yardstick, line_up_.tariff(),
                                            findings_of_kind(fine_, *candidate.judged)));
        }
    }

    /// The same, with what is found.
    void judge_finely(Candidate& candidate) const {
        candidate.sheet =
            judge(fine_, *candidate.yardstick, line_up_.tariff(), findings_of_kind(fine_, *candidate.judged));
        candidate.is_fine = true;
        count(candidate, candidate.sheet->points);
    }

    const Tasting& tasting() const { return tasting_; }

  private:
    /// The closest plain styles of its own guide.
    static std::vector<const Contender*> bases_for(const Contender& specialty,
                                                   const std::vector<Candidate>& plain) {
        std::vector<const Contender*> bases;
        for (const Candidate& candidate : plain) {
            if (bases.size() < bases_tried && candidate.style().guide == specialty.style->guide) {
                bases.push_back(candidate.entered);
            }
        }
        return bases;
    }

    /// Held against what needs no palate. The distance can only grow from here.
    Candidate before_tasting(const Contender& contender) const {
        Candidate candidate;
        candidate.entered = &contender;
        candidate.judged = contender.style;
        candidate.yardstick = &contender.yardstick;
        fit_customs(candidate, contender.style->custom, contender.breadth);
        return candidate;
    }

    Candidate held_on(const Contender& specialty, const Contender& base) {
        const OnBase& both =
            on_bases_.emplace_back(*specialty.style, *base.style, line_up_.handbook().perception);
        Candidate candidate;
        candidate.entered = &specialty;
        candidate.base = &base;
        candidate.judged = &both.style;
        candidate.yardstick = &both.yardstick;
        Custom custom = both.style.custom;
        welcome_specials(*specialty.style, custom);
        fit_customs(candidate, custom, breadth_of(both.style));
        hold_coarsely(candidate);
        return candidate;
    }

    void fit_customs(Candidate& candidate, const Custom& custom, double breadth) const {
        candidate.custom = custom_.fit_to(*candidate.judged, custom);
        candidate.fit = {.points = 0.0,
                         .numbers = numbers_.unlikeliness_in(candidate.judged->ranges),
                         .breadth = breadth,
                         .yeast = candidate.custom.yeast,
                         .hops = candidate.custom.hops,
                         .grist = candidate.custom.grist,
                         .rarity = rarity_of(candidate),
                         .guide = handicap_of(candidate.style().guide)};
        candidate.distance = distance_of(candidate.fit, usual_fit_weights());
    }

    void hold_coarsely(Candidate& candidate) const {
        count(candidate, points_at_risk(coarse_, *candidate.yardstick, line_up_.tariff(),
                                        findings_of_kind(coarse_, *candidate.judged)));
    }

    /// Whether no candidate from `held` on, in the order of least distances, can come among the first so many
    /// entries of those held before.
    static bool are_settled(const std::vector<Candidate>& candidates, std::size_t held,
                            std::size_t first_so_many) {
        std::set<std::string_view> closer;
        for (std::size_t index = 0; index < held; ++index) {
            if (candidates[index].distance <= candidates[held].distance) {
                closer.insert(candidates[index].entered->entered_as);
            }
        }
        return closer.size() >= first_so_many;
    }

    std::vector<Finding> findings_of_kind(const Impression& beer, const Style& style) const {
        std::vector<Finding> findings;
        const Handbook& handbook = line_up_.handbook();
        for (const KindMiss& miss :
             kind_misses(tasting_.recipe, beer, style, handbook.score_sheet, handbook.phrases.kin)) {
            findings.push_back(miss.finding);
        }
        return findings;
    }

    /// What a specialty style asks for is not unusual in it, whatever its base says.
    void welcome_specials(const Style& specialty, Custom& custom) const {
        for (const Special special : specials_) {
            if (has_place_for(specialty, special)) {
                for (const std::string_view name : ingredients_that_are(special, tasting_.recipe)) {
                    custom.grist_possible.emplace_back(name);
                    custom.yeast_possible.emplace_back(name);
                }
            }
        }
    }

    /// Other grains and sugars are in many beers that nobody enters for them; smoke, fruit, spice, wood and
    /// wild yeast are there to be entered for (working value).
    double rarity_of(const Candidate& candidate) const {
        constexpr double of_what_is_there_for_it = 0.4;
        if (candidate.base == nullptr) {
            return candidate.style().custom.seldom ? 1.0 : 0.0;
        }
        const Style& base = *candidate.base->style;
        const bool is_there_for_it = std::any_of(specials_.begin(), specials_.end(), [&](Special special) {
            return special != Special::grain && special != Special::sugar &&
                   has_place_for(candidate.style(), special) && !has_place_for(base, special);
        });
        return is_there_for_it ? of_what_is_there_for_it : 1.0;
    }

    static void count(Candidate& candidate, Estimate<double> points) {
        candidate.points = std::move(points);
        candidate.fit.points = mean_of(candidate.points);
        candidate.distance = distance_of(candidate.fit, usual_fit_weights());
    }

    const Tasting& tasting_;
    const LineUp& line_up_;
    Impression coarse_;
    Impression fine_;
    NumberFit numbers_;
    CustomOfRecipe custom_;
    std::set<Special> specials_;
    std::deque<OnBase> on_bases_;
};

/// Of a style and its variants only the closest stays; the candidates are in order.
void keep_one_of_each(std::vector<Candidate>& candidates) {
    std::set<std::string_view> seen;
    std::erase_if(candidates, [&](const Candidate& candidate) {
        return !seen.insert(candidate.entered->entered_as).second;
    });
}

std::vector<Candidate> candidates_of(Ranker& ranker, std::optional<std::size_t> first_so_many,
                                     const std::optional<StyleName>& declared) {
    std::vector<Candidate> candidates = ranker.plain(first_so_many, declared);
    std::vector<Candidate> specialties = ranker.specialties(candidates);
    std::move(specialties.begin(), specialties.end(), std::back_inserter(candidates));
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

/// The chance of each candidate to be the best choice, over the draws of those held finely.
std::vector<double> chances_of(const std::vector<Candidate>& candidates, std::size_t draws) {
    std::vector<double> chances(candidates.size(), 0.0);
    const double nearest = candidates.empty() ? 0.0 : candidates.front().distance;
    std::vector<double> odds(candidates.size(), 0.0);
    for (std::size_t index = 0; index < candidates.size(); ++index) {
        odds[index] = std::exp((nearest - candidates[index].distance) / points_to_a_fold);
    }
    std::vector<double> drawn = odds;
    for (std::size_t draw = 0; draw < draws; ++draw) {
        for (std::size_t index = 0; index < candidates.size(); ++index) {
            const Candidate& candidate = candidates[index];
            if (candidate.is_fine) {
                const double above_mean = candidate.points[draw] - candidate.fit.points;
                drawn[index] = odds[index] * std::exp(-above_mean / points_to_a_fold);
            }
        }
        const double all = std::accumulate(drawn.begin(), drawn.end(), 0.0);
        for (std::size_t index = 0; index < candidates.size(); ++index) {
            chances[index] += drawn[index] / all / static_cast<double>(draws);
        }
    }
    return chances;
}

RankedStyle ranked_style(const Candidate& candidate, const Tasting& tasting) {
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
    ranked.within = chance_within(tasting.beer, candidate.judged->ranges);
    return ranked;
}

auto first_of(std::vector<Candidate>& candidates, std::size_t count) {
    return candidates.begin() + static_cast<std::ptrdiff_t>(std::min(count, candidates.size()));
}

}  // namespace

Ranking rank(const Recipe& recipe, const std::vector<Style>& styles, const Handbook& handbook,
             const std::optional<StyleName>& declared) {
    const Tasting tasting = taste(recipe, handbook.perception);
    const LineUp line_up(styles, handbook);
    Ranker ranker(tasting, line_up);
    std::vector<Candidate> candidates = candidates_of(ranker, std::nullopt, declared);
    const auto finely = first_of(candidates, held_finely);
    std::for_each(candidates.begin(), finely, [&](Candidate& candidate) { ranker.judge_finely(candidate); });
    std::stable_sort(candidates.begin(), finely, is_closer);
    const std::vector<double> chances = chances_of(candidates, usual_draws);
    Ranking ranking;
    ranking.styles.reserve(candidates.size());
    for (std::size_t index = 0; index < candidates.size(); ++index) {
        Candidate& candidate = candidates[index];
        const bool is_declared = declared && is_of(candidate.style(), *declared);
        if (is_declared) {
            ranking.declared = index;
        }
        if (is_declared && !candidate.sheet) {
            ranker.judge_finely(candidate);
        }
        RankedStyle ranked = ranked_style(candidate, tasting);
        ranked.best = chances[index];
        ranked.departures = departures_of(candidate.custom);
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

std::optional<BestPlace> best_place(const Tasting& tasting, const LineUp& line_up,
                                    const std::optional<StyleName>& declared) {
    Ranker ranker(tasting, line_up);
    std::vector<Candidate> candidates = candidates_of(ranker, held_finely, declared);
    if (candidates.empty()) {
        return std::nullopt;
    }
    const auto finely = first_of(candidates, held_finely);
    const double in_the_lead = candidates.front().distance + mistaken_by_few_draws;
    for (auto candidate = candidates.begin(); candidate != finely; ++candidate) {
        if (candidate->distance <= in_the_lead) {
            ranker.hold_finely(*candidate);
        }
    }
    const auto best = std::min_element(candidates.begin(), finely, is_closer);
    BestPlace place{ranked_style(*best, tasting), {}};
    const auto own = std::find_if(candidates.begin(), candidates.end(), [&](const Candidate& candidate) {
        return declared && is_of(candidate.style(), *declared);
    });
    if (own != candidates.end()) {
        ranker.hold_finely(*own);
        place.declared = ranked_style(*own, tasting);
    }
    return place;
}

}  // namespace entrywise
