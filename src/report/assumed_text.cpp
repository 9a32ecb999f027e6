#include "report/assumed_text.hpp"

#include "base/text.hpp"

namespace entrywise {

std::string assumed_text(const Beer& beer, const TextStyle& style) {
    if (beer.assumptions.empty()) {
        return {};
    }
    const std::string list = joined(beer.assumptions, "; ") + '.';
    return bold("Assumed, as the recipe does not say", style) + '\n' +
           paragraph(shown(list, style), 2, 2, style);
}

}  // namespace entrywise
