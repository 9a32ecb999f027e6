#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

#include "reading/library.hpp"
#include "reading/recipe_file.hpp"

using namespace entrywise;

namespace {

struct BadFile {
    std::string name;
    std::vector<std::string> lines;  ///< all that is to be said of it, without the file's name
};

const std::vector<BadFile> bad_files{
    {"alias-bomb",
     {"1:4: found the anchor '&a', expected the value alone. Delete every anchor, or put text that starts "
      "with & in quotes.",
      "2:8: found the alias '*a', expected the value itself. Write out every alias, or put text that starts "
      "with * in quotes."}},
    {"alias-cycle",
     {"1:4: found the anchor '&a', expected the value alone. Delete every anchor, or put text that starts "
      "with & in quotes.",
      "2:6: found the alias '*a', expected the value itself. Write out every alias, or put text that starts "
      "with * in quotes."}},
    {"alias",
     {"5:5: found the anchor '&base', expected the value alone. Delete every anchor, or put text that starts "
      "with & in quotes.",
      "6:5: found the alias '*base', expected the value itself. Write out every alias, or put text that "
      "starts with * in quotes."}},
    {"alpha-too-high", {"7:39: found '55 %', expected a share from 0 % to 30 %"}},
    {"at-sign",
     {"4:8: found a sign that no value can start with, expected a text, a list or a map. Put text that "
      "starts with a sign such as @ or % in quotes."}},
    {"boil-of-days", {"6:14: found '2 d', expected a duration from 0 min to 24 h"}},
    {"comments-only", {"found an empty file, expected a document with a format line"}},
    {"control-character", {"4:3: found the control character \\u{1B}, expected printable text. Delete it."}},
    {"decimal-comma",
     {"5:33: found '5,2 kg', expected a mass with its unit (kg, g, lb, oz). Write a dot as the decimal "
      "mark."}},
    {"deep-nesting",
     {"4:71: found more than 64 lists or maps in one another, expected a file of a sensible depth"}},
    {"duplicate-key-in-item",
     {"5:39: found 'mass' again, expected each key once. It stands in line 5 already: keep one of the two."}},
    {"duplicate-key",
     {"6:1: found 'name' again, expected each key once. It stands in line 2 already: keep one of the two."}},
    {"empty-grist", {"4:8: found an empty grist, expected at least one malt, sugar or extract"}},
    {"empty", {"found an empty file, expected a document with a format line"}},
    {"escaped-control-character",
     {"4:8: found a control character written as an escape, expected printable text. Delete it."}},
    {"extract-given-twice",
     {"5:69: found both 'extract' and 'sugar_content', expected one of them. They mean the same: delete "
      "one."}},
    {"fermentation-of-a-word",
     {"6:15: found 'warm', expected the fermentation as a map. Write keys and values: {key: value}, or one "
      "key a line."}},
    {"gravities-exchanged",
     {"6:52: found '1.050', expected a final gravity not above the original gravity. Check whether the two "
      "are exchanged."}},
    {"grist-as-map",
     {"4:8: found a map, expected a list of malts, sugars and extracts. Start each item with a dash, or put "
      "brackets around them."}},
    {"hexadecimal-number", {"5:33: found '0x10 kg', expected a mass with its unit (kg, g, lb, oz)"}},
    {"hop-without-add", {"7:5: found a hop addition without 'add', expected the key 'add'"}},
    {"infinite-number", {"5:33: found '.inf kg', expected a mass with its unit (kg, g, lb, oz)"}},
    {"inner-byte-order-mark",
     {"5:17: found a byte order mark inside the text, expected one at the start at most. Delete the "
      "invisible character U+FEFF."}},
    {"item-as-text",
     {"5:5: found 'pale ale malt', expected a grist item as a map. Write keys and values: {key: value}, or "
      "one key a line."}},
    {"list-as-key",
     {"4:1: found a list or map as a key, expected a word as a key. Put the key before the colon; put text "
      "in quotes that starts with a bracket."}},
    {"list-then-key",
     {"2:1: found 'name:' after the end of the document, expected one list or one map in a file. Check the "
      "indentation: keys and dashes of one level start in the same column."}},
    {"judged-before-packaged",
     {"6:39: found '2026-09-01', expected a day not before the beer was packaged. Check whether the two are "
      "exchanged."}},
    {"lone-carriage-return",
     {"1:27: found a carriage return without a line feed, expected lines that end with a line feed. Save the "
      "file with line ends as Unix or Windows writes them."}},
    {"mash-too-hot", {"7:19: found '153 C', expected a temperature from -10 to 150 C"}},
    {"merge-key",
     {"5:6: found the merge key '<<', expected keys written out. Write out the keys that it would bring "
      "in."}},
    {"missing-bracket",
     {"5:5: found a bracket that is never closed, expected pairs of brackets, with commas between what they "
      "hold. Put the closing bracket, and check the commas and colons inside."}},
    {"missing-quotation-mark",
     {"4:8: found a quotation mark that is never closed, expected pairs of quotation marks. Put the closing "
      "one; inside single quotes write two for one."}},
    {"missing-space-after-colon",
     {"4:1: found 'style:bjcp-2021/21A', expected a key, a colon, a space and a value. Put a space after the "
      "colon."}},
    {"missing-space-in-braces",
     {"5:27: found 'mass:5 kg', expected a key, a colon, a space and a value. Put a space after the colon."}},
    {"missing-unit",
     {"5:33: found '5', expected a mass with its unit (kg, g, lb, oz). Put the unit behind the number, for "
      "instance 5 kg."}},
    {"misspelled-unit",
     {"5:33: found '5 kgs', expected a mass with its unit (kg, g, lb, oz); nearest known: kg"}},
    {"nameless-malt",
     {"5:5: found a grist item without a name, expected one of the keys 'malt', 'sugar' or 'extract'"}},
    {"negative-mass", {"5:33: found '-5 kg', expected a mass from 0 to 100000 kg"}},
    {"no-format",
     {"1:1: found no format line, expected 'format: entrywise/recipe/1'. Put it first: it says what the file "
      "holds and in which version."}},
    {"no-grist", {"1:1: found a recipe without 'grist', expected the key 'grist'"}},
    {"no-mass",
     {"5:33: found '0 kg', expected more than nothing. Give the amount, or leave the whole entry out."}},
    {"no-such-day",
     {"6:19: found '2026-02-30', expected a day of the calendar. Write it as year-month-day: 2026-10-01."}},
    {"no-value", {"4:1: found 'style' without a value, expected a value. Give a value, or leave it out."}},
    {"no-volume", {"1:1: found a recipe without 'volume', expected the key 'volume'"}},
    {"not-a-number", {"5:33: found 'nan kg', expected a mass with its unit (kg, g, lb, oz)"}},
    {"not-utf-8", {"4:4: found the byte \\x{F6}, expected text in UTF-8. Save the file as UTF-8."}},
    {"null-in-list",
     {"6:3: found an item without a value, expected a value. Give a value, or leave it out."}},
    {"null-value", {"4:8: found '~', expected a value. Give a value, or leave it out."}},
    {"only-one-word",
     {"1:1: found 'name:Test', expected a key, a colon, a space and a value. Put a space after the colon."}},
    {"pitch-without-unit",
     {"5:37: found '0.75', expected a pitch rate with its unit (M/mL/P). Put the unit behind the number, for "
      "instance 0.75 M/mL/P."}},
    {"rest-without-time", {"6:41: found the diacetyl rest without 'time', expected the key 'time'"}},
    {"root-comma",
     {"1:1: found ',' after the end of the document, expected one list or one map in a file. Check the "
      "indentation: keys and dashes of one level start in the same column."}},
    {"root-list",
     {"1:1: found a list, expected a recipe as a map. Write keys and values: {key: value}, or one key a "
      "line."}},
    {"second-document",
     {"6:1: found a second document, expected one document a file. Delete the line ---, or put what follows "
      "into a file of its own."}},
    {"several-faults",
     {"3:9: found '20', expected a volume with its unit (L, mL, gal, qt). Put the unit behind the number, "
      "for instance 20 L.",
      "4:1: found the key 'stile', expected a key of a recipe: format, name, style, base_style, declares, "
      "volume, boil, efficiency, mash, grist, hops, extras, yeast, fermentation, conditioning, dates or "
      "measured; "
      "nearest known: style",
      "5:14: found 'sixty min', expected a duration with its unit (min, h, d, wk)",
      "7:33: found '-1 kg', expected a mass from 0 to 100000 kg",
      "8:12: found 'crystl medium', expected a known malt, sugar or extract, or its extract and color beside "
      "it; nearest known: crystal medium. Write the known name, or add extract and color: a share such as "
      "'extract: 80 %' and a color such as 'color: 10 EBC'.",
      "8:40: found the key 'ad', expected a key of a grist item: malt, extract, sugar_content, color, "
      "moisture, fermentability, mass or add; nearest known: add",
      "10:39: found '55 %', expected a share from 0 % to 30 %",
      "11:26: found '30 m', expected a mass with its unit (kg, g, lb, oz); nearest known: mg",
      "11:49: found 'dryhop', expected mash, first wort, boil, whirlpool or dry hop; nearest known: dry hop",
      "12:43: found '178 %', expected an attenuation from 0 to 130 %"}},
    {"stray-bracket",
     {"4:8: found a closing bracket that was never opened, expected pairs of brackets. Delete it, or put the "
      "opening one before."}},
    {"style-with-two-slashes",
     {"4:8: found 'a/b/c', expected a style as guide/code. Write it as bjcp-2021/21A."}},
    {"tab-indentation", {"5:1: found a tab in the indentation, expected spaces. Indent with spaces only."}},
    {"tag",
     {"5:12: found the tag '!!str', expected the value alone. Delete the tag, or put text that starts with ! "
      "in quotes."}},
    {"truth-as-yes", {"6:26: found 'yes', expected true or false"}},
    {"two-colons",
     {"4:12: found a colon where none can stand, expected one key and one value a line. Put text that holds "
      "a colon in quotes, and check the indentation."}},
    {"unit-of-another-kind", {"5:33: found '5 L', expected a mass with its unit (kg, g, lb, oz)"}},
    {"unknown-alias",
     {"4:8: found an alias, expected the value itself. Write the value out, or put text that starts with * "
      "in quotes."}},
    {"unknown-extract",
     {"5:15: found 'mystery syrup', expected a known malt, sugar or extract, or its extract and color beside "
      "it. Write the known name, or add sugar_content and color: a share such as 'sugar_content: 80 %' and a "
      "color such as 'color: 10 EBC'."}},
    {"unknown-hop",
     {"7:11: found 'Casacde', expected a known hop, or its alpha acids beside it; nearest known: Cascade. "
      "Write the known name, or add alpha acids such as 'alpha: 5.5 %'."}},
    {"unknown-key-in-hop",
     {"7:32: found the key 'alfa', expected a key of a hop addition: form, hop, alpha, beta, oil, "
      "storage_loss, family, mass, add, time or temperature"}},
    {"unknown-key",
     {"4:1: found the key 'griat', expected a key of a recipe: format, name, style, base_style, declares, "
      "volume, boil, efficiency, mash, grist, hops, extras, yeast, fermentation, conditioning, dates or "
      "measured; "
      "nearest known: grist"}},
    {"unknown-malt",
     {"5:12: found 'crystl medium', expected a known malt, sugar or extract, or its extract and color beside "
      "it; nearest known: crystal medium. Write the known name, or add extract and color: a share such as "
      "'extract: 80 %' and a color such as 'color: 10 EBC'."}},
    {"unknown-word",
     {"7:37: found 'wirlpool', expected mash, first wort, boil, whirlpool or dry hop; nearest known: "
      "whirlpool"}},
    {"unknown-yeast",
     {"6:16: found 'amercan ale', expected a known yeast class, or its attenuation beside it; nearest known: "
      "american ale. Write the known name, or add the apparent attenuation such as 'attenuation: 76 %'."}},
    {"wrong-indentation",
     {"6:2: found a line that does not fit the map above it, expected a key, a colon, a space and a value. "
      "Check the colon and the indentation of this line and the one above."}},
    {"wrong-kind",
     {"1:9: found 'entrywise/style/1', expected 'entrywise/recipe/1'. Check that this is the right file."}},
    {"wrong-version",
     {"1:9: found 'entrywise/recipe/2', expected 'entrywise/recipe/1'. This program reads version 1 alone."}},
};

const std::filesystem::path folder = std::filesystem::path(ENTRYWISE_SOURCE_DIR) / "tests/data/bad";

}  // namespace

TEST_CASE("each bad file is refused with its whole message") {
    const Library library(embedded_documents());
    for (const BadFile& bad : bad_files) {
        CAPTURE(bad.name);
        const std::string path = (folder / (bad.name + ".yaml")).string();
        const auto recipe = read_recipe(path, library.ingredients());
        CHECK_FALSE(recipe);
        REQUIRE(recipe.faults.size() == bad.lines.size());
        for (std::size_t index = 0; index < bad.lines.size(); ++index) {
            const std::string separator = recipe.faults[index].place.position.line > 0 ? ":" : ": ";
            CHECK(to_line(recipe.faults[index]) == path + separator + bad.lines[index]);
        }
    }
}

TEST_CASE("each bad file has its message in the table") {
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        const std::string name = entry.path().stem().string();
        CAPTURE(name);
        CHECK(std::any_of(bad_files.begin(), bad_files.end(),
                          [&](const BadFile& bad) { return bad.name == name; }));
    }
}
