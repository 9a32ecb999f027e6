#include "advice/caution_of_change.hpp"

#include <algorithm>
#include <string>
#include <utility>

#include "base/text.hpp"
#include "brewing/brew.hpp"

namespace entrywise {

namespace {

/// Casks are served by gravity and bear little gas, about 1 to 1.5 volumes (common practice); a recipe tells
/// only that it is not bottled.
bool overfills_a_cask(const Recipe& recipe, const Beer& before, const Beer& after) {
    constexpr Carbonation of_cask = 1.8 * volume_of_co2;
    constexpr Carbonation too_much_for_cask = 2.2 * volume_of_co2;
    const bool maybe_cask = !recipe.conditioning.bottled.value_or(true);
    return maybe_cask && before.carbonation.median() <= of_cask &&
           after.carbonation.median() >= too_much_for_cask;
}

/// A text without its numbers, and their digits as one number.
std::pair<std::string, std::string> words_and_digits(const std::string& text) {
    std::pair<std::string, std::string> parts;
    for (const char letter : text) {
        const bool is_digit = letter >= '0' && letter <= '9';
        (is_digit ? parts.second : parts.first).push_back(letter);
    }
    return parts;
}

/// Whether a caution says the same, with the same number or a higher one: of 10.5 % alcohol, where it is now
/// 9.8.
bool says_as_much(const Caution& before, const Caution& after) {
    const auto [words_before, digits_before] = words_and_digits(before.text);
    const auto [words_after, digits_after] = words_and_digits(after.text);
    const auto of_number = [](const std::string& digits) { return std::pair(digits.size(), digits); };
    return before.kind == after.kind && words_before == words_after &&
           of_number(digits_before) >= of_number(digits_after);
}

std::string told_of_change(const std::string& text) {
    return "If changed as advised: " + lowered(text.substr(0, 1)) + text.substr(1);
}

}  // namespace

std::vector<Caution> cautions_of_change(const Recipe& before, const Beer& beer_before, const Recipe& after,
                                        const Beer& beer_after) {
    const std::vector<Caution> known = cautions_of(before, beer_before);
    std::vector<Caution> cautions;
    for (const Caution& caution : cautions_of(after, beer_after)) {
        const auto tells_it = [&caution](const Caution& each) { return says_as_much(each, caution); };
        if (std::none_of(known.begin(), known.end(), tells_it)) {
            cautions.push_back(caution);
        }
    }
    if (overfills_a_cask(before, beer_before, beer_after)) {
        cautions.push_back(
            {"pressure",
             "A cask does not bear this much gas: serve it from a keg, or from bottles that do."});
    }
    return cautions;
}

std::vector<Caution> cautions_of_corrections(const std::vector<Correction>& corrections, const Recipe& recipe,
                                             const Beer& beer, Deviates& dice) {
    std::vector<Caution> cautions;
    for (const Correction& correction : corrections) {
        if (!correction.recipe) {
            continue;
        }
        dice.forget_inputs();
        const Beer changed = brew(*correction.recipe, dice);
        std::vector<Caution> of_change = cautions_of_change(recipe, beer, *correction.recipe, changed);
        for (Caution& caution : of_change) {
            caution.text = told_of_change(caution.text);
        }
        add_new(of_change, cautions);
    }
    return cautions;
}

}  // namespace entrywise
