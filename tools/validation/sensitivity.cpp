#include "tools/validation/sensitivity.hpp"

#include <deque>
#include <future>
#include <optional>
#include <thread>

#include "advice/leading_place.hpp"
#include "brewing/brew.hpp"
#include "sensing/sense.hpp"

namespace entrywise {

namespace {

/// What a judge with a moved constant brings to the table, and the styles as that judge sees them.
struct Table {
    Table(Handbook brought, const std::vector<Style>& styles)
        : handbook(std::move(brought)), line_up(styles, handbook) {}
    Table(const Table&) = delete;
    Table& operator=(const Table&) = delete;

    Handbook handbook;
    LineUp line_up;
};

/// The usual table first, then two for each constant: down and up.
void set_tables(std::deque<Table>& tables, std::vector<ConstantMoved>& moved, const Handbook& usual,
                const std::vector<Style>& styles) {
    constexpr double down = 0.8;
    constexpr double up = 1.2;
    tables.emplace_back(usual, styles);
    for (const FittedMap& map : fitted_maps()) {
        for (const MapConstant& constant : map.constants) {
            moved.push_back({std::string(map.name) + '.' + std::string(constant.name), 0, 0});
            for (const double factor : {down, up}) {
                Handbook handbook = usual;
                constant.of(handbook.perception) *= factor;
                tables.emplace_back(std::move(handbook), styles);
            }
        }
    }
}

std::optional<StyleName> leader(const Recipe& recipe, const Beer& beer, Deviates& deviates,
                                const Table& table) {
    const Tasting tasting{recipe, beer, sense(beer, table.handbook.perception, deviates)};
    const auto place = leading_place(tasting, Impression(tasting.beer, tasting.profile), table.line_up);
    return place ? std::optional<StyleName>(place->name) : std::nullopt;
}

/// Whether another style leads at each of the tables than at the first.
std::vector<bool> changes_of(const Recipe& recipe, const std::deque<Table>& tables) {
    Deviates deviates(usual_draws);
    const Beer beer = brew(recipe, deviates);
    const auto usual = leader(recipe, beer, deviates, tables.front());
    std::vector<bool> changes;
    for (const Table& table : tables) {
        changes.push_back(leader(recipe, beer, deviates, table) != usual);
    }
    return changes;
}

}  // namespace

std::vector<ConstantMoved> first_places_changed(const Knowledge& knowledge, const std::vector<Style>& styles,
                                                const std::vector<Recipe>& recipes) {
    std::deque<Table> tables;
    std::vector<ConstantMoved> moved;
    set_tables(tables, moved, knowledge.handbook, styles);
    std::vector<std::vector<bool>> changes(recipes.size());
    std::vector<std::future<void>> workers;
    const std::size_t threads = std::max(1U, std::thread::hardware_concurrency());
    for (std::size_t first = 0; first < threads; ++first) {
        workers.push_back(std::async(std::launch::async, [&, first] {
            for (std::size_t index = first; index < recipes.size(); index += threads) {
                changes[index] = changes_of(recipes[index], tables);
            }
        }));
    }
    for (std::future<void>& worker : workers) {
        worker.get();
    }
    for (const std::vector<bool>& of_recipe : changes) {
        for (std::size_t constant = 0; constant < moved.size(); ++constant) {
            moved[constant].down += of_recipe[1 + 2 * constant] ? 1U : 0U;
            moved[constant].up += of_recipe[2 + 2 * constant] ? 1U : 0U;
        }
    }
    return moved;
}

}  // namespace entrywise
