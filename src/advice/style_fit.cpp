#include "advice/style_fit.hpp"

#include <cmath>

namespace entrywise {

// fitted: tools/measure-ranking, 49 published recipes with the styles that they were accepted in
FitWeights usual_fit_weights() {
    return {.numbers = 2.0,
            .wording = 12.0,
            .breadth = 6.0,
            .yeast = 18.0,
            .hops = 6.0,
            .grist = 6.0,
            .rarity = 10.0};
}

// fitted: tools/measure-ranking, mean difference of the closest styles over 49 published recipes
double handicap_of(std::string_view guide) {
    return guide == "ba-2025" ? 4.5 : 0.0;
}

double distance_of(const StyleFit& fit, const FitWeights& weights) {
    return fit.points + weights.numbers * fit.numbers + weights.wording * fit.wording +
           weights.breadth * fit.breadth + weights.yeast * fit.yeast + weights.hops * fit.hops +
           weights.grist * fit.grist + weights.rarity * fit.rarity + fit.guide;
}

double wording_of(const Style& style) {
    double sum = 0.0;
    int count = 0;
    for (const Attribute attribute : all_attributes()) {
        if (const auto& expectation = style.expected[attribute]; expectation && !expectation->assumed) {
            sum += std::log(expectation->high - expectation->low + 1.0);
            ++count;
        }
    }
    constexpr double of_no_words = 1.5;
    return count > 0 ? sum / count : of_no_words;
}

}  // namespace entrywise
