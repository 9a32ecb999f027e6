#include "judging/style_comparison.hpp"

#include <algorithm>
#include <iterator>

namespace entrywise {

namespace {

bool holds(const std::vector<std::string>& words, const std::string& word, const Kin& kin) {
    return std::any_of(words.begin(), words.end(),
                       [&](const std::string& other) { return kin.are_kin(word, other); });
}

std::vector<Attribute> stated_alone(const Style& style, const Style& other) {
    std::vector<Attribute> alone;
    std::copy_if(all_attributes().begin(), all_attributes().end(), std::back_inserter(alone),
                 [&](Attribute attribute) {
                     const auto& expectation = style.expected[attribute];
                     return expectation && !expectation->assumed && !other.expected[attribute];
                 });
    return alone;
}

}  // namespace

WordsApart words_apart(const std::vector<std::string>& first, const std::vector<std::string>& second,
                       const Kin& kin) {
    WordsApart apart;
    for (const std::string& word : first) {
        (holds(second, word, kin) ? apart.both : apart.first_alone).push_back(word);
    }
    std::copy_if(second.begin(), second.end(), std::back_inserter(apart.second_alone),
                 [&](const std::string& word) { return !holds(first, word, kin); });
    return apart;
}

StyleComparison compared(const Style& first, const Style& second) {
    StyleComparison comparison{.first = first,
                               .second = second,
                               .contrasts = contrasts_between(first, second),
                               .apart = {},
                               .first_alone = stated_alone(first, second),
                               .second_alone = stated_alone(second, first)};
    comparison.apart = separating(comparison.contrasts);
    return comparison;
}

std::vector<Contrast> exclusive(const StyleComparison& comparison) {
    std::vector<Contrast> found;
    std::copy_if(comparison.apart.begin(), comparison.apart.end(), std::back_inserter(found),
                 [](const Contrast& contrast) { return !contrast.meets; });
    return found;
}

}  // namespace entrywise
