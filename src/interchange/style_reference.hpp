#pragma once

#include <optional>

#include "interchange/exchange_log.hpp"
#include "interchange/written.hpp"

namespace entrywise {

/// A style as the exchange standards name it: `21` and `A` of a guide.
struct StyleReference {
    std::optional<Written> name;
    std::optional<Written> guide;
    std::optional<Written> number;
    std::optional<Written> letter;
};

/// The style as a recipe file names it, where the guide is the one that the program takes codes of; another
/// guide, or another edition of it, has other codes: that is told, and nothing taken.
std::optional<Written> style_reference(const StyleReference& reference, ExchangeLog& log);

}  // namespace entrywise
