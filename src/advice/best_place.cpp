#include "advice/best_place.hpp"

#include <algorithm>
#include <utility>
#include <vector>

#include "advice/ranker.hpp"

namespace entrywise {

namespace {

constexpr std::size_t more_draws = 64;

EntryPlace place_of(const Candidate& candidate) {
    EntryPlace place;
    place.name = {candidate.style().guide, candidate.style().code};
    place.title = candidate.style().name;
    if (candidate.base != nullptr) {
        place.base = StyleName{candidate.base->style->guide, candidate.base->style->code};
    }
    place.at_risk = summary(candidate.points);
    place.distance = candidate.distance;
    return place;
}

/// Leaves those that may lead after so many draws, closest first.
void keep_leaders(std::vector<Candidate*>& candidates, std::size_t draws) {
    std::stable_sort(
        candidates.begin(), candidates.end(),
        [](const Candidate* first, const Candidate* second) { return is_closer(*first, *second); });
    const double reach = candidates.front()->distance + mistaken_by(draws);
    std::erase_if(candidates, [reach](const Candidate* candidate) { return candidate->distance > reach; });
}

}  // namespace

std::optional<BestPlace> best_place(const Tasting& tasting, const LineUp& line_up,
                                    const std::optional<StyleName>& declared) {
    Ranker ranker(tasting, line_up);
    std::vector<Candidate> candidates = ranker.leading(declared);
    if (candidates.empty()) {
        return std::nullopt;
    }
    std::vector<Candidate*> leaders;
    Candidate* own = nullptr;
    for (Candidate& candidate : candidates) {
        leaders.push_back(&candidate);
        if (declared && own == nullptr && is_of(candidate.style(), *declared)) {
            own = &candidate;
        }
    }
    keep_leaders(leaders, few_draws);
    if (leaders.size() > 1) {
        for (Candidate* candidate : leaders) {
            ranker.hold(*candidate, more_draws);
        }
        keep_leaders(leaders, more_draws);
    }
    for (Candidate* candidate : leaders) {
        if (candidate != own) {
            ranker.hold(*candidate);
        }
    }
    if (own != nullptr) {
        ranker.judge_fully(*own);
    }
    const Candidate* best = *std::min_element(
        leaders.begin(), leaders.end(),
        [](const Candidate* first, const Candidate* second) { return is_closer(*first, *second); });
    BestPlace place{place_of(*best), {}, {}};
    if (own != nullptr) {
        place.declared = place_of(*own);
        place.sheet = std::move(own->sheet);
    }
    return place;
}

}  // namespace entrywise
