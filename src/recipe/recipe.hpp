#pragma once

#include <chrono>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "base/place.hpp"
#include "quantity/measures.hpp"
#include "quantity/quantities.hpp"
#include "recipe/ingredients.hpp"

namespace entrywise {

/// A style as `guide/code` names it: `bjcp-2021/21A`.
struct StyleName {
    std::string guide;
    std::string code;

    friend bool operator==(const StyleName&, const StyleName&) = default;
};

enum class GristUse { mash, boil, fermenter };

struct GristAddition {
    Fermentable fermentable;  ///< from the tables, with what the recipe states in place of table values
    Mass mass;
    GristUse use = GristUse::mash;
    Position position;
};

enum class HopUse { mash, first_wort, boil, whirlpool, dry_hop };
enum class HopForm { pellet, whole, extract };

struct HopAddition {
    Hop hop;  ///< from the tables, with what the recipe states in place of table values
    bool alpha_is_stated = false;
    Mass mass;
    HopUse use = HopUse::boil;
    HopForm form = HopForm::pellet;
    std::optional<Duration> time;  ///< before the end of boil; in the stand; on the beer for a dry hop
    std::optional<Temperature> temperature;
    Position position;
};

enum class ExtraKind { spice, fruit, wood, fining, acid, salt, tea, coffee, cocoa, nut, other };
enum class ExtraUse { mash, boil, whirlpool, fermenter };

struct ExtraAddition {
    std::string name;
    ExtraKind kind = ExtraKind::other;
    std::optional<Mass> mass;
    std::optional<Volume> volume;
    ExtraUse use = ExtraUse::boil;
    std::optional<Duration> time;
    Position position;
};

struct MashRest {
    Temperature temperature;
    Duration time;
    bool time_is_stated = true;  ///< false where the recipe leaves it out and the usual time stands for it
};

struct YeastAddition {
    YeastClass yeast;  ///< from the tables, with what the recipe states in place of table values
    bool attenuation_is_stated = false;
    std::optional<PitchRate> pitch = std::nullopt;
    Position position;
};

/// Days at the end of fermentation in which the yeast is kept warm to take up diacetyl.
struct DiacetylRest {
    Temperature temperature;
    Duration time;
};

struct Boil {
    std::optional<Duration> time;
    std::optional<EvaporationRate> evaporation;
};

struct Conditioning {
    std::optional<Uncertain<Carbonation>> carbonation;
    std::optional<Duration> time;
    std::optional<Temperature> temperature;
    std::optional<bool> filtered;
    std::optional<bool> nitrogen;
    std::optional<bool> bottled;  ///< `package: bottle`; left out where the recipe does not say
};

/// When the beer was packaged and when it is judged, and how warm it is kept in between.
struct Keeping {
    std::optional<std::chrono::sys_days> packaged;
    std::optional<std::chrono::sys_days> judged;
    std::optional<Temperature> temperature;
};

/// What was measured on the finished beer or wort. A half width of zero means that the recipe gives none: the
/// usual spread of the measurement then holds.
struct Measured {
    std::optional<Uncertain<SpecificGravity>> original_gravity;
    std::optional<Uncertain<SpecificGravity>> final_gravity;
    std::optional<Uncertain<Bitterness>> bitterness;
    std::optional<Uncertain<Color>> color;
    std::optional<Uncertain<AlcoholByVolume>> alcohol;
    std::optional<Uncertain<Carbonation>> carbonation;
};

/// A recipe as its file states it: every amount typed, nothing computed, nothing assumed.
struct Recipe {
    std::string name;
    std::string file;
    Measures measures;  ///< as it is written
    std::optional<StyleName> style;
    Position style_position;
    std::optional<StyleName> base_style;
    Position base_style_position;
    std::map<std::string, std::string> declares;
    Uncertain<Volume> volume;  ///< cooled wort into the fermenter
    Boil boil;
    std::optional<Uncertain<Share>> efficiency;
    bool mashed = true;  ///< false for `mash: none`
    std::vector<MashRest> mash;
    std::vector<GristAddition> grist;
    std::vector<HopAddition> hops;
    std::vector<ExtraAddition> extras;
    std::vector<YeastAddition> yeasts;
    std::optional<Temperature> fermentation_temperature;
    std::optional<Duration> fermentation_time;  ///< on the yeast
    std::optional<DiacetylRest> diacetyl_rest;
    Conditioning conditioning;
    Keeping keeping;
    Measured measured;
};

}  // namespace entrywise
