#pragma once

#include <boost/units/base_dimension.hpp>
#include <boost/units/base_unit.hpp>
#include <boost/units/make_system.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/unit.hpp>

namespace entrywise::scales {

// Brewing measures much on scales that have no physical dimension: gravity, color, bitterness, shares. Each
// is given a base dimension of its own, so that adding or passing one for another does not compile and none
// turns into a bare number by itself. Ordinals must differ over the whole program; this is the only list of
// them.

struct gravity_dimension : boost::units::base_dimension<gravity_dimension, 9001> {};
struct extract_dimension : boost::units::base_dimension<extract_dimension, 9002> {};
struct alcohol_dimension : boost::units::base_dimension<alcohol_dimension, 9003> {};
struct attenuation_dimension : boost::units::base_dimension<attenuation_dimension, 9004> {};
struct bitterness_dimension : boost::units::base_dimension<bitterness_dimension, 9005> {};
struct beer_color_dimension : boost::units::base_dimension<beer_color_dimension, 9006> {};
struct malt_color_dimension : boost::units::base_dimension<malt_color_dimension, 9007> {};
struct carbonation_dimension : boost::units::base_dimension<carbonation_dimension, 9008> {};
struct share_dimension : boost::units::base_dimension<share_dimension, 9009> {};
struct pitch_rate_dimension : boost::units::base_dimension<pitch_rate_dimension, 9010> {};

template <class Dimension, long ordinal>
struct base_unit_of
    : boost::units::base_unit<base_unit_of<Dimension, ordinal>, typename Dimension::dimension_type, ordinal> {
};

template <class Dimension, long ordinal>
using quantity_on = boost::units::quantity<
    boost::units::unit<typename Dimension::dimension_type,
                       typename boost::units::make_system<base_unit_of<Dimension, ordinal>>::type>,
    double>;

}  // namespace entrywise::scales
