#include "advice/line_up.hpp"

#include "advice/special.hpp"
#include "advice/style_fit.hpp"
#include "style/variant.hpp"

namespace entrywise {

namespace {

bool stands_alone(const Style& style) {
    const StyleRanges& ranges = style.ranges;
    return ranges.original_gravity || ranges.final_gravity || ranges.alcohol || ranges.bitterness;
}

}  // namespace

LineUp::LineUp(const std::vector<Style>& styles, const Handbook& handbook)
    : handbook_(&handbook), tariff_(handbook.score_sheet), words_(styles) {
    contenders_.reserve(styles.size());
    for (const Style& style : styles) {
        contenders_.push_back({.style = &style,
                               .yardstick = Yardstick(style, handbook.perception),
                               .custom = CustomOfStyle(style.custom, words_),
                               .wording = wording_of(style),
                               .entered_as = style.guide + "/" + entered_code(style.code),
                               .stands_alone = stands_alone(style),
                               .stands_on_another = is_specialty(style)});
    }
}

}  // namespace entrywise
