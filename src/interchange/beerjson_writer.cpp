#include "interchange/beerjson_writer.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/number.hpp"
#include "base/text.hpp"
#include "interchange/addenda.hpp"
#include "interchange/beerjson_amount.hpp"
#include "interchange/beerjson_extras_writer.hpp"
#include "interchange/beerjson_grist_writer.hpp"
#include "interchange/beerjson_hops_writer.hpp"
#include "interchange/beerjson_kettle.hpp"
#include "interchange/beerjson_process_writer.hpp"
#include "interchange/beerjson_yeast_writer.hpp"
#include "interchange/exchange.hpp"
#include "interchange/statements.hpp"

namespace entrywise {

namespace {

// The usual one, where the standard asks for a number that the recipe leaves out: common practice.
constexpr Share usual_efficiency = 72.0 * percent;

template <class Item, class Make>
BeerJson list_of(const std::vector<Item>& items, Make make) {
    BeerJson list = BeerJson::array();
    for (const Item& item : items) {
        list.push_back(make(item));
    }
    return list;
}

BeerJson style_of(const StyleName& style, const std::optional<StyleInWords>& words) {
    BeerJson json;
    json["name"] = words ? words->name : style.code;
    json["category"] = words && !words->category.empty() ? words->category : style.code;
    const std::size_t digits = style.code.find_first_not_of("0123456789");
    const bool is_number_and_letter = digits != std::string::npos && digits > 0 &&
                                      digits + 1 == style.code.size() && style.code[digits] >= 'A' &&
                                      style.code[digits] <= 'Z';
    if (const auto number = number_from(style.code.substr(0, digits)); number && is_number_and_letter) {
        json["category_number"] = static_cast<int>(*number);
        json["style_letter"] = style.code.substr(digits);
    }
    json["style_guide"] = style.guide;
    json["type"] = "beer";
    return json;
}

std::string_view brew_type_of(const Recipe& recipe) {
    const bool has_extract =
        std::any_of(recipe.grist.begin(), recipe.grist.end(), [](const GristAddition& addition) {
            return addition.fermentable.kind == FermentableKind::malt_extract;
        });
    return !recipe.mashed ? "extract" : has_extract ? "partial mash" : "all grain";
}

void put_measured(const Measured& measured, BeerJson& json) {
    if (measured.original_gravity) {
        json["original_gravity"] =
            beerjson_amount(measured.original_gravity->middle, exchange_gravity_units());
    }
    if (measured.final_gravity) {
        json["final_gravity"] = beerjson_amount(measured.final_gravity->middle, exchange_gravity_units());
    }
    if (measured.alcohol) {
        json["alcohol_by_volume"] = beerjson_amount(in(measured.alcohol->middle, percent_by_volume), "%");
    }
    if (measured.color) {
        json["color_estimate"] = beerjson_amount(measured.color->middle, exchange_color_units());
    }
}

BeerJson recipe_json(const Recipe& recipe, const std::optional<StyleInWords>& style,
                     const std::string& notes) {
    KettleSteps steps(recipe);
    BeerJson json;
    json["name"] = recipe.name;
    json["type"] = std::string(brew_type_of(recipe));
    json["author"] = "";
    json["batch_size"] = beerjson_amount(recipe.volume.middle, exchange_volume_units());
    json["efficiency"]["brewhouse"] = beerjson_amount(
        recipe.efficiency ? recipe.efficiency->middle : usual_efficiency, exchange_share_units());
    if (recipe.style) {
        json["style"] = style_of(*recipe.style, style);
    }
    BeerJson& ingredients = json["ingredients"];
    ingredients["fermentable_additions"] = list_of(recipe.grist, beerjson_fermentable);
    ingredients["hop_additions"] =
        list_of(recipe.hops, [&](const HopAddition& addition) { return beerjson_hop(addition, steps); });
    ingredients["miscellaneous_additions"] =
        list_of(recipe.extras, [&](const ExtraAddition& extra) { return beerjson_extra(extra, steps); });
    ingredients["culture_additions"] = list_of(recipe.yeasts, beerjson_culture);
    if (!recipe.mash.empty()) {
        json["mash"] = beerjson_mash(recipe);
    }
    if (recipe.boil.time || steps.more_than_a_boil()) {
        json["boil"]["boil_time"] = whole_time(recipe.boil.time.value_or(usual_boil));
        if (steps.more_than_a_boil()) {
            json["boil"]["boil_steps"] = steps.all();
        }
    }
    json["fermentation"] = beerjson_fermentation(recipe);
    if (recipe.conditioning.carbonation) {
        json["carbonation"] = in(recipe.conditioning.carbonation->middle, volume_of_co2);
    }
    if (recipe.conditioning.bottled) {
        BeerJson vessel;
        vessel["name"] = *recipe.conditioning.bottled ? "bottle" : "keg";
        vessel["type"] = vessel["name"];
        json["packaging"]["name"] = "packaging";
        json["packaging"]["packaging_vessels"] = BeerJson::array({vessel});
    }
    put_measured(recipe.measured, json);
    if (!notes.empty()) {
        json["notes"] = notes;
    }
    return json;
}

std::string document_text(const Recipe& recipe, const std::optional<StyleInWords>& style,
                          const std::string& notes) {
    constexpr double version = 1.0;
    BeerJson document;
    document["beerjson"]["version"] = version;
    document["beerjson"]["recipes"] = BeerJson::array({recipe_json(recipe, style, notes)});
    constexpr int indent = 2;
    constexpr bool ascii_alone = true;
    return document.dump(indent, ' ', ascii_alone, BeerJson::error_handler_t::replace) + '\n';
}

Remark about(const Recipe& recipe, RemarkKind kind, std::string text) {
    return {{recipe.file, {}}, kind, std::move(text)};
}

std::vector<Remark> remarks_on(const Recipe& recipe, const std::vector<Statement>& beyond) {
    std::vector<Remark> remarks;
    std::vector<std::string> filled{"the author", "the form and amount of the yeast"};
    if (!recipe.efficiency) {
        filled.emplace_back("the efficiency");
    }
    if (!recipe.mash.empty()) {
        filled.emplace_back("the temperature of the grain");
    }
    remarks.push_back(
        about(recipe, RemarkKind::missing,
              "BeerJSON asks for what no recipe file says, so that it holds the usual or nothing: " +
                  listed(filled, "and")));
    std::vector<std::string> paths;
    for (const Statement& statement : beyond) {
        if (statement.text != left_out_text) {
            paths.push_back(statement.path);
        }
    }
    if (!paths.empty()) {
        remarks.push_back(
            about(recipe, RemarkKind::left_out,
                  "BeerJSON has no place for these, they stand in its notes: " + listed(paths, "and")));
    }
    return remarks;
}

}  // namespace

WrittenExchange beerjson_text(const Recipe& recipe, const std::optional<StyleInWords>& style,
                              const KnownIngredients& known) {
    // What the standard loses shows when its text is read back. A heading keeps names from being matched
    // anew.
    const std::string heading = notes_of({{"name", recipe.name}});
    const auto lost_with = [&](const std::string& notes) {
        const auto back =
            read_exchange(Exchange::beerjson, document_text(recipe, style, notes), recipe.file, {}, known);
        return back ? differences(recipe, back->recipe) : statements_of(recipe);
    };
    const std::vector<Statement> beyond = lost_with(heading);
    const bool needs_the_heading = beyond.empty() && !lost_with({}).empty();
    return {document_text(recipe, style, needs_the_heading ? heading : notes_of(beyond)),
            remarks_on(recipe, beyond)};
}

}  // namespace entrywise
