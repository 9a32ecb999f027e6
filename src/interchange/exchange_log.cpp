#include "interchange/exchange_log.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/text.hpp"

namespace entrywise {

namespace {
constexpr std::size_t most_remarks = 200;  // nobody reads more: working value
}  // namespace

void ExchangeLog::remark(Position position, RemarkKind kind, std::string text) {
    const bool is_told = std::any_of(remarks_.begin(), remarks_.end(), [&](const Remark& told) {
        return told.kind == kind && told.text == text;
    });
    if (!is_told && remarks_.size() < most_remarks) {
        remarks_.push_back({{faults_.file(), position}, kind, std::move(text)});
    }
}

void ExchangeLog::leave_out_key(const std::string& path) {
    const bool is_told =
        std::find(left_out_keys_.begin(), left_out_keys_.end(), path) != left_out_keys_.end();
    if (!is_told && left_out_keys_.size() < most_remarks) {
        left_out_keys_.push_back(path);
    }
}

std::vector<Remark> ExchangeLog::remarks() const {
    std::vector<Remark> sorted = remarks_;
    std::stable_sort(sorted.begin(), sorted.end(), [](const Remark& left, const Remark& right) {
        return left.place.position < right.place.position;
    });
    if (!left_out_keys_.empty()) {
        constexpr std::size_t most_listed = 24;  // working value
        std::vector<std::string> listed_keys = left_out_keys_;
        if (listed_keys.size() > most_listed) {
            listed_keys.resize(most_listed);
            listed_keys.push_back(fmt::format("{} more", left_out_keys_.size() - most_listed));
        }
        sorted.push_back({{faults_.file(), {}},
                          RemarkKind::left_out,
                          "no recipe file holds " + listed(listed_keys, "and")});
    }
    return sorted;
}

}  // namespace entrywise
