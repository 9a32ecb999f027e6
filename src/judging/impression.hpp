#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "brewing/beer.hpp"
#include "sensing/profile.hpp"

namespace entrywise {

/// What of a beer is the same whatever style it is held against, looked up once for holding it against many:
/// how far its levels and numbers reach, and the numbers at the precision in which guides print their ranges.
/// Beer and profile must last as long as it does.
class Impression {
  public:
    Impression(const Beer& beer, const Profile& profile);

    /// The same from the first so many draws, which tell roughly what all tell.
    Impression(const Impression& all_draws, std::size_t first_draws);

    const Beer& beer() const { return beer_; }
    const Profile& profile() const { return profile_; }
    std::size_t draws() const { return draws_; }

    std::span<const double> level(Attribute attribute) const;
    /// The lowest and the highest draw of a level.
    const Span<double>& reach(Attribute attribute) const { return reach_[attribute]; }
    const Span<Bitterness>& reach_of_bitterness() const { return reach_of_bitterness_; }
    const Span<AlcoholByVolume>& reach_of_alcohol() const { return reach_of_alcohol_; }
    bool is_untold(Attribute attribute) const { return is_untold_[attribute]; }
    /// The chance that an attribute is sensed so much that a judge can tell of what kind it is.
    double chance_that_told(Attribute attribute) const { return told_[attribute]; }

    /// Whether roast is stronger on the palate than caramel.
    bool is_roasty() const { return is_roasty_; }

    const std::vector<SpecificGravity>& printed_original_gravity() const { return original_gravity_; }
    const std::vector<SpecificGravity>& printed_final_gravity() const { return final_gravity_; }
    const std::vector<AlcoholByVolume>& printed_alcohol() const { return alcohol_; }
    const std::vector<Bitterness>& printed_bitterness() const { return bitterness_; }  ///< as it tastes

    /// From low on, a judge tells of what kind a smell is; below, only that it is there (working value).
    static constexpr double told_from = 2.0;

  private:
    void find_reach();

    const Beer& beer_;
    const Profile& profile_;
    std::size_t draws_;
    ByAttribute<Span<double>> reach_;
    ByAttribute<bool> is_untold_;
    ByAttribute<double> told_;
    bool is_roasty_ = false;
    std::vector<SpecificGravity> original_gravity_;
    std::vector<SpecificGravity> final_gravity_;
    std::vector<AlcoholByVolume> alcohol_;
    std::vector<Bitterness> bitterness_;
    Span<Bitterness> reach_of_bitterness_;
    Span<AlcoholByVolume> reach_of_alcohol_;
};

}  // namespace entrywise
