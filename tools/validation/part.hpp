#pragma once

#include <optional>
#include <string>

namespace entrywise {

/// A part of the page that is not worked out each time, as it asks for a folder or for longer. It stands
/// between marks, by which an earlier page hands it on.
struct Part {
    std::string name;
    std::string text;
};

inline constexpr const char* real_beers_in_short = "real recipes in short";
inline constexpr const char* real_beers_section = "real recipes";
inline constexpr const char* ranking_section = "ranking";

/// The part with its marks, as it stands on the page.
std::string marked(const Part& part);

/// The part of that name on an earlier page.
std::optional<Part> part_on(const std::string& page, const std::string& name);

/// What the page says in the place of a part that was never worked out.
Part never_worked_out(const std::string& name);

}  // namespace entrywise
