// Ranks real recipes over a guide and prints how often a style that they were accepted in comes first, in the
// first three and the first five; then fits the weights of the order anew and prints the same for recipes
// that each fit did not see.

#include "advice/ranking.hpp"

#include <fmt/format.h>
#include <nlopt.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>

#include "reading/library.hpp"
#include "reading/perception_reader.hpp"
#include "reading/phrase_reader.hpp"
#include "reading/score_sheet_reader.hpp"
#include "style/variant.hpp"
#include "tools/measure/real_recipes.hpp"

namespace entrywise {

namespace {

/// A recipe's styles as they were ranked, and which of them it was accepted in.
struct Example {
    RealRecipe entry;
    std::vector<RankedStyle> styles;
    std::vector<bool> accepted;
};

/// A variant is the style that it is a variant of, as long as no other variant was the accepted one.
bool is_accepted(const std::string& code, const std::vector<std::string>& accepted) {
    return std::any_of(accepted.begin(), accepted.end(),
                       [&](const std::string& each) { return each == code || each == entered_code(code); });
}

std::size_t place_of_accepted(const Example& example, const FitWeights& weights) {
    double nearest = 1e9;
    for (std::size_t index = 0; index < example.styles.size(); ++index) {
        if (example.accepted[index]) {
            nearest = std::min(nearest, distance_of(example.styles[index].fit, weights));
        }
    }
    return static_cast<std::size_t>(
        std::count_if(example.styles.begin(), example.styles.end(),
                      [&](const RankedStyle& style) { return distance_of(style.fit, weights) < nearest; }));
}

void print_shares(const std::string& what, std::vector<std::size_t> places) {
    const auto share = [&](std::size_t first) {
        const auto count =
            std::count_if(places.begin(), places.end(), [first](std::size_t place) { return place < first; });
        return static_cast<double>(count) / static_cast<double>(places.size());
    };
    fmt::print("{:<34} first {:.2f}   first three {:.2f}   first five {:.2f}   of {}\n", what, share(1),
               share(3), share(5), places.size());
}

constexpr std::size_t constants = 8;

FitWeights weights_from(const std::vector<double>& values) {
    return {.numbers = values[0],
            .wording = values[1],
            .breadth = values[2],
            .yeast = values[3],
            .hops = values[4],
            .grist = values[5],
            .rarity = values[6]};
}

/// What a fit works on, and where it begins.
struct Problem {
    std::vector<const Example*> examples;
    std::vector<double> begin;
};

/// How unlikely the accepted styles are, where the odds of a style fall e-fold with so many points of
/// distance, and a little of the squares of the way from where the fit begins.
double loss(const std::vector<double>& values, const Problem& problem) {
    constexpr double toward_begin = 0.5;
    const FitWeights weights = weights_from(values);
    double sum = 0.0;
    for (const Example* example : problem.examples) {
        double accepted = 0.0;
        double all = 0.0;
        for (std::size_t index = 0; index < example->styles.size(); ++index) {
            const double odds = std::exp(-distance_of(example->styles[index].fit, weights) / values[7]);
            all += odds;
            accepted += example->accepted[index] ? odds : 0.0;
        }
        sum -= std::log(std::max(accepted / all, 1e-6));
    }
    for (std::size_t index = 0; index < constants; ++index) {
        const double way = (values[index] - problem.begin[index]) / problem.begin[index];
        sum += toward_begin * way * way;
    }
    return sum;
}

std::vector<double> fitted(const std::vector<const Example*>& examples) {
    Problem problem{examples, {2.0, 15.0, 5.0, 15.0, 5.0, 5.0, 5.0, 5.0}};
    nlopt::opt search(nlopt::LN_SBPLX, constants);
    search.set_lower_bounds(std::vector<double>(constants, 0.01));
    search.set_upper_bounds(std::vector<double>(constants, 60.0));
    search.set_xtol_rel(1e-4);
    search.set_maxeval(4000);
    search.set_min_objective([](const std::vector<double>& values, std::vector<double>& /*slopes*/,
                                void* of) { return loss(values, *static_cast<const Problem*>(of)); },
                             &problem);
    std::vector<double> values = problem.begin;
    double least = 0.0;
    search.optimize(values, least);
    return values;
}

void print_fit(const std::vector<Example>& examples) {
    constexpr std::size_t parts = 7;
    std::vector<std::size_t> places(examples.size(), 0);
    for (std::size_t part = 0; part < parts; ++part) {
        std::vector<const Example*> kept;
        for (std::size_t index = 0; index < examples.size(); ++index) {
            if (index % parts != part) {
                kept.push_back(&examples[index]);
            }
        }
        const FitWeights weights = weights_from(fitted(kept));
        for (std::size_t index = part; index < examples.size(); index += parts) {
            places[index] = place_of_accepted(examples[index], weights);
        }
    }
    print_shares("weights fitted without the recipe", places);
    std::vector<const Example*> all;
    for (const Example& example : examples) {
        all.push_back(&example);
    }
    const std::vector<double> values = fitted(all);
    fmt::print(
        "fitted to all: numbers {:.2f}, wording {:.1f}, breadth {:.1f}, yeast {:.1f}, hops {:.1f}, grist "
        "{:.1f}, "
        "rarity {:.1f}, points to a fold {:.1f}\n",
        values[0], values[1], values[2], values[3], values[4], values[5], values[6], values[7]);
}

void print_places(const std::vector<Example>& examples) {
    std::vector<std::size_t> places;
    std::vector<double> winners;
    for (const Example& example : examples) {
        const std::size_t place = place_of_accepted(example, usual_fit_weights());
        places.push_back(place);
        double at_risk = 50.0;
        for (std::size_t index = 0; index < example.styles.size(); ++index) {
            if (example.accepted[index]) {
                at_risk = std::min(at_risk, example.styles[index].at_risk.median);
            }
        }
        if (example.entry.winner) {
            winners.push_back(at_risk);
        }
        std::string first;
        for (std::size_t index = 0; index < std::min<std::size_t>(5, example.styles.size()); ++index) {
            const RankedStyle& style = example.styles[index];
            first += fmt::format(" {} {:.1f} {:.0f} %,", style.name.code, style.at_risk.median,
                                 100.0 * style.best);
        }
        fmt::print("{} {:<20} {} place {:>3}, {:>4.1f} points:{}\n", example.entry.id,
                   fmt::join(example.entry.styles, "/"), example.entry.winner ? "won" : "   ", place + 1,
                   at_risk, first);
    }
    print_shares("ranked", places);
    std::sort(winners.begin(), winners.end());
    if (!winners.empty()) {
        fmt::print("points at risk of winners in their own style: median {:.1f} of {}\n",
                   winners[winners.size() / 2], winners.size());
    }
}

/// What the first style of a guide is placed by, in points.
struct Parts {
    std::array<double, 9> of{};

    void add(const RankedStyle& style, double sign) {
        const FitWeights weights = usual_fit_weights();
        const StyleFit& fit = style.fit;
        const std::array<double, 9> parts{fit.points,
                                          weights.numbers * fit.numbers,
                                          weights.wording * fit.wording,
                                          weights.breadth * fit.breadth,
                                          weights.yeast * fit.yeast,
                                          weights.hops * fit.hops,
                                          weights.grist * fit.grist,
                                          weights.rarity * fit.rarity,
                                          fit.guide};
        for (std::size_t index = 0; index < parts.size(); ++index) {
            of[index] += sign * parts[index];
        }
    }
};

/// How the first style of a second guide compares with the first of the guide that the recipes were entered
/// by: beers brewed for the one should not be nearer to the other.
void print_guides(const std::vector<Recipe>& recipes, const std::vector<Style>& first,
                  const std::vector<Style>& second, const Handbook& handbook) {
    Parts difference;
    std::size_t second_leads = 0;
    for (const Recipe& recipe : recipes) {
        const RankedStyle one = rank(recipe, first, handbook).styles.front();
        const RankedStyle other = rank(recipe, second, handbook).styles.front();
        difference.add(other, 1.0);
        difference.add(one, -1.0);
        second_leads += other.distance < one.distance ? 1 : 0;
    }
    const auto count = static_cast<double>(recipes.size());
    fmt::print("{} against {}: leads for {} of {}; mean difference of the first, in points:\n",
               second.front().guide, first.front().guide, second_leads, recipes.size());
    constexpr std::array<const char*, 9> names{"at risk", "numbers", "wording", "breadth", "yeast",
                                               "hops",    "grist",   "rarity",  "guide"};
    double all = 0.0;
    for (std::size_t index = 0; index < names.size(); ++index) {
        all += difference.of[index] / count;
        fmt::print("  {:<8} {:>6.2f}\n", names[index], difference.of[index] / count);
    }
    fmt::print("  {:<8} {:>6.2f}\n", "all", all);
}

std::vector<Style> styles_of(const Library& library, const std::string& guide) {
    std::vector<Style> styles;
    for (const StyleName& name : library.style_names(guide)) {
        styles.push_back(*library.style(name));
    }
    return styles;
}

}  // namespace

}  // namespace entrywise

int main(int count, char** arguments) {
    using namespace entrywise;
    if (count != 2) {
        fmt::print(stderr, "usage: measure_ranking FOLDER\n");
        return 2;
    }
    const std::string folder = arguments[1];
    const Library library(embedded_documents());
    const Handbook handbook{
        *read_score_sheet(*library.document("styles/sheet.yaml"), "styles/sheet.yaml"),
        *read_perception(*library.document("styles/perception.yaml"), "styles/perception.yaml"),
        *read_phrases(*library.document("styles/phrases.yaml"), "styles/phrases.yaml")};
    const std::vector<Style> styles = styles_of(library, "bjcp-2021");
    std::vector<Example> examples;
    std::vector<Recipe> recipes;
    for (const RealRecipe& entry : real_recipes_in(folder)) {
        if (const auto recipe = recipe_of(entry, folder, library)) {
            recipes.push_back(with_stated_gravities(*recipe, entry));
            Example example{entry, rank(recipes.back(), styles, handbook).styles, {}};
            for (const RankedStyle& style : example.styles) {
                example.accepted.push_back(is_accepted(style.name.code, entry.styles));
            }
            examples.push_back(std::move(example));
        }
    }
    print_places(examples);
    print_fit(examples);
    print_guides(recipes, styles, styles_of(library, "ba-2025"), handbook);
    return 0;
}
