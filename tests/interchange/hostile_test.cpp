#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <set>
#include <string>
#include <utility>
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

namespace {

/// Where the content of each element of a record set begins and ends; no element of the sample holds one of
/// its own name.
std::vector<std::pair<std::size_t, std::size_t>> contents_of(const std::string& xml) {
    std::vector<std::pair<std::size_t, std::size_t>> contents;
    for (std::size_t at = xml.find('<'); at != std::string::npos; at = xml.find('<', at + 1)) {
        const std::size_t end = xml.find('>', at);
        const std::string name = xml.substr(at + 1, end - at - 1);
        if (name.front() == '/' || name.front() == '?') {
            continue;
        }
        const std::size_t close = xml.find("</" + name + ">", end);
        REQUIRE(close != std::string::npos);
        contents.emplace_back(end + 1, close);
    }
    return contents;
}

/// What stands in records where a number or a word should: mistyped, left out, or put there to do harm.
std::vector<std::string> spoilt_texts() {
    return {"",
            " ",
            "NaN",
            "nan",
            "inf",
            "-inf",
            "-1",
            "-1e-9",
            "0",
            "1e400",
            "1e-400",
            "1e300",
            "1e-300",
            "1" + std::string(400, '0'),
            "0x10",
            "1,5",
            "5 kg",
            "true",
            "-",
            "%s%n",
            "&lt;x&gt;",
            "&#0;",
            "&#x1F;",
            "&amp;",
            "&x;",
            "<![CDATA[7]]>",
            "<!-- 7 -->",
            "<?x 7?>",
            "\xC3\xA9\xE2\x80\xAE",
            "\xFF",
            std::string(100000, 'x')};
}

const std::string spoilt_table =
    "ingredient,amount,use,time,alpha,color,extract,attenuation,temperature,form,kind\n"
    "name,Table Sample\n"
    "style,21A\n"
    "volume,20 L\n"
    "efficiency,72 %\n"
    "boil,60 min\n"
    "mash,66 C,,60 min\n"
    "fermentation,19 C,,10 d\n"
    "carbonation,2.5 vol\n"
    "Maris Otter,5 kg,mash,,,6 EBC,80 %\n"
    "\"Goldings, East Kent\",30 g,boil,60 min,5 %,,,,,pellet\n"
    "Cascade,60 g,dry hop,4 d\n"
    "coriander seed,10 g,boil,5 min,,,,,,,spice\n"
    "english ale,,yeast,,,,,75 %\n";

/// A recipe, or faults that name the file.
bool is_recipe_or_told(const Outcome<ExchangedRecipe>& recipe) {
    return recipe || (!recipe.faults.empty() && recipe.faults.front().place.file == "file");
}

}  // namespace

TEST_CASE("a record set with any content spoilt is a recipe or a located fault") {
    const std::string whole = sample("sample.xml");
    const auto contents = contents_of(whole);
    CHECK(contents.size() > 70);
    for (const auto& content : contents) {
        const auto begin = content.first;
        const auto end = content.second;
        CAPTURE(whole.substr(begin, 40));
        for (const std::string& text : spoilt_texts()) {
            CAPTURE(text.substr(0, 40));
            const auto recipe =
                exchanged(Exchange::beerxml, std::string(whole).replace(begin, end - begin, text));
            // Bytes in no known encoding stand nowhere in particular.
            REQUIRE((recipe || is_told(recipe) || text == "\xFF"));
            REQUIRE(is_recipe_or_told(recipe));
        }
        for (const std::string elements : {"<A/>", "<A>7</A>", "<A>7</A><A>7</A>",
                                           "<RECIPE><NAME>x</NAME></RECIPE>", "7<A>7</A>7", "<A b=\"7\"/>"}) {
            CAPTURE(elements);
            const auto recipe =
                exchanged(Exchange::beerxml, std::string(whole).replace(begin, end - begin, elements));
            REQUIRE((recipe || is_told(recipe)));
        }
    }
}

TEST_CASE("a record that stands twice is a recipe or a located fault") {
    const std::string whole = sample("sample.xml");
    for (const auto& [begin, end] : contents_of(whole)) {
        const std::size_t open = whole.rfind('<', begin - 1);
        const std::size_t close = whole.find('>', end) + 1;
        const std::string element = whole.substr(open, close - open);
        const auto recipe = exchanged(Exchange::beerxml, std::string(whole).insert(close, element));
        CAPTURE(element.substr(0, 60));
        REQUIRE((recipe || !recipe.faults.empty()));
    }
}

TEST_CASE("a table cut off at every byte is a recipe or told faults") {
    sound(Exchange::table, spoilt_table);
    std::size_t recipes = 0;
    for (std::size_t size = 0; size < spoilt_table.size(); ++size) {
        CAPTURE(size);
        const auto recipe = exchanged(Exchange::table, spoilt_table.substr(0, size));
        REQUIRE(is_recipe_or_told(recipe));
        recipes += recipe ? std::size_t{1} : 0;
    }
    CHECK(recipes < spoilt_table.size() / 2);
}

TEST_CASE("a table with any field spoilt is a recipe or told faults") {
    std::size_t tried = 0;
    for (std::size_t begin = 0; begin < spoilt_table.size(); ++begin) {
        const bool is_a_field =
            begin == 0 || spoilt_table[begin - 1] == ',' || spoilt_table[begin - 1] == '\n';
        if (!is_a_field) {
            continue;
        }
        const std::size_t end = spoilt_table.find_first_of(",\n", begin);
        std::vector<std::string> texts = spoilt_texts();
        texts.insert(texts.end(), {"\"", "\"\"", "\"x", "x\"", ",,,,,,,,,,,,", "\n", "\r", "\t", ";",
                                   std::string(1, '\0')});
        for (const std::string& text : texts) {
            CAPTURE(text.substr(0, 40));
            const auto recipe =
                exchanged(Exchange::table, std::string(spoilt_table).replace(begin, end - begin, text));
            REQUIRE(is_recipe_or_told(recipe));
            ++tried;
        }
    }
    CHECK(tried > 2000);
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
