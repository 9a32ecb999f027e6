#include "interchange/beerjson_yeast_reader.hpp"

#include <string>
#include <utility>

#include "interchange/exchange_units.hpp"
#include "interchange/record.hpp"

namespace entrywise {

void read_beerjson_culture(const Node& node, Draft& draft, ExchangeLog& log) {
    Record record(node, "culture_additions", log);
    DraftYeast yeast;
    yeast.position = node.position;
    yeast.name = record.text("name");
    const auto type = record.text("type");
    yeast.type = type ? type->text : std::string();
    yeast.attenuation = record.amount("attenuation", exchange_share_units());
    record.pass_over({"form", "producer", "product_id", "amount", "notes", "inventory", "times_cultured"});
    record.leave_out_others();
    draft.yeasts.push_back(std::move(yeast));
}

}  // namespace entrywise
