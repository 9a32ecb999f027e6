// Entries for measurements: each is one of the demo beers, varied as brewers vary. The number of an entry
// alone decides what it is, so that the first thousand of a million are the thousand.

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <optional>
#include <random>
#include <string>
#include <vector>

#include "base/file.hpp"
#include "base/number.hpp"
#include "base/text.hpp"
#include "interchange/recipe_writer.hpp"
#include "interchange/written.hpp"
#include "reading/document_file.hpp"
#include "reading/ingredient_reader.hpp"
#include "reading/known_ingredients.hpp"
#include "reading/recipe_reader.hpp"

namespace entrywise {

namespace {

using Json = nlohmann::ordered_json;

constexpr std::array brewers{"Maren",  "Colette", "Walt", "Anselm", "Ines",
                             "Tobias", "Ruth",    "Piet", "Odile",  "Sverre"};
constexpr std::array first_words{"Slack", "Salt", "Coal", "Low",  "Night", "Bell",  "Storm", "Day",
                                 "Third", "Tide", "Gray", "Long", "North", "Rusty", "Quiet", "Far"};
constexpr std::array second_words{"Tide",  "Hay",  "Barge", "Water", "Watch", "Buoy",   "Glass", "Sail",
                                  "Light", "Pool", "Ferry", "Smoke", "Pier",  "Anchor", "Ebb",   "Lantern"};

/// Numbers of a seed that are the same on every machine, unlike those of the distributions of the library.
class Dice {
  public:
    explicit Dice(std::uint64_t seed) : engine_(seed) {}

    double between(double low, double high) {
        constexpr double steps = 9007199254740992.0;  // 2^53
        return low + (high - low) * static_cast<double>(engine_() >> 11U) / steps;
    }
    bool chance(double share) { return between(0.0, 1.0) < share; }
    std::size_t below(std::size_t count) { return static_cast<std::size_t>(engine_() % count); }
    template <class List>
    const auto& one_of(const List& list) {
        return list[below(list.size())];
    }

  private:
    std::mt19937_64 engine_;
};

struct DemoBeer {
    Node document;
    Recipe recipe;
};

IngredientTables tables() {
    const std::string folder = ENTRYWISE_SOURCE_DIR "/recipes/ingredients/";
    const auto document = [&](const std::string& name) { return *read_document_file(folder + name); };
    return {*read_fermentables(document("fermentables.yaml"), "fermentables"),
            *read_hops(document("hops.yaml"), "hops"), *read_yeasts(document("yeast.yaml"), "yeast")};
}

std::vector<DemoBeer> demo_beers(const KnownIngredients& known) {
    std::vector<std::string> files;
    for (const auto& entry : std::filesystem::directory_iterator(ENTRYWISE_SOURCE_DIR "/recipes")) {
        if (entry.path().extension() == ".yaml") {
            files.push_back(entry.path().string());
        }
    }
    std::sort(files.begin(), files.end());
    std::vector<DemoBeer> beers;
    for (const std::string& file : files) {
        const Node document = *read_document_file(file);
        beers.push_back({document, *read_recipe(document, known, file)});
    }
    return beers;
}

/// A number with three digits that count, as brewers weigh.
std::string three_digits(double number) {
    const int magnitude = number == 0.0 ? 0 : static_cast<int>(std::floor(std::log10(std::abs(number))));
    return shortest(rounded(number, std::clamp(2 - magnitude, 0, 3)));
}

/// An amount of one or more parts, `15 lb 8 oz`, with its first number changed; `15.3 lb 8 oz`.
template <class Change>
std::string with_number(const std::string& text, Change change) {
    const auto leading = leading_number(text);
    return leading ? three_digits(change(leading->number)) + std::string(leading->rest) : text;
}

std::string scaled(const std::string& text, double factor) {
    return with_number(text, [&](double number) { return number * factor; });
}

std::string warmer(const std::string& text, double kelvins) {
    const double degrees = text.ends_with("F") ? 1.8 * kelvins : kelvins;
    return with_number(text, [&](double number) { return std::round(2.0 * (number + degrees)) / 2.0; });
}

Node* at(Node& map, std::string_view key) {
    const auto found = std::find_if(map.entries.begin(), map.entries.end(),
                                    [&](const Entry& entry) { return entry.key == key; });
    return found == map.entries.end() ? nullptr : &found->value;
}

template <class Change>
void change_text(Node* map, std::string_view key, Change change) {
    Node* const value = map == nullptr ? nullptr : at(*map, key);
    if (value != nullptr && value->kind == NodeKind::scalar) {
        value->text = change(value->text);
    }
}

void set_text(Node& map, std::string_view key, const std::string& text) {
    put(map, key, Written{text, {}});
}

class Club {
  public:
    Club() : tables_(tables()), known_(embedded_documents(), {}), beers_(demo_beers(known_)) {}

    struct Entered {
        std::string number;
        std::string brewer;
        std::string category;
        Node recipe;
    };

    Entered entry(std::uint64_t number) const {
        Dice dice(number);
        const DemoBeer& beer = dice.one_of(beers_);
        Node document = beer.document;
        set_text(document, "name", fmt::format("{} {}", dice.one_of(first_words), dice.one_of(second_words)));
        if (dice.chance(declared_otherwise)) {
            const StyleName& other = *dice.one_of(beers_).recipe.style;
            set_text(document, "style", other.guide + '/' + other.code);
        }
        take_out(document, "measured");
        vary_process(document, dice);
        vary_grist(document, beer.recipe, dice);
        vary_hops(document, beer.recipe, dice);
        vary_yeast(document, beer.recipe, dice);
        return {fmt::format("{:07}", number), dice.one_of(brewers), at(document, "style")->text,
                std::move(document)};
    }

  private:
    // How often brewers do so is a working value throughout.
    static constexpr double declared_otherwise = 0.2;
    static constexpr double other_malt = 0.25;
    static constexpr double other_hop = 0.5;
    static constexpr double other_yeast = 0.15;

    static void vary_process(Node& document, Dice& dice) {
        change_text(&document, "volume",
                    [&](const auto& text) { return scaled(text, dice.between(0.92, 1.08)); });
        change_text(&document, "efficiency",
                    [&](const auto& text) { return scaled(text, dice.between(0.93, 1.05)); });
        Node* const mash = at(document, "mash");
        if (mash != nullptr && mash->kind == NodeKind::list) {
            for (Node& rest : mash->items) {
                change_text(&rest, "temperature",
                            [&](const auto& text) { return warmer(text, dice.between(-2.0, 2.0)); });
            }
        }
        change_text(at(document, "fermentation"), "temperature",
                    [&](const auto& text) { return warmer(text, dice.between(-1.5, 1.5)); });
        change_text(at(document, "conditioning"), "carbonation",
                    [&](const auto& text) { return scaled(text, dice.between(0.85, 1.15)); });
        change_text(at(document, "conditioning"), "time", [&](const auto& text) {
            return with_number(text, [&](double days) { return std::round(days * dice.between(0.6, 1.5)); });
        });
    }

    void vary_grist(Node& document, const Recipe& recipe, Dice& dice) const {
        const double strength = dice.between(0.85, 1.2);
        std::vector<Node>& items = at(document, "grist")->items;
        for (std::size_t index = 0; index < items.size(); ++index) {
            const double factor = strength * dice.between(0.8, 1.25);
            change_text(&items[index], "mass", [&](const auto& text) { return scaled(text, factor); });
            if (at(items[index], "malt") != nullptr && at(items[index], "color") == nullptr &&
                dice.chance(other_malt)) {
                set_text(items[index], "malt", malt_like(recipe.grist[index].fermentable, dice));
            }
        }
    }

    /// A malt of the same kind that is no more than half as dark again, nor half as pale.
    std::string malt_like(const Fermentable& malt, Dice& dice) const {
        std::vector<std::string> names;
        for (const Fermentable& other : tables_.fermentables) {
            const double darker = other.color.middle / malt.color.middle;
            if (other.kind == malt.kind && darker < 1.5 && darker > 0.5) {
                names.push_back(other.name);
            }
        }
        return names.empty() ? malt.name : dice.one_of(names);
    }

    /// Another hop comes in the mass that brings about as many alpha acids.
    void vary_hops(Node& document, const Recipe& recipe, Dice& dice) const {
        std::vector<Node>& items = at(document, "hops")->items;
        const double bitterness = dice.between(0.8, 1.25);
        for (std::size_t index = 0; index < items.size(); ++index) {
            const HopAddition& addition = recipe.hops[index];
            const double alpha = addition.hop.alpha.middle / percent;
            double factor = bitterness * dice.between(0.8, 1.25);
            if (dice.chance(other_hop)) {
                const Hop hop = hop_like(addition.hop, dice);
                const double middle = hop.alpha.middle / percent;
                const double half_width = hop.alpha.half_width / percent;
                const double crop = rounded(dice.between(middle - half_width, middle + half_width), 1);
                set_text(items[index], "hop", hop.name);
                set_text(items[index], "alpha", shortest(crop) + " %");
                factor *= std::clamp(alpha / crop, 0.3, 3.0);
            }
            change_text(&items[index], "mass", [&](const auto& text) { return scaled(text, factor); });
        }
    }

    Hop hop_like(const Hop& hop, Dice& dice) const {
        std::vector<const Hop*> others;
        for (const Hop& other : tables_.hops) {
            if (other.purpose == hop.purpose && other.family == hop.family) {
                others.push_back(&other);
            }
        }
        return others.empty() ? hop : *dice.one_of(others);
    }

    void vary_yeast(Node& document, const Recipe& recipe, Dice& dice) const {
        Node& yeast = *at(document, "yeast");
        if (yeast.kind == NodeKind::map && dice.chance(other_yeast)) {
            set_text(yeast, "class", yeast_like(recipe.yeasts.front().yeast, dice));
        }
    }

    std::string yeast_like(const YeastClass& yeast, Dice& dice) const {
        std::vector<std::string> names;
        for (const YeastClass& other : tables_.yeasts) {
            const bool is_like = other.fermentation == yeast.fermentation &&
                                 other.phenolic == yeast.phenolic && other.lactic == yeast.lactic &&
                                 other.brettanomyces == yeast.brettanomyces && !other.kveik &&
                                 !other.maltose_negative;
            if (is_like) {
                names.push_back(other.name);
            }
        }
        return names.empty() ? yeast.name : dice.one_of(names);
    }

    IngredientTables tables_;
    KnownIngredients known_;
    std::vector<DemoBeer> beers_;
};

Json json_of(const Node& node) {
    switch (node.kind) {
        case NodeKind::scalar:
            return node.text;
        case NodeKind::list: {
            Json list = Json::array();
            for (const Node& item : node.items) {
                list.push_back(json_of(item));
            }
            return list;
        }
        case NodeKind::map: {
            Json map = Json::object();
            for (const Entry& entry : node.entries) {
                map[entry.key] = json_of(entry.value);
            }
            return map;
        }
    }
    return {};
}

std::string json_line(const Club::Entered& entry) {
    Json line;
    line["entry"] = entry.number;
    line["brewer"] = entry.brewer;
    line["category"] = entry.category;
    line["recipe"] = json_of(entry.recipe);
    return line.dump() + '\n';
}

bool write(const std::string& path, const std::string& text) {
    std::FILE* const file = path == "-" ? stdout : std::fopen(path.c_str(), "wb");
    if (file == nullptr) {
        return false;
    }
    const bool written = std::fwrite(text.data(), 1, text.size(), file) == text.size();
    return (file == stdout || std::fclose(file) == 0) && written;
}

int generate(std::uint64_t count, const std::string& where) {
    const Club club;
    std::error_code exists;
    if (where != "-") {
        std::filesystem::create_directories(where, exists);
    }
    for (std::uint64_t number = 1; number <= count; ++number) {
        const Club::Entered entry = club.entry(number);
        const bool written = where == "-" ? write("-", json_line(entry))
                                          : write(fmt::format("{}/{}.yaml", where, entry.number),
                                                  recipe_file_text(entry.recipe));
        if (!written) {
            fmt::print(stderr, "generate_entries: cannot write to {}\n", where);
            return 1;
        }
    }
    return 0;
}

}  // namespace

}  // namespace entrywise

int main(int count, char** words) {
    const std::optional<double> entries = count == 3 ? entrywise::number_from(words[1]) : std::nullopt;
    if (!entries || *entries < 1.0) {
        fmt::print(stderr, "usage: generate_entries N FOLDER | -\n");
        return 2;
    }
    return entrywise::generate(static_cast<std::uint64_t>(*entries), words[2]);
}
