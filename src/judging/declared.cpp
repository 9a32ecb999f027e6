#include "judging/declared.hpp"

#include <algorithm>
#include <cmath>

#include "base/text.hpp"

namespace entrywise {

namespace {

/// Keys as styles write them: `Base style` and `base_style` are `base-style`.
std::string plain_key(const std::string& key) {
    std::string plain = lowered(key);
    std::replace_if(
        plain.begin(), plain.end(), [](char letter) { return letter == ' ' || letter == '_'; }, '-');
    return plain;
}

bool is_in_the_code(const Declaration& declaration, const std::string& code) {
    const std::vector<std::string_view> words = split(code, "-");
    const std::vector<std::string> choices = choices_in(declaration, code);
    return std::any_of(words.begin() + 1, words.end(), [&](std::string_view word) {
        return std::find(choices.begin(), choices.end(), word) != choices.end();
    });
}

/// What the recipe says under the declaration's keys; empty where it says nothing.
std::vector<std::string> said_in(const Recipe& recipe, const Declaration& declaration) {
    std::vector<std::string> said;
    for (const auto& [key, text] : recipe.declares) {
        const bool is_asked = std::find(declaration.keys.begin(), declaration.keys.end(), plain_key(key)) !=
                              declaration.keys.end();
        if (is_asked && !trimmed(text).empty()) {
            said.emplace_back(trimmed(text));
        }
    }
    return said;
}

bool is_said(const Declaration& declaration, const Recipe& recipe) {
    return (declaration.by_base_style && recipe.base_style) || !said_in(recipe, declaration).empty();
}

}  // namespace

std::vector<Declaration> missing_declarations(const Recipe& recipe, const Style& style,
                                              const std::vector<Declaration>& known) {
    std::vector<Declaration> missing;
    for (const std::string& name : style.must_declare) {
        const Declaration declaration = declaration_named(known, name);
        if (!declaration.only_if_any && !is_said(declaration, recipe) &&
            !is_in_the_code(declaration, style.code)) {
            missing.push_back(declaration);
        }
    }
    return missing;
}

std::vector<std::string> declared_words(const Recipe& recipe, const Style& style,
                                        const std::vector<Declaration>& known) {
    std::vector<std::string> words;
    for (const std::string& name : style.must_declare) {
        for (const std::string& said : said_in(recipe, declaration_named(known, name))) {
            words.push_back(lowered(said.substr(0, said.find_first_of(" -"))));
        }
    }
    return words;
}

std::optional<Finding> declaration_finding(std::size_t missing, const ScoreSheet& score_sheet) {
    if (missing == 0) {
        return std::nullopt;
    }
    const double halves = 1.0 - std::pow(0.5, static_cast<double>(missing));
    return Finding{.section = Section::overall,
                   .attribute = "declaration",
                   .direction = Direction::below,
                   .noticed = 1.0,
                   .points = 2.0 * halves * score_sheet.missing_declaration};
}

}  // namespace entrywise
