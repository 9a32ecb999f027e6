#include "base/separated_values.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>

#include "base/text.hpp"

namespace entrywise {

namespace {

/// Reads a table from its first character to its last; the first fault ends it.
class TableScan {
  public:
    TableScan(std::string_view text, char separator, const std::string& file, std::size_t most_fields)
        : rest_(text), separator_(separator), file_(file), most_fields_(most_fields) {}

    Outcome<std::vector<TableRow>> rows() {
        while (!rest_.empty() && !fault_) {
            read_row();
        }
        return fault_ ? Outcome<std::vector<TableRow>>(*fault_)
                      : Outcome<std::vector<TableRow>>(std::move(rows_));
    }

  private:
    bool at_line_end() const { return rest_.starts_with("\n") || rest_.starts_with("\r\n"); }
    bool at_field_end() const { return rest_.empty() || rest_.front() == separator_ || at_line_end(); }

    void step() {
        // A byte that goes on with a character of several bytes is no column of its own.
        const bool begins_character = (static_cast<unsigned char>(rest_.front()) & 0xC0U) != 0x80U;
        if (rest_.front() == '\n') {
            position_ = {position_.line + 1, 1};
        } else if (begins_character) {
            ++position_.column;
        }
        rest_.remove_prefix(1);
    }

    void refuse(Position position, std::string found, std::string expected, std::string remedy) {
        fault_ = Fault{.place = {file_, position},
                       .found = std::move(found),
                       .expected = std::move(expected),
                       .nearest = {},
                       .remedy = std::move(remedy)};
    }

    std::string quoted_text() {
        const Position start = position_;
        std::string text;
        step();
        while (!rest_.empty()) {
            if (rest_.front() == '"') {
                step();
                if (!rest_.starts_with('"')) {
                    return text;
                }
            }
            text.push_back(rest_.front());
            step();
        }
        refuse(start, "a quotation mark that is never closed", "another one at the end of the field", {});
        return text;
    }

    std::string plain_text() {
        std::string text;
        while (!at_field_end()) {
            if (rest_.front() == '"') {
                refuse(position_, "a quotation mark inside a field", "quotation marks around the whole field",
                       "Write the mark itself twice inside them.");
                return text;
            }
            text.push_back(rest_.front());
            step();
        }
        return text;
    }

    void read_field(TableRow& row) {
        const Position position = position_;
        const bool in_quotes = rest_.starts_with('"');
        row.push_back({in_quotes ? quoted_text() : plain_text(), position});
        if (!fault_ && !at_field_end()) {
            refuse(position_, "text behind a closing quotation mark", "the end of the field", {});
        }
        if (++fields_ > most_fields_) {
            refuse(position, fmt::format("more than {} fields", most_fields_), "a smaller table", {});
        }
    }

    void read_row() {
        TableRow row;
        read_field(row);
        while (!fault_ && rest_.starts_with(separator_)) {
            step();
            read_field(row);
        }
        while (!rest_.empty() && at_line_end()) {
            step();
            if (position_.column == 1) {
                break;
            }
        }
        const bool says_something = std::any_of(
            row.begin(), row.end(), [](const TableField& field) { return !trimmed(field.text).empty(); });
        if (says_something) {
            rows_.push_back(std::move(row));
        }
    }

    std::string_view rest_;
    char separator_;
    std::string file_;
    std::size_t most_fields_;
    Position position_{1, 1};
    std::size_t fields_ = 0;
    std::vector<TableRow> rows_;
    std::optional<Fault> fault_;
};

}  // namespace

Outcome<std::vector<TableRow>> separated_values(std::string_view text, char separator,
                                                const std::string& file, std::size_t most_fields) {
    return TableScan(text, separator, file, most_fields).rows();
}

}  // namespace entrywise
