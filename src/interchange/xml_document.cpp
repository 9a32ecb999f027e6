#include "interchange/xml_document.hpp"

#include <fmt/format.h>
#include <pugixml.hpp>

#include <algorithm>
#include <optional>
#include <utility>

#include "base/text.hpp"
#include "interchange/json_document.hpp"
#include "reading/source_text.hpp"

namespace entrywise {

namespace {

// Declarations are read so that document types can be refused and not be passed over.
constexpr unsigned int what_is_parsed = pugi::parse_default | pugi::parse_doctype;

/// ISO-8859-1 holds the first 256 characters of Unicode by their numbers.
std::string from_latin_1(std::string_view bytes) {
    std::string text;
    text.reserve(bytes.size());
    for (const char character : bytes) {
        const auto byte = static_cast<unsigned char>(character);
        if (byte < 0x80U) {
            text.push_back(character);
        } else {
            text.push_back(static_cast<char>(0xC0U | (byte >> 6U)));
            text.push_back(static_cast<char>(0x80U | (byte & 0x3FU)));
        }
    }
    return text;
}

bool declares_latin_1(std::string_view bytes) {
    const std::string declaration = lowered(bytes.substr(0, bytes.find("?>")).substr(0, 200));
    return declaration.find("iso-8859-1") != std::string::npos ||
           declaration.find("windows-1252") != std::string::npos;
}

/// Turns elements into nodes, with their places.
class ElementReader {
  public:
    ElementReader(const SourceText& source, FaultLog& faults) : source_(source), faults_(faults) {}

    /// Nothing after a fault.
    std::optional<Node> node_of(const pugi::xml_node& element, std::size_t depth) {
        if (depth > deepest_nesting || ++count_ > most_exchange_nodes) {
            faults_.add(position_of(element),
                        {.found = depth > deepest_nesting ? "nesting too deep" : "too many elements",
                         .expected = fmt::format("at most {} levels and {} elements", deepest_nesting,
                                                 most_exchange_nodes)});
            return std::nullopt;
        }
        Node node;
        node.position = position_of(element);
        for (const pugi::xml_node child : element.children()) {
            if (child.type() != pugi::node_element) {
                continue;
            }
            auto value = node_of(child, depth + 1);
            if (!value) {
                return std::nullopt;
            }
            // An empty element is how record sets leave something out.
            if (says_nothing(*value)) {
                continue;
            }
            node.kind = NodeKind::map;
            node.entries.push_back({child.name(), value->position, *std::move(value)});
        }
        if (node.kind == NodeKind::scalar) {
            node.text = element.child_value();
            node.quoted = true;
        }
        return node;
    }

  private:
    static bool says_nothing(const Node& node) {
        return node.kind == NodeKind::scalar && node.text.find_first_not_of(" \t\r\n") == std::string::npos;
    }

    /// The parser tells where the name stands, one behind the bracket.
    Position position_of(const pugi::xml_node& element) const {
        const auto offset = element.offset_debug();
        return source_.position_at(offset > 0 ? static_cast<std::size_t>(offset) - 1 : 0);
    }

    const SourceText& source_;
    FaultLog& faults_;
    std::size_t count_ = 0;
};

bool declares_a_type(const pugi::xml_document& document, const SourceText& source, FaultLog& faults) {
    for (const pugi::xml_node node : document.children()) {
        if (node.type() == pugi::node_doctype) {
            const std::size_t offset = source.text().find("<!DOCTYPE");
            faults.add(source.position_at(offset == std::string::npos ? 0 : offset),
                       {.found = "a document type declaration",
                        .expected = "none",
                        .remedy = "It could name entities, and none are expanded here: delete it."});
            return true;
        }
    }
    return false;
}

Flaw unreadable(const pugi::xml_parse_result& result) {
    const bool is_cut_off = result.status == pugi::status_end_element_mismatch ||
                            result.status == pugi::status_no_document_element;
    return {.found = fmt::format("no well-formed XML ({})", lowered(result.description())),
            .expected = "an XML document",
            .remedy = is_cut_off ? "The file may be cut off." : std::string()};
}

}  // namespace

Outcome<Node> xml_document(std::string_view bytes, const std::string& file) {
    FaultLog faults(file);
    const bool is_latin_1 = !is_utf8(bytes) && declares_latin_1(bytes);
    const SourceText source(is_latin_1 ? from_latin_1(bytes) : std::string(bytes));
    const std::string& text = source.text();
    if (!is_utf8(text)) {
        faults.add({}, {.found = "bytes that are no UTF-8",
                        .expected = "UTF-8, or ISO-8859-1 if the XML declaration names it",
                        .remedy = "Save the file as UTF-8."});
        return faults.in_order();
    }
    if (const std::size_t zero = text.find('\0'); zero != std::string::npos) {
        faults.add(source.position_at(zero), {.found = "a zero byte", .expected = "text"});
        return faults.in_order();
    }
    pugi::xml_document document;
    const pugi::xml_parse_result result =
        document.load_buffer(text.data(), text.size(), what_is_parsed, pugi::encoding_utf8);
    if (declares_a_type(document, source, faults)) {
        return faults.in_order();
    }
    if (!result) {
        faults.add(source.position_at(static_cast<std::size_t>(std::max<std::ptrdiff_t>(result.offset, 0))),
                   unreadable(result));
        return faults.in_order();
    }
    const pugi::xml_node root = document.document_element();
    auto content = ElementReader(source, faults).node_of(root, 1);
    if (!content) {
        return faults.in_order();
    }
    Node node;
    node.kind = NodeKind::map;
    node.position = content->position;
    node.entries.push_back({root.name(), content->position, *std::move(content)});
    return node;
}

}  // namespace entrywise
