#pragma once

#include <optional>
#include <string>
#include <vector>

#include "interchange/style_reference.hpp"
#include "interchange/written.hpp"

namespace entrywise {

/// What a malt, sugar or extract is, as the standards sort them; `unknown` where the file does not say.
enum class DraftKind { unknown, grain, sugar, liquid_extract, dry_extract, fruit };

/// The group of a grain, where the file says it.
enum class DraftGroup { unknown, base, caramel, roasted };

struct DraftFermentable {
    Position position;
    std::optional<Written> name;
    DraftKind kind = DraftKind::unknown;
    DraftGroup group = DraftGroup::unknown;
    std::optional<Written> mass;
    std::optional<Written> extract;
    std::optional<Written> color;
    std::optional<Written> moisture;
    std::optional<Written> add;
};

struct DraftHop {
    Position position;
    std::optional<Written> name;
    std::optional<Written> mass;
    std::optional<Written> alpha;
    std::optional<Written> beta;
    std::optional<Written> oil;
    std::optional<Written> storage_loss;
    std::optional<Written> form;
    std::optional<Written> add;
    std::optional<Written> time;
    std::optional<Written> temperature;
};

struct DraftExtra {
    Position position;
    std::optional<Written> name;
    std::optional<Written> kind;
    std::optional<Written> mass;
    std::optional<Written> volume;
    std::optional<Written> add;
    std::optional<Written> time;
};

struct DraftYeast {
    Position position;
    std::optional<Written> name;
    std::string type;  ///< as the standards sort cultures: `ale`, `lager`, `brett`, ...; or empty
    std::optional<Written> attenuation;
};

struct DraftRest {
    Position position;
    std::optional<Written> temperature;
    std::optional<Written> time;
};

/// A line that a recipe file has beyond what the other format can say: where in the recipe it belongs, such
/// as `hops.2.alpha`, and what it says; `left out` takes away what stands there.
struct DraftAddendum {
    std::string path;
    Written text;
};

/// A recipe as a file of another format states it: the words of a recipe file, with the other file's places,
/// before ingredients are looked up and amounts are understood.
struct Draft {
    Position position;
    std::optional<Written> name;
    std::optional<Written> style;
    std::optional<StyleReference> style_reference;  ///< where the format has no codes of ours
    std::optional<Written> volume;
    std::optional<Written> boil_time;
    std::optional<Written> efficiency;
    bool all_extract = false;
    bool names_are_ours = false;  ///< written by this program, so that no name needs to be matched
    std::vector<DraftRest> mash;
    std::vector<DraftFermentable> grist;
    std::vector<DraftHop> hops;
    std::vector<DraftExtra> extras;
    std::vector<DraftYeast> yeasts;
    std::optional<Written> fermentation_temperature;
    std::optional<Written> fermentation_time;
    std::optional<Written> rest_temperature;
    std::optional<Written> rest_time;
    std::optional<Written> conditioning_temperature;
    std::optional<Written> conditioning_time;
    std::optional<Written> carbonation;
    std::optional<Written> package;
    std::optional<Written> measured_original_gravity;
    std::optional<Written> measured_final_gravity;
    std::vector<DraftAddendum> addenda;
};

}  // namespace entrywise
