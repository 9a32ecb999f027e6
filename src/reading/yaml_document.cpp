#include "reading/yaml_document.hpp"

#include <fmt/format.h>
#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/yaml.h>

#include <algorithm>
#include <array>
#include <exception>
#include <optional>
#include <span>
#include <sstream>
#include <unordered_map>
#include <utility>
#include <vector>

#include "base/text.hpp"
#include "reading/fault_log.hpp"
#include "reading/source_text.hpp"

namespace entrywise {

namespace {

/// Thrown through the parser, which knows no other way to be stopped, and caught in this file.
struct Stop {};

constexpr std::string_view blanks_and_breaks = " \t\n";

bool is_mark(char letter) {
    return std::string_view(",[]{}").find(letter) != std::string_view::npos;
}

std::string_view word_at(std::string_view text, std::size_t offset) {
    const std::string_view rest = offset < text.size() ? text.substr(offset) : std::string_view();
    const auto end = std::find_if(rest.begin(), rest.end(), [](char letter) {
        return is_mark(letter) || blanks_and_breaks.find(letter) != std::string_view::npos;
    });
    return rest.substr(0, static_cast<std::size_t>(end - rest.begin()));
}

/// Whether a text starts with a quotation mark that has no partner.
bool is_open_quotation(std::string_view text) {
    if (text.empty() || (text.front() != '\'' && text.front() != '"')) {
        return false;
    }
    const char mark = text.front();
    for (std::size_t index = 1; index < text.size(); ++index) {
        const bool doubled = mark == '\'' && text.substr(index).starts_with("''");
        const bool escape = mark == '"' && text[index] == '\\';
        if (doubled || escape) {
            ++index;
        } else if (text[index] == mark) {
            return false;
        }
    }
    return true;
}

/// Whether a key and its value stand in the text with nothing between the colon and the value: `name:pale`.
bool lacks_space_after_colon(std::string_view text) {
    const auto colon = text.find(':');
    if (colon == std::string_view::npos || colon == 0 || colon + 1 == text.size()) {
        return false;
    }
    const bool key_before =
        std::all_of(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(colon),
                    [](char letter) { return letter == '_' || (letter >= 'a' && letter <= 'z'); });
    return key_before && blanks_and_breaks.find(text[colon + 1]) == std::string_view::npos &&
           text[colon + 1] != '/';
}

constexpr const char* space_after_colon = "Put a space after the colon.";

/// Builds the tree from what the parser reports, and tells what is refused.
class Builder : public YAML::EventHandler {
  public:
    Builder(const SourceText& source, FaultLog& faults) : source_(source), faults_(faults) {}

    const std::optional<Node>& document() const { return document_; }

    /// The place of the innermost list or map whose bracket is still open, if there is one.
    std::optional<Position> open_bracket() const {
        const auto open = std::find_if(frames_.rbegin(), frames_.rend(),
                                       [](const Frame& frame) { return frame.bracketed; });
        return open == frames_.rend() ? std::nullopt : std::optional(open->node.position);
    }

    void OnDocumentStart(const YAML::Mark& mark) override {
        ++documents_;
        if (documents_ > 1) {
            faults_.add(place_of(mark), second_document(offset_of(mark)));
            throw Stop();
        }
    }

    void OnDocumentEnd() override {}

    void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
        refuse_anchor(mark, anchor);
        count(mark);
        if (frames_.empty()) {
            return;
        }
        refuse_missing_value(offset_of(mark));
        deliver(std::nullopt, place_of(mark));
    }

    void OnAlias(const YAML::Mark& mark, YAML::anchor_t /*anchor*/) override {
        count(mark);
        refuse_alias(mark);
        deliver(std::nullopt, place_of(mark));
    }

    void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                  const std::string& value) override {
        refuse_anchor(mark, anchor);
        refuse_tag(mark, tag);
        count(mark);
        refuse_open_quotation(offset_of(mark));
        if (holds_control_character(value)) {
            faults_.add(place_of(mark), {.found = "a control character written as an escape",
                                         .expected = "printable text",
                                         .remedy = "Delete it."});
        }
        Node node;
        node.position = place_of(mark);
        node.text = value;
        node.quoted = tag == "!";
        deliver(std::move(node), place_of(mark));
    }

    void OnSequenceStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                         YAML::EmitterStyle::value style) override {
        open(NodeKind::list, mark, tag, anchor, style);
    }
    void OnSequenceEnd() override { close(); }

    void OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                    YAML::EmitterStyle::value style) override {
        open(NodeKind::map, mark, tag, anchor, style);
    }
    void OnMapEnd() override { close(); }

  private:
    struct Frame {
        Node node;
        bool bracketed = false;
        bool awaits_key = true;
        std::optional<std::string> key;  ///< nothing where the key was refused
        Position key_position;
        std::unordered_map<std::string, Position> seen;
    };

    static std::size_t offset_of(const YAML::Mark& mark) {
        return static_cast<std::size_t>(std::max(mark.pos, 0));
    }
    Position place_of(const YAML::Mark& mark) const { return source_.position_at(offset_of(mark)); }

    void count(const YAML::Mark& mark) {
        ++nodes_;
        if (nodes_ > most_document_nodes) {
            faults_.add(place_of(mark), {.found = fmt::format("more than {} values", most_document_nodes),
                                         .expected = "a file of a sensible size",
                                         .remedy = "Split it."});
            throw Stop();
        }
    }

    /// Told once a file: what to do about the first is to be done about all.
    void refuse_alias(const YAML::Mark& mark) {
        if (std::exchange(alias_told_, true)) {
            return;
        }
        faults_.add(
            place_of(mark),
            {.found = fmt::format("the alias {}", in_quotes(word_at(source_.text(), offset_of(mark)))),
             .expected = "the value itself",
             .remedy = "Write out every alias, or put text that starts with * in quotes."});
    }

    void refuse_anchor(const YAML::Mark& mark, YAML::anchor_t anchor) {
        if (anchor != 0 && !std::exchange(anchor_told_, true)) {
            faults_.add(
                place_of(mark),
                {.found = fmt::format("the anchor {}", in_quotes(word_at(source_.text(), offset_of(mark)))),
                 .expected = "the value alone",
                 .remedy = "Delete every anchor, or put text that starts with & in quotes."});
        }
    }

    /// The parser takes the end of the text for a closing quotation mark.
    void refuse_open_quotation(std::size_t offset) {
        if (is_open_quotation(std::string_view(source_.text()).substr(offset))) {
            faults_.add(source_.position_at(offset),
                        {.found = "a quotation mark that is never closed",
                         .expected = "pairs of quotation marks",
                         .remedy = "Put the closing one; inside single quotes write two for one."});
        }
    }

    void refuse_tag(const YAML::Mark& mark, const std::string& tag) {
        const bool none = tag.empty() || tag == "?";
        const std::string_view word = word_at(source_.text(), offset_of(mark));
        if (!none && (tag != "!" || word.starts_with('!'))) {
            faults_.add(place_of(mark),
                        {.found = fmt::format("the tag {}", in_quotes(word.starts_with('!') ? word : tag)),
                         .expected = "the value alone",
                         .remedy = "Delete the tag, or put text that starts with ! in quotes."});
        }
    }

    void refuse_missing_value(std::size_t offset) {
        const Frame& frame = frames_.back();
        const std::string_view word = word_at(source_.text(), offset);
        const bool written = word == "~" || lowered(word) == "null";
        const std::string remedy = "Give a value, or leave it out.";
        if (written) {
            faults_.add(source_.position_at(offset),
                        {.found = in_quotes(word), .expected = "a value", .remedy = remedy});
        } else if (frame.node.kind == NodeKind::list) {
            faults_.add(place_before(offset),
                        {.found = "an item without a value", .expected = "a value", .remedy = remedy});
        } else if (!frame.awaits_key && frame.key) {
            const bool no_space = lacks_space_after_colon(*frame.key);
            faults_.add(frame.key_position,
                        {.found = no_space ? in_quotes(*frame.key)
                                           : fmt::format("{} without a value", in_quotes(*frame.key)),
                         .expected = no_space ? "a key, a colon, a space and a value" : "a value",
                         .remedy = no_space ? std::string(space_after_colon) : remedy});
        }
    }

    /// The sign that announced an item which then did not come: the parser reports what stands behind it.
    Position place_before(std::size_t offset) const {
        const std::string& text = source_.text();
        if (offset < text.size() && is_mark(text[offset])) {
            return source_.position_at(offset);
        }
        const auto before = offset == 0 ? std::string::npos : text.find_last_not_of(" \t\n", offset - 1);
        return source_.position_at(before == std::string::npos ? 0 : before);
    }

    Flaw second_document(std::size_t offset) const {
        const std::string_view word = word_at(source_.text(), offset);
        if (word == "---") {
            return {.found = "a second document",
                    .expected = "one document a file",
                    .remedy = "Delete the line ---, or put what follows into a file of its own."};
        }
        return {
            .found = fmt::format("{} after the end of the document",
                                 word.empty() ? in_quotes(std::string_view(source_.text()).substr(offset, 1))
                                              : in_quotes(word)),
            .expected = "one list or one map in a file",
            .remedy = "Check the indentation: keys and dashes of one level start in the same column."};
    }

    void open(NodeKind kind, const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
              YAML::EmitterStyle::value style) {
        refuse_anchor(mark, anchor);
        refuse_tag(mark, tag);
        count(mark);
        if (frames_.size() == deepest_nesting) {
            faults_.add(place_of(mark),
                        {.found = fmt::format("more than {} lists or maps in one another", deepest_nesting),
                         .expected = "a file of a sensible depth",
                         .remedy = {}});
            throw Stop();
        }
        Frame& frame = frames_.emplace_back();
        frame.node.kind = kind;
        frame.node.position = place_of(mark);
        frame.bracketed = style == YAML::EmitterStyle::Flow;
    }

    void close() {
        Node node = std::move(frames_.back().node);
        frames_.pop_back();
        const Position position = node.position;
        deliver(std::move(node), position);
    }

    void deliver(std::optional<Node> node, Position position) {
        if (frames_.empty()) {
            document_ = std::move(node);
            return;
        }
        Frame& frame = frames_.back();
        if (frame.node.kind == NodeKind::list) {
            if (node) {
                frame.node.items.push_back(std::move(*node));
            }
            return;
        }
        if (frame.awaits_key) {
            take_key(frame, node, position);
        } else if (node && frame.key) {
            frame.node.entries.push_back({std::move(*frame.key), frame.key_position, std::move(*node)});
        }
        frame.awaits_key = !frame.awaits_key;
    }

    void take_key(Frame& frame, const std::optional<Node>& node, Position position) {
        frame.key.reset();
        frame.key_position = position;
        if (!node || node->kind != NodeKind::scalar) {
            faults_.add(
                position,
                {.found = node ? "a list or map as a key" : "a colon without a key",
                 .expected = "a word as a key",
                 .remedy = "Put the key before the colon; put text in quotes that starts with a bracket."});
            return;
        }
        if (node->text == "<<" && !node->quoted) {
            faults_.add(position, {.found = "the merge key '<<'",
                                   .expected = "keys written out",
                                   .remedy = "Write out the keys that it would bring in."});
            return;
        }
        const auto [first, is_new] = frame.seen.emplace(node->text, position);
        if (!is_new) {
            faults_.add(position, {.found = fmt::format("{} again", in_quotes(node->text)),
                                   .expected = "each key once",
                                   .remedy = fmt::format("It stands in line {} already: keep one of the two.",
                                                         first->second.line)});
            return;
        }
        frame.key = node->text;
    }

    const SourceText& source_;
    FaultLog& faults_;
    std::vector<Frame> frames_;
    std::optional<Node> document_;
    std::size_t nodes_ = 0;
    std::size_t documents_ = 0;
    bool alias_told_ = false;
    bool anchor_told_ = false;
};

struct Wording {
    std::string_view parser_says;
    std::string_view found;
    std::string_view expected;
    std::string_view remedy;
};

/// What the parser's messages mean, in words for people who do not know the parser.
std::span<const Wording> wordings() {
    static const std::array known{
        Wording{YAML::ErrorMsg::END_OF_MAP, "a line that does not fit the map above it",
                "a key, a colon, a space and a value",
                "Check the colon and the indentation of this line and the one above."},
        Wording{YAML::ErrorMsg::END_OF_SEQ, "a line that does not fit the list above it",
                "a dash and a space", "Check the dash and the indentation of this line and the one above."},
        Wording{YAML::ErrorMsg::MAP_VALUE, "a colon where none can stand", "one key and one value a line",
                "Put text that holds a colon in quotes, and check the indentation."},
        Wording{YAML::ErrorMsg::MAP_KEY, "a key where none can stand", "one key and one value a line",
                "Put text that starts with ? in quotes, and check the indentation."},
        Wording{YAML::ErrorMsg::BLOCK_ENTRY, "a dash where no list can start", "a list below its key",
                "Put the dash on a line of its own, and check the indentation."},
        Wording{YAML::ErrorMsg::FLOW_END, "a closing bracket that was never opened", "pairs of brackets",
                "Delete it, or put the opening one before."},
        Wording{YAML::ErrorMsg::EOF_IN_SCALAR, "a quotation mark that is never closed",
                "pairs of quotation marks", "Put the closing one; inside single quotes write two for one."},
        Wording{YAML::ErrorMsg::DOC_IN_SCALAR, "a new document inside quotation marks",
                "pairs of quotation marks", "Close the quotation mark before it."},
        Wording{YAML::ErrorMsg::UNKNOWN_TOKEN, "a sign that no value can start with",
                "a text, a list or a map", "Put text that starts with a sign such as @ or % in quotes."},
        Wording{YAML::ErrorMsg::CHAR_IN_SCALAR, "a sign that no value can start with",
                "a text, a list or a map", "Put text that starts with a sign in quotes."},
        Wording{YAML::ErrorMsg::UNKNOWN_ANCHOR, "an alias", "the value itself",
                "Write the value out, or put text that starts with * in quotes."},
        Wording{YAML::ErrorMsg::ALIAS_NOT_FOUND, "a * that starts a value", "the value itself",
                "Put text that starts with * in quotes."},
        Wording{YAML::ErrorMsg::CHAR_IN_ALIAS, "a * that starts a value", "the value itself",
                "Put text that starts with * in quotes."},
        Wording{YAML::ErrorMsg::ANCHOR_NOT_FOUND, "a & that starts a value", "the value itself",
                "Put text that starts with & in quotes."},
        Wording{YAML::ErrorMsg::CHAR_IN_ANCHOR, "a & that starts a value", "the value itself",
                "Put text that starts with & in quotes."},
        Wording{YAML::ErrorMsg::CHAR_IN_TAG_HANDLE, "a ! that starts a value", "the value itself",
                "Put text that starts with ! in quotes."},
        Wording{YAML::ErrorMsg::TAG_WITH_NO_SUFFIX, "a ! that starts a value", "the value itself",
                "Put text that starts with ! in quotes."},
        Wording{YAML::ErrorMsg::END_OF_VERBATIM_TAG, "a ! that starts a value", "the value itself",
                "Put text that starts with ! in quotes."},
        Wording{YAML::ErrorMsg::CHAR_IN_BLOCK, "something behind | or > that cannot stand there",
                "a block of text", "Put text that starts with | or > in quotes."},
        Wording{YAML::ErrorMsg::ZERO_INDENT_IN_BLOCK, "a block of text that is indented by nothing",
                "a block of text", "Indent the block of text by spaces."},
    };
    return known;
}

Flaw wording_of(const std::string& message) {
    const auto all = wordings();
    const auto known = std::find_if(all.begin(), all.end(), [&](const Wording& wording) {
        return std::string_view(message).starts_with(wording.parser_says);
    });
    if (known == all.end()) {
        return {.found = "text that is no YAML",
                .expected = "keys and values",
                .remedy = "Check brackets, quotation marks and indentation here."};
    }
    return {.found = std::string(known->found),
            .expected = std::string(known->expected),
            .remedy = std::string(known->remedy)};
}

/// The first of two neighboring lines in which a space is missing after the colon; nothing if it is in
/// neither.
std::optional<std::size_t> colon_fault_near(const SourceText& source, std::size_t offset) {
    const std::string& text = source.text();
    const std::size_t line_end = offset == 0 ? std::string::npos : text.rfind('\n', offset - 1);
    const std::size_t before = line_end == std::string::npos ? offset : line_end;
    for (const std::size_t place : {before, offset}) {
        const std::string_view line = source.line_at(place);
        std::string_view entry = trimmed(line);
        entry = entry.starts_with("- ") ? trimmed(entry.substr(2)) : entry;
        if (lacks_space_after_colon(entry)) {
            return static_cast<std::size_t>(entry.data() - text.data());
        }
    }
    return std::nullopt;
}

void tell_syntax_error(const YAML::Exception& error, const SourceText& source, const Builder& builder,
                       FaultLog& faults) {
    const std::string& text = source.text();
    const bool placed = !error.mark.is_null();
    const std::size_t offset =
        placed ? std::min(static_cast<std::size_t>(std::max(error.mark.pos, 0)), text.size()) : text.size();
    const bool bracket_missing =
        error.msg == YAML::ErrorMsg::END_OF_MAP_FLOW || error.msg == YAML::ErrorMsg::END_OF_SEQ_FLOW;
    if (const auto colon_fault = colon_fault_near(source, offset)) {
        const std::string_view line = std::string_view(text).substr(*colon_fault);
        faults.add(source.position_at(*colon_fault),
                   {.found = in_quotes(trimmed(line.substr(0, line.find('\n')))),
                    .expected = "a key, a colon, a space and a value",
                    .remedy = space_after_colon});
    } else if (bracket_missing) {
        faults.add(builder.open_bracket().value_or(source.position_at(offset)),
                   {.found = "a bracket that is never closed",
                    .expected = "pairs of brackets, with commas between what they hold",
                    .remedy = "Put the closing bracket, and check the commas and colons inside."});
    } else {
        faults.add(source.position_at(offset), wording_of(error.msg));
    }
}

void parse(const SourceText& source, Builder& builder, FaultLog& faults) {
    try {
        std::istringstream stream(source.text());
        YAML::Parser parser(stream);
        // The second call is there to find a second document; the builder stops it at once.
        while (parser.HandleNextDocument(builder)) {
        }
    } catch (const Stop&) {
        return;
    } catch (const YAML::Exception& error) {
        tell_syntax_error(error, source, builder, faults);
    } catch (const std::exception&) {
        faults.add({}, {.found = "text that is no YAML", .expected = "keys and values", .remedy = {}});
    }
}

}  // namespace

Outcome<Node> yaml_document(std::string_view text, const std::string& file) {
    FaultLog faults(file);
    if (text.size() > most_document_bytes) {
        faults.add({}, {.found = fmt::format("{} bytes", text.size()),
                        .expected = fmt::format("at most {}", most_document_bytes),
                        .remedy = "Give a smaller file: one recipe takes a few kilobytes."});
        return faults.in_order();
    }
    const SourceText source(text);
    check_characters(source, faults);
    if (!faults.empty()) {
        return faults.in_order();
    }
    Builder builder(source, faults);
    parse(source, builder, faults);
    if (!faults.empty()) {
        return faults.in_order();
    }
    const std::optional<Node>& document = builder.document();
    if (document && document->kind == NodeKind::scalar && lacks_space_after_colon(document->text)) {
        faults.add(document->position, {.found = in_quotes(document->text),
                                        .expected = "a key, a colon, a space and a value",
                                        .remedy = space_after_colon});
        return faults.in_order();
    }
    if (!document) {
        faults.add({}, {.found = "an empty file", .expected = "a document with a format line", .remedy = {}});
        return faults.in_order();
    }
    return *document;
}

}  // namespace entrywise
