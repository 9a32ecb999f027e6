#include "interchange/style_reference.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <vector>

#include "reading/style_name.hpp"

namespace entrywise {

namespace {

std::string text_of(const std::optional<Written>& written) {
    return written ? written->text : std::string();
}

std::string said_of(const StyleReference& reference) {
    return in_quotes(text_of(reference.name)) +
           (reference.guide ? " of " + in_quotes(reference.guide->text) : std::string());
}

std::optional<Written> code_of(const StyleReference& reference, const std::vector<StyleTitle>& titles) {
    const std::string guide = plain_guide(text_of(reference.guide));
    if (guide.empty() || !reference.number) {
        return std::nullopt;
    }
    const std::string code = reference.number->text + text_of(reference.letter);
    if (reference.letter && guide == plain_guide(std::string(default_guide))) {
        return Written{fmt::format("{}/{}", default_guide, code), reference.guide->position};
    }
    const auto found = std::find_if(titles.begin(), titles.end(), [&](const StyleTitle& title) {
        return plain_guide(title.name.guide) == guide && title.name.code == code;
    });
    return found == titles.end() ? std::nullopt
                                 : std::optional(Written{found->name.guide + "/" + found->name.code,
                                                         reference.guide->position});
}

}  // namespace

std::optional<Written> style_of(const StyleReference& reference, const StyleTitles& titles,
                                ExchangeLog& log) {
    if (auto code = code_of(reference, {})) {
        return code;
    }
    const std::vector<StyleTitle> known = titles ? titles() : std::vector<StyleTitle>();
    if (auto code = code_of(reference, known)) {
        return code;
    }
    if (!reference.name) {
        return std::nullopt;
    }
    const Position position = reference.name->position;
    const auto match = style_match(reference.name->text, text_of(reference.guide), known);
    if (!match) {
        log.remark(
            position, RemarkKind::left_out,
            fmt::format("the style {}: only codes of {} are taken over", said_of(reference), default_guide) +
                (known.empty() ? "" : ", and no style here has a name like it"));
        return std::nullopt;
    }
    const std::string name = match->name.guide + "/" + match->name.code;
    log.remark(
        position, RemarkKind::matched,
        fmt::format("the style {} -> {} {}, by its name alone", said_of(reference), name, match->title));
    return Written{name, position};
}

}  // namespace entrywise
