#include "screening/entry_table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <unordered_map>
#include <utility>

#include "base/separated_values.hpp"
#include "base/text.hpp"
#include "screening/entry_fields.hpp"

namespace entrywise {

namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

struct Column {
    std::string name;
    EntryField field = EntryField::unknown;
};

char separator_of(std::string_view text) {
    const std::string_view header = text.substr(0, text.find('\n'));
    for (const char separator : {',', ';', '\t'}) {
        if (header.find(separator) != std::string_view::npos) {
            return separator;
        }
    }
    return ',';
}

Fault header_fault(const std::string& file, Position position, std::string found, std::string expected) {
    return {.place = {file, position},
            .found = std::move(found),
            .expected = std::move(expected),
            .nearest = {},
            .remedy = "The first line names the columns: entry, brewer, category, recipe, base, declares."};
}

Outcome<std::vector<Column>> columns_of(const TableRow& header, const std::string& file) {
    std::vector<Column> columns;
    for (const TableField& field : header) {
        const Column column{std::string(trimmed(field.text)), entry_field(field.text)};
        const auto same = std::find_if(columns.begin(), columns.end(), [&](const Column& other) {
            return column.field == EntryField::unknown ? other.name == column.name && !column.name.empty()
                                                       : other.field == column.field;
        });
        if (same != columns.end()) {
            return header_fault(file, field.position, fmt::format("the column '{}' again", column.name),
                                "each column once");
        }
        columns.push_back(column);
    }
    const bool names_recipes = std::any_of(columns.begin(), columns.end(), [](const Column& column) {
        return column.field == EntryField::recipe;
    });
    if (!names_recipes) {
        return header_fault(file, header.front().position, "no column 'recipe'",
                            "a table of entries, with a column for the recipes' files");
    }
    return columns;
}

Node text_node(const TableField& field) {
    Node node;
    node.position = field.position;
    node.text = field.text;
    node.quoted = true;
    return node;
}

/// A path of the table, from the folder that the table stands in.
std::string beside(const std::string& file, const std::string& path) {
    return (std::filesystem::path(file).parent_path() / path).string();
}

ClubEntry entry_of(const TableRow& row, const std::vector<Column>& columns, const std::string& file) {
    ClubEntry entry;
    entry.place = {file, row.front().position};
    if (row.size() > columns.size()) {
        entry.faults.push_back({.place = {file, row[columns.size()].position},
                                .found = fmt::format("{} fields", row.size()),
                                .expected = fmt::format("the {} that the first line names", columns.size()),
                                .nearest = {},
                                .remedy = "A text with a comma in it stands in quotation marks."});
        return entry;
    }
    for (std::size_t index = 0; index < columns.size(); ++index) {
        const TableField field = index < row.size() ? row[index] : TableField{{}, row.front().position};
        if (columns[index].field == EntryField::unknown) {
            entry.columns.push_back({columns[index].name, text_node(field)});
        } else {
            set_field(entry, columns[index].field, field.text, {file, field.position});
        }
    }
    if (entry.recipe_file.empty()) {
        entry.faults.push_back({.place = entry.place,
                                .found = "no recipe",
                                .expected = "the name of a recipe file",
                                .nearest = {},
                                .remedy = {}});
    } else {
        entry.recipe_file = beside(file, entry.recipe_file);
    }
    return entry;
}

}  // namespace

Outcome<std::vector<ClubEntry>> read_entry_table(std::string_view text, const std::string& file) {
    if (text.starts_with(byte_order_mark)) {
        text.remove_prefix(byte_order_mark.size());
    }
    const Outcome<std::vector<TableRow>> rows =
        separated_values(text, separator_of(text), file, most_table_bytes);
    if (!rows) {
        return rows.faults;
    }
    if (rows->empty()) {
        return header_fault(file, {}, "nothing", "a table of entries");
    }
    const Outcome<std::vector<Column>> columns = columns_of(rows->front(), file);
    if (!columns) {
        return columns.faults;
    }
    std::vector<ClubEntry> entries;
    std::unordered_map<std::string, int> line_of;
    for (std::size_t row = 1; row < rows->size(); ++row) {
        ClubEntry entry = entry_of((*rows)[row], *columns, file);
        if (entry.number.empty()) {
            entry.number = std::to_string(row);
        }
        const auto [first, is_new] = line_of.emplace(entry.number, entry.place.position.line);
        if (!is_new) {
            entry.faults.push_back({.place = entry.place,
                                    .found = fmt::format("the entry {} again", entry.number),
                                    .expected = "each number once",
                                    .nearest = {},
                                    .remedy = fmt::format("It stands in line {} already.", first->second)});
        }
        entries.push_back(std::move(entry));
    }
    return entries;
}

}  // namespace entrywise
