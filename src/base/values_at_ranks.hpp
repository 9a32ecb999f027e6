#pragma once

#include <array>
#include <cstddef>
#include <span>

namespace entrywise {

/// What would stand at some places if the values stood in ascending order: `rank` 0 is the least. The same
/// as sorting gives, in a time that grows with the count alone. Values must be finite, ranks below the count.
void find_at_ranks(std::span<const double> values, std::span<const std::size_t> ranks,
                   std::span<double> found);

template <std::size_t count>
std::array<double, count> values_at_ranks(std::span<const double> values,
                                          const std::array<std::size_t, count>& ranks) {
    std::array<double, count> found;
    find_at_ranks(values, ranks, found);
    return found;
}

}  // namespace entrywise
