#include "interchange/extra_kind.hpp"

#include <array>

#include "base/text.hpp"

namespace entrywise {

namespace {

struct ExtraWord {
    std::string_view word;
    std::string_view kind;
};

// What the name of an extra says of it (common practice).
constexpr std::array<ExtraWord, 34> telling_words{{
    {"coffee", "coffee"},    {"espresso", "coffee"},  {"cocoa", "cocoa"},    {"cacao", "cocoa"},
    {"chocolate", "cocoa"},  {"moss", "fining"},      {"gelatin", "fining"}, {"fining", "fining"},
    {"isinglass", "fining"}, {"carrageen", "fining"}, {"acid", "acid"},      {"lactic", "acid"},
    {"phosphoric", "acid"},  {"gypsum", "salt"},      {"chloride", "salt"},  {"sulfate", "salt"},
    {"carbonate", "salt"},   {"salt", "salt"},        {"chalk", "salt"},     {"oak", "wood"},
    {"wood", "wood"},        {"almond", "nut"},       {"hazelnut", "nut"},   {"pecan", "nut"},
    {"walnut", "nut"},       {"coconut", "nut"},      {"berry", "fruit"},    {"berries", "fruit"},
    {"cherry", "fruit"},     {"cherries", "fruit"},   {"puree", "fruit"},    {"juice", "fruit"},
    {"tea", "tea"},          {"hibiscus", "tea"},
}};

std::string_view kind_by_name(const std::string& name) {
    const std::string low = lowered(name);
    for (const auto& [word, kind] : telling_words) {
        if (low.find(word) != std::string::npos) {
            return kind;
        }
    }
    return {};
}

}  // namespace

std::string_view extra_kind(const std::string& type, const std::string& name) {
    const std::string low = lowered(type);
    if (low == "spice" || low == "herb") {
        return "spice";
    }
    if (low == "fining" || low == "wood") {
        return low == "wood" ? "wood" : "fining";
    }
    const std::string_view by_name = kind_by_name(name);
    if (low == "water agent") {
        return by_name == "acid" ? "acid" : "salt";
    }
    return by_name.empty() ? "other" : by_name;
}

}  // namespace entrywise
