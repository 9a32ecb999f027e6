#include "page/door.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "base/file.hpp"
#include "report/json_text.hpp"

using namespace entrywise;

namespace {

const Door& door() {
    static const Outcome<Door> opened = Door::open();
    REQUIRE(opened);
    return *opened;
}

Json ask(const Json& question) {
    return Json::parse(door().answer(question.dump()));
}

std::string text_of(const std::string& path) {
    const Outcome<std::string> text = read_file(ENTRYWISE_SOURCE_DIR "/" + path, 1000000);
    REQUIRE(text);
    return *text;
}

Json recipe_of(const std::string& file) {
    const Json answer = ask({{"ask", "read"}, {"text", text_of(file)}, {"file", file}});
    REQUIRE(answer["format"] == "entrywise/page/1");
    return answer["recipe"];
}

Json slack_tide() {
    return recipe_of("recipes/slack-tide.yaml");
}

}  // namespace

TEST_CASE("a recipe file comes back as it is written, amounts with their digits and units") {
    const Json recipe = slack_tide();
    CHECK(recipe["format"] == "entrywise/recipe/1");
    CHECK(recipe["name"] == "Slack Tide");
    CHECK(recipe["grist"][0] == Json{{"malt", "pale ale malt"}, {"mass", "4.8 kg"}});
    CHECK(recipe["hops"][0]["alpha"] == "15.5 %");
    CHECK(recipe["conditioning"]["filtered"] == "false");
}

TEST_CASE("a measured gravity keeps its last digit") {
    const Json answer =
        ask({{"ask", "read"},
             {"file", "x.yaml"},
             {"text",
              "format: entrywise/recipe/1\nname: X\nvolume: 20 L\ngrist:\n  - {malt: pale ale malt, "
              "mass: 4 kg}\nmeasured: {original_gravity: 1.060}\n"}});
    CHECK(answer["recipe"]["measured"]["original_gravity"] == "1.060");
}

TEST_CASE("a file of an exchange standard is read with what there is to know of it") {
    const std::string file = "tests/data/exchange/sample.json";
    const Json answer = ask({{"ask", "read"}, {"text", text_of(file)}, {"file", file}});
    REQUIRE(answer["format"] == "entrywise/page/1");
    CHECK(answer["recipe"]["format"] == "entrywise/recipe/1");
    CHECK_FALSE(answer["remarks"].empty());
}

TEST_CASE("what is written is read again as the same recipe") {
    const Json recipe = slack_tide();
    const Json written = ask({{"ask", "write"}, {"recipe", recipe}, {"to", "recipe"}});
    CHECK(ask({{"ask", "read"}, {"text", written["text"]}, {"file", "x.yaml"}})["recipe"] == recipe);
    const Json exchanged = ask({{"ask", "write"}, {"recipe", recipe}, {"to", "beerjson"}});
    const Json back = ask({{"ask", "read"}, {"text", exchanged["text"]}, {"file", "x.json"}});
    REQUIRE(back["format"] == "entrywise/page/1");
    CHECK(back["recipe"]["grist"][0]["mass"] == "4.8 kg");
    CHECK(back["recipe"]["style"] == "bjcp-2021/21A");
}

TEST_CASE("a fault tells the way to the part of the recipe that it is of") {
    Json recipe = slack_tide();
    // Stated alpha acids would make an unknown hop enough for an estimate.
    recipe["hops"][1] = {{"hop", "Centenial"}, {"mass", "30 g"}, {"add", "boil"}};
    recipe["grist"][2]["mass"] = "250";
    const Json answer = ask({{"ask", "check"}, {"recipe", recipe}});
    REQUIRE(answer["format"] == "entrywise/fault/1");
    REQUIRE(answer["faults"].size() == 2);
    CHECK(answer["faults"][0]["at"] == "grist.3.mass");
    CHECK(answer["faults"][1]["at"] == "hops.2.hop");
    CHECK(answer["faults"][1]["nearest"] == "Centennial");
}

TEST_CASE("nothing that is asked makes the door throw") {
    for (const char* question : {"", "{", "[]", "null", "{\"ask\": 7}", "{\"ask\": \"check\"}",
                                 "{\"ask\": \"check\", \"recipe\": []}", "{\"ask\": \"read\"}",
                                 "{\"ask\": \"explain\", \"recipe\": {}, \"notes\": 3}", "\xff"}) {
        CAPTURE(question);
        CHECK(Json::parse(door().answer(question))["format"] == "entrywise/fault/1");
    }
}

TEST_CASE("a check is told as a document and as a report, in another style where the question names one") {
    const Json declared = ask({{"ask", "check"}, {"recipe", slack_tide()}});
    CHECK(declared["document"]["style"]["code"] == "21A");
    CHECK(declared["article"].get<std::string>().find("Slack Tide") != std::string::npos);
    const Json other = ask({{"ask", "check"}, {"recipe", slack_tide()}, {"style", "bjcp-2021/22A"}});
    CHECK(other["document"]["style"]["code"] == "22A");
}

TEST_CASE("a recipe that declares no style is ranked, and checked where a style is named") {
    Json recipe = slack_tide();
    recipe.erase("style");
    CHECK(ask({{"ask", "check"}, {"recipe", recipe}})["format"] == "entrywise/fault/1");
    const Json ranking = ask({{"ask", "rank"}, {"recipe", recipe}, {"guide", "ba-2025"}});
    REQUIRE(ranking["document"]["ranking"].size() > 3);
    for (const Json& place : ranking["document"]["ranking"]) {
        CHECK(place["style"]["guide"] == "ba-2025");
    }
}

TEST_CASE("the mended recipes are those that the proposals promise") {
    const Json mending = ask({{"ask", "mend"}, {"recipe", slack_tide()}});
    REQUIRE(mending["mended"].size() == mending["document"]["proposals"].size());
    REQUIRE_FALSE(mending["mended"].empty());
    for (std::size_t index = 0; index < mending["mended"].size(); ++index) {
        const Json checked = ask({{"ask", "check"}, {"recipe", mending["mended"][index]}});
        const double promised =
            mending["document"]["proposals"][index]["after"]["at_risk"]["median"].get<double>();
        const double kept = checked["document"]["sheet"]["at_risk"]["median"].get<double>();
        CHECK(std::abs(promised - kept) < 0.05);  // points, as printed
    }
}

TEST_CASE("a judge's own sheet is compared, and points that the sheet does not have are refused") {
    const Json question{{"ask", "explain"}, {"recipe", slack_tide()}, {"notes", {"thin", "harsh finish"}}};
    Json scored = question;
    scored["scores"] = {{"aroma", "9"}, {"flavor", "14.5"}};
    const Json answer = ask(scored);
    REQUIRE(answer["document"]["format"] == "entrywise/explain/1");
    CHECK(answer["document"]["notes"].size() == 2);
    scored["scores"]["aroma"] = "13";
    CHECK(ask(scored)["faults"][0]["expected"] == "points from 0 to 12");
    scored["scores"] = {{"smell", "3"}};
    CHECK(ask(scored)["faults"][0]["found"] == "'smell'");
}

TEST_CASE("the shelf holds every ingredient once, by the key that a recipe names it with") {
    const Json shelf = ask({{"ask", "shelf"}});
    const auto named = [](const Json& list, const char* name) {
        return std::count_if(list.begin(), list.end(),
                             [&](const Json& each) { return each["name"] == name; });
    };
    CHECK(named(shelf["hops"], "Cascade") == 1);
    CHECK(named(shelf["fermentables"], "sucrose") == 1);
    for (const Json& each : shelf["fermentables"]) {
        if (each["name"] == "sucrose") {
            CHECK(each["key"] == "sugar");
        }
    }
    CHECK(shelf["sections"][0] == Json{{"section", "aroma"}, {"title", "aroma"}, {"points", 12.0}});
    CHECK(shelf["styles"].size() > 100);
}
