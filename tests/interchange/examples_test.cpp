#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "base/file.hpp"
#include "base/number.hpp"
#include "base/text.hpp"
#include "brewing/brew.hpp"
#include "interchange/json_document.hpp"
#include "interchange/xml_document.hpp"
#include "tests/interchange/support.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

const std::string folder = ENTRYWISE_SOURCE_DIR "/tests/data/beerjson/examples";

std::vector<std::string> examples() {
    std::vector<std::string> paths;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        if (entry.is_regular_file()) {
            paths.push_back(entry.path().string());
        }
    }
    std::sort(paths.begin(), paths.end());
    return paths;
}

// All that hold recipes, but one that is empty but for a fining.
const std::set<std::string> complete{"BrettDosedKegsSaison.json",
                                     "CheaterHops.json",
                                     "FirstWortHopAddition.json",
                                     "KettleSour.json",
                                     "MedievalAle.json",
                                     "SourFruitedCopitch.json",
                                     "SourMash.json",
                                     "SpargeAcidification.json",
                                     "bitter.json",
                                     "bitter.xml",
                                     "ipa.json",
                                     "ipa.xml",
                                     "kolsch.json",
                                     "kolsch.xml",
                                     "one-hop.json",
                                     "one-hop.xml",
                                     "recipes.json",
                                     "summer-bitter.json",
                                     "summer-bitter.xml"};

/// What a file states of its beer, as it states it.
std::string stated_in(const std::string& path, const std::string& text) {
    const bool is_json = path.ends_with(".json");
    const auto document = is_json ? json_document(text, path) : xml_document(text, path);
    REQUIRE(document);
    const Node& root = document->entries.front().value;
    const Node& recipe = is_json ? value_of(root, "recipes")->items.front() : root.entries.front().value;
    std::vector<std::string> stated;
    for (const std::string key : {"original_gravity", "final_gravity", "color_estimate", "OG", "FG", "EST_OG",
                                  "EST_FG", "IBU", "EST_COLOR", "EST_ABV"}) {
        const Node* const node = value_of(recipe, key);
        const Node* const value =
            node == nullptr || node->kind != NodeKind::map ? node : value_of(*node, "value");
        if (value != nullptr) {
            stated.push_back(key + ' ' + value->text);
        }
    }
    return stated.empty() ? "nothing" : joined(stated, ", ");
}

}  // namespace

TEST_CASE("every published example reads, and each whole recipe gets its numbers") {
    std::set<std::string> read;
    const auto paths = examples();
    CHECK(paths.size() == 48);
    for (const std::string& path : paths) {
        CAPTURE(path);
        const auto text = read_file(path, most_exchange_bytes);
        REQUIRE(text);
        const auto exchange = exchange_of(path, *text);
        REQUIRE(exchange);
        const auto recipe = read_exchange(*exchange, *text, path, {}, known_ingredients());
        if (!recipe) {
            CHECK_FALSE(recipe.faults.empty());
            continue;
        }
        read.insert(std::filesystem::path(path).filename().string());
        Deviates deviates(usual_draws);
        const Beer beer = brew(recipe->recipe, deviates);
        const double original = in(beer.original_gravity.total.median(), specific_gravity);
        const double final = in(beer.final_gravity.median(), specific_gravity);
        const double bitterness = in(beer.bitterness.total.median(), ibu);
        const double color = in(beer.color.total.median(), srm);
        MESSAGE(fmt::format("{}: original gravity {}, final gravity {}, {} IBU, {} SRM; stated: {}",
                            std::filesystem::path(path).filename().string(), fixed(original, 3),
                            fixed(final, 3), fixed(bitterness, 0), fixed(color, 1), stated_in(path, *text)));
        // A beer of these examples: between a table beer and a barley wine (common practice).
        CHECK(original > 1.010);
        CHECK(original < 1.130);
        CHECK(final < original);
        CHECK(bitterness >= 0.0);
        CHECK(color > 0.5);
    }
    CHECK(read == complete);
}

// The same recipe in both standards, as the package publishes it. The JSON lacks the moisture, has the yield
// as a potential and no measurements, so that the two differ by little and only there.
TEST_CASE("a recipe that was published in both standards makes the same beer in both") {
    for (const std::string name : {"kolsch", "one-hop", "bitter"}) {
        CAPTURE(name);
        const auto gravity_and_bitterness = [&](const std::string& path) {
            const auto text = read_file(folder + path, most_exchange_bytes);
            REQUIRE(text);
            const auto recipe =
                read_exchange(*exchange_of(path, *text), *text, path, {}, known_ingredients());
            REQUIRE(recipe);
            Deviates deviates(usual_draws);
            const Beer beer = brew(recipe->recipe, deviates);
            return std::pair(in(beer.original_gravity.total.median(), specific_gravity),
                             in(beer.bitterness.total.median(), ibu));
        };
        const auto [json_gravity, json_ibu] = gravity_and_bitterness("/converted/" + name + ".json");
        const auto [xml_gravity, xml_ibu] = gravity_and_bitterness("/xml/" + name + ".xml");
        CHECK(std::abs(json_gravity - xml_gravity) < 0.0015);
        CHECK(std::abs(json_ibu - xml_ibu) < 2.0);
    }
}

// Published with an original gravity and an IBU number by the formula of Tinseth; efficiency, hops and times
// are given, so that gravity has to agree, and bitterness by the same formula.
TEST_CASE("gravity agrees with what the examples state") {
    struct Stated {
        const char* path;
        double gravity;
    };
    for (const Stated& stated :
         {Stated{"/xml/kolsch.xml", 1.049}, Stated{"/xml/bitter.xml", 1.049},
          Stated{"/converted/kolsch.json", 1.049}, Stated{"/converted/bitter.json", 1.049}}) {
        const std::string path = stated.path;
        CAPTURE(path);
        const auto text = read_file(folder + path, most_exchange_bytes);
        REQUIRE(text);
        const auto recipe = read_exchange(*exchange_of(path, *text), *text, path, {}, known_ingredients());
        REQUIRE(recipe);
        Deviates deviates(usual_draws);
        const Beer beer = brew(recipe->recipe, deviates);
        const auto interval = beer.original_gravity.total.interval();
        CHECK(in(interval.low, specific_gravity) <= stated.gravity);
        CHECK(in(interval.high, specific_gravity) >= stated.gravity);
    }
}
