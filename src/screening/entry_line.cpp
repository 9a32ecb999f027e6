#include "screening/entry_line.hpp"

#include <fmt/format.h>

#include <utility>

#include "base/text.hpp"
#include "interchange/json_document.hpp"
#include "screening/entry_fields.hpp"

namespace entrywise {

namespace {

Position below(Position position, int lines) {
    return position.line == 0 ? position : Position{position.line + lines, position.column};
}

/// A node that was read from a line of its own, as it stands in the whole input.
void move_down(Node& node, int lines) {
    node.position = below(node.position, lines);
    for (Node& item : node.items) {
        move_down(item, lines);
    }
    for (auto& [key, key_position, value] : node.entries) {
        key_position = below(key_position, lines);
        move_down(value, lines);
    }
}

class LineScan {
  public:
    LineScan(const InputLine& line, const std::string& file)
        : lines_above_(static_cast<int>(line.number) - 1), file_(file) {
        entry_.number = fmt::format("line {}", line.number);
        entry_.place = {file, {lines_above_ + 1, 1}};
    }

    ClubEntry entry(const InputLine& line) {
        if (line.too_long) {
            refuse(entry_.place.position, fmt::format("more than {} bytes in a line", most_entry_line_bytes),
                   "one entry a line");
            return std::move(entry_);
        }
        Outcome<Node> document = json_document(line.text, file_);
        for (Fault& fault : document.faults) {
            fault.place.position = below(fault.place.position, lines_above_);
            entry_.faults.push_back(std::move(fault));
        }
        if (document) {
            move_down(*document.value, lines_above_);
            read(std::move(*document.value));
        }
        return std::move(entry_);
    }

  private:
    void refuse(Position position, std::string found, std::string expected) {
        entry_.faults.push_back({.place = {file_, position},
                                 .found = std::move(found),
                                 .expected = std::move(expected),
                                 .nearest = {},
                                 .remedy = {}});
    }

    void read(Node&& object) {
        if (object.kind != NodeKind::map) {
            refuse(object.position, "no object", "an object with the entry's `recipe`");
            return;
        }
        for (auto& [key, key_position, value] : object.entries) {
            read(key, std::move(value));
        }
        if (!entry_.recipe && entry_.recipe_file.empty() && entry_.faults.empty()) {
            refuse(object.position, "no `recipe`", "a recipe, or the path of its file");
        }
    }

    void read(const std::string& key, Node value) {
        const EntryField field = entry_field(key);
        const bool is_null = value.kind == NodeKind::scalar && !value.quoted && value.text == "null";
        const bool is_nothing = is_null || (value.kind == NodeKind::scalar && trimmed(value.text).empty());
        if (field == EntryField::unknown) {
            entry_.columns.push_back({key, std::move(value)});
        } else if (is_nothing) {
            return;
        } else if (field == EntryField::recipe && value.kind == NodeKind::map) {
            entry_.recipe = std::move(value);
        } else if (field == EntryField::declares && value.kind == NodeKind::map) {
            declare(value);
        } else if (value.kind == NodeKind::scalar) {
            set_field(entry_, field, value.text, {file_, value.position});
        } else {
            refuse(value.position, fmt::format("a list or an object for `{}`", key), "a text");
        }
    }

    void declare(const Node& said) {
        for (const auto& [key, key_position, value] : said.entries) {
            if (value.kind == NodeKind::scalar) {
                entry_.declares[key] = value.text;
            } else {
                refuse(value.position, fmt::format("a list or an object for `{}`", key), "a text");
            }
        }
    }

    int lines_above_;
    std::string file_;
    ClubEntry entry_;
};

}  // namespace

ClubEntry entry_of_line(const InputLine& line, const std::string& file) {
    return LineScan(line, file).entry(line);
}

}  // namespace entrywise
