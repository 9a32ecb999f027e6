#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <vector>

#include "screening/flight.hpp"
#include "screening/screened.hpp"

namespace entrywise {

// What a screening says in words, whatever it is set in.

/// The category as `21A American IPA`; as it was entered where it has no name.
std::string category_of(const Screened& screened);

/// What is wrong, missing or worth a word about an entry, a sentence each, what matters most first. Allergens
/// are no part of it: nearly every beer has one.
std::vector<std::string> points_to_talk_about(const Screened& screened);

/// Each allergen with the entries at these places that hold it: `all that could be read`, or their numbers.
std::vector<std::string> allergen_words(const std::vector<Screened>& entries,
                                        const std::vector<std::size_t>& places);

/// The numbers of the entries at these places, apart by commas.
std::string numbers_of(const std::vector<Screened>& entries, const std::vector<std::size_t>& places);

/// `21A American IPA`, `table 4 Hop Locker`.
std::string name_of(const Flight& flight);

}  // namespace entrywise
