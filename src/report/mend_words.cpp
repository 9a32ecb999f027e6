#include "report/mend_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstddef>
#include <variant>
#include <vector>

#include "base/number.hpp"
#include "base/text.hpp"
#include "report/finding_title.hpp"
#include "report/sections.hpp"
#include "report/sheet_text.hpp"
#include "report/style_title.hpp"

namespace entrywise {

namespace {

constexpr std::size_t most_left_over = 3;

bool is_mass(const Change& change) {
    return change.unit == "g" || change.unit == "kg";
}

std::string amount(const Change& change, double number, const Measures& measures) {
    constexpr int decimals = 2;
    const std::string& unit = change.unit;
    if (is_mass(change) && measures.pounds) {
        return told(number * (unit == "g" ? gram : kilogram), measures);
    }
    if (unit == "°C" && measures.fahrenheit) {
        return told(celsius(number), measures);
    }
    if (unit == "L" && measures.gallons) {
        return told(number * liter, measures);
    }
    return shortest(rounded(number, decimals)) + (unit.empty() ? "" : " " + unit);
}

std::string count_in_words(std::size_t changes) {
    constexpr std::array<const char*, 5> words{"No change", "One change", "Two changes", "Three changes",
                                               "Four changes"};
    return words[std::min(changes, words.size() - 1)];
}

std::string nothing_holds(const Mending& mending) {
    const std::string target = shortest(mending.target);
    if (mending.stage == Stage::brewed) {
        return fmt::format(
            "{} as {}: nothing that a finished beer allows brings it to {} points at risk. What "
            "is left to mend was made in the brewhouse: --stage recipe tells of the next brew.",
            mending.recipe.name, style_title(mending.style), target);
    }
    return fmt::format(
        "{} as {}: no four changes that are known here bring it to {} points at risk. It may "
        "be another style's beer.",
        mending.recipe.name, style_title(mending.style), target);
}

std::string change_in_a_sentence(const Change& change, const Measures& measures) {
    const std::string to = setting_words(change, change.to, "left out", measures);
    const double* from = std::get_if<double>(&change.from);
    const bool plain = to == "left out" || (from != nullptr && *from == 0.0);
    return fmt::format("{} {}{}", change.what, plain ? "" : "to ", to);
}

}  // namespace

std::string setting_words(const Change& change, const Change::Value& value, const char* nothing,
                          const Measures& measures) {
    if (const double* number = std::get_if<double>(&value)) {
        return *number == 0.0 && is_mass(change) ? nothing : amount(change, *number, measures);
    }
    return std::get<std::string>(value);
}

std::string left_over_words(const Sheet& sheet) {
    std::vector<std::string> findings;
    for (const Finding& finding : sheet.findings) {
        if (findings.size() < most_left_over) {
            findings.push_back(in_a_sentence(finding));
        }
    }
    return findings.empty() ? std::string("nothing that a judge would likely note") : joined(findings, "; ");
}

std::string proposal_words(const Proposal& proposal, const Mending& mending) {
    if (mending.stage == Stage::brewed) {
        return count_in_words(proposal.changes.size()) + " to the finished beer";
    }
    return count_in_words(proposal.changes.size()) +
           (proposal.brings_in_new ? ", with a new ingredient" : " to what the recipe has");
}

std::string undeclared_words(const Mending& mending) {
    return fmt::format(
        "The entry form must say more than `declares` does: {} points besides, which no change to "
        "the beer mends.",
        points_text(mending.undeclared));
}

std::string mend_opening_words(const Mending& mending, const ScoreSheet& score_sheet) {
    const PointsAtRisk& total = mending.sheet.total;
    std::string text =
        fmt::format("{} of {} points at risk as it stands ({}{}{}): {}.", points_text(total.median),
                    shortest(all_points_of(score_sheet)), points_text(total.low), "–",
                    points_text(total.high), left_over_words(mending.sheet));
    if (!mending.proposals.empty() && mending.target != mending.wanted) {
        text += fmt::format(" No four changes bring that down to {}; these bring it at least to half, {}.",
                            shortest(mending.wanted), points_text(mending.target));
    }
    return text;
}

std::string mend_elsewhere_words(const Mending& mending) {
    std::vector<std::string> places;
    for (const RankedStyle& place : mending.elsewhere) {
        const std::string base = place.base ? ", on " + place.base->code : std::string();
        places.push_back(fmt::format("{} {}{}, with {} points at risk", place.name.code, place.title, base,
                                     points_text(place.at_risk.median)));
    }
    return places.empty() ? std::string() : "Or enter it as " + listed(places) + ".";
}

std::string mend_summary_words(const Mending& mending, const ScoreSheet& score_sheet) {
    if (mending.is_in_already()) {
        return fmt::format("{} as {}: {} of {} points at risk, within the {} asked for. Nothing to mend.",
                           mending.recipe.name, style_title(mending.style),
                           points_text(mending.sheet.total.median), shortest(all_points_of(score_sheet)),
                           shortest(mending.wanted));
    }
    if (mending.proposals.empty()) {
        return nothing_holds(mending);
    }
    const Proposal& first = mending.proposals.front();
    std::vector<std::string> changes;
    for (const Change& change : first.changes) {
        changes.push_back(change_in_a_sentence(change, mending.recipe.measures));
    }
    return fmt::format("{} as {}: {} points at risk instead of {} with the least change: {}.",
                       mending.recipe.name, style_title(mending.style), points_text(first.sheet.total.median),
                       points_text(mending.sheet.total.median), joined(changes, "; "));
}

}  // namespace entrywise
