#pragma once

#include <span>
#include <string_view>

namespace entrywise {

/// A file of `src/report/page`, built into the program: a template, the style of the pages, a script.
struct PagePart {
    std::string_view name;  ///< `check.mustache`
    std::string_view text;
};

std::span<const PagePart> page_parts();

}  // namespace entrywise
