#include "screening/entry_fields.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "base/text.hpp"

namespace entrywise {

namespace {

constexpr std::array<std::pair<std::string_view, EntryField>, 12> field_names{
    {{"entry", EntryField::number},
     {"number", EntryField::number},
     {"entry number", EntryField::number},
     {"brewer", EntryField::brewer},
     {"category", EntryField::category},
     {"style", EntryField::category},
     {"base", EntryField::base},
     {"base style", EntryField::base},
     {"declares", EntryField::declares},
     {"recipe", EntryField::recipe},
     {"file", EntryField::recipe},
     {"pick", EntryField::pick}}};

std::string plain(std::string_view name) {
    std::string text = lowered(trimmed(name));
    std::replace(text.begin(), text.end(), '_', ' ');
    return text;
}

void declare(ClubEntry& entry, const std::string& text, const Place& place) {
    for (const std::string_view part : split(text, ";")) {
        if (part.empty()) {
            continue;
        }
        const std::size_t colon = part.find(':');
        const std::string key(trimmed(part.substr(0, colon)));
        if (colon == std::string_view::npos || key.empty()) {
            entry.faults.push_back({.place = place,
                                    .found = '\'' + std::string(part) + '\'',
                                    .expected = "what is declared as `strength: standard; color: pale`",
                                    .nearest = {},
                                    .remedy = {}});
        } else {
            entry.declares[key] = trimmed(part.substr(colon + 1));
        }
    }
}

}  // namespace

EntryField entry_field(std::string_view name) {
    const std::string wanted = plain(name);
    const auto found = std::find_if(field_names.begin(), field_names.end(),
                                    [&](const auto& known) { return known.first == wanted; });
    return found == field_names.end() ? EntryField::unknown : found->second;
}

void set_field(ClubEntry& entry, EntryField field, const std::string& text, const Place& place) {
    const std::string said(trimmed(text));
    switch (field) {
        case EntryField::number:
            entry.number = said;
            break;
        case EntryField::brewer:
            entry.brewer = said;
            break;
        case EntryField::category:
            entry.category = said;
            entry.category_place = place;
            break;
        case EntryField::base:
            entry.base = said;
            break;
        case EntryField::declares:
            declare(entry, said, place);
            break;
        case EntryField::recipe:
            entry.recipe_file = said;
            break;
        case EntryField::pick:
            entry.pick = said;
            break;
        case EntryField::unknown:
            break;
    }
}

}  // namespace entrywise
