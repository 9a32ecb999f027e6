#include "judging/specialty.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace entrywise {

namespace {

template <class Quantity>
void take_over(std::optional<Range<Quantity>>& own, const std::optional<Range<Quantity>>& base) {
    own = own ? own : base;
}

void take_over(StyleRanges& own, const StyleRanges& base) {
    take_over(own.original_gravity, base.original_gravity);
    take_over(own.final_gravity, base.final_gravity);
    take_over(own.alcohol, base.alcohol);
    take_over(own.bitterness, base.bitterness);
    take_over(own.color, base.color);
}

void take_over(std::optional<Expectation>& own, const std::optional<Expectation>& base) {
    const bool is_stated = own && !own->assumed;
    own = is_stated || !base ? own : base;
}

void merge(std::vector<std::string>& own, const std::vector<std::string>& base) {
    for (const std::string& word : base) {
        if (std::find(own.begin(), own.end(), word) == own.end()) {
            own.push_back(word);
        }
    }
}

}  // namespace

Style judged_style(const Style& specialty, const Style& base) {
    Style style = specialty;
    take_over(style.ranges, base.ranges);
    for (const Attribute attribute : all_attributes()) {
        take_over(style.expected[attribute], base.expected[attribute]);
    }
    merge(style.hop_notes, base.hop_notes);
    merge(style.malt_notes, base.malt_notes);
    merge(style.ester_notes, base.ester_notes);
    merge(style.phenol_notes, base.phenol_notes);
    merge(style.grist_expected, base.grist_expected);
    merge(style.grist_allowed, base.grist_allowed);
    style.fermentation = style.fermentation.empty() ? base.fermentation : style.fermentation;
    style.custom = base.custom;
    return style;
}

}  // namespace entrywise
