#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "brewing/brew.hpp"
#include "judging/sheet.hpp"
#include "reading/library.hpp"
#include "reading/perception_reader.hpp"
#include "reading/score_sheet_reader.hpp"
#include "sensing/sense.hpp"
#include "tools/measure/real_recipes.hpp"

namespace entrywise {

namespace {

/// Signed steps by which the median level lies outside what the style accepts.
double outside(double level, const Expectation& expectation) {
    return level > expectation.high ? level - expectation.high : std::min(level - expectation.low, 0.0);
}

/// The mean and the count of what was added.
struct Mean {
    double sum = 0.0;
    double absolute = 0.0;
    int count = 0;
    int beyond_one = 0;

    void add(double value) {
        sum += value;
        absolute += std::abs(value);
        beyond_one += std::abs(value) > 1.0 ? 1 : 0;
        ++count;
    }
};

class Measurement {
  public:
    explicit Measurement(const Library& library) : library_(library) {
        const auto document = library.document("styles/sheet.yaml");
        const auto score_sheet = read_score_sheet(*document, "styles/sheet.yaml");
        score_sheet_ = *score_sheet;
        perception_ = *read_perception(*library.document("styles/perception.yaml"), "styles/perception.yaml");
    }

    void take(const std::string& folder, const RealRecipe& entry) {
        const auto recipe = recipe_of(entry, folder, library_);
        if (recipe) {
            compare_gravities(entry, *recipe);
            hold(entry, with_stated_gravities(*recipe, entry));
        }
    }

    void print() const {
        fmt::print("{:<28} {:>7} {:>9} {:>6} {:>6}\n", "attribute", "bias", "mean off", "over 1", "of");
        for (const auto& [name, mean] : bias_) {
            const double count = mean.count;
            fmt::print("{:<28} {:>+7.2f} {:>9.2f} {:>6} {:>6}\n", name, mean.sum / count,
                       mean.absolute / count, mean.beyond_one, mean.count);
        }
        print_points("all", at_risk_);
        print_points("winners", winners_at_risk_);
        fmt::print(
            "gravity worked out against stated: original {:+.4f} (mean off {:.4f}), final {:+.4f} ({:.4f})\n",
            original_.sum / original_.count, original_.absolute / original_.count, final_.sum / final_.count,
            final_.absolute / final_.count);
        fmt::print("stated inside the 80 % interval: original {} of {}, final {} of {}\n", original_inside_,
                   original_.count, final_inside_, final_.count);
    }

  private:
    void compare_gravities(const RealRecipe& entry, const Recipe& recipe) {
        Deviates deviates(usual_draws);
        const Beer beer = brew(recipe, deviates);
        const auto compare = [](std::optional<double> stated, const Estimate<SpecificGravity>& worked_out,
                                Mean& mean, int& inside) {
            if (stated) {
                const auto interval = worked_out.interval();
                mean.add(interval.median.value() - *stated);
                inside += interval.low.value() <= *stated && *stated <= interval.high.value() ? 1 : 0;
            }
        };
        compare(entry.original_gravity, beer.original_gravity.total, original_, original_inside_);
        compare(entry.final_gravity, beer.final_gravity, final_, final_inside_);
    }

    /// Against the accepted style that it loses least in.
    void hold(const RealRecipe& entry, const Recipe& recipe) {
        Deviates deviates(usual_draws);
        const Beer beer = brew(recipe, deviates);
        const Profile profile = sense(beer, perception_, deviates);
        std::optional<Style> best;
        Sheet best_sheet;
        for (const std::string& code : entry.styles) {
            const auto style = library_.style({"bjcp-2021", code});
            if (!style) {
                continue;
            }
            const Sheet sheet = judge(beer, profile, *style, score_sheet_);
            if (!best || sheet.total.median < best_sheet.total.median) {
                best = *style;
                best_sheet = sheet;
            }
        }
        if (!best) {
            return;
        }
        record(entry, profile, *best, best_sheet);
    }

    void record(const RealRecipe& entry, const Profile& profile, const Style& style, const Sheet& sheet) {
        for (const Attribute attribute : all_attributes()) {
            const bool is_addition =
                attribute == Attribute::flavor_spice || attribute == Attribute::flavor_salt;
            const auto& expectation = style.expected[attribute];
            if (expectation && !(is_addition && entry.additions_left_out)) {
                bias_[std::string(name_of(attribute))].add(
                    outside(profile.level[attribute].median(), *expectation));
            }
        }
        at_risk_.push_back(sheet.total.median);
        if (entry.winner) {
            winners_at_risk_.push_back(sheet.total.median);
        }
        std::string dearest;
        for (const Finding& finding : sheet.findings) {
            if (finding.points >= 0.8) {
                dearest += fmt::format("  {} {:.1f}", id_of(finding), finding.points);
            }
        }
        fmt::print("{} {:<18} {} {:>5.1f}{}\n", entry.id, style.code, entry.winner ? "won " : "    ",
                   sheet.total.median, dearest);
    }

    static void print_points(const std::string& whose, std::vector<double> points) {
        std::sort(points.begin(), points.end());
        if (!points.empty()) {
            fmt::print("points at risk, {}: median {:.1f}, upper quarter from {:.1f}, worst {:.1f}, of {}\n",
                       whose, points[points.size() / 2], points[points.size() * 3 / 4], points.back(),
                       points.size());
        }
    }

    const Library& library_;
    ScoreSheet score_sheet_;
    Perception perception_;
    std::map<std::string, Mean> bias_;
    std::vector<double> at_risk_;
    std::vector<double> winners_at_risk_;
    Mean original_;
    Mean final_;
    int original_inside_ = 0;
    int final_inside_ = 0;
};

}  // namespace

}  // namespace entrywise

int main(int count, char** arguments) {
    using namespace entrywise;
    if (count != 2) {
        fmt::print(stderr, "usage: measure_recipes FOLDER\n");
        return 2;
    }
    const std::string folder = arguments[1];
    const Library library(embedded_documents());
    Measurement measurement(library);
    for (const RealRecipe& entry : real_recipes_in(folder)) {
        measurement.take(folder, entry);
    }
    measurement.print();
    return 0;
}
