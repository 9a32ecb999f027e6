#include "tools/validation/markdown.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/number.hpp"

namespace entrywise {

namespace {

/// As wide as the other documents of the project.
constexpr std::size_t columns = 120;

/// Broken between words; lines after the first stand under the text of an item.
std::string wrapped(const std::string& text, std::size_t indent) {
    std::string lines;
    std::size_t used = 0;
    std::size_t begin = 0;
    while (begin < text.size()) {
        const std::size_t end = std::min(text.find(' ', begin), text.size());
        const std::size_t length = end - begin;
        if (used > 0 && used + 1 + length > columns) {
            lines += '\n' + std::string(indent, ' ');
            used = indent;
        } else if (used > 0) {
            lines += ' ';
            ++used;
        }
        lines += text.substr(begin, length);
        used += length;
        begin = end + 1;
    }
    return lines + '\n';
}

}  // namespace

std::string paragraph(const std::string& text) {
    return wrapped(text, 0) + '\n';
}

std::string item(const std::string& text) {
    return wrapped("- " + text, 2);
}

std::string row(const std::vector<std::string>& cells) {
    return fmt::format("| {} |\n", fmt::join(cells, " | "));
}

std::string head(const std::vector<std::string>& cells, std::size_t of_text) {
    std::string rule = "|";
    for (std::size_t cell = 0; cell < cells.size(); ++cell) {
        rule += cell < of_text ? "---|" : "---:|";
    }
    return row(cells) + rule + '\n';
}

std::string with_sign(double number, int decimals) {
    const std::string text = fixed(number, decimals);
    return rounded(number, decimals) > 0.0 ? '+' + text : text;
}

std::string with_unit(const std::string& text, const std::string& unit) {
    return unit.empty() ? text : text + ' ' + unit;
}

}  // namespace entrywise
