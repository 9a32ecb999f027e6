#include "base/stem.hpp"

#include <array>
#include <cstddef>

#include "base/text.hpp"

namespace entrywise {

namespace {

constexpr std::size_t fewest_letters = 3;

bool is_vowel(char letter) {
    return std::string_view("aeiouy").find(letter) != std::string_view::npos;
}

/// Takes an ending off where enough of the word is left, vowel included.
bool take_off(std::string& word, std::string_view ending, std::size_t fewest_left = fewest_letters) {
    if (!word.ends_with(ending) || word.size() < ending.size() + fewest_left) {
        return false;
    }
    const std::string_view left = std::string_view(word).substr(0, word.size() - ending.size());
    if (left.find_first_of("aeiouy") == std::string_view::npos) {
        return false;
    }
    word.resize(left.size());
    return true;
}

void take_off_plural(std::string& word) {
    const bool no_plural = word.ends_with("ss") || word.ends_with("us") || word.ends_with("is");
    if (no_plural) {
        return;
    }
    for (const std::string_view hissing : {"ses", "xes", "zes", "ches", "shes"}) {
        if (word.ends_with(hissing) && take_off(word, "es")) {
            return;
        }
    }
    take_off(word, "s");
}

/// The consonant that an ending has doubled: `hopp` of `hoppy`. Those of `grass` and `fizz` are their own.
void take_off_doubling(std::string& word) {
    const std::size_t size = word.size();
    const bool doubled =
        size > fewest_letters && word[size - 1] == word[size - 2] && !is_vowel(word[size - 1]);
    if (doubled && word.back() != 's' && word.back() != 'z') {
        word.pop_back();
    }
}

}  // namespace

std::string stem_of(std::string_view text) {
    std::string word = lowered(text);
    if (word.size() <= fewest_letters) {
        return word;
    }
    take_off_plural(word);
    take_off(word, "ness");
    take_off(word, "ly");
    // Short words would run into others: `bite` and `biting` into `bit`, `note` into `not`.
    constexpr std::size_t fewest_of_verbs = 4;
    static constexpr std::array<std::string_view, 7> endings{"ing", "ed", "ion", "ity", "ic", "y", "i"};
    for (const std::string_view ending : endings) {
        const bool of_a_verb = ending == "ing" || ending == "ed";
        if (take_off(word, ending, of_a_verb ? fewest_of_verbs : fewest_letters)) {
            take_off_doubling(word);
            break;
        }
    }
    take_off(word, "e", fewest_of_verbs);
    return word;
}

}  // namespace entrywise
