#include "reading/ingredient_fields.hpp"

#include <array>

namespace entrywise {

namespace {

// Hop cones hold at most about a fifth of their mass in alpha acids, extracts up to about six tenths: common
// practice; the limits are working values above that.
constexpr Share most_acids_in_cones = 30.0 * percent;
constexpr Share most_acids_in_extract = 90.0 * percent;

constexpr std::array<std::string_view, 7> families{
    "american", "new-world", "german-traditional", "czech", "slovenian-polish", "english", "belgian-french"};

}  // namespace

std::optional<Uncertain<Share>> read_acids(Fields& fields, std::string_view key, bool is_extract) {
    const Share most = is_extract ? most_acids_in_extract : most_acids_in_cones;
    return fields.optional_within<Uncertain<Share>>(key, Span<Share>{0.0 * percent, most});
}

std::optional<std::string> read_hop_family(Fields& fields) {
    static constexpr auto words = [] {
        std::array<Word<std::string_view>, families.size()> named{};
        for (std::size_t index = 0; index < families.size(); ++index) {
            named[index] = {families[index], families[index]};
        }
        return named;
    }();
    const auto family = fields.optional_word<std::string_view>("family", words);
    return family ? std::optional(std::string(*family)) : std::nullopt;
}

}  // namespace entrywise
