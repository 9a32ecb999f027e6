#include "interchange/beerjson_writer.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <span>
#include <utility>

#include "base/number.hpp"
#include "base/text.hpp"
#include "interchange/addenda.hpp"
#include "interchange/exchange.hpp"
#include "interchange/exchange_units.hpp"
#include "interchange/statements.hpp"
#include "quantity/text.hpp"

namespace entrywise {

namespace {

using Json = nlohmann::ordered_json;

// The usual ones, where the standard asks for a number that the recipe leaves out: common practice.
constexpr Share usual_efficiency = 72.0 * percent;
constexpr Duration usual_boil = 60.0 * minute;

Json amount(double number, std::string_view unit) {
    Json json;
    json["unit"] = std::string(unit);
    json["value"] = number;
    return json;
}

/// A quantity in the unit that a recipe file would write it in, by the standard's name of that unit.
template <class Quantity>
Json amount(Quantity quantity, std::span<const ExchangeUnit> units, std::string_view spelling = {}) {
    const std::string text = to_text(quantity, spelling);
    const auto number = leading_number(text);
    const std::string_view unit = number ? trimmed(number->rest) : std::string_view();
    const auto found = std::find_if(units.begin(), units.end(), [&](const ExchangeUnit& known) {
        return known.spelling == unit || (unit.empty() && known.spelling == "SG");
    });
    return number && found != units.end() ? amount(number->number, found->unit) : Json();
}

/// The standard's times are whole numbers: the largest unit in which this one is, or the nearest second.
Json whole_time(Duration duration) {
    struct TimeUnit {
        std::string_view unit;
        Duration one;
    };
    constexpr std::array<TimeUnit, 3> units{{{"day", day}, {"min", minute}, {"sec", second}}};
    constexpr double hairsbreadth = 1e-9;
    for (const auto& [unit, one] : units) {
        const double count = in(duration, one);
        const double nearest = std::round(count);
        const bool is_whole = std::abs(count - nearest) <= hairsbreadth * std::max(1.0, nearest);
        if ((is_whole && nearest >= 1.0) || one == second) {
            Json json;
            json["unit"] = std::string(unit);
            json["value"] = static_cast<std::int64_t>(nearest);
            return json;
        }
    }
    return {};
}

/// The steps of the kettle that additions refer to, counted from one.
class KettleSteps {
  public:
    explicit KettleSteps(const Recipe& recipe) {
        const bool has_first_wort =
            std::any_of(recipe.hops.begin(), recipe.hops.end(),
                        [](const HopAddition& hop) { return hop.use == HopUse::first_wort; });
        if (has_first_wort) {
            Json step;
            step["name"] = "first wort";
            steps_.push_back(step);
            first_wort_ = static_cast<int>(steps_.size());
        }
        Json boil;
        boil["name"] = "boil";
        boil["step_time"] = whole_time(recipe.boil.time.value_or(usual_boil));
        steps_.push_back(boil);
        before_whirlpools_ = steps_.size();
    }

    int first_wort() const { return first_wort_; }

    int whirlpool(const std::optional<Temperature>& temperature, const std::optional<Duration>& time) {
        Json step;
        step["name"] = "whirlpool";
        if (temperature) {
            step["start_temperature"] = amount(*temperature, exchange_temperature_units());
            step["end_temperature"] = step["start_temperature"];
        }
        if (time) {
            step["step_time"] = whole_time(*time);
        }
        const auto found =
            std::find(steps_.begin() + static_cast<std::ptrdiff_t>(before_whirlpools_), steps_.end(), step);
        if (found != steps_.end()) {
            return static_cast<int>(found - steps_.begin()) + 1;
        }
        steps_.push_back(step);
        return static_cast<int>(steps_.size());
    }

    bool more_than_a_boil() const { return steps_.size() > 1; }
    const std::vector<Json>& all() const { return steps_; }

  private:
    std::vector<Json> steps_;
    int first_wort_ = 0;
    std::size_t before_whirlpools_ = 0;
};

std::string_view type_of(const Fermentable& fermentable) {
    const bool is_dry = lowered(fermentable.name).find("dry") != std::string::npos;
    switch (fermentable.kind) {
        case FermentableKind::sugar:
            return "sugar";
        case FermentableKind::fruit:
            return "fruit";
        case FermentableKind::malt_extract:
            return is_dry ? "dry extract" : "extract";
        case FermentableKind::base:
        case FermentableKind::toasted:
        case FermentableKind::crystal:
        case FermentableKind::roasted:
        case FermentableKind::adjunct:
            return "grain";
    }
    return "other";
}

/// The groups of the standard that a kind is surely in.
std::string_view group_of(FermentableKind kind) {
    switch (kind) {
        case FermentableKind::base:
            return "base";
        case FermentableKind::crystal:
            return "caramel";
        case FermentableKind::roasted:
            return "roasted";
        case FermentableKind::toasted:
            return "specialty";
        case FermentableKind::adjunct:
            return "adjunct";
        default:
            return {};
    }
}

Json fermentable_addition(const GristAddition& addition) {
    const Fermentable& fermentable = addition.fermentable;
    Json json;
    json["name"] = fermentable.name;
    json["type"] = std::string(type_of(fermentable));
    if (const std::string_view group = group_of(fermentable.kind); !group.empty()) {
        json["grain_group"] = std::string(group);
    }
    json["yield"]["fine_grind"] = amount(fermentable.extract.middle, exchange_share_units());
    json["color"] = amount(fermentable.color.middle, exchange_color_units(), "EBC");
    json["amount"] = amount(addition.mass, exchange_mass_units());
    constexpr std::array<std::string_view, 3> uses{"add_to_mash", "add_to_boil", "add_to_fermentation"};
    json["timing"]["use"] = std::string(uses.at(static_cast<std::size_t>(addition.use)));
    return json;
}

Json hop_timing(const HopAddition& addition, KettleSteps& steps) {
    Json timing;
    if (addition.time) {
        timing["duration"] = whole_time(*addition.time);
    }
    switch (addition.use) {
        case HopUse::mash:
            timing["use"] = "add_to_mash";
            break;
        case HopUse::first_wort:
            timing["use"] = "add_to_boil";
            timing["step"] = steps.first_wort();
            break;
        case HopUse::boil:
            timing["use"] = "add_to_boil";
            break;
        case HopUse::whirlpool:
            timing["use"] = "add_to_boil";
            timing["step"] = steps.whirlpool(addition.temperature, addition.time);
            break;
        case HopUse::dry_hop:
            timing["use"] = "add_to_fermentation";
            break;
    }
    return timing;
}

Json hop_addition(const HopAddition& addition, KettleSteps& steps) {
    Json json;
    json["name"] = addition.hop.name;
    json["form"] = addition.form == HopForm::pellet  ? "pellet"
                   : addition.form == HopForm::whole ? "leaf"
                                                     : "extract";
    json["alpha_acid"] = amount(addition.hop.alpha.middle, exchange_share_units());
    json["beta_acid"] = amount(addition.hop.beta.middle, exchange_share_units());
    json["amount"] = amount(addition.mass, exchange_mass_units());
    json["timing"] = hop_timing(addition, steps);
    return json;
}

std::string_view type_of(ExtraKind kind) {
    switch (kind) {
        case ExtraKind::spice:
            return "spice";
        case ExtraKind::tea:
            return "herb";
        case ExtraKind::wood:
            return "wood";
        case ExtraKind::fining:
            return "fining";
        case ExtraKind::acid:
        case ExtraKind::salt:
            return "water agent";
        case ExtraKind::fruit:
        case ExtraKind::coffee:
        case ExtraKind::cocoa:
        case ExtraKind::nut:
            return "flavor";
        case ExtraKind::other:
            return "other";
    }
    return "other";
}

Json extra_addition(const ExtraAddition& extra, KettleSteps& steps) {
    Json json;
    json["name"] = extra.name;
    json["type"] = std::string(type_of(extra.kind));
    json["amount"] = extra.mass     ? amount(*extra.mass, exchange_mass_units())
                     : extra.volume ? amount(*extra.volume, exchange_volume_units())
                                    : amount(1.0, "each");
    Json timing;
    if (extra.time) {
        timing["duration"] = whole_time(*extra.time);
    }
    timing["use"] = extra.use == ExtraUse::mash        ? "add_to_mash"
                    : extra.use == ExtraUse::fermenter ? "add_to_fermentation"
                                                       : "add_to_boil";
    if (extra.use == ExtraUse::whirlpool) {
        timing["step"] = steps.whirlpool(std::nullopt, extra.time);
    }
    json["timing"] = timing;
    return json;
}

std::string_view type_of(const YeastClass& yeast) {
    if (yeast.kveik) {
        return "kveik";
    }
    if (yeast.brettanomyces) {
        return yeast.lactic ? "mixed-culture" : "brett";
    }
    if (yeast.lactic) {
        return "lacto";
    }
    return yeast.fermentation == Fermentation::bottom ? "lager"
           : yeast.fermentation == Fermentation::top  ? "ale"
                                                      : "mixed-culture";
}

Json culture_addition(const YeastAddition& addition) {
    Json json;
    json["name"] = addition.yeast.name;
    json["type"] = std::string(type_of(addition.yeast));
    json["form"] = "culture";
    if (addition.attenuation_is_stated) {
        json["attenuation"] = amount(100.0 * in(addition.yeast.attenuation.middle, fully_attenuated), "%");
    }
    json["amount"] = amount(1.0, "each");
    return json;
}

template <class Item, class Make>
Json list_of(const std::vector<Item>& items, Make make) {
    Json list = Json::array();
    for (const Item& item : items) {
        list.push_back(make(item));
    }
    return list;
}

Json mash_of(const Recipe& recipe) {
    constexpr double room_temperature = 20.0;  // of the grain, which the standard asks for
    Json mash;
    mash["name"] = "mash";
    mash["grain_temperature"] = amount(room_temperature, "C");
    mash["mash_steps"] = list_of(recipe.mash, [&](const MashRest& rest) {
        Json step;
        step["name"] = to_text(rest.temperature);
        step["type"] = &rest == &recipe.mash.front() ? "infusion" : "temperature";
        step["step_temperature"] = amount(rest.temperature, exchange_temperature_units());
        step["step_time"] = whole_time(rest.time);
        return step;
    });
    return mash;
}

Json step_of(const std::string& name, const std::optional<Temperature>& temperature,
             const std::optional<Duration>& time) {
    Json step;
    step["name"] = name;
    if (temperature) {
        step["start_temperature"] = amount(*temperature, exchange_temperature_units());
        step["end_temperature"] = step["start_temperature"];
    }
    if (time) {
        step["step_time"] = whole_time(*time);
    }
    return step;
}

Json fermentation_of(const Recipe& recipe) {
    Json steps = Json::array();
    steps.push_back(step_of("fermentation", recipe.fermentation_temperature, recipe.fermentation_time));
    if (recipe.diacetyl_rest) {
        steps.push_back(
            step_of("diacetyl rest", recipe.diacetyl_rest->temperature, recipe.diacetyl_rest->time));
    }
    const Conditioning& conditioning = recipe.conditioning;
    if (conditioning.temperature || conditioning.time) {
        steps.push_back(step_of("conditioning", conditioning.temperature, conditioning.time));
    }
    Json fermentation;
    fermentation["name"] = "fermentation";
    fermentation["fermentation_steps"] = steps;
    return fermentation;
}

Json style_of(const StyleName& style, const std::optional<StyleInWords>& words) {
    Json json;
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

void put_measured(const Measured& measured, Json& json) {
    if (measured.original_gravity) {
        json["original_gravity"] = amount(measured.original_gravity->middle, exchange_gravity_units());
    }
    if (measured.final_gravity) {
        json["final_gravity"] = amount(measured.final_gravity->middle, exchange_gravity_units());
    }
    if (measured.alcohol) {
        json["alcohol_by_volume"] = amount(in(measured.alcohol->middle, percent_by_volume), "%");
    }
    if (measured.color) {
        json["color_estimate"] = amount(measured.color->middle, exchange_color_units());
    }
}

Json recipe_json(const Recipe& recipe, const std::optional<StyleInWords>& style, const std::string& notes) {
    KettleSteps steps(recipe);
    Json json;
    json["name"] = recipe.name;
    json["type"] = std::string(brew_type_of(recipe));
    json["author"] = "";
    json["batch_size"] = amount(recipe.volume.middle, exchange_volume_units());
    json["efficiency"]["brewhouse"] =
        amount(recipe.efficiency ? recipe.efficiency->middle : usual_efficiency, exchange_share_units());
    if (recipe.style) {
        json["style"] = style_of(*recipe.style, style);
    }
    Json& ingredients = json["ingredients"];
    ingredients["fermentable_additions"] = list_of(recipe.grist, fermentable_addition);
    ingredients["hop_additions"] =
        list_of(recipe.hops, [&](const HopAddition& addition) { return hop_addition(addition, steps); });
    ingredients["miscellaneous_additions"] =
        list_of(recipe.extras, [&](const ExtraAddition& extra) { return extra_addition(extra, steps); });
    ingredients["culture_additions"] = list_of(recipe.yeasts, culture_addition);
    if (!recipe.mash.empty()) {
        json["mash"] = mash_of(recipe);
    }
    if (recipe.boil.time || steps.more_than_a_boil()) {
        json["boil"]["boil_time"] = whole_time(recipe.boil.time.value_or(usual_boil));
        if (steps.more_than_a_boil()) {
            json["boil"]["boil_steps"] = steps.all();
        }
    }
    json["fermentation"] = fermentation_of(recipe);
    if (recipe.conditioning.carbonation) {
        json["carbonation"] = in(recipe.conditioning.carbonation->middle, volume_of_co2);
    }
    if (recipe.conditioning.bottled) {
        Json vessel;
        vessel["name"] = *recipe.conditioning.bottled ? "bottle" : "keg";
        vessel["type"] = vessel["name"];
        json["packaging"]["name"] = "packaging";
        json["packaging"]["packaging_vessels"] = Json::array({vessel});
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
    Json document;
    document["beerjson"]["version"] = version;
    document["beerjson"]["recipes"] = Json::array({recipe_json(recipe, style, notes)});
    constexpr int indent = 2;
    constexpr bool ascii_alone = true;
    return document.dump(indent, ' ', ascii_alone, Json::error_handler_t::replace) + '\n';
}

Remark about(const Recipe& recipe, RemarkKind kind, std::string text) {
    return {{recipe.file, {}}, kind, std::move(text)};
}

std::vector<Remark> remarks_on(const Recipe& recipe, const std::vector<Statement>& beyond) {
    std::vector<Remark> remarks;
    std::vector<std::string> filled{"the author", "the form and amount of the yeast"};
    if (!recipe.efficiency) {
        filled.push_back("the efficiency");
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
