#pragma once

#include <cmath>
#include <map>
#include <optional>
#include <string>

#include "reading/library.hpp"
#include "sensing/hops.hpp"
#include "sensing/middle_of_style.hpp"
#include "tests/support/palate.hpp"

namespace entrywise::testing {

/// How the levels at the middle of styles agree with the words of their guide.
struct Agreement {
    int count = 0;
    int level_within_one = 0;
    int word_within_one = 0;

    double levels() const { return static_cast<double>(level_within_one) / count; }
    double words() const { return static_cast<double>(word_within_one) / count; }
};

/// What is customary for a style, read as the hops that reach its glass, in grams of dry hop per liter: a
/// late addition in step with bitterness, and a dry hop where it is typical or possible (working values; no
/// number of a guide tells of late hops).
inline Concentration customary_hops(const Style& style, const MiddleOfStyle& middle) {
    const double late = in(middle.bitterness, ibu) / 60.0;
    const double dry = style.custom.dry_hop == "typical"    ? 3.0
                       : style.custom.dry_hop == "possible" ? 0.6
                                                            : 0.0;
    return (late + dry) * gram_per_liter;
}

inline std::optional<double> level_of(Attribute attribute, const Style& style, const MiddleOfStyle& middle) {
    switch (attribute) {
        case Attribute::aroma_hop:
            return hop_aroma_level(customary_hops(style, middle));
        case Attribute::flavor_hop:
            return hop_flavor_level(customary_hops(style, middle));
        default:
            return levels_at_middle(middle, usual_palate())[attribute];
    }
}

inline bool is_within_one(double level, const Expectation& expectation) {
    return level >= expectation.low - 1.0 && level <= expectation.high + 1.0;
}

/// Of the attributes that a guide words and the numbers of its styles tell.
inline std::map<Attribute, Agreement> agreement_with(const std::string& guide) {
    const Library library(embedded_documents());
    std::map<Attribute, Agreement> agreements;
    for (const StyleName& name : library.style_names(guide)) {
        const Style style = *library.style(name);
        const auto middle = middle_of(style);
        for (const Attribute attribute : all_attributes()) {
            const auto& expectation = style.expected[attribute];
            const auto level = middle && expectation ? level_of(attribute, style, *middle) : std::nullopt;
            if (level) {
                Agreement& agreement = agreements[attribute];
                ++agreement.count;
                agreement.level_within_one += is_within_one(*level, *expectation) ? 1 : 0;
                agreement.word_within_one += is_within_one(std::round(*level), *expectation) ? 1 : 0;
            }
        }
    }
    return agreements;
}

}  // namespace entrywise::testing
