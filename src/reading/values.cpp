#include "reading/values.hpp"

#include "base/nearest_word.hpp"
#include "base/number.hpp"
#include "base/text.hpp"
#include "reading/levels.hpp"

namespace entrywise {

namespace {

/// Decimal digits alone as a number; nothing for anything else.
std::optional<int> digits_from(std::string_view text) {
    int number = 0;
    for (const char sign : text) {
        if (sign < '0' || sign > '9') {
            return std::nullopt;
        }
        number = 10 * number + (sign - '0');
    }
    return number;
}

/// Year-month-day in ten characters, if there is such a day.
std::optional<std::chrono::sys_days> date_from(std::string_view text) {
    constexpr std::size_t length = 10;
    if (text.size() != length || text[4] != '-' || text[7] != '-') {
        return std::nullopt;
    }
    const auto year = digits_from(text.substr(0, 4));
    const auto month = digits_from(text.substr(5, 2));
    const auto day = digits_from(text.substr(8, 2));
    if (!year || !month || !day) {
        return std::nullopt;
    }
    const std::chrono::year_month_day date(std::chrono::year(*year),
                                           std::chrono::month(static_cast<unsigned>(*month)),
                                           std::chrono::day(static_cast<unsigned>(*day)));
    return date.ok() ? std::optional(std::chrono::sys_days(date)) : std::nullopt;
}

}  // namespace

std::string shown(const Node& node) {
    switch (node.kind) {
        case NodeKind::list:
            return "a list";
        case NodeKind::map:
            return "a map";
        case NodeKind::scalar:
            break;
    }
    return in_quotes(node.text);
}

std::optional<std::string_view> scalar_text(const Node& node, std::string_view expected, FaultLog& faults) {
    const std::string_view text = trimmed(node.text);
    if (node.kind != NodeKind::scalar || text.empty()) {
        faults.add(node.position, {.found = shown(node), .expected = std::string(expected)});
        return std::nullopt;
    }
    return text;
}

std::optional<std::string> ReadAs<std::string>::from(const Node& node, FaultLog& faults) {
    const auto text = scalar_text(node, "a text", faults);
    return text ? std::optional(std::string(*text)) : std::nullopt;
}

std::optional<bool> ReadAs<bool>::from(const Node& node, FaultLog& faults) {
    const auto text = scalar_text(node, "true or false", faults);
    if (!text) {
        return std::nullopt;
    }
    if (*text != "true" && *text != "false") {
        faults.add(node.position, {.found = shown(node), .expected = "true or false"});
        return std::nullopt;
    }
    return *text == "true";
}

std::optional<double> ReadAs<double>::from(const Node& node, FaultLog& faults) {
    const auto text = scalar_text(node, "a number", faults);
    if (!text) {
        return std::nullopt;
    }
    const bool in_percent = text->ends_with('%');
    const auto number = number_from(in_percent ? trimmed(text->substr(0, text->size() - 1)) : *text);
    if (!number) {
        faults.add(node.position,
                   {.found = shown(node), .expected = "a number", .remedy = "Write it as 12 or 0.5."});
        return std::nullopt;
    }
    return in_percent ? *number / 100.0 : *number;
}

std::optional<std::chrono::sys_days> ReadAs<std::chrono::sys_days>::from(const Node& node, FaultLog& faults) {
    const auto text = scalar_text(node, "a day of the calendar", faults);
    if (!text) {
        return std::nullopt;
    }
    const auto date = date_from(*text);
    if (!date) {
        faults.add(node.position, {.found = shown(node),
                                   .expected = "a day of the calendar",
                                   .remedy = "Write it as year-month-day: 2026-10-01."});
    }
    return date;
}

std::optional<std::vector<std::string>> ReadAs<std::vector<std::string>>::from(const Node& node,
                                                                               FaultLog& faults) {
    if (node.kind != NodeKind::list) {
        faults.add(node.position, {.found = shown(node),
                                   .expected = "a list of texts",
                                   .remedy = "Put brackets around it: [one, two]."});
        return std::nullopt;
    }
    std::vector<std::string> texts;
    texts.reserve(node.items.size());
    for (const Node& item : node.items) {
        texts.push_back(ReadAs<std::string>::from(item, faults).value_or(""));
    }
    return texts;
}

std::optional<LevelSpan> ReadAs<LevelSpan>::from(const Node& node, FaultLog& faults) {
    return levels_from(node, SensoryScale::intensity, faults);
}

}  // namespace entrywise
