#include "advice/ranker.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <numeric>
#include <string_view>
#include <utility>

#include "judging/kind.hpp"
#include "judging/specialty.hpp"
#include "style/variant.hpp"

namespace entrywise {

namespace {

constexpr std::size_t bases_tried = 3;

double mean_of(const Estimate<double>& estimate) {
    const auto& draws = estimate.draws();
    return std::accumulate(draws.begin(), draws.end(), 0.0) / static_cast<double>(draws.size());
}

/// Of a style and its variants only the closest stays; the candidates are in order.
void keep_one_of_each(std::vector<Candidate>& candidates) {
    std::set<std::string_view> seen;
    std::erase_if(candidates, [&](const Candidate& candidate) {
        return !seen.insert(candidate.entered->entered_as).second;
    });
}

/// Whether a candidate, and all that are no closer before tasting, is too far behind the leaders to lead, or
/// to stand under a specialty style that does.
bool is_too_far_behind(const Candidate& candidate, const std::vector<Candidate>& leading) {
    return leading.size() >= bases_tried &&
           candidate.distance > leading.front().distance + mistaken_by(few_draws) &&
           candidate.distance > leading[bases_tried - 1].distance;
}

/// The closest plain styles of a specialty's own guide.
std::vector<const Contender*> bases_for(const Contender& specialty, const std::vector<Candidate>& plain) {
    std::vector<const Contender*> bases;
    for (const Candidate& candidate : plain) {
        if (bases.size() < bases_tried && candidate.style().guide == specialty.style->guide) {
            bases.push_back(candidate.entered);
        }
    }
    return bases;
}

}  // namespace

double mistaken_by(std::size_t draws) {
    constexpr double times_draws = 48.0;
    return times_draws / static_cast<double>(draws);
}

bool is_closer(const Candidate& first, const Candidate& second) {
    return first.distance < second.distance;
}

bool are_one_entry(const StyleName& first, const StyleName& second) {
    return first.guide == second.guide &&
           (first.code == second.code || first.code == entered_code(second.code) ||
            entered_code(first.code) == second.code);
}

Ranker::OnBase::OnBase(const Style& specialty, const Style& base, const Perception& perception)
    : style(judged_style(specialty, base)), yardstick(style, perception) {}

Ranker::Ranker(const Tasting& tasting, const Impression& impression, const LineUp& line_up)
    : tasting_(tasting),
      line_up_(line_up),
      all_draws_(impression),
      few_draws_(all_draws_, few_draws),
      numbers_(tasting.beer),
      custom_(tasting.recipe, tasting.beer, line_up.words()),
      specials_(specials_in(tasting.recipe)) {}

std::vector<Candidate> Ranker::all() {
    std::vector<Candidate> candidates = before_tasting();
    for (Candidate& candidate : candidates) {
        hold_against(few_draws_, candidate);
    }
    std::stable_sort(candidates.begin(), candidates.end(), is_closer);
    return with_specialties(std::move(candidates));
}

std::vector<Candidate> Ranker::leading() {
    std::vector<Candidate> candidates = before_tasting();
    std::stable_sort(candidates.begin(), candidates.end(), is_closer);
    std::vector<Candidate> leading;
    for (Candidate& candidate : candidates) {
        if (is_too_far_behind(candidate, leading)) {
            break;
        }
        hold_against(few_draws_, candidate);
        leading.insert(std::upper_bound(leading.begin(), leading.end(), candidate, is_closer),
                       std::move(candidate));
    }
    return with_specialties(std::move(leading));
}

void Ranker::hold(Candidate& candidate) const {
    hold_against(all_draws_, candidate);
}

void Ranker::take_points(Candidate& candidate, Estimate<double> points) {
    candidate.points = std::move(points);
    candidate.fit.points = mean_of(candidate.points);
    candidate.distance = distance_of(candidate.fit, usual_fit_weights());
}

void Ranker::hold(std::vector<Candidate>& candidates, std::size_t first_draws) const {
    const Impression impression(all_draws_, first_draws);
    for (Candidate& candidate : candidates) {
        hold_against(impression, candidate);
    }
}

void Ranker::judge_fully(Candidate& candidate) const {
    candidate.sheet = judge(all_draws_, *candidate.yardstick, line_up_.tariff(),
                            findings_of_kind(all_draws_, *candidate.judged));
    take_points(candidate, candidate.sheet->points);
}

/// The styles that stand alone, held against what needs no palate. Distances can only grow from here.
std::vector<Candidate> Ranker::before_tasting() const {
    std::vector<Candidate> candidates;
    candidates.reserve(line_up_.contenders().size());
    for (const Contender& contender : line_up_.contenders()) {
        const Style& style = *contender.style;
        const bool lacks_something = is_made_of_another(style) && !has_what_it_asks_for(style, specials_);
        if (contender.stands_alone && !lacks_something) {
            Candidate& candidate = candidates.emplace_back();
            candidate.entered = &contender;
            candidate.judged = &style;
            candidate.yardstick = &contender.yardstick;
            fit_customs(candidate, contender.custom, contender.wording);
        }
    }
    return candidates;
}

/// The plain ones, closest first, and the specialty styles on the first of them.
std::vector<Candidate> Ranker::with_specialties(std::vector<Candidate> plain) {
    std::vector<Candidate> specialties;
    for (const Contender& contender : line_up_.contenders()) {
        if (contender.stands_on_another && has_what_it_asks_for(*contender.style, specials_)) {
            for (const Contender* const base : bases_for(contender, plain)) {
                specialties.push_back(held_on(contender, *base));
            }
        }
    }
    std::move(specialties.begin(), specialties.end(), std::back_inserter(plain));
    std::stable_sort(plain.begin(), plain.end(), is_closer);
    keep_one_of_each(plain);
    return plain;
}

Candidate Ranker::held_on(const Contender& specialty, const Contender& base) {
    const OnBase& both =
        on_bases_.emplace_back(*specialty.style, *base.style, line_up_.handbook().perception);
    Candidate candidate;
    candidate.entered = &specialty;
    candidate.base = &base;
    candidate.judged = &both.style;
    candidate.yardstick = &both.yardstick;
    fit_customs(candidate, CustomOfStyle(both.style.custom, line_up_.words(), welcome_in(*specialty.style)),
                wording_of(both.style));
    hold_against(few_draws_, candidate);
    return candidate;
}

void Ranker::fit_customs(Candidate& candidate, const CustomOfStyle& custom, double wording) const {
    candidate.custom = custom_.fit_to(*candidate.judged, custom);
    candidate.fit = {.points = 0.0,
                     .numbers = numbers_.unlikeliness_in(candidate.judged->ranges),
                     .wording = wording,
                     .breadth = std::log(static_cast<double>(candidate.judged->custom.breadth)),
                     .yeast = candidate.custom.yeast,
                     .hops = candidate.custom.hops,
                     .grist = candidate.custom.grist,
                     .rarity = rarity_of(candidate),
                     .guide = handicap_of(candidate.style().guide)};
    candidate.distance = distance_of(candidate.fit, usual_fit_weights());
}

void Ranker::hold_against(const Impression& impression, Candidate& candidate) const {
    take_points(candidate, points_at_risk(impression, *candidate.yardstick, line_up_.tariff(),
                                          findings_of_kind(impression, *candidate.judged)));
}

std::vector<Finding> Ranker::findings_of_kind(const Impression& impression, const Style& style) const {
    std::vector<Finding> findings;
    const Handbook& handbook = line_up_.handbook();
    for (const KindMiss& miss :
         kind_misses(tasting_.recipe, impression, style, handbook.score_sheet, handbook.phrases.kin)) {
        findings.push_back(miss.finding);
    }
    return findings;
}

/// What a specialty style asks for is not unusual in it, whatever its base says.
std::vector<std::string_view> Ranker::welcome_in(const Style& specialty) const {
    std::vector<std::string_view> welcome;
    for (const Special special : specials_) {
        if (has_place_for(specialty, special)) {
            const auto names = ingredients_that_are(special, tasting_.recipe);
            welcome.insert(welcome.end(), names.begin(), names.end());
        }
    }
    return welcome;
}

/// Other grains and sugars are in many beers that nobody enters for them; smoke, fruit, spice, wood and wild
/// yeast are there to be entered for (working value).
double Ranker::rarity_of(const Candidate& candidate) const {
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

}  // namespace entrywise
