#include "brewing/wort.hpp"

#include "brewing/extract_yield.hpp"
#include "brewing/measured.hpp"

namespace entrywise {

namespace {

/// Without a mash, grain only steeps: crystal and roasted malt give about half of their extract, the rest
/// next to nothing (working values).
constexpr double steeping_of_colored_malt = 0.5;
constexpr double steeping_of_other_grain = 0.1;

Share efficiency_for(const GristAddition& addition, bool mashed, Share brewhouse, Share kettle_loss) {
    const FermentableKind kind = addition.fermentable.kind;
    const Share dissolves_whole = addition.use == GristUse::fermenter ? whole : whole - kettle_loss;
    if (!needs_a_mash(kind)) {
        return dissolves_whole;
    }
    if (mashed && addition.use == GristUse::mash) {
        return brewhouse;
    }
    const bool colored = kind == FermentableKind::crystal || kind == FermentableKind::roasted;
    return (colored ? steeping_of_colored_malt : steeping_of_other_grain) * dissolves_whole;
}

Part<Mass> extract_from(const GristAddition& addition, bool mashed, const Estimate<Share>& brewhouse,
                        const Estimate<Share>& kettle_loss, Deviates& deviates) {
    const Fermentable& fermentable = addition.fermentable;
    const auto yield =
        deviates.draw("extract of " + fermentable.name, fermentable.extract, 0.0 * percent, 1.0 * whole);
    const auto moisture =
        deviates.draw("moisture of " + fermentable.name, fermentable.moisture, 0.0 * percent, 1.0 * whole);
    const auto extract = [&](Share extract_share, Share water, Share efficiency, Share loss) {
        return extract_yield(addition.mass, extract_share, water,
                             efficiency_for(addition, mashed, efficiency, loss));
    };
    return {fermentable.name, addition.position, lift(extract, yield, moisture, brewhouse, kettle_loss)};
}

/// Water that fruit and syrups bring into the fermenter; a liter weighs a kilogram, near enough.
Volume water_with(const std::vector<GristAddition>& grist) {
    Volume water = 0.0 * liter;
    for (const GristAddition& addition : grist) {
        if (addition.use == GristUse::fermenter) {
            const double water_share = 1.0 - in(addition.fermentable.extract.middle, whole);
            water += water_share * in(addition.mass, kilogram) * liter;
        }
    }
    return water;
}

Estimate<Mass> extract_in_kettle(const Process& process, const std::vector<Part<Mass>>& extract,
                                 std::size_t draws) {
    std::vector<Part<Mass>> boiled;
    for (std::size_t index = 0; index < extract.size(); ++index) {
        if (process.grist[index].use != GristUse::fermenter) {
            boiled.push_back(extract[index]);
        }
    }
    return sum_of(boiled, draws);
}

/// Gravity halfway through the boil: the same extract in the mean of the volumes before and after.
Estimate<SpecificGravity> boil_gravity_of(const Process& process, const Wort& wort, Deviates& deviates) {
    const auto evaporation = deviates.draw("evaporation", process.evaporation, 0.0 * liter_per_hour,
                                           3.0 * process.evaporation.middle + 1.0 * liter_per_hour);
    const Duration time = process.boil_time;
    const auto extract = extract_in_kettle(process, wort.extract, deviates.draws());
    const auto gravity = [time](Mass in_fermenter, Volume fermenter, Volume kettle, EvaporationRate rate) {
        const Mass in_kettle = in_fermenter * (kettle / fermenter);
        const Volume boiled_off = rate * time;
        return gravity_of_extract(in_kettle, kettle + 0.5 * boiled_off);
    };
    return lift(gravity, extract, wort.volume, wort.kettle_volume, evaporation);
}

void scale_to_measured_gravity(const Uncertain<SpecificGravity>& measured, Wort& wort, Deviates& deviates) {
    const auto gravity = draw_measured("measured original gravity", measured, deviates);
    const auto balance = sum_of(wort.extract, deviates.draws());
    const auto ratio = lift([](SpecificGravity read, Volume volume,
                               Mass worked_out) -> double { return extract_mass(volume, read) / worked_out; },
                            gravity, wort.volume, balance);
    for (Part<Mass>& part : wort.extract) {
        part.amount = lift([](Mass mass, double factor) { return factor * mass; }, part.amount, ratio);
    }
    wort.efficiency =
        lift([](Share efficiency, double factor) { return factor * efficiency; }, wort.efficiency, ratio);
    wort.original_gravity.total = gravity;
}

}  // namespace

Wort make_wort(const Process& process, const Measured& measured, Deviates& deviates) {
    Wort wort;
    const auto into_fermenter =
        deviates.draw("volume", process.volume, 0.5 * process.volume.middle, 2.0 * process.volume.middle);
    const auto kettle_loss = deviates.draw("kettle loss", process.kettle_loss, 0.0 * percent, 50.0 * percent);
    wort.efficiency = deviates.draw("efficiency", process.efficiency, 5.0 * percent, 100.0 * percent);
    const Volume added_water = water_with(process.grist);
    wort.volume = lift([added_water](Volume volume) { return volume + added_water; }, into_fermenter);
    wort.kettle_volume =
        lift([](Volume volume, Share loss) -> Volume { return volume / in(whole - loss, whole); },
             into_fermenter, kettle_loss);
    for (const GristAddition& addition : process.grist) {
        wort.extract.push_back(
            extract_from(addition, process.mashed, wort.efficiency, kettle_loss, deviates));
    }
    const auto extract = sum_of(wort.extract, deviates.draws());
    wort.original_gravity = {lift(gravity_of_extract, extract, wort.volume), shares_of(wort.extract)};
    if (measured.original_gravity) {
        scale_to_measured_gravity(*measured.original_gravity, wort, deviates);
    }
    wort.boil_gravity = boil_gravity_of(process, wort, deviates);
    return wort;
}

}  // namespace entrywise
