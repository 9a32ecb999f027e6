#include "interchange/style_match.hpp"

#include <algorithm>
#include <cctype>
#include <iterator>

#include "base/nearest_word.hpp"
#include "base/text.hpp"

namespace entrywise {

namespace {

using Words = std::vector<std::string>;

/// The words of a title in lower case. Accented letters are left out: the nearest word has one letter more.
Words words_in(const std::string& text) {
    Words words(1);
    for (const char character : lowered(text)) {
        const auto byte = static_cast<unsigned char>(character);
        if (std::isalnum(byte) != 0) {
            words.back() += character;
        } else if (byte < 0x80U && !words.back().empty()) {
            words.emplace_back();
        }
    }
    if (words.back().empty()) {
        words.pop_back();
    }
    std::sort(words.begin(), words.end());
    words.erase(std::unique(words.begin(), words.end()), words.end());
    return words;
}

/// Short words must be the same: one letter more or less makes another word of them.
bool are_alike(const std::string& first, const std::string& second) {
    constexpr std::size_t shortest = 5;
    return first == second || (std::min(first.size(), second.size()) >= shortest &&
                               !nearest_word(first, {second}).empty() && first.front() == second.front());
}

double share_of_words(const Words& wanted, const Words& title) {
    const auto common = std::count_if(wanted.begin(), wanted.end(), [&](const std::string& word) {
        return std::any_of(title.begin(), title.end(),
                           [&](const std::string& each) { return are_alike(word, each); });
    });
    const auto all = static_cast<double>(wanted.size() + title.size()) - static_cast<double>(common);
    return all > 0.0 ? static_cast<double>(common) / all : 0.0;
}

/// `bjcp` of `BJCP 2008`: editions of one guide call most styles the same.
std::string family_of(const std::string& guide) {
    const std::string plain = plain_guide(guide);
    return plain.substr(0, plain.find_first_of("0123456789"));
}

std::optional<StyleTitle> nearest_title(const std::vector<StyleTitle>& titles, const std::string& words) {
    constexpr double least_share = 0.6;  // working value
    constexpr double the_title_itself = 2.0;
    const Words wanted = words_in(words);
    const StyleTitle* best = nullptr;
    double most = 0.0;
    bool is_one_of_two = false;
    for (const StyleTitle& title : titles) {
        const double share = lowered(title.title) == lowered(words)
                                 ? the_title_itself
                                 : share_of_words(wanted, words_in(title.title));
        if (share > most) {
            best = &title;
            most = share;
            is_one_of_two = false;
        } else if (best != nullptr && share == most && title.name.guide == best->name.guide) {
            is_one_of_two = true;
        }
    }
    return most < least_share || is_one_of_two ? std::nullopt : std::optional(*best);
}

/// What stands in parentheses often says the same again.
std::optional<StyleTitle> match_among(const std::vector<StyleTitle>& titles, const std::string& words) {
    const auto match = nearest_title(titles, words);
    const std::size_t parenthesis = words.find('(');
    return match || parenthesis == std::string::npos
               ? match
               : nearest_title(titles, std::string(trimmed(words.substr(0, parenthesis))));
}

}  // namespace

std::string plain_guide(const std::string& guide) {
    std::string kept = lowered(guide);
    std::erase_if(kept,
                  [](char character) { return std::isalnum(static_cast<unsigned char>(character)) == 0; });
    return kept;
}

std::optional<StyleTitle> style_match(const std::string& words, const std::string& guide,
                                      const std::vector<StyleTitle>& titles) {
    const std::string wanted_family = family_of(guide);
    std::vector<StyleTitle> family;
    std::copy_if(titles.begin(), titles.end(), std::back_inserter(family), [&](const StyleTitle& title) {
        return !wanted_family.empty() && family_of(title.name.guide) == wanted_family;
    });
    const bool is_known_guide = std::any_of(family.begin(), family.end(), [&](const StyleTitle& title) {
        return plain_guide(title.name.guide) == plain_guide(guide);
    });
    auto match = match_among(family, words);
    return match || is_known_guide ? match : match_among(titles, words);
}

}  // namespace entrywise
