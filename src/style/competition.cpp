#include "style/competition.hpp"

#include <algorithm>

#include "style/variant.hpp"

namespace entrywise {

namespace {

/// The entry of a style, or else that of the style which it is a variant of.
const AcceptedStyle* entry_of(const Competition& competition, const StyleName& style) {
    for (const std::string& code : {style.code, entered_code(style.code)}) {
        const auto found = std::find_if(competition.accepted.begin(), competition.accepted.end(),
                                        [&](const AcceptedStyle& entry) {
                                            return entry.name.guide == style.guide && entry.name.code == code;
                                        });
        if (found != competition.accepted.end()) {
            return &*found;
        }
    }
    return nullptr;
}

void add_new(std::vector<std::string>& names, const std::vector<std::string>& more) {
    for (const std::string& name : more) {
        if (std::find(names.begin(), names.end(), name) == names.end()) {
            names.push_back(name);
        }
    }
}

}  // namespace

bool accepts(const Competition& competition, const StyleName& style) {
    return entry_of(competition, style) != nullptr;
}

const CompetitionTable* table_of(const Competition& competition, const StyleName& style) {
    const AcceptedStyle* entry = entry_of(competition, style);
    return entry == nullptr || !entry->table ? nullptr : &competition.tables[*entry->table];
}

Seat seat_of(const Competition& competition, const Style& style) {
    const StyleName name{style.guide, style.code};
    const CompetitionTable* const table = table_of(competition, name);
    const std::vector<std::string> asked = declarations_asked(competition, style);
    const auto of_the_style = static_cast<std::ptrdiff_t>(style.must_declare.size());
    return {.competition = competition.name,
            .is_accepted = accepts(competition, name),
            .table = table == nullptr ? std::nullopt : std::optional(*table),
            .asks_besides = {asked.begin() + of_the_style, asked.end()}};
}

std::vector<std::string> declarations_asked(const Competition& competition, const Style& style) {
    std::vector<std::string> names = style.must_declare;
    if (const CompetitionTable* table = table_of(competition, {style.guide, style.code})) {
        add_new(names, table->must_declare);
    }
    add_new(names, competition.must_declare);
    return names;
}

}  // namespace entrywise
