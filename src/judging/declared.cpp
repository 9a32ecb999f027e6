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

bool is_said(const Declaration& declaration, const Recipe& recipe) {
    if (declaration.by_base_style && recipe.base_style) {
        return true;
    }
    return std::any_of(recipe.declares.begin(), recipe.declares.end(), [&](const auto& said) {
        const std::string key = plain_key(said.first);
        return !trimmed(said.second).empty() &&
               std::find(declaration.keys.begin(), declaration.keys.end(), key) != declaration.keys.end();
    });
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
