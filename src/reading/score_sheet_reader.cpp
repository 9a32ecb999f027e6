#include "reading/score_sheet_reader.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <utility>

#include "base/nearest_word.hpp"
#include "base/number.hpp"
#include "reading/fields.hpp"

namespace entrywise {

namespace {

constexpr std::array<Section, section_count> sections{Section::aroma, Section::appearance, Section::flavor,
                                                      Section::mouthfeel, Section::overall};

constexpr std::array<Word<Charged>, 2> charges{{{"above", Charged::above}, {"below", Charged::below}}};

/// Everything that a cause can be shown by: the attributes, and color.
std::vector<std::string> shown_names() {
    std::vector<std::string> names{"appearance.color"};
    for (const Attribute attribute : all_attributes()) {
        names.emplace_back(name_of(attribute));
    }
    return names;
}

void read_sections(Fields& sheet, ScoreSheet& score_sheet) {
    const Node* node = sheet.need("sections");
    if (node == nullptr) {
        return;
    }
    Fields fields(*node, "the points of the sections", sheet.faults());
    for (const Section section : sections) {
        score_sheet.points[section] = fields.required<double>(word_of(section));
    }
    fields.refuse_others();
}

void read_cost(Fields& sheet, ScoreSheet& score_sheet) {
    const Node* node = sheet.need("cost");
    if (node == nullptr) {
        return;
    }
    Fields fields(*node, "the cost of a miss", sheet.faults());
    score_sheet.one_step = fields.required<double>("one_step");
    score_sheet.two_steps = fields.required<double>("two_steps");
    score_sheet.three_steps = fields.required<double>("three_steps");
    score_sheet.assumed_weight = fields.required<double>("assumed_weight");
    score_sheet.in_range_weight = fields.required<double>("in_range_weight");
    score_sheet.missing_declaration = fields.required<double>("missing_declaration");
    score_sheet.other_kind = fields.required<double>("other_kind");
    fields.refuse_others();
}

void read_notice(Fields& sheet, ScoreSheet& score_sheet) {
    const Node* node = sheet.need("notice");
    if (node == nullptr) {
        return;
    }
    Fields fields(*node, "the notice of a miss", sheet.faults());
    score_sheet.threshold = fields.required<double>("threshold");
    score_sheet.spread = fields.required<double>("spread");
    fields.refuse_others();
}

void read_well_made(Fields& sheet, ScoreSheet& score_sheet) {
    const Node* node = sheet.need("well_made");
    if (node == nullptr) {
        return;
    }
    Fields fields(*node, "the score of a well made beer", sheet.faults());
    score_sheet.well_made = {fields.required<double>("low"), fields.required<double>("high")};
    fields.refuse_others();
}

ScoreBand read_band(const Node& node, FaultLog& faults) {
    Fields fields(node, "a band of the scoring guide", faults);
    ScoreBand band;
    band.name = fields.required<std::string>("band");
    band.low = fields.required<double>("low");
    band.high = fields.required<double>("high");
    fields.refuse_others();
    return band;
}

void check_bands(const Node& node, const std::vector<ScoreBand>& bands, FaultLog& faults) {
    const auto rises = [](const ScoreBand& lower, const ScoreBand& upper) { return lower.high < upper.low; };
    const auto out_of_order = std::adjacent_find(
        bands.begin(), bands.end(),
        [&](const ScoreBand& lower, const ScoreBand& upper) { return !rises(lower, upper); });
    if (out_of_order != bands.end()) {
        faults.add(node.position, {.found = in_quotes(out_of_order->name) + " reaching into the next band",
                                   .expected = "bands one above the other, lowest first"});
    }
}

BySection<double> read_shares(const Node& node, FaultLog& faults) {
    BySection<double> shares;
    Fields fields(node, "the shares of a cause", faults);
    double sum = 0.0;
    for (const Section section : sections) {
        shares[section] = fields.optional<double>(word_of(section)).value_or(0.0);
        sum += shares[section];
    }
    fields.refuse_others();
    constexpr double rounding = 1e-9;
    if (std::abs(sum - 1.0) > rounding) {
        faults.add(node.position, {.found = fmt::format("shares that add up to {} %", fixed(100.0 * sum, 1)),
                                   .expected = "100 % in all"});
    }
    return shares;
}

BySection<std::optional<double>> read_at_most(const Node* node, FaultLog& faults) {
    BySection<std::optional<double>> at_most;
    if (node == nullptr) {
        return at_most;
    }
    Fields fields(*node, "the most that can be lost", faults);
    for (const Section section : sections) {
        at_most[section] = fields.optional<double>(word_of(section));
    }
    fields.refuse_others();
    return at_most;
}

Cause read_cause(const Node& node, FaultLog& faults) {
    Fields fields(node, "a cause", faults);
    Cause cause;
    cause.name = fields.required<std::string>("cause");
    cause.shown_by = fields.required<std::vector<std::string>>("shown_by");
    cause.weight = fields.required<double>("weight");
    cause.charged = fields.optional_word<Charged>("charged", charges).value_or(Charged::both);
    cause.at_most = read_at_most(fields.find("at_most"), faults);
    if (const Node* shares = fields.need("shares")) {
        cause.shares = read_shares(*shares, faults);
    }
    fields.refuse_others();
    return cause;
}

std::vector<std::string> read_miss(const Node& node, FaultLog& faults) {
    std::vector<std::string> known;
    for (const std::string& name : shown_names()) {
        known.push_back(name + ".above");
        known.push_back(name + ".below");
    }
    auto names = ReadAs<std::vector<std::string>>::from(node, faults).value_or(std::vector<std::string>());
    for (const std::string& name : names) {
        if (std::find(known.begin(), known.end(), name) == known.end()) {
            faults.add(node.position, {.found = in_quotes(name),
                                       .expected = "section.attribute.direction",
                                       .nearest = nearest_word(name, known)});
        }
    }
    return names;
}

void check_names(const Node& causes, const ScoreSheet& score_sheet, FaultLog& faults) {
    const std::vector<std::string> known = shown_names();
    std::map<std::string, int> times;
    for (const Cause& cause : score_sheet.causes) {
        for (const std::string& name : cause.shown_by) {
            ++times[name];
            if (std::find(known.begin(), known.end(), name) == known.end()) {
                faults.add(causes.position, {.found = in_quotes(name),
                                             .expected = "section.attribute",
                                             .nearest = nearest_word(name, known)});
            }
        }
    }
    for (const std::string& name : known) {
        if (times[name] != 1) {
            faults.add(causes.position, {.found = fmt::format("{} in {} causes", name, times[name]),
                                         .expected = "each attribute in one cause"});
        }
    }
}

}  // namespace

Outcome<ScoreSheet> read_score_sheet(const Node& document, const std::string& file) {
    FaultLog faults(file);
    Fields sheet(document, "a score sheet", faults);
    ScoreSheet score_sheet;
    if (check_format(sheet, "sheet")) {
        read_sections(sheet, score_sheet);
        read_cost(sheet, score_sheet);
        read_notice(sheet, score_sheet);
        read_well_made(sheet, score_sheet);
        score_sheet.courtesy_floor = sheet.required<double>("courtesy_floor");
        const Node* bands = sheet.need("bands");
        score_sheet.bands = read_list(bands, "a list of bands", faults,
                                      [&](const Node& node) { return read_band(node, faults); });
        if (bands != nullptr) {
            check_bands(*bands, score_sheet.bands, faults);
        }
        score_sheet.at_most = read_at_most(sheet.find("at_most"), faults);
        score_sheet.one_miss = read_list(sheet.find("one_miss"), "a list of lists of findings", faults,
                                         [&](const Node& node) { return read_miss(node, faults); });
        const Node* causes = sheet.need("causes");
        score_sheet.causes = read_list(causes, "a list of causes", faults,
                                       [&](const Node& node) { return read_cause(node, faults); });
        if (causes != nullptr) {
            check_names(*causes, score_sheet, faults);
        }
        sheet.refuse_others();
    }
    if (!faults.empty()) {
        return faults.in_order();
    }
    return score_sheet;
}

}  // namespace entrywise
