#include "reading/mended_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <vector>

#include "base/number.hpp"
#include "quantity/text.hpp"
#include "reading/text_edits.hpp"
#include "reading/yaml_document.hpp"

namespace entrywise {

namespace {

std::string_view word_for(GristUse use) {
    switch (use) {
        case GristUse::boil:
            return "boil";
        case GristUse::fermenter:
            return "fermenter";
        case GristUse::mash:
            break;
    }
    return "mash";
}

std::string_view word_for(HopUse use) {
    switch (use) {
        case HopUse::mash:
            return "mash";
        case HopUse::first_wort:
            return "first wort";
        case HopUse::whirlpool:
            return "whirlpool";
        case HopUse::dry_hop:
            return "dry hop";
        case HopUse::boil:
            break;
    }
    return "boil";
}

std::string_view word_for(ExtraKind kind) {
    switch (kind) {
        case ExtraKind::spice:
            return "spice";
        case ExtraKind::salt:
            return "salt";
        case ExtraKind::fining:
            return "fining";
        default:
            return "other";
    }
}

std::string_view word_for(ExtraUse use) {
    return use == ExtraUse::fermenter ? "fermenter" : use == ExtraUse::mash ? "mash" : "boil";
}

std::string text_of(Mass mass, const Measures& measures) {
    return measures.pounds ? to_text(mass, mass < pound ? "oz" : "lb") : to_text(mass);
}

/// As the recipe states it: with a spread where one was given; one that was taken from the tables in
/// proportion has many digits and comes back by itself.
std::string text_of(const Uncertain<Share>& alpha) {
    constexpr std::size_t longest_by_hand = 12;
    const std::string with_spread = to_text(alpha);
    return with_spread.size() <= longest_by_hand ? with_spread : to_text(alpha.middle);
}

std::string degrees(Temperature temperature, const Measures& measures) {
    return measures.fahrenheit ? to_text(temperature, "F")
                               : shortest(rounded(in_celsius(temperature), 1)) + " C";
}

std::string minutes(Duration time) {
    return shortest(rounded(in(time, minute), 1)) + " min";
}

std::string days(Duration time) {
    return shortest(rounded(in(time, day), 1)) + " d";
}

std::string item_text(const GristAddition& addition, const Measures& measures) {
    const Fermentable& fermentable = addition.fermentable;
    const std::string_view key = fermentable.kind == FermentableKind::sugar          ? "sugar"
                                 : fermentable.kind == FermentableKind::malt_extract ? "extract"
                                                                                     : "malt";
    const std::string use =
        addition.use == GristUse::mash ? std::string() : fmt::format(", add: {}", word_for(addition.use));
    return fmt::format("{{{}: {}, mass: {}{}}}", key, fermentable.name, text_of(addition.mass, measures),
                       use);
}

std::string item_text(const HopAddition& addition, const Measures& measures) {
    std::string text =
        fmt::format("{{hop: {}, mass: {}", addition.hop.name, text_of(addition.mass, measures));
    if (addition.alpha_is_stated) {
        text += ", alpha: " + text_of(addition.hop.alpha);
    }
    text += fmt::format(", add: {}", word_for(addition.use));
    if (addition.time) {
        text +=
            ", time: " + (addition.use == HopUse::dry_hop ? days(*addition.time) : minutes(*addition.time));
    }
    if (addition.temperature) {
        text += ", temperature: " + degrees(*addition.temperature, measures);
    }
    if (addition.form != HopForm::pellet) {
        text += addition.form == HopForm::whole ? ", form: whole" : ", form: extract";
    }
    return text + "}";
}

std::string item_text(const ExtraAddition& extra, const Measures& measures) {
    std::string text = fmt::format("{{name: {}, kind: {}", extra.name, word_for(extra.kind));
    if (extra.mass) {
        text += ", mass: " + text_of(*extra.mass, measures);
    }
    text += fmt::format(", add: {}", word_for(extra.use));
    if (extra.time) {
        text += ", time: " + minutes(*extra.time);
    }
    return text + "}";
}

bool is_same_ingredient(const GristAddition& one, const GristAddition& other) {
    return one.fermentable.name == other.fermentable.name;
}
bool is_same_ingredient(const HopAddition& one, const HopAddition& other) {
    return one.hop.name == other.hop.name;
}
bool is_same_ingredient(const ExtraAddition& one, const ExtraAddition& other) {
    return one.name == other.name;
}

/// Writes into a text what a mended recipe has otherwise.
class Writer {
  public:
    Writer(std::string_view text, const Node& root, const Recipe& recipe, const Recipe& mended)
        : edits_(text), root_(root), recipe_(recipe), mended_(mended) {}

    void write() {
        write_volume();
        write_boil();
        write_mash();
        write_list("grist", recipe_.grist, mended_.grist);
        write_list("hops", recipe_.hops, mended_.hops);
        write_list("extras", recipe_.extras, mended_.extras);
        write_yeasts();
        write_fermentation();
        write_conditioning();
        write_measured();
    }

    const TextEdits& edits() const { return edits_; }

  private:
    /// A value of a map that stands under a key of the recipe; the map is added where it is missing.
    void set(std::string_view parent, const std::string& key, const std::string& value) {
        const Node* map = value_of(root_, parent);
        if (map == nullptr) {
            add_to_new_map(std::string(parent), key + ": " + value);
            return;
        }
        const Node* scalar = value_of(*map, key);
        if (scalar == nullptr) {
            edits_.add_key(*map, key, value);
        } else {
            edits_.set_scalar(*scalar, value);
        }
    }

    void add_to_new_map(const std::string& parent, const std::string& entry) {
        for (auto& [name, entries] : new_maps_) {
            if (name == parent) {
                entries += ", " + entry;
                return;
            }
        }
        new_maps_.emplace_back(parent, entry);
    }

    void write_volume() {
        if (mended_.volume.middle != recipe_.volume.middle) {
            edits_.set_scalar(*value_of(root_, "volume"),
                              to_text(mended_.volume, recipe_.measures.gallons ? "gal" : "L"));
        }
    }

    void write_boil() {
        if (mended_.boil.time != recipe_.boil.time) {
            set("boil", "time", minutes(*mended_.boil.time));
        }
    }

    void write_mash() {
        const Node* rests = value_of(root_, "mash");
        for (std::size_t rest = 0; rest < mended_.mash.size(); ++rest) {
            if (mended_.mash[rest].temperature != recipe_.mash[rest].temperature) {
                edits_.set_scalar(*value_of(rests->items[rest], "temperature"),
                                  degrees(mended_.mash[rest].temperature, recipe_.measures));
            }
        }
    }

    template <class Addition>
    static const Addition* at_position(const std::vector<Addition>& additions, Position position) {
        const auto found = std::find_if(additions.begin(), additions.end(), [&](const Addition& addition) {
            return addition.position == position;
        });
        return found == additions.end() ? nullptr : &*found;
    }

    /// Additions are the same where they stand at the same place. Where none is left, the first that is new
    /// takes the place of the first that goes, as a list is never empty.
    template <class Addition>
    void write_list(const std::string& key, const std::vector<Addition>& before,
                    const std::vector<Addition>& after) {
        const Node* list = value_of(root_, key);
        if (list != nullptr && after.empty()) {
            if (!before.empty()) {
                remove_key(root_, key);
            }
            return;
        }
        const bool any_kept = std::any_of(before.begin(), before.end(), [&](const Addition& addition) {
            return at_position(after, addition.position) != nullptr;
        });
        for (std::size_t index = 0; index < before.size(); ++index) {
            if (const Addition* addition = at_position(after, before[index].position)) {
                write_addition(list->items[index], before[index], *addition);
            } else if (any_kept || index > 0) {
                edits_.remove_item(*list, index);
            }
        }
        bool needs_a_place = !any_kept;
        for (const Addition& addition : after) {
            if (at_position(before, addition.position) == nullptr) {
                write_new(key, list, item_text(addition, recipe_.measures), needs_a_place);
                needs_a_place = false;
            }
        }
    }

    void write_new(const std::string& key, const Node* list, const std::string& item, bool needs_a_place) {
        if (list == nullptr && needs_a_place) {
            edits_.add_list(root_, key, item);
        } else if (list == nullptr) {
            edits_.add_line(root_, "  - " + item);
        } else if (needs_a_place && !list->items.empty()) {
            edits_.replace_item(list->items.front(), item);
        } else {
            edits_.add_item(*list, item);
        }
    }

    template <class Addition>
    void write_addition(const Node& item, const Addition& before, const Addition& after) {
        if (!is_same_ingredient(before, after)) {
            edits_.replace_item(item, item_text(after, recipe_.measures));
            return;
        }
        write_mass(item, before, after);
        write_time(item, before, after);
    }

    template <class Addition>
    void write_mass(const Node& item, const Addition& before, const Addition& after) {
        if (after.mass != before.mass) {
            edits_.set_scalar(*value_of(item, "mass"), text_of(Mass(mass_of(after)), recipe_.measures));
        }
    }

    static Mass mass_of(const GristAddition& addition) { return addition.mass; }
    static Mass mass_of(const HopAddition& addition) { return addition.mass; }
    static Mass mass_of(const ExtraAddition& addition) { return *addition.mass; }

    template <class Addition>
    void write_time(const Node& /*item*/, const Addition& /*before*/, const Addition& /*after*/) {}

    void write_time(const Node& item, const HopAddition& before, const HopAddition& after) {
        if (after.time != before.time) {
            edits_.set_scalar(*value_of(item, "time"), minutes(*after.time));
        }
    }

    void write_yeasts() {
        const Node* node = value_of(root_, "yeast");
        for (std::size_t index = 0; index < mended_.yeasts.size(); ++index) {
            const Node& item = node->kind == NodeKind::list ? node->items[index] : *node;
            write_yeast(item, recipe_.yeasts[index], mended_.yeasts[index]);
        }
    }

    void write_yeast(const Node& item, const YeastAddition& before, const YeastAddition& after) {
        if (after.yeast.name != before.yeast.name) {
            edits_.set_scalar(*value_of(item, "class"), after.yeast.name);
            for (const char* key : {"attenuation", "alcohol_limit", "pitch"}) {
                remove_key(item, key);
            }
            return;
        }
        if (after.pitch != before.pitch && after.pitch) {
            const std::string pitch =
                shortest(rounded(in(*after.pitch, million_per_milliliter_plato), 2)) + " M/mL/P";
            const Node* stated = value_of(item, "pitch");
            if (stated == nullptr) {
                edits_.add_key(item, "pitch", pitch);
            } else {
                edits_.set_scalar(*stated, pitch);
            }
        }
    }

    void remove_key(const Node& map, std::string_view key) {
        for (const Entry& entry : map.entries) {
            if (entry.key == key) {
                edits_.remove_entry(map, entry);
            }
        }
    }

    void write_fermentation() {
        if (mended_.fermentation_temperature != recipe_.fermentation_temperature) {
            set("fermentation", "temperature", degrees(*mended_.fermentation_temperature, recipe_.measures));
        }
        if (mended_.fermentation_time != recipe_.fermentation_time) {
            set("fermentation", "time", days(*mended_.fermentation_time));
        }
        if (mended_.diacetyl_rest && !recipe_.diacetyl_rest) {
            set("fermentation", "rest",
                fmt::format("{{temperature: {}, time: {}}}",
                            degrees(mended_.diacetyl_rest->temperature, recipe_.measures),
                            days(mended_.diacetyl_rest->time)));
        }
    }

    void write_conditioning() {
        const Conditioning& before = recipe_.conditioning;
        const Conditioning& after = mended_.conditioning;
        const bool other_gas = after.carbonation && (!before.carbonation ||
                                                     before.carbonation->middle != after.carbonation->middle);
        if (other_gas) {
            set("conditioning", "carbonation",
                fixed(in(after.carbonation->middle, volume_of_co2), 1) + " vol");
        }
        if (after.time != before.time) {
            set("conditioning", "time", days(*after.time));
        }
        if (after.temperature != before.temperature) {
            set("conditioning", "temperature", degrees(*after.temperature, recipe_.measures));
        }
        if (after.filtered != before.filtered) {
            set("conditioning", "filtered", *after.filtered ? "true" : "false");
        }
        for (const auto& [parent, entries] : new_maps_) {
            edits_.add_line(root_, fmt::format("{}: {{{}}}", parent, entries));
        }
    }

    /// What was measured and no longer holds; the whole key where nothing is left of it.
    void write_measured() {
        const Node* node = value_of(root_, "measured");
        if (node == nullptr) {
            return;
        }
        std::vector<std::string> gone;
        const auto check = [&](const auto& before, const auto& after, const char* key) {
            if (before && !after) {
                gone.emplace_back(key);
            } else if (before && before->middle != after->middle) {
                edits_.set_scalar(*value_of(*node, key), to_text(*after));
            }
        };
        const Measured& before = recipe_.measured;
        const Measured& after = mended_.measured;
        check(before.original_gravity, after.original_gravity, "original_gravity");
        check(before.final_gravity, after.final_gravity, "final_gravity");
        check(before.bitterness, after.bitterness, "bitterness");
        check(before.color, after.color, "color");
        check(before.alcohol, after.alcohol, "alcohol");
        check(before.carbonation, after.carbonation, "carbonation");
        if (gone.size() == node->entries.size()) {
            remove_key(root_, "measured");
            return;
        }
        if (in_pieces(*node, gone)) {
            return;
        }
        for (const std::string& key : gone) {
            remove_key(*node, key);
        }
    }

    /// Several keys of one map in braces may share a comma: the map is then written anew.
    bool in_pieces(const Node& node, const std::vector<std::string>& gone) {
        if (gone.size() < 2) {
            return false;
        }
        std::string text;
        for (const Entry& entry : node.entries) {
            if (std::find(gone.begin(), gone.end(), entry.key) == gone.end()) {
                text += (text.empty() ? "" : ", ") + entry.key + ": " + entry.value.text;
            }
        }
        edits_.replace_item(node, "{" + text + "}");
        return true;
    }

    TextEdits edits_;
    const Node& root_;
    const Recipe& recipe_;
    const Recipe& mended_;
    std::vector<std::pair<std::string, std::string>> new_maps_;
};

}  // namespace

Outcome<std::string> mended_text(std::string_view text, const Recipe& recipe, const Recipe& mended,
                                 const std::string& file) {
    const Outcome<Node> root = yaml_document(text, file);
    if (!root) {
        return root.faults;
    }
    const Node* format = value_of(*root, "format");
    const bool is_recipe_file = format != nullptr && format->text.starts_with("entrywise/recipe/");
    Writer writer(text, *root, recipe, mended);
    if (is_recipe_file) {
        writer.write();
    }
    if (!is_recipe_file || !writer.edits().all_possible()) {
        return Fault{.place = {file, {}},
                     .found = "a layout that cannot be edited in place",
                     .expected = "keys and items on lines of their own, or maps in braces",
                     .nearest = {},
                     .remedy = "Make the changes by hand."};
    }
    return writer.edits().result();
}

}  // namespace entrywise
