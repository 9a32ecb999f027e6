#include "style/perception.hpp"

#include <fmt/format.h>
#include <nlopt.hpp>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "base/file.hpp"
#include "reading/library.hpp"
#include "sensing/middle_of_style.hpp"

namespace entrywise {

namespace {

/// Where each fit starts, and where it is drawn to where the styles do not tell: working values that taste
/// about right.
Perception start() {
    Perception perception;
    perception.bitterness = {
        .by_amount = 10.0, .by_ratio = 3.0, .masked_by_sour = 0.05, .masked_by_roast = 0.01};
    perception.balance = {.at_even = 3.0, .by_doubling = 2.0, .by_attenuation = 0.5, .by_carbonation = 0.5};
    perception.finish = {.of_usual_beer = 2.0,
                         .by_extract = 0.6,
                         .by_alcohol = -0.1,
                         .by_ten_ibu = -0.3,
                         .by_carbonation = -0.5,
                         .by_sour = -0.2};
    perception.sweetness = {.at_medium_finish = 3.5, .by_finish = 1.0};
    perception.malt = {.of_usual_beer = 3.5,
                       .by_extract = 0.5,
                       .masked_by_ratio = 1.0,
                       .by_richness = 1.0,
                       .masked_by_sour = 0.1};
    perception.caramel = {.half_at = 23.0, .steepness = 1.5};
    perception.roast = {.half_at = 12.0, .steepness = 1.5};
    perception.alcohol_flavor = perception.alcohol_aroma =
        perception.warmth = {.unnoticed = 5.0, .by_percent = 0.6};
    perception.body = {.curve = {.half_at = 6.5, .steepness = 1.5},
                       .by_richness = 0.3,
                       .easing_by_alcohol = 0.2,
                       .thinning_by_carbonation = 0.5};
    return perception;
}

/// A style at its middle, with what it accepts.
struct Example {
    MiddleOfStyle middle;
    ByAttribute<std::optional<Expectation>> expected;
};

std::vector<Example> examples_of(const Library& library, const std::string& guide) {
    std::vector<Example> examples;
    for (const StyleName& name : library.style_names(guide)) {
        const auto style = library.style(name);
        const auto middle = style ? middle_of(*style) : std::nullopt;
        if (middle) {
            examples.push_back({*middle, style->expected});
        }
    }
    return examples;
}

/// Steps by which the level of an example lies outside what its style accepts; nothing where the style does
/// not describe the attribute.
std::optional<double> outside(Attribute attribute, const Example& example, const Perception& perception,
                              bool as_word = false) {
    const auto& expectation = example.expected[attribute];
    const auto level = expectation ? levels_at_middle(example.middle, perception)[attribute] : std::nullopt;
    if (!level) {
        return std::nullopt;
    }
    const double told = as_word ? std::round(*level) : *level;
    return told > expectation->high ? told - expectation->high : std::min(told - expectation->low, 0.0);
}

/// What a fit makes small: squares of what lies outside, a little of the squares to the middle of what is
/// accepted, and a little of the squares of the relative way from the start.
class Loss {
  public:
    Loss(const FittedMap& map, const std::vector<const Example*>& examples, const Perception& from)
        : map_(map), examples_(examples), start_(from), perception_(from) {}

    double at(const std::vector<double>& constants) {
        set(constants);
        double sum = 0.0;
        for (const Example* example : examples_) {
            sum += of(*example);
        }
        for (const MapConstant& constant : map_.constants) {
            const double began = constant.of(start_);
            const double way = (constant.of(perception_) - began) / began;
            sum += toward_start * way * way;
        }
        return sum;
    }

    Perception with(const std::vector<double>& constants) {
        set(constants);
        return perception_;
    }

  private:
    static constexpr double toward_middle = 0.1;
    static constexpr double toward_start = 0.2;

    void set(const std::vector<double>& constants) {
        for (std::size_t index = 0; index < constants.size(); ++index) {
            map_.constants[index].of(perception_) = constants[index];
        }
    }

    double of(const Example& example) const {
        const Attribute attribute = map_.attributes.front();
        const auto& expectation = example.expected[attribute];
        const auto level =
            expectation ? levels_at_middle(example.middle, perception_)[attribute] : std::nullopt;
        if (!level) {
            return 0.0;
        }
        const double off = *level - std::clamp(*level, expectation->low, expectation->high);
        const double to_middle = *level - 0.5 * (expectation->low + expectation->high);
        return off * off + toward_middle * to_middle * to_middle;
    }

    const FittedMap& map_;
    const std::vector<const Example*>& examples_;
    Perception start_;
    Perception perception_;
};

/// Fits the constants of one map, the other maps held. Rowan's Subplex, as NLopt has it: deterministic, and
/// untroubled by the corners of the loss.
Perception fitted(const FittedMap& map, const std::vector<const Example*>& examples,
                  const Perception& perception) {
    Perception from = perception;
    Loss loss(map, examples, from);
    std::vector<double> constants;
    std::vector<double> steps;
    for (const MapConstant& constant : map.constants) {
        constants.push_back(constant.of(from));
        steps.push_back(0.2 * std::abs(constants.back()));
    }
    nlopt::opt search(nlopt::LN_SBPLX, static_cast<unsigned>(constants.size()));
    search.set_min_objective([](const std::vector<double>& at, std::vector<double>&,
                                void* data) { return static_cast<Loss*>(data)->at(at); },
                             &loss);
    search.set_initial_step(steps);
    search.set_xtol_rel(1e-5);
    search.set_maxeval(4000);
    double least = 0.0;
    search.optimize(constants, least);
    return loss.with(constants);
}

std::vector<const Example*> all_but(const std::vector<Example>& examples, const Example* left_out) {
    std::vector<const Example*> kept;
    for (const Example& example : examples) {
        if (&example != left_out) {
            kept.push_back(&example);
        }
    }
    return kept;
}

/// How far off a map is over examples.
struct Agreement {
    int count = 0;
    int inside = 0;
    int within_one = 0;
    int word_within_one = 0;
    double sum = 0.0;
    double squares = 0.0;

    void add(double level_off, double word_off) {
        ++count;
        inside += level_off == 0.0 ? 1 : 0;
        within_one += std::abs(level_off) <= 1.0 ? 1 : 0;
        word_within_one += std::abs(word_off) <= 1.0 ? 1 : 0;
        sum += level_off;
        squares += level_off * level_off;
    }

    double error() const { return std::sqrt(squares / std::max(count, 1)); }
};

void add(Attribute attribute, const Example& example, const Perception& perception, Agreement& agreement) {
    if (const auto off = outside(attribute, example, perception)) {
        agreement.add(*off, *outside(attribute, example, perception, true));
    }
}

Agreement agreement_on(Attribute attribute, const std::vector<Example>& examples,
                       const Perception& perception) {
    Agreement agreement;
    for (const Example& example : examples) {
        add(attribute, example, perception, agreement);
    }
    return agreement;
}

std::vector<Agreement> left_out_agreement(const FittedMap& map, const std::vector<Example>& examples,
                                          const Perception& perception) {
    std::vector<Agreement> agreements(map.attributes.size());
    for (const Example& example : examples) {
        if (!example.expected[map.attributes.front()]) {
            for (std::size_t index = 1; index < map.attributes.size(); ++index) {
                add(map.attributes[index], example, perception, agreements[index]);
            }
            continue;
        }
        const Perception without = fitted(map, all_but(examples, &example), perception);
        for (std::size_t index = 0; index < map.attributes.size(); ++index) {
            add(map.attributes[index], example, without, agreements[index]);
        }
    }
    return agreements;
}

void print(const std::string& whose, const Agreement& agreement) {
    const double count = std::max(agreement.count, 1);
    fmt::print("  {:<12} {:>4} {:>7.2f} {:>11.2f} {:>16.2f} {:>+7.2f} {:>7.2f}\n", whose, agreement.count,
               agreement.inside / count, agreement.within_one / count, agreement.word_within_one / count,
               agreement.sum / count, agreement.error());
}

/// Three digits tell all that the fit knows.
std::string three_digits(double number) {
    return fmt::format("{:.3g}", number);
}

std::string line_of(const FittedMap& map, Perception& perception) {
    std::string constants;
    for (const MapConstant& constant : map.constants) {
        constants += fmt::format("{}: {}, ", constant.name, three_digits(constant.of(perception)));
    }
    return fmt::format("  {}: {{{}error: {}}}\n", map.name, constants,
                       three_digits(perception.error[map.attributes.front()]));
}

constexpr std::string_view heading =
    "format: entrywise/perception/1\n"
    "\n"
    "# How a palate turns numbers into the words of style guides: the constants of the maps in src/sensing.\n"
    "# Written by tools/fit-perception, which fits them on the styles of styles/bjcp-2021, each at the "
    "middle of\n"
    "# its own ranges (Beer Judge Certification Program, Beer Style Guidelines, 2021). "
    "src/style/perception.hpp\n"
    "# tells what each means. `error` is the root mean square of the steps by which a style that is left out "
    "of\n"
    "# the fit lies outside its own words.\n"
    "maps:\n";

int fit(const std::string& file) {
    const Library library(embedded_documents());
    const std::vector<Example> known = examples_of(library, "bjcp-2021");
    const std::vector<Example> held_out = examples_of(library, "ba-2025");
    // A map may stand on another: bitterness on roast, sweetness on finish. Those are fitted before.
    Perception perception = start();
    std::vector<const FittedMap*> order;
    for (const bool first : {true, false}) {
        for (const FittedMap& map : fitted_maps()) {
            if ((map.name == "roast" || map.name == "finish") == first) {
                order.push_back(&map);
            }
        }
    }
    fmt::print("  {:<12} {:>4} {:>7} {:>11} {:>16} {:>7} {:>7}\n", "", "of", "inside", "within one",
               "word within one", "bias", "error");
    for (const FittedMap* map : order) {
        perception = fitted(*map, all_but(known, nullptr), perception);
        const std::vector<Agreement> left_out = left_out_agreement(*map, known, perception);
        double squares = 0.0;
        double count = 0.0;
        for (std::size_t index = 0; index < map->attributes.size(); ++index) {
            const Attribute attribute = map->attributes[index];
            fmt::print("{} {}\n", word_of(section_of(attribute)), word_of(attribute));
            print("fitted", agreement_on(attribute, known, perception));
            print("left out", left_out[index]);
            print("second guide", agreement_on(attribute, held_out, perception));
            squares += left_out[index].squares;
            count += left_out[index].count;
        }
        for (const Attribute attribute : map->attributes) {
            perception.error[attribute] = std::sqrt(squares / std::max(count, 1.0));
        }
    }
    std::string text(heading);
    for (const FittedMap& map : fitted_maps()) {
        text += line_of(map, perception);
    }
    if (const auto fault = write_file_whole(file, text)) {
        fmt::print(stderr, "{}\n", to_line(*fault));
        return 1;
    }
    return 0;
}

}  // namespace

}  // namespace entrywise

int main(int count, char** arguments) {
    if (count != 2) {
        fmt::print(stderr, "usage: fit_perception FILE\n");
        return 2;
    }
    return entrywise::fit(arguments[1]);
}
