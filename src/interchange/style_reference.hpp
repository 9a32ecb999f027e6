#pragma once

#include <optional>

#include "interchange/exchange_log.hpp"
#include "interchange/style_match.hpp"
#include "interchange/written.hpp"

namespace entrywise {

/// A style as the exchange standards name it: `21` and `A` of a guide.
struct StyleReference {
    std::optional<Written> name;
    std::optional<Written> guide;
    std::optional<Written> number;
    std::optional<Written> letter;
};

/// The style as a recipe file names it. Number and letter are a code where the guide is one that is known
/// here, in the same edition; others have other codes, so that the style of the nearest name is taken, which
/// is told. Where no name is near, nothing is taken, and that is told.
std::optional<Written> style_of(const StyleReference& reference, const StyleTitles& titles, ExchangeLog& log);

}  // namespace entrywise
