#include "report/csv_text.hpp"

#include "base/text.hpp"

namespace entrywise {

namespace {

std::string quoted_field(const std::string& field) {
    if (field.find_first_of(",\"\r\n") == std::string::npos) {
        return field;
    }
    std::string text = "\"";
    for (const char letter : field) {
        text += letter == '"' ? "\"\"" : std::string(1, letter);
    }
    return text + '"';
}

}  // namespace

std::string csv_row(const std::vector<std::string>& fields) {
    std::string row;
    for (const std::string& field : fields) {
        row += (&field == fields.data() ? "" : ",") + quoted_field(field);
    }
    return row + "\r\n";
}

std::string csv_field(std::string_view text) {
    constexpr std::string_view begins_a_formula = "=+-@\t\r";
    const std::string shown = visible(text);
    const bool is_a_formula = !text.empty() && begins_a_formula.find(text.front()) != std::string_view::npos;
    return is_a_formula ? '\'' + shown : shown;
}

}  // namespace entrywise
