#include "interchange/recipe_table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "base/number.hpp"
#include "base/separated_values.hpp"
#include "base/text.hpp"
#include "interchange/extra_kind.hpp"
#include "interchange/ingredient_match.hpp"
#include "quantity/text.hpp"
#include "reading/source_text.hpp"

namespace entrywise {

namespace {

constexpr std::size_t most_table_fields = 5000;  // working value

enum class Column {
    ingredient,
    amount,
    use,
    time,
    alpha,
    color,
    extract,
    attenuation,
    temperature,
    form,
    kind
};

struct ColumnName {
    std::string_view name;
    Column column;
};

constexpr std::array<ColumnName, 25> column_names{{
    {"ingredient", Column::ingredient},
    {"name", Column::ingredient},
    {"item", Column::ingredient},
    {"amount", Column::amount},
    {"mass", Column::amount},
    {"weight", Column::amount},
    {"quantity", Column::amount},
    {"use", Column::use},
    {"add", Column::use},
    {"when", Column::use},
    {"stage", Column::use},
    {"time", Column::time},
    {"duration", Column::time},
    {"alpha", Column::alpha},
    {"alpha acid", Column::alpha},
    {"alpha acids", Column::alpha},
    {"color", Column::color},
    {"colour", Column::color},
    {"extract", Column::extract},
    {"yield", Column::extract},
    {"attenuation", Column::attenuation},
    {"temperature", Column::temperature},
    {"form", Column::form},
    {"kind", Column::kind},
    {"type", Column::kind},
}};

std::optional<Column> column_named(std::string_view name) {
    const std::string wanted = lowered(trimmed(name));
    for (const auto& [known, column] : column_names) {
        if (known == wanted) {
            return column;
        }
    }
    return std::nullopt;
}

/// `time (min)` taken apart.
struct Heading {
    std::string name;
    std::string unit;
};

Heading heading_of(std::string_view text) {
    const std::size_t open = text.find('(');
    const std::size_t close = text.find(')', open == std::string_view::npos ? 0 : open);
    if (open == std::string_view::npos || close == std::string_view::npos) {
        return {std::string(trimmed(text)), {}};
    }
    return {std::string(trimmed(text.substr(0, open))),
            std::string(trimmed(text.substr(open + 1, close - open - 1)))};
}

std::string_view header_line(std::string_view text) {
    const std::size_t begin = text.find_first_not_of(" \t\r\n");
    return begin == std::string_view::npos ? std::string_view()
                                           : text.substr(begin).substr(0, text.substr(begin).find('\n'));
}

char separator_of(std::string_view header) {
    for (const char separator : {'\t', ';'}) {
        if (header.find(separator) != std::string_view::npos) {
            return separator;
        }
    }
    return ',';
}

/// The words that say when something is added, and what recipe files write for them.
struct UseWord {
    std::string_view word;
    std::string_view hop;
    std::string_view other;
};

constexpr std::array<UseWord, 19> use_words{{
    {"mash", "mash", "mash"},
    {"boil", "boil", "boil"},
    {"kettle", "boil", "boil"},
    {"flameout", "boil", "boil"},
    {"first wort", "first wort", "boil"},
    {"fwh", "first wort", "boil"},
    {"whirlpool", "whirlpool", "whirlpool"},
    {"hop stand", "whirlpool", "whirlpool"},
    {"hopstand", "whirlpool", "whirlpool"},
    {"steep", "whirlpool", "whirlpool"},
    {"aroma", "whirlpool", "whirlpool"},
    {"dry hop", "dry hop", "fermenter"},
    {"dry-hop", "dry hop", "fermenter"},
    {"fermenter", "dry hop", "fermenter"},
    {"fermentation", "dry hop", "fermenter"},
    {"primary", "dry hop", "fermenter"},
    {"secondary", "dry hop", "fermenter"},
    {"yeast", "yeast", "yeast"},
    {"pitch", "yeast", "yeast"},
}};

enum class Sort { fermentable, hop, yeast, extra };

/// Reads the rows under a header.
class TableReader {
  public:
    TableReader(const TableRow& header, const KnownIngredients& known, ExchangeLog& log)
        : known_(known), log_(log) {
        draft_.position = header.front().position;
        for (std::size_t index = 0; index < header.size(); ++index) {
            const Heading heading = heading_of(header[index].text);
            const auto column = column_named(heading.name);
            if (column && !columns_.contains(*column)) {
                columns_[*column] = {index, heading.unit};
            } else if (!heading.name.empty()) {
                log_.leave_out_key("the column " + heading.name);
            }
        }
        need(Column::ingredient, "ingredient", header.front().position);
        need(Column::amount, "amount", header.front().position);
    }

    void read(const TableRow& row);
    Draft draft() && { return std::move(draft_); }

  private:
    struct Place {
        std::size_t index = 0;
        std::string unit;
    };

    void need(Column column, std::string_view name, Position position) {
        if (!columns_.contains(column)) {
            log_.faults().add(position, {.found = "a table without the column " + std::string(name),
                                         .expected = "a header such as: ingredient, amount, use, time"});
        }
    }

    /// What a row says in a column, with the unit of the header where it has none.
    std::optional<Written> said(const TableRow& row, Column column) const {
        const auto place = columns_.find(column);
        if (place == columns_.end() || place->second.index >= row.size()) {
            return std::nullopt;
        }
        const TableField& field = row[place->second.index];
        if (holds_control_character(field.text)) {
            log_.faults().add(field.position, {.found = "a control character", .expected = "printable text"});
            return std::nullopt;
        }
        const std::string_view text = trimmed(field.text);
        if (text.empty()) {
            return std::nullopt;
        }
        const bool is_bare = !place->second.unit.empty() && number_from(text);
        return Written{is_bare ? fmt::format("{} {}", text, place->second.unit) : std::string(text),
                       field.position};
    }

    bool says_of_recipe(const TableRow& row, const Written& name);
    std::optional<UseWord> use_of(const TableRow& row);
    Sort sort_of(const TableRow& row, const Written& name, const std::optional<UseWord>& use) const;
    void read_fermentable(const TableRow& row, const Written& name, const std::optional<UseWord>& use);
    void read_hop(const TableRow& row, const Written& name, const std::optional<UseWord>& use);
    void read_extra(const TableRow& row, const Written& name, const std::optional<UseWord>& use);

    const KnownIngredients& known_;
    ExchangeLog& log_;
    std::map<Column, Place> columns_;
    Draft draft_;
};

bool TableReader::says_of_recipe(const TableRow& row, const Written& name) {
    const std::map<std::string_view, std::optional<Written>*> targets{
        {"name", &draft_.name},
        {"style", &draft_.style},
        {"volume", &draft_.volume},
        {"batch size", &draft_.volume},
        {"efficiency", &draft_.efficiency},
        {"boil", &draft_.boil_time},
        {"boil time", &draft_.boil_time},
        {"fermentation", &draft_.fermentation_temperature},
        {"carbonation", &draft_.carbonation},
    };
    const std::string what = lowered(name.text);
    const auto amount = said(row, Column::amount);
    const auto time = said(row, Column::time);
    if (what == "mash") {
        const auto temperature = said(row, Column::temperature);
        draft_.mash.push_back({name.position, temperature ? temperature : amount, time});
        return true;
    }
    const auto target = targets.find(what);
    if (target == targets.end()) {
        return false;
    }
    *target->second = amount ? amount : time;
    if (!*target->second) {
        log_.faults().add(name.position, {.found = fmt::format("no amount for {}", what),
                                          .expected = "it in the amount column"});
    }
    return true;
}

std::optional<UseWord> TableReader::use_of(const TableRow& row) {
    const auto said_use = said(row, Column::use);
    if (!said_use) {
        return std::nullopt;
    }
    std::vector<std::string> known;
    for (const UseWord& word : use_words) {
        if (word.word == lowered(said_use->text)) {
            return word;
        }
        known.emplace_back(word.word);
    }
    log_.faults().add(said_use->position, {.found = in_quotes(said_use->text), .expected = listed(known)});
    return std::nullopt;
}

/// The tables tell what a name is; where they do not, use and columns do.
Sort TableReader::sort_of(const TableRow& row, const Written& name, const std::optional<UseWord>& use) const {
    const auto kind = said(row, Column::kind);
    const std::string said_kind = kind ? lowered(kind->text) : std::string();
    const auto is_kind = [&](std::initializer_list<std::string_view> words) {
        return std::find(words.begin(), words.end(), said_kind) != words.end();
    };
    if (is_kind({"hop", "hops"}) || known_.hop(name.text)) {
        return Sort::hop;
    }
    if (is_kind({"malt", "grain", "sugar", "extract", "adjunct", "fermentable"}) ||
        known_.fermentable(name.text)) {
        return Sort::fermentable;
    }
    if (is_kind({"yeast", "culture"}) || known_.yeast(name.text) || (use && use->hop == "yeast")) {
        return Sort::yeast;
    }
    if (!said_kind.empty()) {
        return Sort::extra;
    }
    if (said(row, Column::alpha) ||
        (use && (use->hop == "dry hop" || use->hop == "first wort") && use->word != "fermenter")) {
        return Sort::hop;
    }
    if (said(row, Column::color) || said(row, Column::extract)) {
        return Sort::fermentable;
    }
    DraftFermentable as_fermentable;
    as_fermentable.name = name;
    const bool in_mash = !use || use->hop == "mash";
    if (in_mash && match_fermentable(as_fermentable, known_)) {
        return Sort::fermentable;
    }
    if (match_hop(name.text, known_)) {
        return Sort::hop;
    }
    return match_fermentable(as_fermentable, known_) ? Sort::fermentable : Sort::extra;
}

void TableReader::read_fermentable(const TableRow& row, const Written& name,
                                   const std::optional<UseWord>& use) {
    DraftFermentable fermentable;
    fermentable.position = name.position;
    fermentable.name = name;
    fermentable.mass = said(row, Column::amount);
    fermentable.color = said(row, Column::color);
    fermentable.extract = said(row, Column::extract);
    const bool is_elsewhere = use && (use->other == "boil" || use->other == "fermenter");
    if (is_elsewhere) {
        fermentable.add = Written{std::string(use->other), name.position};
    }
    draft_.grist.push_back(std::move(fermentable));
}

void TableReader::read_hop(const TableRow& row, const Written& name, const std::optional<UseWord>& use) {
    DraftHop hop;
    hop.position = name.position;
    hop.name = name;
    hop.mass = said(row, Column::amount);
    hop.alpha = said(row, Column::alpha);
    hop.form = said(row, Column::form);
    hop.time = said(row, Column::time);
    hop.temperature = said(row, Column::temperature);
    if (use) {
        hop.add = Written{std::string(use->hop), name.position};
        hop.time = use->word == "flameout" ? Written{"0 min", name.position} : hop.time;
    }
    draft_.hops.push_back(std::move(hop));
}

void TableReader::read_extra(const TableRow& row, const Written& name, const std::optional<UseWord>& use) {
    const auto kind = said(row, Column::kind);
    DraftExtra extra;
    extra.position = name.position;
    extra.name = name;
    extra.kind = Written{std::string(extra_kind(kind ? kind->text : "", name.text)), name.position};
    const auto amount = said(row, Column::amount);
    const auto volume = amount ? quantity_from<Volume>(amount->text) : Parsed<Volume>(TextFault{});
    (std::holds_alternative<Volume>(volume) ? extra.volume : extra.mass) = amount;
    extra.time = said(row, Column::time);
    if (use && use->other != "yeast") {
        extra.add = Written{std::string(use->other), name.position};
    }
    log_.remark(name.position, RemarkKind::read_as,
                fmt::format("{} is no known malt, sugar, hop or yeast: taken for an extra of the kind {}",
                            in_quotes(name.text), extra.kind->text));
    draft_.extras.push_back(std::move(extra));
}

void TableReader::read(const TableRow& row) {
    const auto name = said(row, Column::ingredient);
    if (!name) {
        log_.faults().add(row.front().position,
                          {.found = "a line without an ingredient", .expected = "its name"});
        return;
    }
    if (says_of_recipe(row, *name)) {
        return;
    }
    const auto use = use_of(row);
    switch (sort_of(row, *name, use)) {
        case Sort::fermentable:
            read_fermentable(row, *name, use);
            break;
        case Sort::hop:
            read_hop(row, *name, use);
            break;
        case Sort::yeast:
            draft_.yeasts.push_back({name->position, *name, "ale", said(row, Column::attenuation)});
            break;
        case Sort::extra:
            read_extra(row, *name, use);
            break;
    }
}

/// A table need not name its recipe: the file does.
void name_after_file(Draft& draft, ExchangeLog& log) {
    if (draft.name) {
        return;
    }
    const std::size_t slash = log.file().find_last_of('/');
    const std::string base = slash == std::string::npos ? log.file() : log.file().substr(slash + 1);
    draft.name = Written{base.substr(0, base.find_last_of('.')), draft.position};
    log.remark(draft.position, RemarkKind::missing,
               fmt::format("no line that names the recipe: {} taken", in_quotes(draft.name->text)));
}

}  // namespace

bool starts_as_recipe_table(std::string_view text) {
    const std::string_view header = header_line(text);
    const std::string separator(1, separator_of(header));
    bool has_ingredient = false;
    bool has_amount = false;
    for (const std::string_view field : split(header, separator)) {
        const auto column = column_named(heading_of(field).name);
        has_ingredient = has_ingredient || column == Column::ingredient;
        has_amount = has_amount || column == Column::amount;
    }
    return has_ingredient && has_amount;
}

Draft recipe_table_draft(std::string_view text, const KnownIngredients& known, ExchangeLog& log) {
    const SourceText source(text);
    if (!is_utf8(source.text())) {
        log.faults().add({}, {.found = "bytes that are no UTF-8", .expected = "a table in UTF-8"});
        return {};
    }
    const char separator = separator_of(header_line(source.text()));
    const auto rows = separated_values(source.text(), separator, log.file(), most_table_fields);
    if (!rows || rows->empty()) {
        for (const Fault& fault : rows.faults) {
            log.faults().add(fault.place.position,
                             {fault.found, fault.expected, fault.nearest, fault.remedy});
        }
        if (rows) {
            log.faults().add({}, {.found = "an empty table", .expected = "a header line and ingredients"});
        }
        return {};
    }
    TableReader reader(rows->front(), known, log);
    for (auto row = rows->begin() + 1; row != rows->end() && log.faults().empty(); ++row) {
        reader.read(*row);
    }
    Draft draft = std::move(reader).draft();
    name_after_file(draft, log);
    return draft;
}

}  // namespace entrywise
