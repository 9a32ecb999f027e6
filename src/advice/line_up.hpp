#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "advice/custom_words.hpp"
#include "judging/tariff.hpp"
#include "judging/yardstick.hpp"
#include "style/handbook.hpp"
#include "style/style.hpp"

namespace entrywise {

/// A style that beers can be entered in, with what of it is the same for every beer.
struct Contender {
    const Style* style;
    Yardstick yardstick;
    CustomOfStyle custom;
    double wording;          ///< how widely it is worded (`StyleFit`)
    std::string entered_as;  ///< `bjcp-2021/25B` of `25B-table-pale`
    bool stands_alone;       ///< it says enough by itself to hold a beer against it
    bool stands_on_another;  ///< a specialty style
};

/// The styles to choose from, made ready to rank many beers. Styles and handbook must last as long as it
/// does. It may be used from many threads at once.
class LineUp {
  public:
    LineUp(const std::vector<Style>& styles, const Handbook& handbook);

    const std::vector<Contender>& contenders() const { return contenders_; }
    const Handbook& handbook() const { return *handbook_; }
    const Tariff& tariff() const { return tariff_; }
    const CustomWords& words() const { return words_; }

  private:
    const Handbook* handbook_;
    Tariff tariff_;
    CustomWords words_;
    std::vector<Contender> contenders_;
};

}  // namespace entrywise
