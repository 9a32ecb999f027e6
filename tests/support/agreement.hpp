#pragma once

#include <cmath>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "base/file.hpp"
#include "base/text.hpp"
#include "reading/library.hpp"
#include "sensing/hops.hpp"
#include "sensing/middle_of_style.hpp"
#include "tests/support/palate.hpp"

namespace entrywise::testing {

inline bool is_within_one(double level, const Expectation& expectation) {
    return level >= expectation.low - 1.0 && level <= expectation.high + 1.0;
}

/// How often levels agree with the words of a guide: no more than one step outside them, as they are and
/// rounded to the nearest word.
struct Agreement {
    int count = 0;
    int level_within_one = 0;
    int word_within_one = 0;

    double levels() const { return static_cast<double>(level_within_one) / count; }
    double words() const { return static_cast<double>(word_within_one) / count; }

    void add(double level, const Expectation& expectation) {
        ++count;
        level_within_one += is_within_one(level, expectation) ? 1 : 0;
        word_within_one += is_within_one(std::round(level), expectation) ? 1 : 0;
    }
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
                agreements[attribute].add(*level, *expectation);
            }
        }
    }
    return agreements;
}

/// Codes of styles of `ba-2025`, each with that of the style of `bjcp-2021` that comes nearest.
inline std::vector<std::pair<std::string, std::string>> nearest_styles() {
    const std::string text = *read_file(ENTRYWISE_SOURCE_DIR "/tests/data/nearest-styles.tsv", 100'000);
    std::vector<std::pair<std::string, std::string>> pairs;
    for (const std::string_view line : split(text, "\n")) {
        const auto codes = split(line, "\t");
        if (codes.size() == 2) {
            pairs.emplace_back(codes[0], codes[1]);
        }
    }
    return pairs;
}

/// How often the middle of what `bjcp-2021` words agrees with what `ba-2025` words of the nearest style, of
/// styles that have a middle: a yardstick for maps that are fitted to the one guide and held against the
/// other.
inline std::map<Attribute, Agreement> agreement_of_guides() {
    const Library library(embedded_documents());
    std::map<Attribute, Agreement> agreements;
    for (const auto& [code, nearest] : nearest_styles()) {
        const Style style = *library.style({"ba-2025", code});
        const Style other = *library.style({"bjcp-2021", nearest});
        for (const Attribute attribute : all_attributes()) {
            const auto& expectation = style.expected[attribute];
            const auto& told = other.expected[attribute];
            if (expectation && told && middle_of(style)) {
                agreements[attribute].add(0.5 * (told->low + told->high), *expectation);
            }
        }
    }
    return agreements;
}

}  // namespace entrywise::testing
