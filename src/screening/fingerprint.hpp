#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "recipe/recipe.hpp"

namespace entrywise {

/// A number that stands for a text: 64 bits of FNV-1a (Fowler, Noll and Vo, The FNV Non-Cryptographic Hash
/// Algorithm, IETF draft). Two texts in a million of millions share one by chance; nobody is kept from making
/// two that do.
class Fingerprint {
  public:
    void add(std::string_view text);
    std::uint64_t value() const { return value_; }

  private:
    std::uint64_t value_ = 14695981039346656037U;
};

/// In sixteen hexadecimal digits.
std::string fingerprint_text(std::uint64_t fingerprint);

/// The same for two recipes that make the same beer, whatever they are called, declare and were written in.
std::uint64_t fingerprint_of(const Recipe& recipe);

}  // namespace entrywise
