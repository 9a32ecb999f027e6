#include "base/stem.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace entrywise;

// English word formation: common practice.

TEST_CASE("forms of one word have one stem") {
    CHECK(stem_of("hops") == stem_of("hop"));
    CHECK(stem_of("Hoppy") == stem_of("hop"));
    CHECK(stem_of("hoppiness") == stem_of("hop"));
    CHECK(stem_of("bitterness") == stem_of("bitter"));
    CHECK(stem_of("malty") == stem_of("malt"));
    CHECK(stem_of("smoky") == stem_of("smoke"));
    CHECK(stem_of("haziness") == stem_of("hazy"));
    CHECK(stem_of("spicy") == stem_of("spices"));
    CHECK(stem_of("acidity") == stem_of("acidic"));
    CHECK(stem_of("carbonation") == stem_of("carbonated"));
    CHECK(stem_of("finishes") == stem_of("finish"));
    CHECK(stem_of("phenolic") == stem_of("phenols"));
    CHECK(stem_of("roasted") == stem_of("roasty"));
    CHECK(stem_of("lingering") == stem_of("lingers"));
}

TEST_CASE("different words keep different stems") {
    CHECK(stem_of("hop") != stem_of("hope"));
    CHECK(stem_of("grassy") != stem_of("grain"));
    CHECK(stem_of("bitter") != stem_of("butter"));
    CHECK(stem_of("note") != stem_of("not"));
    CHECK(stem_of("biting") != stem_of("bit"));
    CHECK(stem_of("sour") != stem_of("source"));
    CHECK(stem_of("malt") != stem_of("salt"));
    CHECK(stem_of("astringent") != stem_of("strong"));
}

TEST_CASE("short words and texts without letters stay as they are") {
    CHECK(stem_of("dry") == "dry");
    CHECK(stem_of("is") == "is");
    CHECK(stem_of("").empty());
    CHECK(stem_of("12345") == "12345");
}
