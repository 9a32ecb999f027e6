#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "base/place.hpp"
#include "reading/node.hpp"
#include "reading/source_text.hpp"

namespace entrywise {

/// Edits of a YAML text by the places of what was read from it. They are gathered first and made together,
/// so that all places are those of the text as it was.
class TextEdits {
  public:
    explicit TextEdits(std::string_view text);

    /// Writes another value in the place of a scalar.
    void set_scalar(const Node& scalar, const std::string& value);

    /// Writes a key with its value behind the last plain value of a map.
    void add_key(const Node& map, const std::string& key, const std::string& value);

    /// Takes a key and its value out of a map, and the line where nothing else is left on it.
    void remove_entry(const Node& map, const Entry& entry);

    /// Writes an item, a map in braces, in the place of another, behind the last of a list, or as the first
    /// of a list that a map of lines lacks.
    void replace_item(const Node& item, const std::string& flow_map);
    void add_item(const Node& list, const std::string& flow_map);
    void add_list(const Node& map, const std::string& key, const std::string& flow_map);

    /// Takes an item out of a list; its own comment stays as a line.
    void remove_item(const Node& list, std::size_t index);

    /// Writes a key with its value as the last line of a map of lines.
    void add_line(const Node& map, const std::string& line);

    /// Whether everything that was asked for could be done in this layout.
    bool all_possible() const { return possible_; }

    std::string result() const;

  private:
    struct Edit {
        std::size_t from = 0;
        std::size_t to = 0;
        std::string text;
    };

    std::size_t offset_of(Position position) const;
    std::size_t end_of(const Node& node) const;
    std::size_t line_start(std::size_t offset) const;
    std::size_t line_end(std::size_t offset) const;
    bool in_brackets(const Node& node) const;
    std::string indentation_at(std::size_t offset) const;
    void replace(std::size_t from, std::size_t to, std::string text);
    void remove_lines(std::size_t from, std::size_t to);
    void remove_between_commas(std::size_t from, std::size_t to);

    SourceText source_;
    bool windows_line_ends_ = false;
    std::vector<std::size_t> line_starts_;
    std::vector<Edit> edits_;
    bool possible_ = true;
};

}  // namespace entrywise
