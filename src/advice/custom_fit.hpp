#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "advice/custom_words.hpp"
#include "advice/special.hpp"
#include "brewing/beer.hpp"
#include "recipe/recipe.hpp"
#include "style/style.hpp"

namespace entrywise {

/// How far a recipe departs from what is customary for a style: no ground for taking points, yet it tells
/// which of two near styles a beer was brewed as. Names are those of the recipe and the style and last as
/// long as they do.
struct CustomFit {
    double yeast = 0.0;  ///< 0 a usual class, 0.4 a possible one, 1 a class that the style seldom sees
    double hops = 0.0;   ///< 0 families that are usual, up to 1 for those that are not
    double grist = 0.0;  ///< share of what is usual that is missing, and 1 for each thing that is unusual
    std::vector<std::string_view> seldom_yeasts;
    std::vector<std::string_view> seldom_hops;  ///< where they are half of the hops or more
    std::vector<std::string_view> unusual;      ///< in the grist
    std::vector<std::string_view> missing;      ///< where it is more than half of what is usual
    std::vector<std::string_view> out_of_place;
};

/// A recipe with its names numbered and its share of each hop addition, made ready to hold against many
/// styles. Recipe and words must last as long as it does.
class CustomOfRecipe {
  public:
    CustomOfRecipe(const Recipe& recipe, const Beer& beer, const CustomWords& words);

    CustomFit fit_to(const Style& style, const CustomOfStyle& custom) const;

  private:
    /// Ingredients beside the grist of a kind that not every style has a place for.
    struct Besides {
        Special special;
        std::vector<std::string_view> names;
    };

    void hold_yeast(const CustomOfStyle& custom, CustomFit& fit) const;
    void hold_hops(const CustomOfStyle& custom, CustomFit& fit) const;
    void hold_grist(const CustomOfStyle& custom, CustomFit& fit) const;
    double other_base(const CustomOfStyle& custom) const;

    const Recipe& recipe_;
    const CustomWords& words_;
    std::vector<std::size_t> yeasts_;         ///< by addition: the number of its class
    std::vector<std::size_t> hop_families_;   ///< by addition
    std::vector<double> shares_of_hops_;      ///< by addition
    std::vector<NumberedName> fermentables_;  ///< by addition
    std::vector<bool> is_in_grist_;           ///< by number of the word
    std::vector<Besides> besides_;
};

/// The departures in words: `fermented with english ale yeast, which this style seldom is`.
std::vector<std::string> departures_of(const CustomFit& fit);

}  // namespace entrywise
