#include "judging/yardstick.hpp"

#include "judging/guide_habit.hpp"

namespace entrywise {

Yardstick::Yardstick(const Style& measured_by, const Perception& perception)
    : style(&measured_by), habits(guide_habits(measured_by, perception)) {}

}  // namespace entrywise
