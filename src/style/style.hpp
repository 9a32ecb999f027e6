#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "quantity/quantities.hpp"
#include "style/attribute.hpp"

namespace entrywise {

/// A range that may be open at either end. A range of a continuum of styles may leave its upper border to the
/// next style: then `below_high` is set and the border itself is outside.
template <class Quantity>
struct Range {
    std::optional<Quantity> low;
    std::optional<Quantity> high;
    bool below_high = false;

    bool contains(Quantity value) const {
        const bool high_enough = !low || value >= *low;
        const bool low_enough = !high || value < *high || (value == *high && !below_high);
        return high_enough && low_enough;
    }
};

/// The five numbers a guide prints for a style, each left out where the guide prints none.
struct StyleRanges {
    std::optional<Range<SpecificGravity>> original_gravity;
    std::optional<Range<SpecificGravity>> final_gravity;
    std::optional<Range<AlcoholByVolume>> alcohol;
    std::optional<Range<Bitterness>> bitterness;
    std::optional<Range<Color>> color;
};

/// Levels of a sensed attribute that a judge accepts without marking the beer down. An assumed expectation is
/// what a guide takes for granted where it does not say otherwise; it weighs less than a stated one.
struct Expectation {
    double low = 0.0;
    double high = 0.0;
    bool assumed = false;
};

/// What is customary for a style, told in ranking and explaining but no ground for taking points.
struct Custom {
    std::vector<std::string> yeast_typical;
    std::vector<std::string> yeast_possible;
    std::vector<std::string> hops_typical;
    std::vector<std::string> hops_possible;
    std::vector<std::string> hops_unusual;
    std::string dry_hop;  ///< typical, possible or unusual
    std::vector<std::string> grist_base;
    std::vector<std::string> grist_typical;
    std::vector<std::string> grist_possible;
    std::vector<std::string> grist_unusual;
    std::optional<Span<Carbonation>> carbonation;
    int breadth = 2;                               ///< 1 tight, 2 usual, 3 catch-all
    bool seldom = false;                           ///< few are brewed and entered
    std::map<std::string, std::string> neighbors;  ///< code of the near style -> what sets it apart
};

/// A style of a guide.
struct Style {
    std::string guide;
    std::string code;
    std::string name;
    std::string category;
    std::string file;
    std::string variant_of;  ///< the style that was entered, where a variant of it was declared
    bool varies = false;     ///< numbers or attributes depend on a declared base style or type
    StyleRanges ranges;
    ByAttribute<std::optional<Expectation>> expected;
    std::vector<std::string> hop_notes;
    std::vector<std::string> malt_notes;
    std::vector<std::string> ester_notes;
    std::vector<std::string> phenol_notes;
    std::string fermentation;  ///< top, bottom, either, mixed, spontaneous, or empty
    std::vector<std::string> grist_expected;
    std::vector<std::string> grist_allowed;
    std::vector<std::string> grist_inappropriate;
    std::vector<std::string> must_declare;
    std::vector<std::string> may_declare;
    std::vector<Attribute> judgement_calls;  ///< expectations whose reading from the guide was open to doubt
    Custom custom;
};

}  // namespace entrywise
