#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace entrywise {

/// How text is set: the columns of the page, whether color may stand beside the words, and whether only ASCII
/// may be used. Who decides is the command line; reports obey.
struct TextStyle {
    std::size_t width = 80;
    bool color = false;
    bool ascii = true;
};

/// How far text below a heading stands in.
inline constexpr std::size_t text_indent = 2;

inline constexpr std::size_t narrowest_page = 60;
inline constexpr std::size_t widest_page = 160;

/// A text from outside as it may be shown: nothing in it steers the terminal, and it is ASCII where asked.
std::string shown(std::string_view text, const TextStyle& style);

// Emphasis, as a second signal only: without color the text stays as it is. Pad first, then paint.
std::string bold(std::string_view text, const TextStyle& style);
std::string dim(std::string_view text, const TextStyle& style);
std::string accented(std::string_view text, const TextStyle& style);

/// The text filled up with blanks to so many columns, standing at their left or right end.
std::string at_left(std::string_view text, std::size_t columns);
std::string at_right(std::string_view text, std::size_t columns);

/// The text without blanks at its end.
std::string without_blanks_at_end(std::string text);

/// The text cut to so many columns, with a mark where something was cut away: at the end, or at the front.
std::string cut_end(std::string_view text, std::size_t columns, const TextStyle& style);
std::string cut_front(std::string_view text, std::size_t columns, const TextStyle& style);

/// The text broken into lines of the page's width, of a wide page into lines that can still be read, each
/// ended. The first is indented by `first`, the others by `rest`. A number stays with its unit; words too
/// long for a line are broken.
std::string paragraph(std::string_view text, std::size_t first, std::size_t rest, const TextStyle& style);

/// A line across the page.
std::string rule(const TextStyle& style);

/// Between two ends of a span: `1.056–1.070`.
std::string_view dash(const TextStyle& style);

}  // namespace entrywise
