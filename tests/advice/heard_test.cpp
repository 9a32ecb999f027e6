#include "advice/heard.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "base/file.hpp"
#include "base/text.hpp"
#include "tests/support/remarks.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

using Texts = std::vector<std::string>;

const Ear& usual_ear() {
    static const Ear ear(usual_remarks());
    return ear;
}

/// All that a note says, in order of the alphabet.
Texts heard_in(const std::string& note) {
    Texts ids;
    for (const HeardClause& clause : usual_ear().hear(note)) {
        for (const HeardRemark& remark : clause.remarks) {
            ids.push_back(id_of(remark));
        }
    }
    std::sort(ids.begin(), ids.end());
    ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
    return ids;
}

struct Expected {
    std::string note;
    Texts ids;
};

std::vector<Expected> expected_remarks() {
    const auto text = read_file(ENTRYWISE_SOURCE_DIR "/tests/data/remarks.tsv", 100'000);
    REQUIRE(text);
    std::vector<Expected> remarks;
    for (const std::string_view line : split(*text, "\n")) {
        const auto columns = split(line, "\t");
        if (line.empty() || line.front() == '#' || columns.size() != 2) {
            continue;
        }
        Expected expected{std::string(columns[0]), {}};
        for (const std::string_view id : split(columns[1], " ")) {
            if (id != "-") {
                expected.ids.emplace_back(id);
            }
        }
        std::sort(expected.ids.begin(), expected.ids.end());
        remarks.push_back(std::move(expected));
    }
    return remarks;
}

}  // namespace

TEST_CASE("of a hundred remarks of judges at least ninety-five are heard as they are meant") {
    const std::vector<Expected> remarks = expected_remarks();
    REQUIRE(remarks.size() == 100);
    int right = 0;
    for (const Expected& expected : remarks) {
        const Texts heard = heard_in(expected.note);
        if (heard == expected.ids) {
            ++right;
        } else {
            MESSAGE(expected.note << ": heard " << joined(heard, " ") << ", meant "
                                  << joined(expected.ids, " "));
        }
    }
    MESSAGE(right << " of 100 remarks heard as they are meant");
    CHECK(right >= 95);
}

// What judges mean: common practice of judging.

TEST_CASE("not, lacks and the like turn a remark round") {
    CHECK(heard_in("not bitter enough") == Texts{"flavor.bitterness.below"});
    CHECK(heard_in("lacks body and carbonation") ==
          Texts{"mouthfeel.body.below", "mouthfeel.carbonation.below"});
    CHECK(heard_in("the carbonation was far too low") == Texts{"mouthfeel.carbonation.below"});
    CHECK(heard_in("not clear") == Texts{"appearance.clarity.below"});
}

TEST_CASE("what is praised is not complained of, nor is the lack of what nobody wants") {
    CHECK(heard_in("not too sweet").empty());
    CHECK(heard_in("no diacetyl, no DMS").empty());
    CHECK(heard_in("beautiful clarity and a lovely malt aroma").empty());
    CHECK(heard_in("nice hops but thin") == Texts{"mouthfeel.body.below"});
    CHECK(usual_ear().hear("no astringency").front().praises);
}

TEST_CASE("a place named in the note says where") {
    CHECK(heard_in("hops weak in the nose") == Texts{"aroma.hop.below"});
    CHECK(heard_in("Aroma: too much caramel") == Texts{"aroma.caramel.above"});
    CHECK(heard_in("no hop aroma or flavor") == Texts{"aroma.hop.below", "flavor.hop.below"});
    CHECK(heard_in("harsh finish, hot") == Texts{"flavor.alcohol.above", "flavor.bitterness.above",
                                                 "mouthfeel.astringency.above", "mouthfeel.warmth.above"});
}

TEST_CASE("the longer of two phrases counts") {
    CHECK(heard_in("head retention is poor") == Texts{"appearance.head_retention.below"});
    CHECK(heard_in("thin head") == Texts{"appearance.head_retention.below", "appearance.head_size.below"});
    CHECK(heard_in("dry hops too strong") == Texts{"aroma.hop.above", "flavor.hop.above"});
    CHECK(heard_in("drying") == Texts{"mouthfeel.astringency.above"});
}

TEST_CASE("a fault of execution is known with what to look at") {
    const std::vector<HeardClause> clauses = usual_ear().hear("Light-struck!");
    REQUIRE(clauses.size() == 1);
    REQUIRE(clauses[0].remarks.size() == 1);
    CHECK(id_of(clauses[0].remarks[0]) == "any.fault.above");
    CHECK(clauses[0].remarks[0].check.find("brown") != std::string::npos);
}

TEST_CASE("unknown words are answered with the nearest known") {
    const std::vector<HeardClause> clauses = usual_ear().hear("astringant, xylophone");
    REQUIRE(clauses.size() == 2);
    REQUIRE(clauses[0].unknown.size() == 1);
    CHECK(clauses[0].unknown[0].nearest == "astringent");
    REQUIRE(clauses[1].unknown.size() == 1);
    CHECK(clauses[1].unknown[0].nearest.empty());
}

TEST_CASE("a note of no words says nothing") {
    CHECK(usual_ear().hear("").empty());
    CHECK(usual_ear().hear(" ,;. \n").empty());
    CHECK(usual_ear().hear("the").empty());
    CHECK(heard_in(std::string(100000, 'x')).empty());
    CHECK(heard_in("\xff\xfe thin") == Texts{"mouthfeel.body.below"});
}

TEST_CASE("the book holds at least a hundred and fifty words and phrases, and each is heard") {
    std::size_t phrases = 0;
    for (const RemarkPhrase& phrase : usual_remarks().phrases) {
        phrases += phrase.says.size();
        for (const std::string& said : phrase.says) {
            CAPTURE(said);
            const std::vector<HeardClause> clauses = usual_ear().hear(said);
            REQUIRE(clauses.size() == 1);
            REQUIRE_FALSE(clauses[0].remarks.empty());
            CHECK(std::any_of(phrase.means.begin(), phrase.means.end(), [&](const RemarkTarget& target) {
                return target == clauses[0].remarks.front().target;
            }));
            CHECK((clauses[0].remarks.front().direction == Direction::above) == phrase.above);
        }
    }
    CHECK(phrases >= 150);
}
