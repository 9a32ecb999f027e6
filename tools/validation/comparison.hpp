#pragma once

#include <optional>
#include <string>
#include <vector>

namespace entrywise {

/// Between these lie eight in ten, as the program states it.
struct StatedInterval {
    double low;
    double high;
};

/// A value from outside beside what the program makes of it.
struct Comparison {
    std::string what;
    double outside;
    double ours;
    std::optional<StatedInterval> interval;

    double error() const { return ours - outside; }
    bool is_inside() const { return interval && interval->low <= outside && outside <= interval->high; }
};

/// How much an agreement tells.
enum class Evidence {
    measured,       ///< measured, and no constant was set by it
    measured_seen,  ///< measured, and constants of the program were set by it
    printed,        ///< a physical table, or a table of the trade
    own_formula,    ///< what the author of a formula prints: that it is written down right, no more
};

std::string word_of(Evidence evidence);

struct Quantity {
    std::string name;
    std::string unit;
    int decimals;
    Evidence evidence;
    std::string source;
    std::vector<Comparison> values;
};

struct Errors {
    std::size_t count = 0;
    double median_absolute = 0.0;
    double bias = 0.0;  ///< mean of ours less theirs
    double root_mean_square = 0.0;
    std::size_t with_interval = 0;
    std::size_t inside = 0;
};

Errors errors_of(const std::vector<Comparison>& values);

/// `7 of 9`, or a dash where the program states no interval.
std::string inside_in_words(const Errors& errors);

}  // namespace entrywise
