#include "interchange/recipe_words.hpp"

namespace entrywise {

std::string_view word_of(GristUse use) {
    switch (use) {
        case GristUse::mash:
            return "mash";
        case GristUse::boil:
            return "boil";
        case GristUse::fermenter:
            return "fermenter";
    }
    return {};
}

std::string_view word_of(HopUse use) {
    switch (use) {
        case HopUse::mash:
            return "mash";
        case HopUse::first_wort:
            return "first wort";
        case HopUse::boil:
            return "boil";
        case HopUse::whirlpool:
            return "whirlpool";
        case HopUse::dry_hop:
            return "dry hop";
    }
    return {};
}

std::string_view word_of(HopForm form) {
    switch (form) {
        case HopForm::pellet:
            return "pellet";
        case HopForm::whole:
            return "whole";
        case HopForm::extract:
            return "extract";
    }
    return {};
}

std::string_view word_of(ExtraKind kind) {
    switch (kind) {
        case ExtraKind::spice:
            return "spice";
        case ExtraKind::fruit:
            return "fruit";
        case ExtraKind::wood:
            return "wood";
        case ExtraKind::fining:
            return "fining";
        case ExtraKind::acid:
            return "acid";
        case ExtraKind::salt:
            return "salt";
        case ExtraKind::tea:
            return "tea";
        case ExtraKind::coffee:
            return "coffee";
        case ExtraKind::cocoa:
            return "cocoa";
        case ExtraKind::nut:
            return "nut";
        case ExtraKind::other:
            return "other";
    }
    return {};
}

std::string_view word_of(ExtraUse use) {
    switch (use) {
        case ExtraUse::mash:
            return "mash";
        case ExtraUse::boil:
            return "boil";
        case ExtraUse::whirlpool:
            return "whirlpool";
        case ExtraUse::fermenter:
            return "fermenter";
    }
    return {};
}

std::string_view name_key_of(FermentableKind kind) {
    switch (kind) {
        case FermentableKind::sugar:
        case FermentableKind::fruit:
            return "sugar";
        case FermentableKind::malt_extract:
            return "extract";
        case FermentableKind::base:
        case FermentableKind::toasted:
        case FermentableKind::crystal:
        case FermentableKind::roasted:
        case FermentableKind::adjunct:
            return "malt";
    }
    return "malt";
}

}  // namespace entrywise
