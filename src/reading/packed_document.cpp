#include "reading/packed_document.hpp"

#include <cstddef>
#include <cstdint>
#include <limits>

namespace entrywise {

namespace {

// A node is its mark, line, column and then its text, or its count and its items, or its count and for each
// entry key, line, column and value. Numbers are written seven bits to a byte, lowest first; the eighth bit
// says that more follow. A text is its length and its bytes.
constexpr char plain_mark = 's';
constexpr char quoted_mark = 'q';
constexpr char list_mark = 'l';
constexpr char map_mark = 'm';

void pack(std::size_t number, std::string& bytes) {
    while (number >= 0x80U) {
        bytes.push_back(static_cast<char>((number & 0x7FU) | 0x80U));
        number >>= 7U;
    }
    bytes.push_back(static_cast<char>(number));
}

void pack(const Position& position, std::string& bytes) {
    pack(static_cast<std::size_t>(position.line), bytes);
    pack(static_cast<std::size_t>(position.column), bytes);
}

void pack(const std::string& text, std::string& bytes) {
    pack(text.size(), bytes);
    bytes += text;
}

char mark_of(const Node& node) {
    switch (node.kind) {
        case NodeKind::list:
            return list_mark;
        case NodeKind::map:
            return map_mark;
        case NodeKind::scalar:
            break;
    }
    return node.quoted ? quoted_mark : plain_mark;
}

void pack(const Node& node, std::string& bytes) {
    bytes.push_back(mark_of(node));
    pack(node.position, bytes);
    switch (node.kind) {
        case NodeKind::scalar:
            pack(node.text, bytes);
            break;
        case NodeKind::list:
            pack(node.items.size(), bytes);
            for (const Node& item : node.items) {
                pack(item, bytes);
            }
            break;
        case NodeKind::map:
            pack(node.entries.size(), bytes);
            for (const Entry& entry : node.entries) {
                pack(entry.key, bytes);
                pack(entry.key_position, bytes);
                pack(entry.value, bytes);
            }
            break;
    }
}

/// Takes one thing after another off the front of the bytes; false as soon as they are not what was packed.
class Unpacker {
  public:
    explicit Unpacker(std::string_view bytes) : rest_(bytes) {}

    bool is_done() const { return rest_.empty(); }

    bool take(Node& node, std::size_t depth) {
        if (depth > deepest_nesting || rest_.empty()) {
            return false;
        }
        const char mark = rest_.front();
        rest_.remove_prefix(1);
        if (!take(node.position)) {
            return false;
        }
        switch (mark) {
            case plain_mark:
            case quoted_mark:
                node.quoted = mark == quoted_mark;
                return take(node.text);
            case list_mark:
                node.kind = NodeKind::list;
                return take_items(node, depth);
            case map_mark:
                node.kind = NodeKind::map;
                return take_entries(node, depth);
            default:
                return false;
        }
    }

  private:
    bool take(std::size_t& number) {
        number = 0;
        for (unsigned shift = 0; shift < 32 && !rest_.empty(); shift += 7) {
            const auto byte = static_cast<unsigned char>(rest_.front());
            rest_.remove_prefix(1);
            number |= static_cast<std::size_t>(byte & 0x7FU) << shift;
            if ((byte & 0x80U) == 0) {
                return true;
            }
        }
        return false;
    }

    bool take(int& number) {
        std::size_t wide = 0;
        if (!take(wide) || wide > static_cast<std::size_t>(std::numeric_limits<int>::max())) {
            return false;
        }
        number = static_cast<int>(wide);
        return true;
    }

    bool take(Position& position) { return take(position.line) && take(position.column); }

    bool take(std::string& text) {
        std::size_t size = 0;
        if (!take(size) || size > rest_.size()) {
            return false;
        }
        text = rest_.substr(0, size);
        rest_.remove_prefix(size);
        return true;
    }

    /// Every item takes four bytes at least, so that a larger count is no count.
    bool take_count(std::size_t& count) { return take(count) && count <= rest_.size() / 4; }

    bool take_items(Node& node, std::size_t depth) {
        std::size_t count = 0;
        if (!take_count(count)) {
            return false;
        }
        node.items.reserve(count);
        for (; count > 0; --count) {
            if (!take(node.items.emplace_back(), depth + 1)) {
                return false;
            }
        }
        return true;
    }

    bool take_entries(Node& node, std::size_t depth) {
        std::size_t count = 0;
        if (!take_count(count)) {
            return false;
        }
        node.entries.reserve(count);
        for (; count > 0; --count) {
            Entry& entry = node.entries.emplace_back();
            if (!take(entry.key) || !take(entry.key_position) || !take(entry.value, depth + 1)) {
                return false;
            }
        }
        return true;
    }

    std::string_view rest_;
};

}  // namespace

std::string packed(const Node& document) {
    std::string bytes;
    pack(document, bytes);
    return bytes;
}

std::optional<Node> unpacked(std::string_view bytes) {
    Unpacker unpacker(bytes);
    Node document;
    if (!unpacker.take(document, 1) || !unpacker.is_done()) {
        return std::nullopt;
    }
    return document;
}

}  // namespace entrywise
