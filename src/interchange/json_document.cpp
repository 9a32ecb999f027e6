#include "interchange/json_document.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <iterator>
#include <utility>
#include <vector>

#include "base/number.hpp"
#include "reading/source_text.hpp"

namespace entrywise {

namespace {

constexpr std::size_t most_keys = 256;  // in one object, several times what any standard has: working value

/// Walks over the text and tells how far the parser has read.
class CountingIterator {
  public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    CountingIterator(const char* at, const char** furthest) : at_(at), furthest_(furthest) {}

    reference operator*() const { return *at_; }
    CountingIterator& operator++() {
        ++at_;
        *furthest_ = at_;
        return *this;
    }
    friend bool operator==(const CountingIterator& left, const CountingIterator& right) {
        return left.at_ == right.at_;
    }

  private:
    const char* at_;
    const char** furthest_;
};

/// Builds the tree from the parser's events. Between one event and the next stand only blanks, commas and
/// colons, so the place of a value is the first other character behind what was read before.
class TreeBuilder : public nlohmann::json_sax<nlohmann::json> {
  public:
    TreeBuilder(const SourceText& source, const char* const& furthest, FaultLog& faults)
        : source_(source), furthest_(furthest), faults_(faults) {}

    Node root() { return std::move(root_); }

    bool null() override { return add_plain(); }
    bool boolean(bool /*value*/) override { return add_plain(); }
    bool number_integer(number_integer_t /*value*/) override { return add_number(); }
    bool number_unsigned(number_unsigned_t /*value*/) override { return add_number(); }
    bool number_float(number_float_t /*value*/, const string_t& /*text*/) override { return add_number(); }
    bool binary(binary_t& /*value*/) override { return false; }

    bool string(string_t& value) override {
        Node node = scalar_here();
        node.text = value;
        node.quoted = true;
        read_to_ = read();
        return add(std::move(node)) != nullptr;
    }

    bool key(string_t& value) override {
        key_position_ = source_.position_at(next_token());
        read_to_ = read();
        key_ = value;
        if (open_.back()->entries.size() == most_keys) {
            faults_.add(key_position_, {.found = fmt::format("more than {} keys in one object", most_keys),
                                        .expected = "the keys of a recipe"});
            return false;
        }
        if (const Node* earlier = value_of(*open_.back(), value)) {
            faults_.add(key_position_,
                        {.found = fmt::format("the key {} again", in_quotes(value)),
                         .expected = "each key once",
                         .remedy = fmt::format("It stands in line {} already.", earlier->position.line)});
            return false;
        }
        return true;
    }

    bool start_object(std::size_t /*size*/) override { return open(NodeKind::map); }
    bool start_array(std::size_t /*size*/) override { return open(NodeKind::list); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }

    bool parse_error(std::size_t /*position*/, const std::string& last_token,
                     const nlohmann::detail::exception& error) override {
        constexpr int number_out_of_range = 406;
        const std::size_t start = next_token();
        if (error.id == number_out_of_range) {
            faults_.add(source_.position_at(start),
                        {.found = in_quotes(last_token), .expected = "a number that can be calculated with"});
        } else if (start >= source_.text().size()) {
            faults_.add(source_.position_at(start),
                        {.found = "the end of the file",
                         .expected = open_.empty() ? "a JSON document" : "the rest of the JSON document",
                         .remedy = "The file is cut off, or a bracket is never closed."});
        } else {
            faults_.add(source_.position_at(start),
                        {.found = in_quotes(source_.line_at(start)),
                         .expected = "JSON",
                         .remedy = "Something in this line, or left out before it, is no JSON."});
        }
        return false;
    }

  private:
    std::size_t read() const { return static_cast<std::size_t>(furthest_ - source_.text().data()); }

    std::size_t next_token() const {
        const std::size_t token = source_.text().find_first_not_of(" \t\r\n,:", read_to_);
        return token == std::string::npos ? source_.text().size() : token;
    }

    Node scalar_here() const {
        Node node;
        node.position = source_.position_at(next_token());
        return node;
    }

    bool add_plain() {
        const std::size_t start = next_token();
        read_to_ = read();
        Node node;
        node.position = source_.position_at(start);
        node.text = source_.text().substr(start, read_to_ - start);
        return add(std::move(node)) != nullptr;
    }

    /// The parser has read one character beyond a number.
    bool add_number() {
        const std::size_t start = next_token();
        const std::size_t end = source_.text().find_first_not_of("0123456789+-.eE", start);
        read_to_ = std::min(end, source_.text().size());
        Node node;
        node.position = source_.position_at(start);
        node.text = source_.text().substr(start, read_to_ - start);
        if (!number_from(node.text)) {
            faults_.add(node.position,
                        {.found = in_quotes(node.text), .expected = "a number that can be calculated with"});
            return false;
        }
        return add(std::move(node)) != nullptr;
    }

    bool open(NodeKind kind) {
        Node node = scalar_here();
        node.kind = kind;
        read_to_ = read();
        if (open_.size() == deepest_nesting) {
            faults_.add(node.position, {.found = "nesting too deep",
                                        .expected = fmt::format("at most {} levels", deepest_nesting)});
            return false;
        }
        Node* const added = add(std::move(node));
        if (added != nullptr) {
            open_.push_back(added);
        }
        return added != nullptr;
    }

    bool close() {
        read_to_ = read();
        open_.pop_back();
        return true;
    }

    /// Where the node stands now; null if there are too many. What is open is always the last child of its
    /// parent, so that nothing open moves.
    Node* add(Node node) {
        if (++count_ > most_exchange_nodes) {
            faults_.add(node.position, {.found = fmt::format("more than {} values", most_exchange_nodes),
                                        .expected = "a smaller file"});
            return nullptr;
        }
        if (open_.empty()) {
            root_ = std::move(node);
            return &root_;
        }
        Node& parent = *open_.back();
        if (parent.kind == NodeKind::list) {
            return &parent.items.emplace_back(std::move(node));
        }
        return &parent.entries.emplace_back(Entry{key_, key_position_, std::move(node)}).value;
    }

    const SourceText& source_;
    const char* const& furthest_;
    FaultLog& faults_;
    Node root_;
    std::vector<Node*> open_;
    std::string key_;
    Position key_position_;
    std::size_t read_to_ = 0;
    std::size_t count_ = 0;
};

}  // namespace

Outcome<Node> json_document(std::string_view text, const std::string& file) {
    const SourceText source(text);
    FaultLog faults(file);
    const char* const begin = source.text().data();
    const char* const end = begin + source.text().size();
    const char* furthest = begin;
    TreeBuilder builder(source, furthest, faults);
    const bool whole = nlohmann::json::sax_parse(CountingIterator(begin, &furthest),
                                                 CountingIterator(end, &furthest), &builder);
    if (!whole) {
        return faults.in_order();
    }
    return builder.root();
}

}  // namespace entrywise
