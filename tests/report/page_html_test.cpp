#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "report/page.hpp"
#include "tests/has.hpp"
#include "tests/report/sample_html.hpp"

using namespace entrywise;
using entrywise::testing::has;

TEST_CASE(
    "html: one report stands as it is, several with their parts named apart and headings a rank lower") {
    const Article article{"Slack Tide",
                          "<article id=\"report\"><h1>Slack Tide</h1><h2 id=\"a.b\">A</h2>"
                          "<h3>B</h3><a href=\"#a.b\">see</a></article>"};
    const std::string alone = page_of({article});
    CHECK(has(alone, "<title>Slack Tide</title>"));
    CHECK(has(alone, article.body));
    const std::string several = page_of({article, article});
    CHECK(count_of(several, "<h1>") == 1);
    CHECK(has(several, "<h2>Slack Tide</h2><h3 id=\"r1-a.b\">A</h3><h4>B</h4><a href=\"#r1-a.b\">"));
    CHECK(has(several, "id=\"r2-a.b\""));
    CHECK(has(several, "<a href=\"#r2-report\">"));
}

TEST_CASE("html: a page asks for nothing from anywhere") {
    const std::string page = page_of({{"Slack Tide", ""}});
    CHECK(has(page, "default-src 'none'"));
    for (const std::string asking : {"http:", "https:", "src=\"", "<link", "@import", "url(", "<script"}) {
        CHECK_FALSE_MESSAGE(has(page, asking), asking);
    }
}

TEST_CASE("html: a title is text") {
    const std::string page = page_of({{"</title><script>x</script>", ""}});
    CHECK(has(page, "<title>&lt;/title&gt;&lt;script&gt;x&lt;/script&gt;</title>"));
}
