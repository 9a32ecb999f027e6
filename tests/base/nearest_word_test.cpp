#include "base/nearest_word.hpp"

#include <doctest/doctest.h>

using namespace entrywise;

TEST_CASE("the word probably meant is found") {
    const std::vector<std::string> malts{"crystal", "carafoam", "chocolate", "Munich", "Vienna"};
    CHECK(nearest_word("crystl", malts) == "crystal");
    CHECK(nearest_word("crsytal", malts) == "crystal");
    CHECK(nearest_word(" MUNCIH ", malts) == "Munich");
    CHECK(nearest_word("Viena", malts) == "Vienna");
    CHECK(nearest_word("chocolatte", malts) == "chocolate");
}

TEST_CASE("the beginning of just one word is enough") {
    CHECK(nearest_word("choc", {"chocolate", "crystal"}) == "chocolate");
    CHECK(nearest_word("c", {"chocolate", "crystal"}).empty());
    CHECK(nearest_word("k", {"kg", "g"}) == "kg");
}

TEST_CASE("of several near words the nearest wins, and the first of equally near ones") {
    CHECK(nearest_word("boils", {"boil", "bolts", "boils up"}) == "boil");
    CHECK(nearest_word("bat", {"cat", "hat"}) == "cat");
}

TEST_CASE("nothing near is nothing") {
    CHECK(nearest_word("wheat", {"crystal", "Munich"}).empty());
    CHECK(nearest_word("", {"crystal"}).empty());
    CHECK(nearest_word("x", {"g"}).empty());
    CHECK(nearest_word("crystal", {}).empty());
    CHECK(nearest_word(std::string(100, 'a'), {std::string(100, 'a')}).empty());
}

TEST_CASE("two short edits of a word count as two") {
    // Optimal string alignment: no part is edited twice, so that ca to abc takes three edits (Boytsov,
    // Indexing methods for approximate dictionary searching, ACM Journal of Experimental Algorithmics 16,
    // 2011).
    CHECK(nearest_word("ca", {"abc"}).empty());
    CHECK(nearest_word("ac", {"ca"}) == "ca");
}
