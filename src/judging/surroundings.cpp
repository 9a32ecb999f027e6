#include "judging/surroundings.hpp"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <utility>

namespace entrywise {

namespace {

bool is_variant_of(const Style& variant, const Style& style) {
    return variant.code.starts_with(style.code + "-");
}

/// What separates the two, or where nothing does for sure, what comes nearest to it.
std::vector<Contrast> most_apart(std::vector<Contrast> contrasts) {
    constexpr std::size_t most = 2;
    std::vector<Contrast> apart = separating(contrasts);
    if (apart.empty()) {
        std::erase_if(contrasts, [](const Contrast& contrast) { return contrast.steps <= 0.0; });
        std::stable_sort(contrasts.begin(), contrasts.end(), [](const Contrast& left, const Contrast& right) {
            return left.steps > right.steps;
        });
        contrasts.resize(std::min(contrasts.size(), most));
        apart = std::move(contrasts);
    }
    return apart;
}

std::vector<Neighbor> named_neighbors(const Style& style, const std::vector<Style>& guide) {
    std::vector<Neighbor> neighbors;
    for (const auto& [code, said] : style.custom.neighbors) {
        const auto known = std::find_if(guide.begin(), guide.end(),
                                        [&code = code](const Style& other) { return other.code == code; });
        neighbors.push_back(known == guide.end()
                                ? Neighbor{.code = code, .name = {}, .said = said, .apart = {}}
                                : Neighbor{.code = code,
                                           .name = known->name,
                                           .said = said,
                                           .apart = most_apart(contrasts_between(style, *known))});
    }
    return neighbors;
}

/// A style that lays down fewer traits than this tells too little, and so does one with which a style has
/// less than this share of its own in common (working values).
constexpr std::size_t fewest_traits = 12;
constexpr double least_in_common = 0.75;
constexpr std::size_t most_neighbors = 4;

std::vector<Neighbor> nearest_neighbors(const Style& style, const std::vector<Style>& guide) {
    std::vector<std::pair<double, Neighbor>> candidates;
    const std::size_t own = contrasts_between(style, style).size();
    for (const Style& other : guide) {
        if (own < fewest_traits || other.varies || other.code == style.code || is_variant_of(other, style) ||
            is_variant_of(style, other)) {
            continue;
        }
        const std::vector<Contrast> contrasts = contrasts_between(style, other);
        if (static_cast<double>(contrasts.size()) >= least_in_common * static_cast<double>(own)) {
            candidates.emplace_back(
                distance_of(contrasts),
                Neighbor{.code = other.code, .name = other.name, .said = {}, .apart = most_apart(contrasts)});
        }
    }
    std::stable_sort(candidates.begin(), candidates.end(),
                     [](const auto& left, const auto& right) { return left.first < right.first; });
    std::vector<Neighbor> nearest;
    for (std::size_t rank = 0; rank < std::min(most_neighbors, candidates.size()); ++rank) {
        nearest.push_back(std::move(candidates[rank].second));
    }
    return nearest;
}

}  // namespace

Surroundings surroundings_of(const Style& style, const std::vector<Style>& guide) {
    Surroundings surroundings;
    std::copy_if(guide.begin(), guide.end(), std::back_inserter(surroundings.variants),
                 [&](const Style& other) { return is_variant_of(other, style); });
    surroundings.neighbors =
        style.custom.neighbors.empty() ? nearest_neighbors(style, guide) : named_neighbors(style, guide);
    return surroundings;
}

}  // namespace entrywise
