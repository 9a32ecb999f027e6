#include "report/style_title.hpp"

#include <fmt/format.h>

namespace entrywise {

std::string style_title(const Style& style) {
    // The name of a variant says what its code does.
    return fmt::format("{} {}", style.variant_of.empty() ? style.code : style.variant_of, style.name);
}

}  // namespace entrywise
