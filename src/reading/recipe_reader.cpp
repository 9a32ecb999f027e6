#include "reading/recipe_reader.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "reading/fields.hpp"
#include "reading/measured_reader.hpp"
#include "reading/measures_of.hpp"
#include "reading/recipe_ingredients.hpp"
#include "reading/style_name.hpp"

namespace entrywise {

namespace {

constexpr std::array<Word<ExtraKind>, 11> extra_kinds{{
    {"spice", ExtraKind::spice},
    {"fruit", ExtraKind::fruit},
    {"wood", ExtraKind::wood},
    {"fining", ExtraKind::fining},
    {"acid", ExtraKind::acid},
    {"salt", ExtraKind::salt},
    {"tea", ExtraKind::tea},
    {"coffee", ExtraKind::coffee},
    {"cocoa", ExtraKind::cocoa},
    {"nut", ExtraKind::nut},
    {"other", ExtraKind::other},
}};

constexpr std::array<Word<ExtraUse>, 4> extra_uses{{
    {"mash", ExtraUse::mash},
    {"boil", ExtraUse::boil},
    {"whirlpool", ExtraUse::whirlpool},
    {"fermenter", ExtraUse::fermenter},
}};

constexpr std::array<Word<bool>, 4> packages{{
    {"bottle", true},
    {"keg", false},
    {"cask", false},
    {"can", false},
}};

// Limits of what can be meant: working values. Wort boils below 110 °C even as strong as it comes.
constexpr Span<Duration> boil_times{0.0 * hour, 24.0 * hour};
Span<Temperature> mash_temperatures() {
    return {celsius(0.0), celsius(110.0)};
}
Span<Temperature> fermentation_temperatures() {
    return {celsius(-5.0), celsius(60.0)};
}

/// How long a rest is that the recipe gives no time for: an hour for conversion, ten minutes for a rest that
/// is too hot for it and only ends the mash (common practice).
Duration usual_rest_time(Temperature temperature) {
    const bool ends_the_mash = in_celsius(temperature) >= 74.0;
    return ends_the_mash ? 10.0 * minute : 60.0 * minute;
}

std::optional<StyleName> read_style_name(Fields& fields, std::string_view key, Position& position) {
    const Node* node = fields.find(key);
    const auto text =
        node == nullptr ? std::nullopt : scalar_text(*node, "a style as guide/code", fields.faults());
    if (!text) {
        return std::nullopt;
    }
    position = node->position;
    auto name = style_name_from(*text);
    if (!name) {
        fields.faults().add(node->position, {.found = shown(*node),
                                             .expected = "a style as guide/code",
                                             .remedy = "Write it as bjcp-2021/21A."});
    }
    return name;
}

std::map<std::string, std::string> read_declarations(Fields& fields) {
    std::map<std::string, std::string> declares;
    const Node* node = fields.find("declares");
    if (node == nullptr) {
        return declares;
    }
    const Fields is_a_map(*node, "what is declared", fields.faults());
    for (const Entry& entry : node->entries) {
        declares[entry.key] = ReadAs<std::string>::from(entry.value, fields.faults()).value_or("");
    }
    return declares;
}

Boil read_boil(Fields& parent) {
    Boil boil;
    if (const Node* node = parent.find("boil")) {
        Fields fields(*node, "the boil", parent.faults());
        boil.time = fields.optional_within<Duration>("time", boil_times);
        boil.evaporation = fields.optional<EvaporationRate>("evaporation");
        fields.refuse_others();
    }
    return boil;
}

MashRest read_rest(const Node& node, FaultLog& faults) {
    Fields fields(node, "a mash rest", faults);
    MashRest rest;
    fields.need("temperature");
    rest.temperature =
        fields.optional_within<Temperature>("temperature", mash_temperatures()).value_or(celsius(0.0));
    const auto time = fields.optional<Duration>("time");
    rest.time = time.value_or(usual_rest_time(rest.temperature));
    rest.time_is_stated = time.has_value();
    fields.refuse_others();
    return rest;
}

/// `mash: none`, rests, or nothing; a recipe that says nothing is mashed if anything in its grist needs it.
void read_mash(const Node* node, Recipe& recipe, FaultLog& faults) {
    const bool none = node != nullptr && node->kind == NodeKind::scalar && node->text == "none";
    if (none) {
        recipe.mashed = false;
        return;
    }
    recipe.mash = read_list(node, "a list of rests, or none", faults,
                            [&](const Node& item) { return read_rest(item, faults); });
    recipe.mashed = node != nullptr ||
                    std::any_of(recipe.grist.begin(), recipe.grist.end(), [](const GristAddition& addition) {
                        return addition.use == GristUse::mash && needs_a_mash(addition.fermentable.kind);
                    });
}

ExtraAddition read_extra(const Node& node, FaultLog& faults) {
    Fields fields(node, "an extra", faults);
    ExtraAddition extra;
    extra.position = node.position;
    extra.name = fields.required<std::string>("name");
    fields.need("kind");
    extra.kind = fields.optional_word<ExtraKind>("kind", extra_kinds).value_or(ExtraKind::other);
    extra.mass = fields.optional_amount<Mass>("mass");
    extra.volume = fields.optional_amount<Volume>("volume");
    extra.use = fields.optional_word<ExtraUse>("add", extra_uses).value_or(ExtraUse::boil);
    extra.time = fields.optional<Duration>("time");
    fields.refuse_others();
    return extra;
}

std::vector<YeastAddition> read_yeasts(const Node* node, const KnownIngredients& known, FaultLog& faults) {
    const auto read = [&](const Node& item) { return read_yeast_addition(item, known, faults); };
    if (node != nullptr && node->kind != NodeKind::list) {
        return {read(*node)};
    }
    return read_list(node, "a yeast, or a list of yeasts", faults, read);
}

std::optional<DiacetylRest> read_diacetyl_rest(Fields& parent) {
    const Node* node = parent.find("rest");
    if (node == nullptr) {
        return std::nullopt;
    }
    Fields fields(*node, "the diacetyl rest", parent.faults());
    DiacetylRest rest;
    fields.need("temperature");
    rest.temperature = fields.optional_within<Temperature>("temperature", fermentation_temperatures())
                           .value_or(celsius(0.0));
    rest.time = fields.required_amount<Duration>("time");
    fields.refuse_others();
    return rest;
}

void read_fermentation(Fields& parent, Recipe& recipe) {
    if (const Node* node = parent.find("fermentation")) {
        Fields fields(*node, "the fermentation", parent.faults());
        recipe.fermentation_temperature =
            fields.optional_within<Temperature>("temperature", fermentation_temperatures());
        recipe.fermentation_time = fields.optional<Duration>("time");
        recipe.diacetyl_rest = read_diacetyl_rest(fields);
        fields.refuse_others();
    }
}

Conditioning read_conditioning(Fields& parent) {
    Conditioning conditioning;
    if (const Node* node = parent.find("conditioning")) {
        Fields fields(*node, "the conditioning", parent.faults());
        conditioning.carbonation = fields.optional<Uncertain<Carbonation>>("carbonation");
        conditioning.time = fields.optional<Duration>("time");
        conditioning.temperature = fields.optional<Temperature>("temperature");
        conditioning.filtered = fields.optional<bool>("filtered");
        conditioning.nitrogen = fields.optional<bool>("nitrogen");
        conditioning.bottled = fields.optional_word<bool>("package", packages);
        fields.refuse_others();
    }
    return conditioning;
}

Keeping read_keeping(Fields& parent) {
    Keeping keeping;
    if (const Node* node = parent.find("dates")) {
        Fields fields(*node, "the dates", parent.faults());
        keeping.packaged = fields.optional<std::chrono::sys_days>("packaged");
        keeping.judged = fields.optional<std::chrono::sys_days>("judged");
        keeping.temperature = fields.optional_within<Temperature>("kept", fermentation_temperatures());
        fields.refuse_others();
        if (keeping.packaged && keeping.judged && *keeping.judged < *keeping.packaged) {
            const Node* judged = value_of(*node, "judged");
            fields.faults().add(judged->position, {.found = shown(*judged),
                                                   .expected = "a day not before the beer was packaged",
                                                   .remedy = "Check whether the two are exchanged."});
        }
    }
    return keeping;
}

void read_ingredients(Fields& fields, const KnownIngredients& known, Recipe& recipe) {
    FaultLog& faults = fields.faults();
    const Node* grist = fields.need("grist");
    recipe.grist = read_list(grist, "a list of malts, sugars and extracts", faults,
                             [&](const Node& item) { return read_grist_addition(item, known, faults); });
    if (grist != nullptr && grist->kind == NodeKind::list && grist->items.empty()) {
        faults.add(grist->position,
                   {.found = "an empty grist", .expected = "at least one malt, sugar or extract"});
    }
    recipe.hops = read_list(fields.find("hops"), "a list of hop additions", faults,
                            [&](const Node& item) { return read_hop_addition(item, known, faults); });
    recipe.extras = read_list(fields.find("extras"), "a list of extras", faults,
                              [&](const Node& item) { return read_extra(item, faults); });
    recipe.yeasts = read_yeasts(fields.find("yeast"), known, faults);
}

}  // namespace

Outcome<Recipe> read_recipe(const Node& document, const KnownIngredients& known, const std::string& file) {
    FaultLog faults(file);
    Fields fields(document, "a recipe", faults);
    if (!check_format(fields, "recipe")) {
        return faults.in_order();
    }
    Recipe recipe;
    recipe.file = file;
    recipe.measures = measures_of(document);
    recipe.name = fields.required<std::string>("name");
    recipe.style = read_style_name(fields, "style", recipe.style_position);
    recipe.base_style = read_style_name(fields, "base_style", recipe.base_style_position);
    recipe.declares = read_declarations(fields);
    recipe.volume = fields.required_amount<Uncertain<Volume>>("volume");
    recipe.boil = read_boil(fields);
    recipe.efficiency = fields.optional_amount<Uncertain<Share>>("efficiency");
    const Node* mash = fields.find("mash");
    read_ingredients(fields, known, recipe);
    read_mash(mash, recipe, faults);
    read_fermentation(fields, recipe);
    recipe.conditioning = read_conditioning(fields);
    recipe.keeping = read_keeping(fields);
    if (const Node* measured = fields.find("measured")) {
        recipe.measured = read_measured(*measured, faults);
    }
    fields.refuse_others();
    if (!faults.empty()) {
        return faults.in_order();
    }
    return recipe;
}

}  // namespace entrywise
