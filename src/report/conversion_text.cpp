#include "report/conversion_text.hpp"

#include <fmt/format.h>

#include "base/text.hpp"

namespace entrywise {

std::string conversion_text(const std::vector<Remark>& remarks) {
    std::string text;
    for (const Remark& remark : remarks) {
        text += visible(remark.place.file);
        if (const Position& position = remark.place.position; position.line > 0) {
            text += fmt::format(":{}:{}", position.line, position.column);
        }
        text += fmt::format(": {}: {}\n", name_of(remark.kind), visible(remark.text));
    }
    return text;
}

}  // namespace entrywise
