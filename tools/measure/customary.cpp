#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <string>
#include <vector>

#include "judging/sheet.hpp"
#include "judging/tasting.hpp"
#include "reading/library.hpp"
#include "reading/perception_reader.hpp"
#include "reading/score_sheet_reader.hpp"
#include "tools/measure/customary_recipe.hpp"

namespace entrywise {

namespace {

constexpr double worth_telling = 0.8;
constexpr std::size_t most_told = 25;

/// What beers brewed as is customary lose in their own style.
class Measurement {
  public:
    explicit Measurement(const Library& library)
        : library_(library),
          score_sheet_(*read_score_sheet(*library.document("styles/sheet.yaml"), "styles/sheet.yaml")),
          perception_(
              *read_perception(*library.document("styles/perception.yaml"), "styles/perception.yaml")) {}

    void take(const Style& style) {
        const auto recipe = customary_recipe(style, library_.ingredients());
        if (!recipe) {
            return;
        }
        const Tasting tasting = taste(*recipe, perception_);
        const Sheet sheet = judge(tasting.beer, tasting.profile, style, score_sheet_);
        std::string dearest;
        for (const Finding& finding : sheet.findings) {
            points_by_finding_[id_of(finding)].push_back(finding.points);
            if (finding.points >= worth_telling) {
                dearest += fmt::format("  {} {:.1f}", id_of(finding), finding.points);
            }
        }
        at_risk_.push_back(sheet.total.median);
        fmt::print("{:<18} {:>5.1f}{}\n", style.code, sheet.total.median, dearest);
    }

    void print() {
        std::vector<std::pair<double, std::string>> dearest;
        for (const auto& [finding, points] : points_by_finding_) {
            double sum = 0.0;
            for (const double each : points) {
                sum += each;
            }
            dearest.emplace_back(-sum, fmt::format("{:<32} {:>5.1f} in {:>3}", finding, sum, points.size()));
        }
        std::sort(dearest.begin(), dearest.end());
        fmt::print("points of a finding, over all styles\n");
        for (std::size_t index = 0; index < std::min(most_told, dearest.size()); ++index) {
            fmt::print("{}\n", dearest[index].second);
        }
        std::sort(at_risk_.begin(), at_risk_.end());
        const std::size_t count = at_risk_.size();
        fmt::print(
            "points at risk in their own style: median {:.1f}, upper quarter from {:.1f}, worst {:.1f}, of "
            "{}\n",
            at_risk_[count / 2], at_risk_[3 * count / 4], at_risk_.back(), count);
    }

  private:
    const Library& library_;
    ScoreSheet score_sheet_;
    Perception perception_;
    std::map<std::string, std::vector<double>> points_by_finding_;
    std::vector<double> at_risk_;
};

int measure(const std::string& guide) {
    const Library library(embedded_documents());
    Measurement measurement(library);
    const std::vector<StyleName> names = library.style_names(guide);
    if (names.empty()) {
        fmt::print(stderr, "measure_customary: no guide '{}'\n", guide);
        return 2;
    }
    for (const StyleName& name : names) {
        measurement.take(*library.style(name));
    }
    measurement.print();
    return 0;
}

}  // namespace

}  // namespace entrywise

int main(int count, char** arguments) {
    return entrywise::measure(count > 1 ? arguments[1] : "bjcp-2021");
}
