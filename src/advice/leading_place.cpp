#include "advice/leading_place.hpp"

#include <algorithm>
#include <vector>

#include "advice/ranker.hpp"

namespace entrywise {

namespace {

StyleName name_of(const Candidate& candidate) {
    return {candidate.style().guide, candidate.style().code};
}

EntryPlace place_of(const Candidate& candidate) {
    EntryPlace place;
    place.name = name_of(candidate);
    place.title = candidate.style().name;
    if (candidate.base != nullptr) {
        place.base = StyleName{candidate.base->style->guide, candidate.base->style->code};
    }
    place.at_risk = summary(candidate.points);
    place.distance = candidate.distance;
    return place;
}

/// Leaves those that may lead after so many draws, closest first.
void keep_leaders(std::vector<Candidate>& candidates, std::size_t draws) {
    std::stable_sort(candidates.begin(), candidates.end(), is_closer);
    const double reach = candidates.front().distance + mistaken_by(draws);
    std::erase_if(candidates, [reach](const Candidate& candidate) { return candidate.distance > reach; });
}

}  // namespace

std::optional<EntryPlace> leading_place(const Tasting& tasting, const Impression& impression,
                                        const LineUp& line_up,
                                        const std::optional<JudgedAlready>& judged_already) {
    constexpr std::size_t more_draws = 64;
    Ranker ranker(tasting, impression, line_up);
    std::vector<Candidate> leaders = ranker.leading();
    if (leaders.empty()) {
        return std::nullopt;
    }
    keep_leaders(leaders, few_draws);
    if (leaders.size() > 1) {
        ranker.hold(leaders, more_draws);
        keep_leaders(leaders, more_draws);
    }
    for (Candidate& candidate : leaders) {
        if (judged_already && candidate.base == nullptr && name_of(candidate) == judged_already->name) {
            Ranker::take_points(candidate, judged_already->points);
        } else {
            ranker.hold(candidate);
        }
    }
    return place_of(*std::min_element(leaders.begin(), leaders.end(), is_closer));
}

}  // namespace entrywise
