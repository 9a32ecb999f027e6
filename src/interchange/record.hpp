#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "interchange/exchange_log.hpp"
#include "interchange/exchange_units.hpp"
#include "interchange/written.hpp"
#include "reading/node.hpp"

namespace entrywise {

/// The keys of one object of an exchange standard. Each is asked for by its name and type; a value of the
/// wrong type is a fault, a unit that is not known a remark, and whatever was never asked for is left out.
class Record {
  public:
    /// `path` is what the object is called in remarks: `hop_additions`, or empty at the top.
    Record(const Node& node, std::string path, ExchangeLog& log);

    Position position() const { return node_.position; }
    ExchangeLog& log() const { return log_; }
    const std::string& path() const { return path_; }

    /// The value of a key; null if it is left out, or `null`.
    const Node* find(std::string_view key);

    /// A text that is not empty, on one line.
    std::optional<Written> text(std::string_view key);
    /// The same with its lines.
    std::optional<Written> lines(std::string_view key);
    std::optional<Written> number(std::string_view key);
    std::optional<bool> truth(std::string_view key);

    /// A `unit` and a `value`, as recipe files write it.
    std::optional<Written> amount(std::string_view key, std::span<const ExchangeUnit> units);

    /// The unit of an amount, empty where there is none.
    std::string unit_of(std::string_view key);

    /// The items of a list; none for a key that is left out.
    std::vector<const Node*> items(std::string_view key);

    /// Keys that say nothing of what is in the glass: neither read nor worth a remark.
    void pass_over(std::initializer_list<std::string_view> keys);

    /// Leaves out what was never asked for and says something. Keys of a beginning that the standard has for
    /// what only repeats others are passed over.
    void leave_out_others(std::string_view repeating = {});

  private:
    void refuse(const Node& node, std::string_view key, std::string_view expected);
    std::string called(std::string_view key) const;

    const Node& node_;
    std::string path_;
    ExchangeLog& log_;
    std::vector<std::string_view> asked_for_;
};

}  // namespace entrywise
