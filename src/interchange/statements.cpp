#include "interchange/statements.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <map>
#include <optional>
#include <utility>

#include "interchange/recipe_words.hpp"
#include "quantity/text.hpp"

namespace entrywise {

namespace {

/// Collects statements under a path.
class Statements {
  public:
    void say(const std::string& path, std::string text) { statements_.push_back({path, std::move(text)}); }

    template <class Quantity>
    void say(const std::string& path, const std::optional<Quantity>& quantity) {
        say(path, quantity ? to_text(*quantity) : std::string(left_out_text));
    }

    void say(const std::string& path, const std::optional<bool>& truth) {
        say(path, truth ? std::string(*truth ? "true" : "false") : std::string(left_out_text));
    }

    void say(const std::string& path, const std::optional<std::chrono::sys_days>& day) {
        say(path, day ? text_of(*day) : std::string(left_out_text));
    }

    std::vector<Statement> all() && { return std::move(statements_); }

  private:
    static std::string text_of(std::chrono::sys_days day) {
        const std::chrono::year_month_day date(day);
        return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                           static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    }

    std::vector<Statement> statements_;
};

std::string text_of(const std::optional<StyleName>& style) {
    return style ? style->guide + '/' + style->code : std::string(left_out_text);
}

template <class Quantity>
std::string stated(const Uncertain<Quantity>& value, bool is_stated) {
    return is_stated ? to_text(value) : std::string(left_out_text);
}

void say_grist(const Recipe& recipe, Statements& statements) {
    for (std::size_t index = 0; index < recipe.grist.size(); ++index) {
        const GristAddition& addition = recipe.grist[index];
        const Fermentable& fermentable = addition.fermentable;
        const std::string path = fmt::format("grist.{}.", index + 1);
        const bool is_extract = fermentable.kind == FermentableKind::malt_extract;
        statements.say(path + std::string(name_key_of(fermentable.kind)), fermentable.name);
        statements.say(path + "mass", to_text(addition.mass));
        statements.say(path + (is_extract ? "sugar_content" : "extract"), to_text(fermentable.extract));
        statements.say(path + "color", to_text(fermentable.color));
        statements.say(path + "moisture", to_text(fermentable.moisture));
        statements.say(path + "fermentability", to_text(fermentable.fermentability));
        statements.say(path + "add", std::string(word_of(addition.use)));
    }
}

void say_hops(const Recipe& recipe, Statements& statements) {
    for (std::size_t index = 0; index < recipe.hops.size(); ++index) {
        const HopAddition& addition = recipe.hops[index];
        const Hop& hop = addition.hop;
        const std::string path = fmt::format("hops.{}.", index + 1);
        statements.say(path + "hop", hop.name);
        statements.say(path + "mass", to_text(addition.mass));
        statements.say(path + "alpha", stated(hop.alpha, addition.alpha_is_stated));
        statements.say(path + "beta", to_text(hop.beta));
        statements.say(path + "oil", to_text(hop.oil));
        statements.say(path + "storage_loss", to_text(hop.storage_loss));
        statements.say(path + "family", hop.family.empty() ? left_out_text : hop.family);
        statements.say(path + "add", std::string(word_of(addition.use)));
        statements.say(path + "form", std::string(word_of(addition.form)));
        statements.say(path + "time", addition.time);
        statements.say(path + "temperature", addition.temperature);
    }
}

void say_extras(const Recipe& recipe, Statements& statements) {
    for (std::size_t index = 0; index < recipe.extras.size(); ++index) {
        const ExtraAddition& extra = recipe.extras[index];
        const std::string path = fmt::format("extras.{}.", index + 1);
        statements.say(path + "name", extra.name);
        statements.say(path + "kind", std::string(word_of(extra.kind)));
        statements.say(path + "mass", extra.mass);
        statements.say(path + "volume", extra.volume);
        statements.say(path + "add", std::string(word_of(extra.use)));
        statements.say(path + "time", extra.time);
    }
}

void say_yeasts(const Recipe& recipe, Statements& statements) {
    for (std::size_t index = 0; index < recipe.yeasts.size(); ++index) {
        const YeastAddition& addition = recipe.yeasts[index];
        const std::string path = fmt::format("yeast.{}.", index + 1);
        statements.say(path + "class", addition.yeast.name);
        statements.say(path + "attenuation",
                       stated(addition.yeast.attenuation, addition.attenuation_is_stated));
        statements.say(path + "pitch", addition.pitch);
        statements.say(path + "alcohol_limit", to_text(addition.yeast.alcohol_limit));
    }
}

void say_mash(const Recipe& recipe, Statements& statements) {
    if (recipe.mash.empty()) {
        statements.say("mash", std::string(recipe.mashed ? left_out_text : "none"));
    }
    for (std::size_t index = 0; index < recipe.mash.size(); ++index) {
        const MashRest& rest = recipe.mash[index];
        const std::string path = fmt::format("mash.{}.", index + 1);
        statements.say(path + "temperature", to_text(rest.temperature));
        statements.say(path + "time", rest.time_is_stated ? to_text(rest.time) : std::string(left_out_text));
    }
}

void say_process(const Recipe& recipe, Statements& statements) {
    statements.say("boil.time", recipe.boil.time);
    statements.say("boil.evaporation", recipe.boil.evaporation);
    statements.say("efficiency", recipe.efficiency);
    statements.say("fermentation.temperature", recipe.fermentation_temperature);
    statements.say("fermentation.time", recipe.fermentation_time);
    if (recipe.diacetyl_rest) {
        statements.say("fermentation.rest.temperature", to_text(recipe.diacetyl_rest->temperature));
        statements.say("fermentation.rest.time", to_text(recipe.diacetyl_rest->time));
    }
    const Conditioning& conditioning = recipe.conditioning;
    statements.say("conditioning.carbonation", conditioning.carbonation);
    statements.say("conditioning.time", conditioning.time);
    statements.say("conditioning.temperature", conditioning.temperature);
    statements.say("conditioning.filtered", conditioning.filtered);
    statements.say("conditioning.nitrogen", conditioning.nitrogen);
    statements.say("conditioning.package", conditioning.bottled
                                               ? std::string(*conditioning.bottled ? "bottle" : "keg")
                                               : std::string(left_out_text));
    statements.say("dates.packaged", recipe.keeping.packaged);
    statements.say("dates.judged", recipe.keeping.judged);
    statements.say("dates.kept", recipe.keeping.temperature);
}

void say_measured(const Measured& measured, Statements& statements) {
    statements.say("measured.original_gravity", measured.original_gravity);
    statements.say("measured.final_gravity", measured.final_gravity);
    statements.say("measured.bitterness", measured.bitterness);
    statements.say("measured.color", measured.color);
    statements.say("measured.alcohol", measured.alcohol);
    statements.say("measured.carbonation", measured.carbonation);
}

/// `grist` and `2` of `grist.2.mass`, or nothing of a path that leads into no list.
std::string item_of(const std::string& path) {
    const std::size_t first = path.find('.');
    const std::size_t second = first == std::string::npos ? first : path.find('.', first + 1);
    const bool is_item = second != std::string::npos &&
                         path.find_first_not_of("0123456789", first + 1) == second && second > first + 1;
    return is_item ? path.substr(0, second) : std::string();
}

}  // namespace

std::vector<Statement> statements_of(const Recipe& recipe) {
    Statements statements;
    statements.say("name", recipe.name);
    statements.say("style", text_of(recipe.style));
    statements.say("base_style", text_of(recipe.base_style));
    for (const auto& [key, text] : recipe.declares) {
        statements.say("declares." + key, text);
    }
    statements.say("volume", to_text(recipe.volume));
    say_mash(recipe, statements);
    say_grist(recipe, statements);
    say_hops(recipe, statements);
    say_extras(recipe, statements);
    say_yeasts(recipe, statements);
    say_process(recipe, statements);
    say_measured(recipe.measured, statements);
    return std::move(statements).all();
}

std::vector<Statement> differences(const Recipe& recipe, const Recipe& other) {
    std::map<std::string, std::string> told;
    std::map<std::string, bool> has_item;
    for (const auto& [path, text] : statements_of(other)) {
        told[path] = text;
        has_item[item_of(path)] = true;
    }
    std::vector<Statement> differing;
    for (const Statement& statement : statements_of(recipe)) {
        const auto found = told.find(statement.path);
        const bool is_the_same =
            found == told.end() ? statement.text == left_out_text : found->second == statement.text;
        const std::string item = item_of(statement.path);
        if (!is_the_same && (item.empty() || has_item.contains(item))) {
            differing.push_back(statement);
        }
    }
    return differing;
}

}  // namespace entrywise
