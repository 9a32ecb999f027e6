#include "interchange/ingredient_match.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <functional>
#include <span>
#include <string_view>
#include <variant>
#include <vector>

#include "base/text.hpp"
#include "quantity/text.hpp"

namespace entrywise {

namespace {

using Lookup = std::function<std::optional<std::string>(const std::string&)>;
using Words = std::vector<std::string>;

constexpr std::size_t longest_name = 120;  // bytes; more is no name: working value
constexpr std::size_t most_words = 10;     // working value

// Words that say where an ingredient comes from or how it was grown, not what it is (common practice).
constexpr std::array<std::string_view, 34> origins{
    "us",     "usa",       "uk",         "u.s.",    "american", "british", "english",  "german", "germany",
    "ger",    "de",        "belgian",    "belgium", "be",       "canada",  "canadian", "czech",  "france",
    "french", "australia", "australian", "nz",      "new",      "zealand", "slovenia", "poland", "polish",
    "united", "kingdom",   "states",     "organic", "pellets",  "leaf",    "hops"};

// Words that make another ingredient of what they stand with: a match that drops one is none.
constexpr std::array<std::string_view, 35> telling{
    "unmalted", "flaked",    "torrified", "raw",     "roasted",    "roast",      "smoked",
    "peated",   "chocolate", "crystal",   "caramel", "black",      "acidulated", "toasted",
    "sugar",    "syrup",     "extract",   "honey",   "dry",        "liquid",     "dehusked",
    "brown",    "amber",     "wheat",     "rye",     "oats",       "oat",        "spelt",
    "corn",     "maize",     "rice",      "biscuit", "melanoidin", "dextrin",    "fruit"};

template <std::size_t count>
bool is_one_of(const std::array<std::string_view, count>& words, std::string_view word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

/// Without what stands in brackets.
std::string without_brackets(std::string_view text) {
    std::string kept;
    int depth = 0;
    for (const char character : text) {
        if (character == '(' || character == '[') {
            ++depth;
            kept.push_back(' ');
        } else if (character == ')' || character == ']') {
            depth = std::max(0, depth - 1);
        } else if (depth == 0) {
            kept.push_back(character);
        }
    }
    return kept;
}

/// The words of a name: letters, digits, points and hyphens, in lower case.
Words words_of(std::string_view text) {
    Words words{std::string()};
    for (const char character : lowered(text)) {
        const auto byte = static_cast<unsigned char>(character);
        const bool belongs = byte >= 0x80U || std::isalnum(byte) != 0 || character == '-' || character == '.';
        if (belongs) {
            words.back().push_back(character);
        } else if (character != '\'' && !words.back().empty()) {
            words.emplace_back();
        }
    }
    std::erase_if(words, [](const std::string& word) {
        return word.find_first_not_of("-.") == std::string::npos || word == "\u00AE" || word == "\u2122";
    });
    return words;
}

std::optional<std::string> with_or_without_malt(const std::string& name, const Lookup& lookup) {
    for (const std::string& tried : {name, name + " malt"}) {
        if (const auto found = lookup(tried)) {
            return found;
        }
    }
    return std::nullopt;
}

std::optional<std::string> in_any_order(Words words, const Lookup& lookup) {
    constexpr std::size_t most_permuted = 4;
    if (auto found = with_or_without_malt(joined(words, " "), lookup);
        found || words.size() > most_permuted) {
        return found;
    }
    std::sort(words.begin(), words.end());
    do {
        if (auto found = with_or_without_malt(joined(words, " "), lookup)) {
            return found;
        }
    } while (std::next_permutation(words.begin(), words.end()));
    return std::nullopt;
}

bool drops_a_telling_word(const Words& words, std::size_t from, std::size_t count) {
    for (std::size_t index = 0; index < words.size(); ++index) {
        const bool is_kept = index >= from && index < from + count;
        const auto begin = words.begin() + static_cast<std::ptrdiff_t>(from);
        const bool stands_elsewhere = std::find(begin, begin + static_cast<std::ptrdiff_t>(count),
                                                words[index]) != begin + static_cast<std::ptrdiff_t>(count);
        if (!is_kept && !stands_elsewhere && is_one_of(telling, words[index])) {
            return true;
        }
    }
    return false;
}

/// The longest run of words that is a known name; of equally long ones the last, where the noun stands.
std::optional<std::string> longest_run(const Words& words, const Lookup& lookup) {
    constexpr std::size_t shortest_run = 4;  // letters; `mt` or `no` could be anything: working value
    for (std::size_t count = words.size(); count > 0; --count) {
        for (std::size_t from = words.size() - count + 1; from-- > 0;) {
            const Words run(words.begin() + static_cast<std::ptrdiff_t>(from),
                            words.begin() + static_cast<std::ptrdiff_t>(from + count));
            const std::string name = joined(run, " ");
            if (name.size() < shortest_run || drops_a_telling_word(words, from, count)) {
                continue;
            }
            if (auto found = with_or_without_malt(name, lookup)) {
                return found;
            }
        }
    }
    return std::nullopt;
}

std::optional<std::string> by_words(const std::string& name, const Lookup& lookup) {
    if (name.size() > longest_name) {
        return std::nullopt;
    }
    if (auto found = lookup(name)) {
        return found;
    }
    Words words = words_of(without_brackets(name));
    if (words.empty() || words.size() > most_words) {
        return std::nullopt;
    }
    if (auto found = in_any_order(words, lookup)) {
        return found;
    }
    std::erase_if(words, [](const std::string& word) { return is_one_of(origins, word); });
    if (words.empty()) {
        return std::nullopt;
    }
    if (auto found = in_any_order(words, lookup)) {
        return found;
    }
    return longest_run(words, lookup);
}

std::optional<std::string> by_nearest(const std::string& name, const std::string& nearest) {
    constexpr std::size_t shortest_misspelled = 6;  // below that, other names are as near: working value
    const bool same_letter = !nearest.empty() && trimmed(name).size() >= shortest_misspelled &&
                             lowered(trimmed(name)).front() == lowered(nearest).front();
    return same_letter ? std::optional(nearest) : std::nullopt;
}

// The known ones that differ above all in color.
constexpr std::array<std::string_view, 9> crystals{
    "crystal very light", "crystal light",       "crystal medium light",
    "crystal medium",     "crystal medium dark", "crystal dark",
    "crystal very dark",  "crystal extra dark",  "dextrin malt"};
constexpr std::array<std::string_view, 7> base_malts{"pilsner malt",    "pale malt",   "pale ale malt",
                                                     "mild malt",       "vienna malt", "munich malt light",
                                                     "munich malt dark"};
constexpr std::array<std::string_view, 4> roasted_malts{"pale chocolate malt", "chocolate malt", "black malt",
                                                        "coffee malt"};
constexpr std::array<std::string_view, 4> liquid_extracts{
    "liquid malt extract pilsner", "liquid malt extract pale", "liquid malt extract amber",
    "liquid malt extract dark"};
constexpr std::array<std::string_view, 4> dry_extracts{"dry malt extract pilsner", "dry malt extract pale",
                                                       "dry malt extract amber", "dry malt extract dark"};

/// Whether what the file sorts so may be of that kind: honey is no grain, whatever its name shares with one.
bool may_be(DraftKind said, FermentableKind kind) {
    switch (said) {
        case DraftKind::unknown:
            return true;
        case DraftKind::grain:
            return needs_a_mash(kind);
        case DraftKind::sugar:
        case DraftKind::liquid_extract:
        case DraftKind::dry_extract:
            return kind == FermentableKind::sugar || kind == FermentableKind::malt_extract;
        case DraftKind::fruit:
            return kind == FermentableKind::fruit || kind == FermentableKind::sugar;
    }
    return true;
}

bool says_crystal(const Words& words) {
    return std::any_of(words.begin(), words.end(), [](const std::string& word) {
        return word.starts_with("crystal") || word.starts_with("cara");
    });
}

std::span<const std::string_view> candidates_for(const DraftFermentable& fermentable, const Words& words) {
    const bool is_grain = fermentable.kind == DraftKind::grain || fermentable.kind == DraftKind::unknown;
    if (fermentable.kind == DraftKind::liquid_extract) {
        return liquid_extracts;
    }
    if (fermentable.kind == DraftKind::dry_extract) {
        return dry_extracts;
    }
    if (is_grain && (fermentable.group == DraftGroup::caramel || says_crystal(words))) {
        return crystals;
    }
    if (is_grain && fermentable.group == DraftGroup::roasted) {
        return roasted_malts;
    }
    if (is_grain && fermentable.group == DraftGroup::base) {
        return base_malts;
    }
    return {};
}

/// The candidate whose color is nearest in proportion.
std::optional<std::string> nearest_in_color(std::span<const std::string_view> candidates, MaltColor color,
                                            const KnownIngredients& known) {
    std::optional<std::string> nearest;
    double least = 0.0;
    for (const std::string_view name : candidates) {
        const auto candidate = known.fermentable(std::string(name));
        if (!candidate || in(candidate->color.middle, lovibond) <= 0.0) {
            continue;
        }
        const double distance =
            std::abs(std::log(in(color, lovibond) / in(candidate->color.middle, lovibond)));
        if (!nearest || distance < least) {
            nearest = candidate->name;
            least = distance;
        }
    }
    return nearest;
}

/// The color that a file states, where it is one that can be compared.
std::optional<MaltColor> stated_color(const std::optional<Written>& color) {
    if (!color) {
        return std::nullopt;
    }
    const auto read = uncertain_from<MaltColor>(color->text);
    const auto* const value = std::get_if<Uncertain<MaltColor>>(&read);
    const bool is_some = value != nullptr && in(value->middle, lovibond) > 0.0;
    return is_some ? std::optional(value->middle) : std::nullopt;
}

/// Whether a malt of that name is commonly of quite another color: by more than a quarter (working value).
bool is_far_in_color(const Fermentable& known, const std::optional<Written>& color) {
    constexpr double far = 1.25;
    const auto stated = stated_color(color);
    const double ratio = stated ? in(*stated, lovibond) / in(known.color.middle, lovibond) : 1.0;
    return ratio > far || ratio < 1.0 / far;
}

std::optional<Match> by_color(const DraftFermentable& fermentable, const KnownIngredients& known) {
    const auto candidates = candidates_for(fermentable, words_of(fermentable.name->text));
    const auto color = stated_color(fermentable.color);
    if (candidates.empty() || !color) {
        return std::nullopt;
    }
    const auto name = nearest_in_color(candidates, *color, known);
    return name ? std::optional(Match{*name, "by its color"}) : std::nullopt;
}

struct YeastWord {
    std::string_view word;
    std::string_view yeast;
};

// What words in the name of a culture say of its class, the more special ones first (common practice).
constexpr std::array<YeastWord, 46> yeast_words{{
    {"brett", "brettanomyces"},
    {"lacto", "lactic culture"},
    {"pedio", "lactic culture"},
    {"lambic", "mixed culture"},
    {"sour blend", "mixed culture"},
    {"kveik", "kveik"},
    {"saison", "saison"},
    {"farmhouse", "saison"},
    {"hefe", "bavarian wheat"},
    {"weizen", "bavarian wheat"},
    {"weiss", "bavarian wheat"},
    {"bavarian wheat", "bavarian wheat"},
    {"german wheat", "bavarian wheat"},
    {"american wheat", "american wheat"},
    {"witbier", "belgian wit"},
    {"belgian wit", "belgian wit"},
    {"belgian wheat", "belgian wit"},
    {"trappist", "trappist"},
    {"abbey", "belgian abbey"},
    {"golden", "belgian strong golden"},
    {"biere de garde", "biere de garde"},
    {"belgian", "belgian abbey"},
    {"kolsch", "kolsch"},
    {"k\u00F6lsch", "kolsch"},
    {"koelsch", "kolsch"},
    {"altbier", "altbier"},
    {"german ale", "kolsch"},
    {"european ale", "altbier"},
    {"california lager", "california lager"},
    {"california common", "california lager"},
    {"czech", "czech lager"},
    {"bohemian", "czech lager"},
    {"american lager", "american lager"},
    {"mexican", "american lager"},
    {"hazy", "american ale fruity"},
    {"new england", "american ale fruity"},
    {"scottish", "scottish ale"},
    {"irish", "irish ale"},
    {"english dry", "english ale dry"},
    {"dry english", "english ale dry"},
    {"english", "english ale"},
    {"british", "english ale"},
    {"london", "english ale"},
    {"american", "american ale"},
    {"california", "american ale"},
    {"west coast", "american ale"},
}};

// Lager yeast too is named after its country alone.
bool is_lager(const DraftYeast& yeast, const std::string& name) {
    return yeast.type == "lager" || name.find("lager") != std::string::npos ||
           name.find("pils") != std::string::npos;
}

std::optional<Match> yeast_by_words(const DraftYeast& yeast, const KnownIngredients& known) {
    const std::string name = joined(words_of(yeast.name->text), " ");
    for (const auto& [word, yeast_class] : yeast_words) {
        const auto entry =
            name.find(word) == std::string::npos ? std::nullopt : known.yeast(std::string(yeast_class));
        const bool fits = entry && (!is_lager(yeast, name) || entry->fermentation != Fermentation::top);
        if (fits) {
            return Match{entry->name, {}};
        }
    }
    return std::nullopt;
}

/// Apparent attenuation in percent.
std::optional<double> percent_of(const std::optional<Written>& attenuation) {
    if (!attenuation) {
        return std::nullopt;
    }
    const auto read = uncertain_from<Attenuation>(attenuation->text);
    const auto* const value = std::get_if<Uncertain<Attenuation>>(&read);
    return value == nullptr ? std::nullopt : std::optional(100.0 * in(value->middle, fully_attenuated));
}

/// The class that stands for a type of culture. English ale yeasts leave more sugar than American ones, and
/// what ferments further than both is dry English or a strong neutral yeast (common practice; the borders lie
/// between the classes' usual attenuations: working values).
std::string_view class_of_type(const std::string& type, std::optional<double> attenuation) {
    constexpr double least_american = 73.0;
    if (type == "ale") {
        return attenuation && *attenuation < least_american ? "english ale" : "american ale";
    }
    constexpr std::array<YeastWord, 13> classes{{
        {"lager", "german lager"},
        {"wheat", "bavarian wheat"},
        {"brett", "brettanomyces"},
        {"kveik", "kveik"},
        {"lacto", "lactic culture"},
        {"pedio", "lactic culture"},
        {"bacteria", "lactic culture"},
        {"malolactic", "lactic culture"},
        {"mixed-culture", "mixed culture"},
        {"spontaneous", "mixed culture"},
        {"champagne", "high gravity neutral"},
        {"wine", "high gravity neutral"},
        {"mixed", "mixed culture"},
    }};
    for (const auto& [word, yeast_class] : classes) {
        if (word == type) {
            return yeast_class;
        }
    }
    return {};
}

}  // namespace

bool is_name_of(const std::string& name, const std::string& known_name) {
    return lowered(trimmed(name)) == lowered(known_name);
}

std::optional<Match> match_fermentable(const DraftFermentable& fermentable, const KnownIngredients& known) {
    const std::string& name = fermentable.name->text;
    const Lookup lookup = [&](const std::string& tried) -> std::optional<std::string> {
        const auto entry = known.fermentable(tried);
        return entry && may_be(fermentable.kind, entry->kind) ? std::optional(entry->name) : std::nullopt;
    };
    const auto exact = known.fermentable(name);
    // `Crystal 60` and `Caramel Malt` say what they are by their color more than by their words.
    const bool told_by_color =
        says_crystal(words_of(name)) &&
        (!exact || (is_one_of(crystals, exact->name) && is_far_in_color(*exact, fermentable.color)));
    if (const auto match = told_by_color ? by_color(fermentable, known) : std::nullopt) {
        return match;
    }
    if (exact) {
        return Match{exact->name, {}};
    }
    if (const auto found = by_words(name, lookup)) {
        return Match{*found, {}};
    }
    if (const auto match = by_color(fermentable, known)) {
        return match;
    }
    const auto nearest = by_nearest(name, known.nearest_fermentable(name));
    const auto entry = nearest ? lookup(*nearest) : std::nullopt;
    return entry ? std::optional(Match{*entry, "by its spelling"}) : std::nullopt;
}

std::optional<Match> match_hop(const std::string& name, const KnownIngredients& known) {
    const Lookup lookup = [&](const std::string& tried) -> std::optional<std::string> {
        const auto entry = known.hop(tried);
        return entry ? std::optional(entry->name) : std::nullopt;
    };
    if (const auto found = by_words(name, lookup)) {
        return Match{*found, {}};
    }
    const auto nearest = by_nearest(name, known.nearest_hop(name));
    const auto entry = nearest ? known.hop(*nearest) : std::nullopt;
    return entry ? std::optional(Match{entry->name, "by its spelling"}) : std::nullopt;
}

std::optional<Match> match_yeast(const DraftYeast& yeast, const KnownIngredients& known) {
    if (yeast.name) {
        if (const auto exact = known.yeast(yeast.name->text)) {
            return Match{exact->name, {}};
        }
        if (auto match = yeast_by_words(yeast, known)) {
            return match;
        }
    }
    const auto attenuation = percent_of(yeast.attenuation);
    const auto entry = known.yeast(std::string(class_of_type(yeast.type, attenuation)));
    const bool by_both = yeast.type == "ale" && attenuation;
    return entry ? std::optional(Match{entry->name, by_both ? "by its type and attenuation" : "by its type"})
                 : std::nullopt;
}

}  // namespace entrywise
