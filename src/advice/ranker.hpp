#pragma once

#include <deque>
#include <optional>
#include <set>
#include <vector>

#include "advice/custom_fit.hpp"
#include "advice/line_up.hpp"
#include "advice/number_fit.hpp"
#include "advice/special.hpp"
#include "advice/style_fit.hpp"
#include "judging/impression.hpp"
#include "judging/sheet.hpp"
#include "judging/tasting.hpp"
#include "style/declaration.hpp"

namespace entrywise {

/// A style to enter, with the base where it stands on one, and what came of it so far.
struct Candidate {
    const Contender* entered = nullptr;
    const Contender* base = nullptr;
    const Style* judged = nullptr;  ///< the entered style, or what it and its base make together
    const Yardstick* yardstick = nullptr;
    CustomFit custom;
    StyleFit fit;
    double distance = 0.0;
    Estimate<double> points;     ///< over as many draws as it was held against
    std::optional<Sheet> sheet;  ///< where it was asked for

    const Style& style() const { return *entered->style; }
};

bool is_closer(const Candidate& first, const Candidate& second);

/// Whether two names are of one style, or one of a variant of the other.
bool are_one_entry(const StyleName& first, const StyleName& second);

/// Holds one tasting against the styles of a line-up: all of them against the first few draws, which tell
/// roughly who comes first, and any of them against as many as it takes. Tasting, impression and line-up must
/// last as long as it does, and it as long as its candidates.
class Ranker {
  public:
    Ranker(const Tasting& tasting, const Impression& impression, const LineUp& line_up);

    /// Every style, and the specialty styles that the recipe has what it takes for on the styles that fit
    /// best, held against few draws; closest first, a style and its variants once.
    std::vector<Candidate> all();

    /// Of these only those that may lead.
    std::vector<Candidate> leading();

    /// Holds candidates against the first so many draws, or one against all of them.
    void hold(std::vector<Candidate>& candidates, std::size_t first_draws) const;
    void hold(Candidate& candidate) const;

    /// Gives a candidate the points that it was found to lose elsewhere.
    static void take_points(Candidate& candidate, Estimate<double> points);

    /// The same against all draws, with what is found.
    void judge_fully(Candidate& candidate) const;

  private:
    /// A specialty style and a base of it as one.
    struct OnBase {
        OnBase(const Style& specialty, const Style& base, const Perception& perception);
        OnBase(const OnBase&) = delete;
        OnBase& operator=(const OnBase&) = delete;

        Style style;
        Yardstick yardstick;
    };

    std::vector<Candidate> before_tasting() const;
    std::vector<Candidate> with_specialties(std::vector<Candidate> plain);
    Candidate held_on(const Contender& specialty, const Contender& base);
    void fit_customs(Candidate& candidate, const CustomOfStyle& custom, double wording) const;
    void hold_against(const Impression& impression, Candidate& candidate) const;
    std::vector<Finding> findings_of_kind(const Impression& impression, const Style& style) const;
    std::vector<std::string_view> welcome_in(const Style& specialty) const;
    double rarity_of(const Candidate& candidate) const;

    const Tasting& tasting_;
    const LineUp& line_up_;
    const Impression& all_draws_;
    Impression few_draws_;
    NumberFit numbers_;
    CustomOfRecipe custom_;
    std::set<Special> specials_;
    std::deque<OnBase> on_bases_;
};

/// By how many points of distance the first so many draws may mistake a style against another (working
/// value): the error of a mean over a quasi-random sequence falls nearly with their count.
double mistaken_by(std::size_t draws);

/// How many draws every style is held against before the rest is.
inline constexpr std::size_t few_draws = 16;

}  // namespace entrywise
