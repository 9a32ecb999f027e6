#pragma once

#include <optional>
#include <string>
#include <vector>

#include "judging/sheet.hpp"
#include "judging/tasting.hpp"
#include "recipe/recipe.hpp"
#include "style/perception.hpp"

namespace entrywise {

/// A step away from the recipe, and what it does to something sensed.
struct Pull {
    std::string source;       ///< the ingredient or the setting: `crystal medium`, `mash`
    std::string step;         ///< `without crystal medium`, `mash 2 °C cooler`
    bool ingredient = false;  ///< else a setting
    double change =
        0.0;  ///< of the level when the step is taken, in steps of its scale (SRM for color; IBU for
              ///< bitterness at the very top of its scale, where steps no longer show a change)
    double share = 0.0;  ///< of all steps that move it the same way
};

/// A recipe worked out again and again, each time with one thing changed, every uncertain input at its
/// middle: what the model itself says an ingredient or a setting does.
///
/// The steps: each hop, each extra and each fermentable away; a fermentable other than the main base malt
/// gives way to that malt at equal extract, so that its character goes and the strength stays, except where
/// strength itself is asked for; a clean yeast in place of each; mash and fermentation 2 °C warmer and
/// cooler, attenuation 5 points, the boil 15 minutes, cold storage a week and carbonation 0.3 volumes up and
/// down. They are about what a palate tells or a brewer turns at once (working values). What was measured is
/// set aside, since it would hold still what a step moves.
class Trials {
  public:
    Trials(const Recipe& recipe, const Perception& perception);

    /// The steps that move an attribute of a section, or `color`, up or down, the strongest first. Shares add
    /// up to one. Changes too small to matter are left out.
    std::vector<Pull> that_move(Section section, const std::string& attribute, Direction direction) const;

  private:
    enum class Asked { always, of_strength, of_character };

    struct Trial {
        Pull pull;
        Asked asked = Asked::always;
        Tasting tasting;
    };

    void add(const Recipe& changed, Pull pull, Asked asked = Asked::always);
    void add_grist();
    void add_hops_and_extras();
    void add_yeasts();
    void add_settings();

    Recipe recipe_;
    const Perception& perception_;
    Tasting as_it_is_;
    std::vector<Trial> trials_;
};

}  // namespace entrywise
