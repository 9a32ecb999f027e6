#include "screening/fingerprint.hpp"

#include <fmt/format.h>

#include "interchange/statements.hpp"

namespace entrywise {

namespace {

/// Whether the statement is about the entry and not about the beer.
bool is_of_the_entry(const std::string& path) {
    return path == "name" || path == "style" || path == "base_style" || path.starts_with("declares");
}

}  // namespace

void Fingerprint::add(std::string_view text) {
    constexpr std::uint64_t prime = 1099511628211U;
    for (const char letter : text) {
        value_ = (value_ ^ static_cast<unsigned char>(letter)) * prime;
    }
    value_ = value_ * prime;  // as a byte of zero, so that the border between two texts counts
}

std::string fingerprint_text(std::uint64_t fingerprint) {
    return fmt::format("{:016x}", fingerprint);
}

std::uint64_t fingerprint_of(const Recipe& recipe) {
    Fingerprint fingerprint;
    for (const Statement& statement : statements_of(recipe)) {
        if (!is_of_the_entry(statement.path)) {
            fingerprint.add(statement.path);
            fingerprint.add(statement.text);
        }
    }
    return fingerprint.value();
}

}  // namespace entrywise
