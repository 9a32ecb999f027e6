#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

#include "base/text.hpp"
#include "tests/interchange/support.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

/// What is wrong is told with a place.
bool is_told(const Outcome<ExchangedRecipe>& recipe) {
    return !recipe && !recipe.faults.empty() && recipe.faults.front().place.position.line > 0;
}

// What is not read, because it says nothing of what is in the glass, may be anything.
const std::set<std::string> not_read{
    "/beerjson/version",
    "author",
    "style/category",
    "style/type",
    "form",
    "mash/name",
    "mash/grain_temperature",
    "boil_steps/name",
    "mash_steps/name",
    "fermentation/name",
    "packaging/name",
    "packaging_vessels/name",
    "culture_additions/amount",
};

bool is_not_read(const std::string& pointer) {
    const bool in_culture = pointer.find("culture_additions") != std::string::npos;
    std::string plain;
    for (const std::string_view part : split(pointer, "/")) {
        if (!part.empty() && part.find_first_not_of("0123456789") != std::string_view::npos) {
            plain += '/' + std::string(part);
        }
    }
    return std::any_of(not_read.begin(), not_read.end(), [&](const std::string& known) {
        const bool only_of_cultures = known == "form";
        return plain.find(known) != std::string::npos && (!only_of_cultures || in_culture);
    });
}

void collect(const nlohmann::json& node, const std::string& path, std::vector<std::string>& paths) {
    if (!path.empty()) {
        paths.push_back(path);
    }
    if (node.is_object()) {
        for (const auto& [key, value] : node.items()) {
            collect(value, path + '/' + key, paths);
        }
    } else if (node.is_array()) {
        for (std::size_t index = 0; index < node.size(); ++index) {
            collect(node[index], path + '/' + std::to_string(index), paths);
        }
    }
}

}  // namespace

TEST_CASE("a sample cut off at every byte is one located fault") {
    const std::string json = sample("sample.json");
    for (std::size_t size = 0; size + 1 < json.size(); ++size) {
        CAPTURE(size);
        const auto recipe = exchanged(Exchange::beerjson, json.substr(0, size));
        REQUIRE(is_told(recipe));
        REQUIRE(recipe.faults.size() == 1);
    }
    const std::string xml = sample("sample.xml");
    for (std::size_t size = 0; size + 1 < xml.size(); ++size) {
        CAPTURE(size);
        const auto recipe = exchanged(Exchange::beerxml, xml.substr(0, size));
        REQUIRE(is_told(recipe));
        REQUIRE(recipe.faults.size() == 1);
    }
}

TEST_CASE("a value of the wrong type in any field that is read is a located fault") {
    const nlohmann::json whole = nlohmann::json::parse(sample("sample.json"));
    std::vector<std::string> paths;
    collect(whole, "", paths);
    CHECK(paths.size() > 150);
    for (const std::string& path : paths) {
        CAPTURE(path);
        // A list in a list is no field of the standard.
        nlohmann::json listed = whole;
        listed[nlohmann::json::json_pointer(path)] = nlohmann::json::array({nlohmann::json::array({7})});
        const auto of_list = exchanged(Exchange::beerjson, listed.dump(1));
        CHECK((is_told(of_list) || is_not_read(path)));
        // Keys that no object has are left out of objects, but no text, number or list is an object.
        const bool is_object = whole[nlohmann::json::json_pointer(path)].is_object();
        nlohmann::json keyed = whole;
        keyed[nlohmann::json::json_pointer(path)] = {{"surely no key", true}};
        const auto of_object = exchanged(Exchange::beerjson, keyed.dump(1));
        CHECK((is_object || is_told(of_object) || is_not_read(path)));
        // Another scalar where a scalar stands is a fault too, or another value of the same kind.
        for (const nlohmann::json& scalar :
             {nlohmann::json(-1.5), nlohmann::json("text"), nlohmann::json(nullptr), nlohmann::json(true),
              nlohmann::json("")}) {
            nlohmann::json spoilt = whole;
            spoilt[nlohmann::json::json_pointer(path)] = scalar;
            const auto recipe = exchanged(Exchange::beerjson, spoilt.dump(1));
            CHECK((recipe || is_told(recipe)));
        }
    }
}

TEST_CASE("amounts that cannot be are refused where they stand") {
    const std::string mass = "\"value\": 10.5";
    for (const std::string bad :
         {"-10.5", "0", "1e300", "1e999", "NaN", "Infinity", "\"10.5\"", "0x10", "1,5", "+1"}) {
        CAPTURE(bad);
        const auto recipe =
            exchanged(Exchange::beerjson, with(sample("sample.json"), mass, "\"value\": " + bad));
        REQUIRE(is_told(recipe));
        // The place is that of the amount or, where a number is no JSON at all, of the number.
        CHECK(recipe.faults.front().place.position.line == 17);
    }
    for (const std::string bad : {"-4.5", "0", "1e300", "NaN", "inf", "4,5", "", "4.5 kg"}) {
        CAPTURE(bad);
        const auto recipe =
            exchanged(Exchange::beerxml, with(sample("sample.xml"), "<AMOUNT>4.5<", "<AMOUNT>" + bad + "<"));
        REQUIRE(is_told(recipe));
        CHECK(recipe.faults.front().place.position.line == 15);
    }
}

TEST_CASE("deep and wide documents end in one fault") {
    std::string deep;
    for (int level = 0; level < 200000; ++level) {
        deep += "<a>";
    }
    CHECK(exchanged(Exchange::beerxml, deep).faults.size() == 1);
    std::string closed = deep;
    for (int level = 0; level < 200000; ++level) {
        closed += "</a>";
    }
    CHECK(only_fault(Exchange::beerxml, closed).find("nesting too deep") != std::string::npos);
    std::string wide = "{\"beerjson\": {";
    for (int key = 0; key < 100000; ++key) {
        wide += "\"k" + std::to_string(key) + "\": 1,";
    }
    CHECK(only_fault(Exchange::beerjson, wide + "\"version\": 1}}").find("more than 256 keys") !=
          std::string::npos);
    std::string hops;
    for (int count = 0; count < 5000; ++count) {
        hops += "{\"name\": \"hop " + std::to_string(count) +
                "\", \"alpha_acid\": {\"unit\": \"%\", \"value\": 5}, \"amount\": {\"unit\": \"g\", "
                "\"value\": 1}},";
    }
    CHECK(only_fault(Exchange::beerjson,
                     with(sample("sample.json"), "\"hop_additions\": [", "\"hop_additions\": [" + hops))
              .find("additions of a kind") != std::string::npos);
}

TEST_CASE("notes that pretend to be this program's lead nowhere unseen") {
    const auto noted = [](const std::string& lines) {
        return with(sample("sample.json"), "\"carbonation\": 2.5",
                    "\"carbonation\": 2.5, \"notes\": \"entrywise/recipe/1 also says:\\n" + lines + "\"");
    };
    CHECK(is_told(exchanged(Exchange::beerjson, noted("hops.99.alpha: 5 %"))));
    CHECK(is_told(exchanged(Exchange::beerjson, noted("hops.1.nothing: 5 %"))));
    CHECK(is_told(exchanged(Exchange::beerjson, noted("name.x.y.z.a.b: 5 %"))));
    CHECK(is_told(exchanged(Exchange::beerjson, noted("format: left out"))));
    CHECK(is_told(exchanged(Exchange::beerjson, noted("grist: none"))));
}
