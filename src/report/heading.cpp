#include "report/heading.hpp"

#include "base/text.hpp"

namespace entrywise {

std::string heading(std::string_view left, std::string_view right, std::string_view small_print,
                    const TextStyle& style) {
    constexpr std::size_t gap = 2;
    const std::string right_part = cut_end(shown(right, style), style.width / 2, style);
    const std::size_t left_columns = style.width - character_count(right_part) - gap;
    const std::string left_part = cut_end(shown(left, style), left_columns, style);
    const std::size_t blanks = style.width - character_count(left_part) - character_count(right_part);
    const std::string title =
        right_part.empty() ? bold(left_part, style)
                           : bold(left_part, style) + std::string(blanks, ' ') + bold(right_part, style);
    return title + '\n' + dim(cut_front(shown(small_print, style), style.width, style), style) + '\n' +
           rule(style);
}

}  // namespace entrywise
