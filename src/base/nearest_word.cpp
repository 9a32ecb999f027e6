#include "base/nearest_word.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>

#include "base/text.hpp"

namespace entrywise {

namespace {

/// Optimal string alignment distance: edits and exchanges of neighbors, no part edited twice.
std::size_t edits_between(std::string_view from, std::string_view to) {
    std::vector<std::size_t> before_last(to.size() + 1);
    std::vector<std::size_t> last(to.size() + 1);
    std::vector<std::size_t> current(to.size() + 1);
    for (std::size_t column = 0; column <= to.size(); ++column) {
        last[column] = column;
    }
    for (std::size_t row = 1; row <= from.size(); ++row) {
        current[0] = row;
        for (std::size_t column = 1; column <= to.size(); ++column) {
            const std::size_t substitution = last[column - 1] + (from[row - 1] == to[column - 1] ? 0 : 1);
            current[column] = std::min({last[column] + 1, current[column - 1] + 1, substitution});
            const bool exchanged =
                row > 1 && column > 1 && from[row - 1] == to[column - 2] && from[row - 2] == to[column - 1];
            if (exchanged) {
                current[column] = std::min(current[column], before_last[column - 2] + 1);
            }
        }
        std::swap(before_last, last);
        std::swap(last, current);
    }
    return last[to.size()];
}

std::string only_completion(const std::string& beginning, const std::vector<std::string>& known) {
    std::string completion;
    for (const std::string& word : known) {
        if (!lowered(word).starts_with(beginning)) {
            continue;
        }
        if (!completion.empty()) {
            return {};
        }
        completion = word;
    }
    return completion;
}

}  // namespace

std::string nearest_word(std::string_view text, const std::vector<std::string>& known) {
    constexpr std::size_t longest_word = 64;
    const std::string wanted = lowered(trimmed(text));
    if (wanted.empty() || wanted.size() > longest_word) {
        return {};
    }
    std::string nearest;
    // One edit of a single letter would make any word of it.
    std::size_t fewest = std::min(wanted.size(), std::max<std::size_t>(1, wanted.size() / 3) + 1);
    for (const std::string& word : known) {
        const std::size_t edits = edits_between(wanted, lowered(word));
        if (edits < fewest) {
            fewest = edits;
            nearest = word;
        }
    }
    return nearest.empty() ? only_completion(wanted, known) : nearest;
}

}  // namespace entrywise
