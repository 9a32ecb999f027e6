#pragma once

#include <cstddef>
#include <string>

#include "advice/ranking.hpp"

namespace entrywise {

// What every form of a ranking says in the same words.

/// How many styles of a ranking are shown, and of how many it is told what speaks against them.
inline constexpr std::size_t most_ranked_shown = 10;
inline constexpr std::size_t most_ranked_explained = 3;

/// Whether the styles are of several guides, so that their codes alone do not tell them apart.
bool is_of_several_guides(const Ranking& ranking);

/// `21B`, or `bjcp-2021/21B`.
std::string code_of(const StyleName& name, bool with_guide);

/// `21B Specialty IPA, on 21A`.
std::string name_of(const RankedStyle& ranked, bool with_guide = false);

/// What the columns of the table mean.
std::string rank_table_words();

/// The style of those shown that loses fewest points, where that is not the first; else empty.
std::string fewest_points_words(const Ranking& ranking);

/// What it comes to that another style than the declared one leads; empty where that is not so.
std::string elsewhere_words(const Ranking& ranking);

/// What the entry form must say; empty where it need not say more.
std::string declaration_words(const RankedStyle& first, bool with_guide = false);

/// A finding that separates styles: `flavor bitterness above`.
std::string words_of(const Separation& separation);

}  // namespace entrywise
