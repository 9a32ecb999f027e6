#include "judging/guide_habit.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "sensing/middle_of_style.hpp"
#include "tests/support/demo.hpp"
#include "tests/support/palate.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

/// Calls the visitor with every word of the guide that the numbers of its style tell.
template <class Visit>
void visit_words(Visit visit) {
    for (const Style& style : all_of_the_guide()) {
        const auto middle = middle_of(style);
        const ByAttribute<double> habits = guide_habits(style, usual_palate());
        for (const Attribute attribute : all_attributes()) {
            const auto level = middle ? levels_at_middle(*middle, usual_palate())[attribute] : std::nullopt;
            if (level && style.expected[attribute]) {
                CAPTURE(style.code);
                CAPTURE(std::string(name_of(attribute)));
                visit(attribute, *style.expected[attribute], *level, habits[attribute]);
            }
        }
    }
}

double inside_by(const Expectation& expectation) {
    return std::min(0.5, 0.5 * (expectation.high - expectation.low));
}

}  // namespace

// Beer Judge Certification Program, Beer Style Guidelines, 2021.
TEST_CASE("the middle of a style lies inside its own words, and on no border of theirs") {
    int words = 0;
    visit_words([&words](Attribute attribute, const Expectation& asked, double level, double habit) {
        const double worded = level - habit;
        CHECK(worded >= asked.low - 1e-12);
        CHECK(worded <= asked.high + 1e-12);
        if (asked.low > 0.0) {
            CHECK(worded >= asked.low + inside_by(asked) - 1e-12);
        }
        if (asked.high < highest_level(attribute)) {
            CHECK(worded <= asked.high - inside_by(asked) + 1e-12);
        }
        ++words;
    });
    CHECK(words > 1500);
}

TEST_CASE("where the words and the numbers of a style agree there is no habit") {
    int agreeing = 0;
    visit_words([&agreeing](Attribute attribute, const Expectation& asked, double level, double habit) {
        const double low = asked.low > 0.0 ? asked.low + inside_by(asked) : 0.0;
        const double high =
            asked.high < highest_level(attribute) ? asked.high - inside_by(asked) : asked.high;
        if (level >= low && level <= high) {
            CHECK(habit == 0.0);
            ++agreeing;
        } else {
            CHECK(habit != 0.0);
        }
    });
    CHECK(agreeing > 500);
}
