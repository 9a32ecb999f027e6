#pragma once

#include <optional>
#include <string>
#include <vector>

#include "brewing/beer.hpp"
#include "judging/impression.hpp"
#include "judging/tariff.hpp"
#include "judging/yardstick.hpp"
#include "sensing/profile.hpp"
#include "style/score_sheet.hpp"
#include "style/style.hpp"

namespace entrywise {

/// The numbers that a guide prints ranges of.
enum class Number { original_gravity, final_gravity, alcohol, bitterness, color };

/// The chance that a number lies inside the style's range, at the precision that is printed.
struct NumberCheck {
    Number number;
    double within = 0.0;
};

/// Points that the recipe puts at risk: middle and the span that holds eight in ten.
struct PointsAtRisk {
    double median = 0.0;
    double low = 0.0;
    double high = 0.0;
};

PointsAtRisk summary(const Estimate<double>& points);

/// The span that the score of the whole beer may fall into, in whole points, and the bands of the scoring
/// guide that it touches, lowest first.
struct ScoreRange {
    double low = 0.0;
    double high = 0.0;
    std::vector<std::string> bands;
};

enum class Direction { above, below };

/// One thing out of style that a judge may note.
struct Finding {
    Section section = Section::overall;
    std::string attribute;  ///< word within the section; `color` stands beside the sensed attributes
    Direction direction = Direction::above;
    double noticed = 0.0;  ///< chance that a judge notices
    double points = 0.0;   ///< points it is expected to cost over all sections
    double level = 0.0;    ///< median level on the attribute's scale (SRM for color)
    double accepted_low = 0.0;
    double accepted_high = 0.0;
    bool assumed = false;         ///< the guide takes the expectation for granted rather than stating it
    bool told_by_number = false;  ///< the number of the same name is further out than the word for it
};

/// One thing that the beer does right by its style, and that makes the style what it is.
struct Strength {
    Attribute attribute = Attribute::flavor_malt;
    double level = 0.0;  ///< median level on the attribute's scale
    double accepted_low = 0.0;
    double accepted_high = 0.0;
};

/// `flavor.bitterness.above`: the finding's name, the same in every version.
std::string id_of(const Finding& finding);

/// The predicted sheet: points at risk by section, and what they are at risk for, dearest first.
struct Sheet {
    std::vector<NumberCheck> numbers;
    BySection<PointsAtRisk> at_risk;
    PointsAtRisk total;
    Estimate<double> points;            ///< the total, draw by draw
    ScoreRange if_otherwise_well_made;  ///< the score, where brewing and keeping take nothing further
    std::vector<Finding> findings;
    std::vector<Strength> strengths;  ///< what marks the style most first; at most three
    int attributes_checked = 0;
    int attributes_untold = 0;         ///< described by the style, but left open by the recipe
    int attributes_not_described = 0;  ///< of which the style says nothing
};

/// Holds a beer and what is sensed of it against a style. Predicts the points that the recipe puts at risk;
/// what comes from execution (infection, oxidation, light) is not in it. Findings that are no matter of a
/// level, such as a missing declaration, come with their points, which go to their own section.
Sheet judge(const Beer& beer, const Profile& profile, const Style& style, const ScoreSheet& score_sheet,
            const std::vector<Finding>& beside_levels = {});

/// The same with all made ready, for who holds many beers against many styles.
Sheet judge(const Impression& beer, const Yardstick& yardstick, const Tariff& tariff,
            const std::vector<Finding>& beside_levels = {});

/// The points at risk of that sheet draw by draw and nothing else.
Estimate<double> points_at_risk(const Impression& beer, const Yardstick& yardstick, const Tariff& tariff,
                                const std::vector<Finding>& beside_levels = {});

}  // namespace entrywise
