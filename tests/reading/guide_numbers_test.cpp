#include <doctest/doctest.h>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/file.hpp"
#include "base/number.hpp"
#include "base/text.hpp"
#include "tests/support/guide.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

// The style files against the numbers of the guides themselves, kept apart from them in tests/data/guides:
// Beer Judge Certification Program, Beer Style Guidelines, 2021, and Brewers Association, Beer Style
// Guidelines, 2025.

namespace {

/// The lines of a guide's table, each as its fields, without the comment and the names of the columns.
std::vector<std::vector<std::string>> records_of(const std::string& guide) {
    constexpr std::size_t most = 1048576;
    const auto text = read_file(ENTRYWISE_SOURCE_DIR "/tests/data/guides/" + guide + ".tsv", most);
    REQUIRE(text);
    std::vector<std::vector<std::string>> records;
    for (const std::string_view line : split(*text, "\n")) {
        if (line.empty() || line.starts_with("#") || line.starts_with("code\t")) {
            continue;
        }
        std::vector<std::string>& fields = records.emplace_back();
        for (const std::string_view field : split(line, "\t")) {
            fields.emplace_back(field);
        }
    }
    return records;
}

bool is_open(const std::string& printed) {
    return printed == "-";
}

template <class Quantity>
void check_end(const std::optional<Quantity>& end, const std::string& printed, Quantity unit) {
    CHECK(end.has_value() == !is_open(printed));
    if (end && !is_open(printed)) {
        CHECK(within(*end / unit, *number_from(printed), 1e-9));
    }
}

template <class Quantity>
void check_range(const std::optional<Range<Quantity>>& range, const std::string& low, const std::string& high,
                 Quantity unit) {
    CHECK(range.has_value() == !(is_open(low) && is_open(high)));
    if (range) {
        check_end(range->low, low, unit);
        check_end(range->high, high, unit);
    }
}

void check_guide(const std::string& guide) {
    const auto records = records_of(guide);
    CHECK(records.size() == usual_library().style_names(guide).size());
    for (const std::vector<std::string>& record : records) {
        REQUIRE(record.size() == 12);
        CAPTURE(record[0]);
        const auto style = usual_library().style({guide, record[0]});
        REQUIRE(style);
        CHECK(style->name == record[1]);
        check_range(style->ranges.original_gravity, record[2], record[3], specific_gravity);
        check_range(style->ranges.final_gravity, record[4], record[5], specific_gravity);
        check_range(style->ranges.alcohol, record[6], record[7], percent_by_volume);
        check_range(style->ranges.bitterness, record[8], record[9], ibu);
        check_range(style->ranges.color, record[10], record[11], srm);
    }
}

}  // namespace

TEST_CASE("every number of the first guide is the one that it prints") {
    check_guide("bjcp-2021");
}

TEST_CASE("every number of the second guide is the one that it prints") {
    check_guide("ba-2025");
}
