#include "reading/library.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <set>
#include <string>

#include "base/file.hpp"
#include "base/text.hpp"
#include "reading/library_folders.hpp"
#include "tests/reading/only_line.hpp"
#include "tests/support/guide.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;
namespace fs = std::filesystem;

namespace {

/// A folder that is gone when the test is over.
class TemporaryFolder {
  public:
    explicit TemporaryFolder(const std::string& name)
        : path_(fs::temp_directory_path() / ("entrywise-" + name)) {
        fs::remove_all(path_);
        fs::create_directories(path_);
    }
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    ~TemporaryFolder() { fs::remove_all(path_); }

    std::string write(const std::string& name, const std::string& text) const {
        const fs::path file = path_ / name;
        fs::create_directories(file.parent_path());
        REQUIRE_FALSE(write_file_whole(file.string(), text));
        return file.string();
    }
    std::string string() const { return path_.string(); }

  private:
    fs::path path_;
};

Library opened(const LibraryFolders& folders) {
    const auto found = open_library(embedded_documents(), folders);
    REQUIRE(found);
    return *found;
}

const std::string house_style =
    "format: entrywise/style/1\ncode: H1\nname: Harbor Amber\ncategory: H Harbor Beers\nsource: a club's own "
    "style\n";

}  // namespace

TEST_CASE("a style holds what its guide prints") {
    // Beer Judge Certification Program, Beer Style Guidelines, 2021: American IPA.
    const auto style = usual_library().style({"bjcp-2021", "21A"});
    REQUIRE(style);
    CHECK(style->guide == "bjcp-2021");
    CHECK(style->name == "American IPA");
    CHECK(within(*style->ranges.original_gravity->low / specific_gravity, 1.056, 1e-9));
    CHECK(within(*style->ranges.original_gravity->high / specific_gravity, 1.070, 1e-9));
    CHECK(within(*style->ranges.bitterness->low / ibu, 40.0, 1e-9));
    CHECK(within(*style->ranges.bitterness->high / ibu, 70.0, 1e-9));
    CHECK(within(*style->ranges.alcohol->high / percent_by_volume, 7.5, 1e-9));
    CHECK(style->fermentation == "top");
}

TEST_CASE("words become levels, stated and assumed apart") {
    const auto style = usual_library().style({"bjcp-2021", "21A"});
    REQUIRE(style);
    // From the style file: hop medium-high..very high in the aroma, balance bitter..very bitter, smoke
    // assumed none.
    const auto& hop = style->expected[Attribute::aroma_hop];
    REQUIRE(hop);
    CHECK(hop->low == 5.0);
    CHECK(hop->high == 7.0);
    CHECK_FALSE(hop->assumed);
    CHECK(style->expected[Attribute::flavor_balance]->low == 5.0);
    CHECK(style->expected[Attribute::aroma_smoke]->assumed);
    CHECK(style->expected[Attribute::aroma_smoke]->high == 0.0);
    CHECK_FALSE(style->expected[Attribute::flavor_salt]);
    CHECK(style->custom.neighbors.at("22A") == "stronger, hoppier");
    CHECK(style->judgement_calls ==
          std::vector<Attribute>{Attribute::flavor_balance, Attribute::mouthfeel_astringency});
}

TEST_CASE("a range of a continuum leaves its upper border to the next style") {
    // Beer Judge Certification Program, Beer Style Guidelines, 2021: session strength is 3.0 to 5.0 %.
    const auto style = usual_library().style({"bjcp-2021", "21B-session"});
    REQUIRE(style);
    REQUIRE(style->ranges.alcohol);
    CHECK(style->ranges.alcohol->contains(3.0 * percent_by_volume));
    CHECK(style->ranges.alcohol->contains(4.99 * percent_by_volume));
    CHECK_FALSE(style->ranges.alcohol->contains(5.0 * percent_by_volume));
}

TEST_CASE("every style is sound and found by its name") {
    const auto names = usual_library().style_names("bjcp-2021");
    CHECK(names.size() == 139);
    for (const StyleName& name : names) {
        CAPTURE(name.code);
        const auto style = usual_library().style(name);
        REQUIRE(style);
        CHECK(style->code == name.code);
    }
}

TEST_CASE("codes come in the order of the guide") {
    const auto names = usual_library().style_names("bjcp-2021");
    const auto place = [&](const std::string& code) {
        return std::find(names.begin(), names.end(), StyleName{"bjcp-2021", code}) - names.begin();
    };
    CHECK(names.front().code == "1A");
    CHECK(place("2A") < place("10A"));
    CHECK(place("10A") < place("10B"));
    CHECK(place("9C") < place("10A"));
}

TEST_CASE("a code is found in any case, and an unknown one gets the nearest") {
    CHECK(usual_library().style({"BJCP-2021", "21b-RYE"})->code == "21B-rye");
    CHECK(only_line(usual_library().style({"bjcp-2021", "21Z"}).faults) ==
          "found no style '21Z' in the guide 'bjcp-2021', expected the code of a known style; "
          "nearest known: 21A. List the styles to see their codes.");
    CHECK(usual_library().style({"bjcp-2021", "American IPA"}).faults.at(0).nearest == "21A");
    CHECK(usual_library().style({"bjcp-2021", "irish stowt"}).faults.at(0).nearest == "15B");
    CHECK(usual_library().style({"bjpc-2021", "21A"}).faults.at(0).nearest == "bjcp-2021");
    CHECK(usual_library().style({"..", "../x"}).faults.size() == 1);
}

TEST_CASE("an ingredient is known by its name and by its aliases") {
    const KnownIngredients& known = usual_library().ingredients();
    const auto pale = known.fermentable(" Maris Otter ");
    REQUIRE(pale);
    CHECK(pale->name == "pale ale malt");
    // Definition of the scale: pale ale malt is the reference of what gives malt flavor.
    CHECK(pale->gives.malt == 1.0);
    CHECK(known.yeast("bavarian wheat")->phenolic);
    // Common practice: refined sugar is dry and all extract.
    CHECK(within(known.fermentable("sucrose")->extract.middle / percent, 100.0, 1e-9));
    CHECK_FALSE(known.hop("pale ale malt"));
    CHECK_FALSE(known.fermentable("pale"));
    CHECK_FALSE(known.yeast(""));
}

TEST_CASE("an unknown ingredient gets the nearest name as its entry writes it") {
    CHECK(usual_library().ingredients().nearest_hop("casacde") == "Cascade");
    CHECK(usual_library().ingredients().nearest_fermentable("mariss otter") == "maris otter");
    CHECK(usual_library().ingredients().nearest_yeast("xyzzy").empty());
}

TEST_CASE("other data files are read by their path") {
    const auto sheet = usual_library().document("styles/sheet.yaml");
    REQUIRE(sheet);
    CHECK(value_of(*sheet, "format")->text == "entrywise/sheet/1");
    CHECK_FALSE(usual_library().document("styles/nothing.yaml"));
}

TEST_CASE("embedded documents are sorted by path") {
    const auto documents = embedded_documents();
    CHECK(std::is_sorted(
        documents.begin(), documents.end(),
        [](const EmbeddedDocument& left, const EmbeddedDocument& right) { return left.path < right.path; }));
    CHECK(find_document(documents, "styles/sheet.yaml") != nullptr);
    CHECK(find_document(documents, "styles/sheet.yam") == nullptr);
}

TEST_CASE("a folder of styles adds a guide and replaces a style") {
    const TemporaryFolder folder("styles");
    folder.write("club/H1.yaml", house_style);
    const std::string replaced = folder.write(
        "bjcp-2021/21A.yaml",
        "format: entrywise/style/1\ncode: 21A\nname: Ours\ncategory: 21 IPA\nsource: a club's own style\n");
    const Library both = opened({.styles = folder.string(), .ingredients = {}});
    CHECK(both.style({"club", "h1"})->name == "Harbor Amber");
    CHECK(both.style({"bjcp-2021", "21A"})->name == "Ours");
    CHECK(both.style({"bjcp-2021", "21A"})->file == replaced);
    CHECK(both.style({"bjcp-2021", "21C"})->name == "Hazy IPA");
    CHECK(both.style_names("bjcp-2021").size() == 139);
    CHECK(both.guides() == std::vector<std::string>{"ba-2025", "bjcp-2021", "club"});
}

TEST_CASE("a fault in a style of a folder is told at its place, when the style is asked for") {
    const TemporaryFolder folder("bad-style");
    const std::string file =
        folder.write("club/H1.yaml", house_style + "aroma: {hops: low}\nflavor: {malt: lowe}\n");
    const std::string misnamed = folder.write("club/H2.yaml", house_style);
    const Library both = opened({.styles = folder.string(), .ingredients = {}});
    const auto style = both.style({"club", "H1"});
    REQUIRE(style.faults.size() == 2);
    CHECK(to_line(style.faults[0]) ==
          file +
              ":6:9: found the key 'hops', expected a key of the aroma: malt, caramel, toast, roast, hop, "
              "ester, "
              "phenol, alcohol, sour, funk, smoke, diacetyl, dms or sulfur; nearest known: hop");
    CHECK(to_line(style.faults[1]) ==
          file +
              ":7:16: found 'lowe', expected one or two of none, very low, low, medium-low, medium, "
              "medium-high, "
              "high or very high; nearest known: low. Write a span as low..high.");
    CHECK(only_line(both.style({"club", "H2"}).faults) ==
          misnamed + ":2:7: found 'H1', expected 'H2'. A style's file is named for its code.");
}

TEST_CASE("a folder of ingredients adds entries and replaces those of the same name") {
    const TemporaryFolder folder("ingredients");
    folder.write(
        "ours.yaml",
        "format: entrywise/hops/1\nhops:\n"
        "  - {name: Cascade, family: american, purpose: aroma, alpha: 9 +- 1 %, beta: 5 %, oil: 1 mL/100g, "
        "storage_loss: 50 %, source: our lot}\n"
        "  - {name: Garden Wall, family: english, purpose: aroma, alpha: 4 %, beta: 5 %, oil: 1 mL/100g, "
        "storage_loss: 50 %, source: our lot}\n");
    const Library both = opened({.styles = {}, .ingredients = folder.string()});
    const KnownIngredients& known = both.ingredients();
    CHECK(within(known.hop("cascade")->alpha.middle / percent, 9.0, 1e-9));
    CHECK(within(known.hop("US Cascade")->alpha.middle / percent, 9.0, 1e-9));
    CHECK(known.hop("garden wall")->name == "Garden Wall");
    CHECK(known.hop("Citra")->name == usual_library().ingredients().hop("Citra")->name);
    CHECK(known.nearest_hop("gardn wall") == "Garden Wall");
}

TEST_CASE("a fault in an ingredient file of a folder is told when the folder is opened") {
    const TemporaryFolder folder("bad-ingredients");
    const std::string file = folder.write("ours.yaml", "format: entrywise/hops/2\n");
    const auto found = open_library(embedded_documents(), {.styles = {}, .ingredients = folder.string()});
    CHECK(only_line(found.faults).starts_with(file + ":1:9: "));
}

TEST_CASE("a folder that is not there is a fault") {
    const auto found = open_library(embedded_documents(), {.styles = "no/such/folder", .ingredients = {}});
    CHECK(only_line(found.faults) ==
          "no/such/folder: found No such file or directory, expected a readable folder. Check the path.");
}
