#include "screening/screened.hpp"

#include <algorithm>
#include <unordered_map>

namespace entrywise {

std::string_view word_of(Status status) {
    switch (status) {
        case Status::ready:
            return "ready";
        case Status::look:
            return "look";
        case Status::move:
            return "move";
        case Status::incomplete:
            return "incomplete";
        case Status::unreadable:
            return "unreadable";
    }
    return {};
}

std::optional<Status> status_named(std::string_view word) {
    const auto found = std::find_if(all_statuses.begin(), all_statuses.end(),
                                    [&](Status status) { return word_of(status) == word; });
    return found == all_statuses.end() ? std::nullopt : std::optional(*found);
}

void mark_duplicates(std::vector<Screened>& entries) {
    std::unordered_map<std::uint64_t, std::string> first_with;
    for (Screened& screened : entries) {
        if (screened.status == Status::unreadable) {
            continue;
        }
        const auto [first, is_new] = first_with.emplace(screened.fingerprint, screened.entry.number);
        if (!is_new) {
            screened.duplicate_of = first->second;
        }
    }
}

}  // namespace entrywise
