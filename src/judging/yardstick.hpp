#pragma once

#include "style/perception.hpp"
#include "style/style.hpp"

namespace entrywise {

/// A style made ready to hold many beers against: with the habit of its guide in choosing words
/// (`guide_habit.hpp`) worked out for a palate. The style must last as long as it does.
struct Yardstick {
    Yardstick(const Style& measured_by, const Perception& perception);

    const Style* style;
    ByAttribute<double> habits;
};

}  // namespace entrywise
