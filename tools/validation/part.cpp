#include "tools/validation/part.hpp"

#include <fmt/format.h>

#include "tools/validation/markdown.hpp"

namespace entrywise {

namespace {

std::string mark(const char* which, const std::string& name) {
    return fmt::format("<!-- {}: {} -->\n", which, name);
}

}  // namespace

std::string marked(const Part& part) {
    return mark("begin", part.name) + part.text + mark("end", part.name);
}

std::optional<Part> part_on(const std::string& page, const std::string& name) {
    const std::string begin_mark = mark("begin", name);
    const std::size_t begin = page.find(begin_mark);
    const std::size_t end = page.find(mark("end", name));
    if (begin == std::string::npos || end == std::string::npos) {
        return std::nullopt;
    }
    const std::size_t text = begin + begin_mark.size();
    return Part{name, page.substr(text, end - text)};
}

Part never_worked_out(const std::string& name) {
    if (name == real_beers_in_short) {
        return {name,
                item("**Real recipes with stated outcomes** were not at hand: `tools/validate FOLDER`.")};
    }
    if (name == real_beers_section) {
        return {name,
                "## Real recipes with stated outcomes\n\nNot worked out yet: `tools/validate FOLDER`.\n\n"};
    }
    return {name, "## What the ranking hangs on\n\nNot worked out yet: `tools/validate`.\n\n"};
}

}  // namespace entrywise
