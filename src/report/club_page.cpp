#include "report/club_page.hpp"

#include <algorithm>
#include <set>

#include "base/number.hpp"
#include "report/filled_template.hpp"
#include "report/page_values.hpp"
#include "report/sheet_text.hpp"
#include "report/version.hpp"

namespace entrywise {

namespace {

Json row_values(const ClubRow& row, std::size_t order) {
    return {{"entry", row.entry},
            {"name", row.name},
            {"category", row.category},
            {"style", row.style},
            {"status", row.status},
            {"order", std::to_string(order)},
            {"at_risk", points_text(row.at_risk)},
            {"span", row.at_risk_span},
            {"suggestion", row.suggestion},
            {"details", text_values(row.details)},
            {"has_details", !row.details.empty()}};
}

std::size_t order_of(const std::string& status, const std::vector<ClubStatus>& statuses) {
    const auto found = std::find_if(statuses.begin(), statuses.end(),
                                    [&](const ClubStatus& each) { return each.word == status; });
    return static_cast<std::size_t>(found - statuses.begin());
}

Json status_values(const ClubPage& page) {
    Json values = Json::array();
    for (const ClubStatus& status : page.statuses) {
        const auto count = std::count_if(page.rows.begin(), page.rows.end(),
                                         [&](const ClubRow& row) { return row.status == status.word; });
        values.push_back(
            {{"word", status.word}, {"meaning", status.meaning}, {"count", std::to_string(count)}});
    }
    return values;
}

}  // namespace

std::string club_page(const ClubPage& page) {
    std::vector<ClubRow> rows = page.rows;
    std::stable_sort(rows.begin(), rows.end(), [&](const ClubRow& left, const ClubRow& right) {
        return order_of(left.status, page.statuses) < order_of(right.status, page.statuses);
    });
    std::set<std::string> categories;
    Json values;
    values["title"] = page.title;
    values["count"] = std::to_string(rows.size());
    values["statuses"] = status_values(page);
    values["rows"] = Json::array();
    for (const ClubRow& row : rows) {
        categories.insert(row.category);
        values["rows"].push_back(row_values(row, order_of(row.status, page.statuses)));
    }
    values["categories"] = text_values({categories.begin(), categories.end()});
    Json shell;
    shell["program"] = program_version();
    shell["title"] = page.title;
    shell["script"] = true;
    shell["bodies"] = Json::array({{{"body", filled("club.mustache", values)}}});
    return filled("page.mustache", shell);
}

}  // namespace entrywise
