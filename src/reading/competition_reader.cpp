#include "reading/competition_reader.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <optional>
#include <string_view>
#include <utility>

#include "base/nearest_word.hpp"
#include "base/text.hpp"
#include "reading/fields.hpp"
#include "reading/style_name.hpp"
#include "style/variant.hpp"

namespace entrywise {

namespace {

using Texts = std::vector<std::string>;

bool is_digit(char character) {
    return character >= '0' && character <= '9';
}

/// Whether a code is one of the category that its beginning names: `21A` of `21`, `03-08` of `03`, but `10A`
/// not of `1`.
bool is_in_category(const std::string& code, const std::string& category) {
    return code.size() > category.size() && !category.empty() &&
           lowered(code).starts_with(lowered(category)) &&
           is_digit(code[category.size()]) != is_digit(category.back());
}

class CompetitionReader {
  public:
    CompetitionReader(const Library& library, FaultLog& faults) : library_(library), faults_(faults) {}

    Competition read(Fields& fields) {
        competition_.file = faults_.file();
        competition_.name = fields.required<std::string>("name");
        competition_.guide = guide_in(fields);
        competition_.must_declare = fields.optional<Texts>("declares").value_or(Texts());
        competition_.entries_per_brewer = count_in(fields, "entries_per_brewer");
        const Node* accepted = fields.find("accepts");
        read_list(accepted, "a list of styles, or of tables with styles", faults_, [&](const Node& item) {
            read_item(item);
            return true;
        });
        if (accepted == nullptr) {
            accept_guide();
        } else if (competition_.accepted.empty() && faults_.empty()) {
            faults_.add(accepted->position, {.found = "no style that is accepted",
                                             .expected = "at least one",
                                             .remedy = "Leave 'accepts' out to accept all of the guide."});
        }
        return std::move(competition_);
    }

  private:
    std::string guide_in(Fields& fields) {
        const Node* node = fields.find("guide");
        const auto name = fields.optional<std::string>("guide");
        if (node == nullptr || !name) {
            return std::string(default_guide);
        }
        for (const std::string& guide : library_.guides()) {
            if (lowered(guide) == lowered(*name)) {
                return guide;
            }
        }
        faults_.add(node->position, {.found = shown(*node),
                                     .expected = fmt::format("one of {}", joined(library_.guides(), ", ")),
                                     .nearest = nearest_word(*name, library_.guides())});
        return std::string(default_guide);
    }

    static std::optional<int> count_in(Fields& fields, std::string_view key) {
        constexpr double most = 1000.0;
        const Node* node = fields.find(key);
        const auto count = fields.optional<double>(key);
        if (!count) {
            return std::nullopt;
        }
        const bool is_whole = *count >= 1.0 && *count <= most && *count == static_cast<int>(*count);
        if (!is_whole) {
            fields.faults().add(node->position,
                                {.found = shown(*node), .expected = "a whole number from 1 to 1000"});
            return std::nullopt;
        }
        return static_cast<int>(*count);
    }

    void read_item(const Node& item) {
        if (item.kind == NodeKind::map) {
            read_table(item);
        } else {
            accept(item, std::nullopt);
        }
    }

    void read_table(const Node& node) {
        Fields fields(node, "a table", faults_);
        CompetitionTable table;
        table.code = fields.required<std::string>("table");
        table.name = fields.optional<std::string>("name").value_or("");
        table.must_declare = fields.optional<Texts>("declares").value_or(Texts());
        const bool is_twice =
            !table.code.empty() && std::any_of(competition_.tables.begin(), competition_.tables.end(),
                                               [&](const auto& each) { return each.code == table.code; });
        if (is_twice) {
            faults_.add(node.position, {.found = fmt::format("the table {} again", in_quotes(table.code)),
                                        .expected = "each table once"});
        }
        const std::size_t place = competition_.tables.size();
        competition_.tables.push_back(std::move(table));
        read_list(fields.need("styles"), "a list of styles", faults_, [&](const Node& item) {
            accept(item, place);
            return true;
        });
        fields.refuse_others();
    }

    void accept(const Node& item, std::optional<std::size_t> table) {
        const auto text = scalar_text(item, "the code of a style or of a category", faults_);
        if (!text) {
            return;
        }
        const bool names_its_guide = text->find('/') != std::string_view::npos;
        const auto wanted = style_name_from(
            names_its_guide ? std::string(*text) : fmt::format("{}/{}", competition_.guide, *text));
        const std::vector<StyleName> found = wanted ? styles_called(*wanted) : std::vector<StyleName>();
        if (found.empty()) {
            faults_.add(item.position,
                        unknown(wanted.value_or(StyleName{competition_.guide, std::string(*text)})));
        }
        for (const StyleName& name : found) {
            if (accepts(competition_, name)) {
                faults_.add(item.position,
                            {.found = fmt::format("{}/{} again", name.guide, name.code),
                             .expected = "each style once",
                             .remedy = "A category stands for all of its styles, a style for its variants."});
            } else {
                competition_.accepted.push_back({name, table});
            }
        }
    }

    /// The style of that code, or else those of the category.
    std::vector<StyleName> styles_called(const StyleName& wanted) const {
        std::vector<StyleName> known = library_.style_names(wanted.guide);
        for (const StyleName& name : known) {
            if (lowered(name.code) == lowered(wanted.code)) {
                return {name};
            }
        }
        std::erase_if(known, [&](const StyleName& name) {
            return !is_in_category(name.code, wanted.code) || entered_code(name.code) != name.code;
        });
        return known;
    }

    Flaw unknown(const StyleName& wanted) const {
        const std::vector<Fault> faults = library_.style(wanted).faults;
        const Fault& fault = faults.front();
        return {.found = fault.found,
                .expected = "the code of a known style, or what the codes of a category begin with",
                .nearest = fault.nearest,
                .remedy = {}};
    }

    void accept_guide() {
        for (StyleName& name : library_.style_names(competition_.guide)) {
            if (entered_code(name.code) == name.code) {
                competition_.accepted.push_back({std::move(name), std::nullopt});
            }
        }
    }

    const Library& library_;
    FaultLog& faults_;
    Competition competition_;
};

void remark_on_declarations(const Node* list, const Texts& known, FaultLog& remarks) {
    for (const Node& item : list == nullptr ? std::vector<Node>() : list->items) {
        const bool is_known = std::find(known.begin(), known.end(), item.text) != known.end();
        const std::string nearest = is_known ? std::string() : nearest_word(item.text, known);
        if (!nearest.empty()) {
            remarks.add(
                item.position,
                {.found = in_quotes(item.text), .expected = "a known declaration", .nearest = nearest});
        }
    }
}

}  // namespace

Outcome<Competition> read_competition(const Node& document, const Library& library, const std::string& file) {
    FaultLog faults(file);
    Fields fields(document, "a competition", faults);
    if (!check_format(fields, "competition")) {
        return faults.in_order();
    }
    Competition competition = CompetitionReader(library, faults).read(fields);
    fields.refuse_others();
    if (!faults.empty()) {
        return faults.in_order();
    }
    return competition;
}

Outcome<std::vector<Style>> styles_accepted(const Competition& competition, const Library& library) {
    std::vector<Style> styles;
    std::vector<Fault> faults;
    for (const std::string& guide : library.guides()) {
        for (const StyleName& name : library.style_names(guide)) {
            if (!accepts(competition, name)) {
                continue;
            }
            Outcome<Style> style = library.style(name);
            if (style) {
                style.value->must_declare = declarations_asked(competition, *style);
                styles.push_back(*std::move(style.value));
            }
            faults.insert(faults.end(), style.faults.begin(), style.faults.end());
        }
    }
    return faults.empty() ? Outcome<std::vector<Style>>(std::move(styles))
                          : Outcome<std::vector<Style>>(std::move(faults));
}

std::vector<Fault> competition_remarks(const Node& document, const Competition& competition,
                                       const std::set<std::string>& known) {
    const Texts names(known.begin(), known.end());
    FaultLog remarks(competition.file);
    remark_on_declarations(value_of(document, "declares"), names, remarks);
    const Node* accepted = value_of(document, "accepts");
    for (const Node& item : accepted == nullptr ? std::vector<Node>() : accepted->items) {
        remark_on_declarations(value_of(item, "declares"), names, remarks);
    }
    return remarks.in_order();
}

}  // namespace entrywise
