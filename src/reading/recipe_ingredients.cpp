#include "reading/recipe_ingredients.hpp"

#include <fmt/format.h>

#include <array>
#include <optional>
#include <utility>

#include "reading/ingredient_fields.hpp"

namespace entrywise {

namespace {

constexpr std::array<Word<GristUse>, 3> grist_uses{{
    {"mash", GristUse::mash},
    {"boil", GristUse::boil},
    {"fermenter", GristUse::fermenter},
}};

constexpr std::array<Word<HopUse>, 5> hop_uses{{
    {"mash", HopUse::mash},
    {"first wort", HopUse::first_wort},
    {"boil", HopUse::boil},
    {"whirlpool", HopUse::whirlpool},
    {"dry hop", HopUse::dry_hop},
}};

constexpr std::array<Word<HopForm>, 3> hop_forms{{
    {"pellet", HopForm::pellet},
    {"whole", HopForm::whole},
    {"extract", HopForm::extract},
}};

// What stands for an ingredient that no table has, beside what the recipe states of it: working values, each
// with a spread that covers the ingredients of its kind.
constexpr double unknown_lot_spread = 0.1;  ///< half width of a plain stated value, over the value

Fermentable unknown_fermentable(FermentableKind kind) {
    Fermentable fermentable;
    fermentable.kind = kind;
    switch (kind) {
        case FermentableKind::sugar:
            fermentable.fermentability = {1.10 * fully_attenuated, 0.12 * fully_attenuated};
            break;
        case FermentableKind::malt_extract:
            fermentable.fermentability = {0.76 * fully_attenuated, 0.06 * fully_attenuated};
            fermentable.gives.malt = 1.0;
            break;
        default:
            fermentable.moisture = {4.0 * percent, 1.0 * percent};
            fermentable.fermentability = {0.80 * fully_attenuated, 0.05 * fully_attenuated};
            fermentable.gives.malt = 1.0;
            break;
    }
    return fermentable;
}

Hop unknown_hop() {
    Hop hop;
    hop.beta = {5.0 * percent, 2.0 * percent};
    hop.oil = {1.2 * milliliter_per_100_gram, 0.7 * milliliter_per_100_gram};
    hop.storage_loss = {35.0 * percent, 15.0 * percent};
    return hop;
}

YeastClass unknown_yeast() {
    YeastClass yeast;
    yeast.temperature = {celsius(17.0), celsius(22.0)};
    yeast.ester = {1.0, 4.0};
    yeast.diacetyl = {0.0, 2.0};
    yeast.alcohol_limit = 10.0 * percent_by_volume;
    return yeast;
}

template <class Quantity>
Uncertain<Quantity> in_place_of(const Uncertain<Quantity>& known, const Uncertain<Quantity>& stated) {
    const bool spread_is_stated = stated.half_width.value() > 0.0;
    if (spread_is_stated) {
        return stated;
    }
    const double relative =
        known.middle.value() > 0.0 ? known.half_width.value() / known.middle.value() : unknown_lot_spread;
    return {stated.middle, relative * stated.middle};
}

template <class Quantity>
bool state(const std::optional<Uncertain<Quantity>>& stated, Uncertain<Quantity>& value) {
    if (stated) {
        value = in_place_of(value, *stated);
    }
    return stated.has_value();
}

void refuse_unknown(const Node& name, std::string nearest, std::string expected, std::string remedy,
                    FaultLog& faults) {
    faults.add(name.position, {.found = shown(name),
                               .expected = std::move(expected),
                               .nearest = std::move(nearest),
                               .remedy = std::move(remedy)});
}

struct NamedFermentable {
    const Node* name = nullptr;
    FermentableKind kind_if_unknown = FermentableKind::base;
};

NamedFermentable find_name(Fields& fields) {
    constexpr std::array<Word<FermentableKind>, 3> keys{{
        {"malt", FermentableKind::base},
        {"sugar", FermentableKind::sugar},
        {"extract", FermentableKind::malt_extract},
    }};
    NamedFermentable named;
    for (const auto& [key, kind] : keys) {
        // `extract` names a malt extract where nothing else is named, and is a share of the malt or sugar
        // otherwise.
        const Node* node = named.name == nullptr ? fields.find(key) : nullptr;
        if (node != nullptr) {
            named = {node, kind};
        }
    }
    return named;
}

std::optional<Uncertain<Share>> read_extract(Fields& fields, bool extract_is_the_name) {
    const auto content = fields.optional<Uncertain<Share>>("sugar_content");
    if (extract_is_the_name) {
        return content;
    }
    const auto extract = fields.optional<Uncertain<Share>>("extract");
    if (content && extract) {
        fields.faults().add(fields.find("sugar_content")->position,
                            {.found = "both 'extract' and 'sugar_content'",
                             .expected = "one of them",
                             .remedy = "They mean the same: delete one."});
    }
    return extract ? extract : content;
}

void read_fermentable(Fields& fields, const KnownIngredients& known, Fermentable& fermentable) {
    const auto [name, kind_if_unknown] = find_name(fields);
    if (name == nullptr) {
        if (fields.is_map()) {
            fields.faults().add(fields.position(),
                                {.found = "a grist item without a name",
                                 .expected = "one of the keys 'malt', 'sugar' or 'extract'"});
        }
        return;
    }
    const bool extract_is_the_name = name == fields.find("extract");
    const auto text = ReadAs<std::string>::from(*name, fields.faults());
    const auto entry = text ? known.fermentable(*text) : std::nullopt;
    fermentable = entry ? *entry : unknown_fermentable(kind_if_unknown);
    const bool extract_given = fields.find(extract_is_the_name ? "sugar_content" : "extract") != nullptr ||
                               fields.find("sugar_content") != nullptr;
    const bool color_given = fields.find("color") != nullptr;
    state(read_extract(fields, extract_is_the_name), fermentable.extract);
    state(fields.optional<Uncertain<MaltColor>>("color"), fermentable.color);
    state(fields.optional<Uncertain<Share>>("moisture"), fermentable.moisture);
    state(fields.optional<Uncertain<Attenuation>>("fermentability"), fermentable.fermentability);
    if (text && !entry) {
        fermentable.name = *text;
        if (!extract_given || !color_given) {
            refuse_unknown(*name, known.nearest_fermentable(*text),
                           "a known malt, sugar or extract, or its extract and color beside it",
                           fmt::format("Write the known name, or add {}: a share such as '{}' and a color "
                                       "such as 'color: 10 EBC'.",
                                       extract_is_the_name ? "sugar_content and color" : "extract and color",
                                       extract_is_the_name ? "sugar_content: 80 %" : "extract: 80 %"),
                           fields.faults());
        }
    }
}

void read_hop(Fields& fields, const KnownIngredients& known, HopAddition& addition) {
    const Node* name = fields.need("hop");
    const auto text = name == nullptr ? std::nullopt : ReadAs<std::string>::from(*name, fields.faults());
    const auto entry = text ? known.hop(*text) : std::nullopt;
    Hop& hop = addition.hop;
    hop = entry ? *entry : unknown_hop();
    addition.alpha_is_stated =
        state(read_acids(fields, "alpha", addition.form == HopForm::extract), hop.alpha);
    state(read_acids(fields, "beta", addition.form == HopForm::extract), hop.beta);
    state(fields.optional<Uncertain<OilContent>>("oil"), hop.oil);
    state(fields.optional<Uncertain<Share>>("storage_loss"), hop.storage_loss);
    hop.family = read_hop_family(fields).value_or(hop.family);
    if (text && !entry) {
        hop.name = *text;
        if (fields.find("alpha") == nullptr) {
            refuse_unknown(*name, known.nearest_hop(*text), "a known hop, or its alpha acids beside it",
                           "Write the known name, or add alpha acids such as 'alpha: 5.5 %'.",
                           fields.faults());
        }
    }
}

}  // namespace

GristAddition read_grist_addition(const Node& node, const KnownIngredients& known, FaultLog& faults) {
    Fields fields(node, "a grist item", faults);
    GristAddition addition;
    addition.position = node.position;
    read_fermentable(fields, known, addition.fermentable);
    addition.mass = fields.required_amount<Mass>("mass");
    addition.use = fields.optional_word<GristUse>("add", grist_uses).value_or(GristUse::mash);
    fields.refuse_others();
    return addition;
}

HopAddition read_hop_addition(const Node& node, const KnownIngredients& known, FaultLog& faults) {
    Fields fields(node, "a hop addition", faults);
    HopAddition addition;
    addition.position = node.position;
    addition.form = fields.optional_word<HopForm>("form", hop_forms).value_or(HopForm::pellet);
    read_hop(fields, known, addition);
    addition.mass = fields.required_amount<Mass>("mass");
    fields.need("add");
    addition.use = fields.optional_word<HopUse>("add", hop_uses).value_or(HopUse::boil);
    addition.time = fields.optional<Duration>("time");
    addition.temperature = fields.optional<Temperature>("temperature");
    fields.refuse_others();
    return addition;
}

YeastAddition read_yeast_addition(const Node& node, const KnownIngredients& known, FaultLog& faults) {
    Fields fields(node, "a yeast", faults);
    YeastAddition addition;
    addition.position = node.position;
    const Node* name = fields.need("class");
    const auto text = name == nullptr ? std::nullopt : ReadAs<std::string>::from(*name, faults);
    const auto entry = text ? known.yeast(*text) : std::nullopt;
    addition.yeast = entry ? *entry : unknown_yeast();
    addition.attenuation_is_stated =
        state(fields.optional<Uncertain<Attenuation>>("attenuation"), addition.yeast.attenuation);
    addition.pitch = fields.optional_amount<PitchRate>("pitch");
    addition.yeast.alcohol_limit =
        fields.optional<AlcoholByVolume>("alcohol_limit").value_or(addition.yeast.alcohol_limit);
    fields.refuse_others();
    if (text && !entry) {
        addition.yeast.name = *text;
        if (fields.find("attenuation") == nullptr) {
            refuse_unknown(
                *name, known.nearest_yeast(*text), "a known yeast class, or its attenuation beside it",
                "Write the known name, or add the apparent attenuation such as 'attenuation: 76 %'.", faults);
        }
    }
    return addition;
}

}  // namespace entrywise
