#include "interchange/draft_document.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "base/number.hpp"
#include "base/text.hpp"
#include "interchange/addenda.hpp"
#include "interchange/ingredient_match.hpp"
#include "reading/values.hpp"

namespace entrywise {

namespace {

/// The name to write for one in the file, and the match told where it is another.
Written matched(const Written& name, const std::optional<Match>& match, std::string_view unmatched,
                ExchangeLog& log) {
    if (!match) {
        log.remark(name.position, RemarkKind::missing, fmt::format("{} {}", in_quotes(name.text), unmatched));
        return name;
    }
    if (!is_name_of(name.text, match->name)) {
        log.remark(name.position, RemarkKind::matched,
                   fmt::format("{} -> {}{}{}", in_quotes(name.text), match->name,
                               match->by.empty() ? "" : ", ", match->by));
    }
    return {match->name, name.position};
}

std::string_view key_of(DraftKind kind) {
    switch (kind) {
        case DraftKind::sugar:
        case DraftKind::fruit:
            return "sugar";
        case DraftKind::liquid_extract:
        case DraftKind::dry_extract:
            return "extract";
        case DraftKind::unknown:
        case DraftKind::grain:
            return "malt";
    }
    return "malt";
}

Node grist_item(const DraftFermentable& fermentable, const Draft& draft, const KnownIngredients& known,
                ExchangeLog& log) {
    Node item = empty_map(fermentable.position);
    const std::string_view key = key_of(fermentable.kind);
    if (fermentable.name) {
        const bool exact = draft.names_are_ours;
        put(item, key,
            node_of(exact ? *fermentable.name
                          : matched(*fermentable.name, match_fermentable(fermentable, known),
                                    "is in no table: taken as the file describes it", log)));
    }
    put(item, "mass", fermentable.mass);
    put(item, "color", fermentable.color);
    put(item, key == "extract" ? "sugar_content" : "extract", fermentable.extract);
    put(item, "moisture", fermentable.moisture);
    put(item, "add", fermentable.add);
    return item;
}

Node hop_item(const DraftHop& hop, const Draft& draft, const KnownIngredients& known, ExchangeLog& log) {
    Node item = empty_map(hop.position);
    if (hop.name) {
        put(item, "hop",
            node_of(draft.names_are_ours ? *hop.name
                                         : matched(*hop.name, match_hop(hop.name->text, known),
                                                   "is in no table: taken as the file describes it", log)));
    }
    put(item, "mass", hop.mass);
    put(item, "alpha", hop.alpha);
    put(item, "beta", hop.beta);
    put(item, "oil", hop.oil);
    put(item, "storage_loss", hop.storage_loss);
    put(item, "add", hop.add);
    put(item, "time", hop.time);
    put(item, "temperature", hop.temperature);
    put(item, "form", hop.form);
    return item;
}

Node extra_item(const DraftExtra& extra) {
    Node item = empty_map(extra.position);
    put(item, "name", extra.name);
    put(item, "kind", extra.kind);
    put(item, "mass", extra.mass);
    put(item, "volume", extra.volume);
    put(item, "add", extra.add);
    put(item, "time", extra.time);
    return item;
}

Node yeast_item(const DraftYeast& yeast, const Draft& draft, const KnownIngredients& known,
                ExchangeLog& log) {
    Node item = empty_map(yeast.position);
    if (yeast.name) {
        put(item, "class",
            node_of(draft.names_are_ours ? *yeast.name
                                         : matched(*yeast.name, match_yeast(yeast, known),
                                                   "is in no table of yeast classes", log)));
    }
    put(item, "attenuation", yeast.attenuation);
    return item;
}

Node rest_item(const DraftRest& rest) {
    Node item = empty_map(rest.position);
    put(item, "temperature", rest.temperature);
    put(item, "time", rest.time);
    return item;
}

template <class Item, class Make>
void put_list(Node& document, std::string_view key, const std::vector<Item>& items, Make make) {
    if (items.empty()) {
        return;
    }
    Node list = empty_list(items.front().position);
    for (const Item& item : items) {
        list.items.push_back(make(item));
    }
    put(document, key, std::move(list));
}

void put_some(Node& document, std::string_view key, Node map) {
    if (!map.entries.empty()) {
        put(document, key, std::move(map));
    }
}

void put_process(Node& document, const Draft& draft) {
    Node fermentation = empty_map(draft.position);
    put(fermentation, "temperature", draft.fermentation_temperature);
    put(fermentation, "time", draft.fermentation_time);
    Node rest = empty_map(draft.position);
    put(rest, "temperature", draft.rest_temperature);
    put(rest, "time", draft.rest_time);
    put_some(fermentation, "rest", std::move(rest));
    put_some(document, "fermentation", std::move(fermentation));

    Node conditioning = empty_map(draft.position);
    put(conditioning, "carbonation", draft.carbonation);
    put(conditioning, "time", draft.conditioning_time);
    put(conditioning, "temperature", draft.conditioning_temperature);
    put(conditioning, "package", draft.package);
    put_some(document, "conditioning", std::move(conditioning));

    Node measured = empty_map(draft.position);
    put(measured, "original_gravity", draft.measured_original_gravity);
    put(measured, "final_gravity", draft.measured_final_gravity);
    put_some(document, "measured", std::move(measured));
}

void tell_missing(const Draft& draft, ExchangeLog& log) {
    const auto missing = [&](bool is_missing, std::string text) {
        if (is_missing) {
            log.remark(draft.position, RemarkKind::missing, std::move(text));
        }
    };
    missing(!draft.style, "no style that a guide here has: name one with --style, or in the recipe file");
    missing(!draft.efficiency, "no efficiency: the usual one is taken");
    missing(!draft.boil_time, "no boil time: the usual one is taken");
    missing(draft.mash.empty() && !draft.all_extract, "no mash rest: the usual one is taken");
    missing(draft.yeasts.empty(), "no yeast: any is taken, with a wide spread");
    missing(!draft.fermentation_temperature, "no fermentation temperature: that of the yeast is taken");
    missing(!draft.carbonation, "no carbonation: the usual one is taken");
}

/// An empty list stands for a grist that is left out, so that the reader tells it at the recipe's place.
void put_grist(Node& document, const Draft& draft, const KnownIngredients& known, ExchangeLog& log) {
    if (draft.grist.empty()) {
        put(document, "grist", empty_list(draft.position));
    }
    put_list(document, "grist", draft.grist,
             [&](const DraftFermentable& fermentable) { return grist_item(fermentable, draft, known, log); });
}

}  // namespace

Node document_of(const Draft& draft, const KnownIngredients& known, ExchangeLog& log) {
    Node document = empty_map(draft.position);
    put(document, "format", node_of({"entrywise/recipe/1", draft.position}));
    put(document, "name", draft.name);
    put(document, "style", draft.style);
    put(document, "volume", draft.volume);
    Node boil = empty_map(draft.position);
    put(boil, "time", draft.boil_time);
    put_some(document, "boil", std::move(boil));
    put(document, "efficiency", draft.efficiency);
    if (draft.all_extract && draft.mash.empty()) {
        put(document, "mash", node_of({"none", draft.position}));
    }
    put_list(document, "mash", draft.mash, rest_item);
    put_grist(document, draft, known, log);
    put_list(document, "hops", draft.hops,
             [&](const DraftHop& hop) { return hop_item(hop, draft, known, log); });
    put_list(document, "extras", draft.extras, extra_item);
    put_list(document, "yeast", draft.yeasts,
             [&](const DraftYeast& yeast) { return yeast_item(yeast, draft, known, log); });
    put_process(document, draft);
    if (!draft.names_are_ours) {
        tell_missing(draft, log);
    }
    apply(draft.addenda, document, log);
    return document;
}

}  // namespace entrywise
