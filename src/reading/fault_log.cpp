#include "reading/fault_log.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "base/text.hpp"

namespace entrywise {

namespace {
constexpr std::size_t most_faults = 100;       // working value
constexpr std::size_t longest_quotation = 60;  // bytes; working value
}  // namespace

void FaultLog::add(Position position, Flaw flaw) {
    if (faults_.size() == most_faults) {
        return;
    }
    faults_.push_back({.place = {file_, position},
                       .found = std::move(flaw.found),
                       .expected = std::move(flaw.expected),
                       .nearest = std::move(flaw.nearest),
                       .remedy = std::move(flaw.remedy)});
}

std::vector<Fault> FaultLog::in_order() const {
    return entrywise::in_order(faults_);
}

std::vector<Fault> in_order(std::vector<Fault> faults) {
    std::stable_sort(faults.begin(), faults.end(), [](const Fault& left, const Fault& right) {
        return left.place.position < right.place.position;
    });
    return faults;
}

std::string in_quotes(std::string_view text) {
    if (text.size() <= longest_quotation) {
        return fmt::format("'{}'", text);
    }
    std::string_view beginning = text.substr(0, longest_quotation);
    while (!beginning.empty() && !is_utf8(beginning)) {
        beginning.remove_suffix(1);
    }
    return fmt::format("'{}...'", beginning);
}

}  // namespace entrywise
