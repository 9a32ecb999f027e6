#pragma once

#include <map>
#include <string>
#include <vector>

#include "quantity/quantities.hpp"

namespace entrywise {

enum class FermentableKind { base, toasted, crystal, roasted, adjunct, sugar, malt_extract, fruit };

/// What a malt, grain, sugar or extract gives to a liter of beer, each relative to a reference ingredient
/// that gives one per gram and liter: pale ale malt (malt), biscuit malt (toast), crystal malt of 120 EBC
/// (caramel), black malt (roast), beech-smoked malt (smoke), acidulated malt (acid), flaked oats (body),
/// wheat malt (head, haze), Pilsner malt (precursor of DMS), lactose (sweet).
struct Contribution {
    double malt = 0.0;
    double toast = 0.0;
    double caramel = 0.0;
    double roast = 0.0;
    double smoke = 0.0;
    double acid = 0.0;
    double body = 0.0;
    double head = 0.0;
    double haze = 0.0;
    double dms = 0.0;
    double sweet = 0.0;
};

/// A malt, grain, sugar or malt extract as the tables or a recipe know it.
struct Fermentable {
    std::string name;
    std::vector<std::string> aliases;
    FermentableKind kind = FermentableKind::base;
    std::vector<std::string> groups;
    Uncertain<Share> extract;   ///< fine grind, dry basis, for malts and grains; as it is for sugars
    Uncertain<Share> moisture;  ///< zero where `extract` is as it is
    Uncertain<MaltColor> color;
    Uncertain<Attenuation> fermentability;  ///< apparent limit when mashed with base malt at 65 °C
    Contribution gives;
    std::vector<std::string> notes;
    std::vector<std::string> allergens;
    std::string source;
};

/// Whether its extract must be won by mashing, so that the brewhouse efficiency applies.
bool needs_a_mash(FermentableKind kind);

enum class HopPurpose { aroma, bittering, dual };

/// A hop cultivar.
struct Hop {
    std::string name;
    std::vector<std::string> aliases;
    std::string family;
    HopPurpose purpose = HopPurpose::dual;
    Uncertain<Share> alpha;
    Uncertain<Share> beta;
    Uncertain<OilContent> oil;
    Uncertain<Share> storage_loss;  ///< share of alpha acids lost in six months at 20 °C
    std::vector<std::string> descriptors;
    std::string source;
};

enum class Fermentation { top, bottom, mixed };
enum class Flocculation { low, medium, high };

/// A level on the sensory scale of 0 (none) to 7 (very high), with the span that strains of a class differ
/// by.
struct LevelSpan {
    double low = 0.0;
    double high = 0.0;
};

/// A class of yeast or bacteria.
struct YeastClass {
    std::string name;
    std::vector<std::string> aliases;
    Fermentation fermentation = Fermentation::top;
    Uncertain<Attenuation> attenuation;  ///< apparent, in all-malt wort mashed at 65 to 67 °C
    Span<Temperature> temperature;
    LevelSpan ester;  ///< at the middle of the temperature range, handled cleanly; so are the three below
    LevelSpan phenol;
    LevelSpan sulfur;
    LevelSpan diacetyl;
    Flocculation flocculation = Flocculation::medium;
    AlcoholByVolume alcohol_limit;
    bool diastatic = false;
    bool phenolic = false;
    bool lactic = false;
    bool brettanomyces = false;
    bool maltose_negative = false;
    bool haze_positive = false;
    bool kveik = false;
    std::vector<std::string> ester_notes;
    std::vector<std::string> phenol_notes;
    std::string source;
};

/// The known ingredients.
struct IngredientTables {
    std::vector<Fermentable> fermentables;
    std::vector<Hop> hops;
    std::vector<YeastClass> yeasts;
};

/// The entry of that name or alias, case aside; null if there is none. The pointer lives as long as the
/// tables.
const Fermentable* find_fermentable(const IngredientTables& tables, const std::string& name);
const Hop* find_hop(const IngredientTables& tables, const std::string& name);
const YeastClass* find_yeast(const IngredientTables& tables, const std::string& name);

}  // namespace entrywise
