#include "interchange/style_reference.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <string>

#include "base/text.hpp"
#include "reading/style_name.hpp"

namespace entrywise {

namespace {

/// Letters and digits alone, so that `BJCP 2021` and `bjcp-2021` are one guide.
std::string plain(std::string_view text) {
    std::string kept = lowered(text);
    std::erase_if(kept,
                  [](char character) { return std::isalnum(static_cast<unsigned char>(character)) == 0; });
    return kept;
}

}  // namespace

std::optional<Written> style_reference(const StyleReference& reference, ExchangeLog& log) {
    const auto& [name, guide, number, letter] = reference;
    const bool is_known = guide && number && letter && plain(guide->text) == plain(default_guide);
    if (is_known) {
        return Written{fmt::format("{}/{}{}", default_guide, number->text, letter->text), guide->position};
    }
    if (name) {
        log.remark(
            name->position, RemarkKind::left_out,
            fmt::format("the style {}{}: only codes of {} are taken over", entrywise::quoted(name->text),
                        guide ? " of " + entrywise::quoted(guide->text) : std::string(), default_guide));
    }
    return std::nullopt;
}

}  // namespace entrywise
