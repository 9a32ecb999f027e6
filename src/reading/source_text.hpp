#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "base/place.hpp"
#include "reading/fault_log.hpp"

namespace entrywise {

/// The text of a data file before anything is understood of it: the byte order mark at its start taken off
/// and its line ends made one, with the way from a byte to the place that people count.
class SourceText {
  public:
    explicit SourceText(std::string_view bytes);

    const std::string& text() const { return text_; }

    /// The place of a byte; of the text's end for anything beyond it.
    Position position_at(std::size_t offset) const;

    /// The line that a byte stands in, without its line end.
    std::string_view line_at(std::size_t offset) const;

  private:
    std::size_t line_index(std::size_t offset) const;
    std::size_t characters_between(std::size_t from, std::size_t to) const;
    std::size_t characters_before(std::size_t offset) const;

    std::string text_;
    std::vector<std::size_t> line_starts_;
    std::vector<std::size_t> block_characters_;  ///< how many characters stand before each block of bytes
};

/// Whether a text holds a character that could steer a terminal or is invisible: controls other than line
/// feed and tab, and the byte order mark.
bool holds_control_character(std::string_view text);

/// Tells everything that no text may hold: bytes that are not UTF-8, control characters, a lone carriage
/// return, a byte order mark inside, a tab in the indentation.
void check_characters(const SourceText& source, FaultLog& faults);

}  // namespace entrywise
