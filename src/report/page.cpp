#include "report/page.hpp"

#include <fmt/format.h>

#include <cstddef>
#include <string_view>

#include "report/filled_template.hpp"
#include "report/version.hpp"

namespace entrywise {

namespace {

std::string with_each(std::string text, std::string_view part, std::string_view in_its_place) {
    for (std::size_t at = text.find(part); at != std::string::npos;
         at = text.find(part, at + in_its_place.size())) {
        text.replace(at, part.size(), in_its_place);
    }
    return text;
}

std::string prefix_of(std::size_t index) {
    return fmt::format("r{}-", index + 1);
}

/// A report as one of several: its headings a rank lower, the names of its parts its own. Texts hold no `<`
/// and no quotation mark, so that only markup is touched.
std::string body_among_others(const Article& article, std::size_t index) {
    std::string body = article.body;
    for (const char* const pair : {"43", "32", "21"}) {
        const char to = pair[0];
        const char from = pair[1];
        body = with_each(body, fmt::format("<h{}", from), fmt::format("<h{}", to));
        body = with_each(body, fmt::format("</h{}>", from), fmt::format("</h{}>", to));
    }
    body = with_each(body, " id=\"", " id=\"" + prefix_of(index));
    return with_each(body, " href=\"#", " href=\"#" + prefix_of(index));
}

}  // namespace

std::string page_of(const std::vector<Article>& articles) {
    Json values;
    values["program"] = program_version();
    values["bodies"] = Json::array();
    if (articles.size() == 1) {
        values["title"] = articles.front().title;
        values["bodies"].push_back({{"body", articles.front().body}});
        return filled("page.mustache", values);
    }
    values["title"] = fmt::format("{} reports", articles.size());
    values["several"] = values["title"];
    values["contents"] = Json::array();
    for (std::size_t index = 0; index < articles.size(); ++index) {
        values["contents"].push_back(
            {{"anchor", prefix_of(index) + "report"}, {"entry", articles[index].title}});
        values["bodies"].push_back({{"body", body_among_others(articles[index], index)}});
    }
    return filled("page.mustache", values);
}

}  // namespace entrywise
