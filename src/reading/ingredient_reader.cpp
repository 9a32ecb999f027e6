#include "reading/ingredient_reader.hpp"

#include <fmt/format.h>

#include <array>
#include <map>
#include <utility>

#include "base/text.hpp"
#include "reading/fields.hpp"
#include "reading/ingredient_fields.hpp"

namespace entrywise {

namespace {

constexpr std::array<Word<FermentableKind>, 8> fermentable_kinds{{
    {"base", FermentableKind::base},
    {"toasted", FermentableKind::toasted},
    {"crystal", FermentableKind::crystal},
    {"roasted", FermentableKind::roasted},
    {"adjunct", FermentableKind::adjunct},
    {"sugar", FermentableKind::sugar},
    {"extract", FermentableKind::malt_extract},
    {"fruit", FermentableKind::fruit},
}};

constexpr std::array<Word<HopPurpose>, 3> hop_purposes{{
    {"aroma", HopPurpose::aroma},
    {"bittering", HopPurpose::bittering},
    {"dual", HopPurpose::dual},
}};

constexpr std::array<Word<Fermentation>, 3> fermentations{{
    {"top", Fermentation::top},
    {"bottom", Fermentation::bottom},
    {"mixed", Fermentation::mixed},
}};

constexpr std::array<Word<Flocculation>, 3> flocculations{{
    {"low", Flocculation::low},
    {"medium", Flocculation::medium},
    {"high", Flocculation::high},
}};

constexpr std::array<Word<double Contribution::*>, 11> contributions{{
    {"malt", &Contribution::malt},
    {"toast", &Contribution::toast},
    {"caramel", &Contribution::caramel},
    {"roast", &Contribution::roast},
    {"smoke", &Contribution::smoke},
    {"acid", &Contribution::acid},
    {"body", &Contribution::body},
    {"head", &Contribution::head},
    {"haze", &Contribution::haze},
    {"dms", &Contribution::dms},
    {"sweet", &Contribution::sweet},
}};

constexpr std::array<Word<bool YeastClass::*>, 7> yeast_flags{{
    {"diastatic", &YeastClass::diastatic},
    {"phenolic", &YeastClass::phenolic},
    {"lactic", &YeastClass::lactic},
    {"brettanomyces", &YeastClass::brettanomyces},
    {"maltose-negative", &YeastClass::maltose_negative},
    {"haze-positive", &YeastClass::haze_positive},
    {"kveik", &YeastClass::kveik},
}};

template <class Value>
Value required_word(Fields& fields, std::string_view key, std::span<const Word<Value>> words) {
    return fields.need(key) == nullptr ? Value() : fields.optional_word(key, words).value_or(Value());
}

Contribution read_contribution(Fields& fermentable) {
    Contribution gives;
    const Node* node = fermentable.find("gives");
    if (node == nullptr) {
        return gives;
    }
    Fields fields(*node, "what the ingredient gives", fermentable.faults());
    for (const auto& [word, member] : contributions) {
        gives.*member = fields.optional<double>(word).value_or(0.0);
    }
    fields.refuse_others();
    return gives;
}

Fermentable fermentable_of(const Node& node, FaultLog& faults) {
    Fields fields(node, "a fermentable", faults);
    Fermentable fermentable;
    fermentable.name = fields.required<std::string>("name");
    fermentable.aliases = fields.texts("aliases");
    fermentable.kind = required_word<FermentableKind>(fields, "kind", fermentable_kinds);
    fermentable.groups = fields.texts("groups");
    fermentable.extract = fields.required<Uncertain<Share>>("extract");
    fermentable.moisture = fields.required<Uncertain<Share>>("moisture");
    fermentable.color = fields.required<Uncertain<MaltColor>>("color");
    fermentable.fermentability = fields.required<Uncertain<Attenuation>>("fermentability");
    fermentable.gives = read_contribution(fields);
    fermentable.notes = fields.texts("notes");
    fermentable.allergens = fields.texts("allergens");
    fermentable.source = fields.required<std::string>("source");
    fields.refuse_others();
    return fermentable;
}

Uncertain<Share> required_acids(Fields& fields, std::string_view key) {
    return fields.need(key) == nullptr ? Uncertain<Share>()
                                       : read_acids(fields, key).value_or(Uncertain<Share>());
}

Hop hop_of(const Node& node, FaultLog& faults) {
    Fields fields(node, "a hop", faults);
    Hop hop;
    hop.name = fields.required<std::string>("name");
    hop.aliases = fields.texts("aliases");
    fields.need("family");
    hop.family = read_hop_family(fields).value_or("");
    hop.purpose = required_word<HopPurpose>(fields, "purpose", hop_purposes);
    hop.alpha = required_acids(fields, "alpha");
    hop.beta = required_acids(fields, "beta");
    hop.oil = fields.required<Uncertain<OilContent>>("oil");
    hop.storage_loss = fields.required<Uncertain<Share>>("storage_loss");
    hop.descriptors = fields.texts("descriptors");
    hop.source = fields.required<std::string>("source");
    fields.refuse_others();
    return hop;
}

void read_flags(Fields& fields, YeastClass& yeast) {
    const auto set = [&](const Node& item) {
        const auto flag = Fields::word_from<bool YeastClass::*>(item, yeast_flags, fields.faults());
        if (flag) {
            yeast.*(*flag) = true;
        }
        return flag.has_value();
    };
    read_list(fields.find("flags"), "a list of flags", fields.faults(), set);
}

YeastClass yeast_of(const Node& node, FaultLog& faults) {
    Fields fields(node, "a yeast class", faults);
    YeastClass yeast;
    yeast.name = fields.required<std::string>("class");
    yeast.aliases = fields.texts("aliases");
    yeast.fermentation = required_word<Fermentation>(fields, "fermentation", fermentations);
    yeast.attenuation = fields.required<Uncertain<Attenuation>>("attenuation");
    yeast.temperature = fields.required<Span<Temperature>>("temperature");
    yeast.ester = fields.required<LevelSpan>("ester");
    yeast.phenol = fields.required<LevelSpan>("phenol");
    yeast.sulfur = fields.required<LevelSpan>("sulfur");
    yeast.diacetyl = fields.required<LevelSpan>("diacetyl");
    yeast.flocculation = required_word<Flocculation>(fields, "flocculation", flocculations);
    yeast.alcohol_limit = fields.required<AlcoholByVolume>("alcohol_limit");
    read_flags(fields, yeast);
    yeast.ester_notes = fields.texts("ester_notes");
    yeast.phenol_notes = fields.texts("phenol_notes");
    yeast.source = fields.required<std::string>("source");
    fields.refuse_others();
    return yeast;
}

/// Refuses a name or alias that an entry before has: which of the two was meant could not be told.
template <class Ingredient>
void check_names(const std::vector<Ingredient>& ingredients, const std::vector<Position>& positions,
                 FaultLog& faults) {
    std::map<std::string, std::size_t> owners;
    for (std::size_t index = 0; index < ingredients.size(); ++index) {
        std::vector<std::string> names = ingredients[index].aliases;
        names.push_back(ingredients[index].name);
        for (const std::string& name : names) {
            const auto [owner, is_new] = owners.emplace(lowered(name), index);
            if (!is_new && !name.empty()) {
                faults.add(positions[index], {.found = fmt::format("the name {} again", in_quotes(name)),
                                              .expected = "each name and alias once in a file",
                                              .remedy = fmt::format("The entry in line {} has it already.",
                                                                    positions[owner->second].line)});
            }
        }
    }
}

template <class Ingredient>
Outcome<std::vector<Ingredient>> read_table(const Node& document, const std::string& file,
                                            std::string_view kind, std::string_view list_key,
                                            Ingredient (*read)(const Node& node, FaultLog& faults)) {
    FaultLog faults(file);
    Fields fields(document, "an ingredient file", faults);
    if (!check_format(fields, kind)) {
        return faults.in_order();
    }
    const Node* list = fields.need(list_key);
    auto ingredients = read_list(list, "a list of ingredients", faults,
                                 [&](const Node& item) { return read(item, faults); });
    fields.refuse_others();
    if (faults.empty()) {
        std::vector<Position> positions;
        for (const Node& item : list->items) {
            positions.push_back(item.position);
        }
        check_names(ingredients, positions, faults);
    }
    if (!faults.empty()) {
        return faults.in_order();
    }
    return ingredients;
}

template <class Ingredient>
Outcome<Ingredient> read_entry(const Node& entry, const std::string& file,
                               Ingredient (*read)(const Node& node, FaultLog& faults)) {
    FaultLog faults(file);
    Ingredient ingredient = read(entry, faults);
    return faults.empty() ? Outcome<Ingredient>(std::move(ingredient))
                          : Outcome<Ingredient>(faults.in_order());
}

}  // namespace

Outcome<std::vector<Fermentable>> read_fermentables(const Node& document, const std::string& file) {
    return read_table<Fermentable>(document, file, "fermentables", "fermentables", fermentable_of);
}

Outcome<std::vector<Hop>> read_hops(const Node& document, const std::string& file) {
    return read_table<Hop>(document, file, "hops", "hops", hop_of);
}

Outcome<std::vector<YeastClass>> read_yeasts(const Node& document, const std::string& file) {
    return read_table<YeastClass>(document, file, "yeast", "yeasts", yeast_of);
}

Outcome<Fermentable> read_fermentable(const Node& entry, const std::string& file) {
    return read_entry<Fermentable>(entry, file, fermentable_of);
}

Outcome<Hop> read_hop(const Node& entry, const std::string& file) {
    return read_entry<Hop>(entry, file, hop_of);
}

Outcome<YeastClass> read_yeast(const Node& entry, const std::string& file) {
    return read_entry<YeastClass>(entry, file, yeast_of);
}

}  // namespace entrywise
