#include "advice/custom_words.hpp"

#include <algorithm>
#include <functional>

#include "base/text.hpp"

namespace entrywise {

namespace {

// What a word stands for in a style, as bits.
constexpr unsigned base = 1;
constexpr unsigned usual_in_grist = 2;
constexpr unsigned possible_grist = 4;
constexpr unsigned unusual_grist = 8;
constexpr unsigned usual_yeast = 16;
constexpr unsigned possible_yeast = 32;
constexpr unsigned usual_hop = 64;
constexpr unsigned possible_hop = 128;

}  // namespace

CustomWords::CustomWords(const std::vector<Style>& styles) {
    for (const Style& style : styles) {
        const Custom& custom = style.custom;
        for (const auto* texts :
             {&custom.yeast_typical, &custom.yeast_possible, &custom.hops_typical, &custom.hops_possible,
              &custom.grist_base, &custom.grist_typical, &custom.grist_possible, &custom.grist_unusual}) {
            for (const std::string& text : *texts) {
                if (const auto [entry, is_new] = number_of_.try_emplace(text, words_.size()); is_new) {
                    words_.push_back(entry->first);
                }
            }
        }
    }
}

std::size_t CustomWords::number_of(std::string_view word) const {
    const auto found = number_of_.find(word);
    return found == number_of_.end() ? none : found->second;
}

CustomOfStyle::CustomOfStyle(const Custom& custom, const CustomWords& words,
                             std::span<const std::string_view> welcome)
    : standing_(words.count(), 0),
      welcome_(welcome.begin(), welcome.end()),
      any_hops_are_usual_(contains(custom.hops_typical, "any")),
      any_hops_are_possible_(contains(custom.hops_possible, "any")),
      names_yeast_(!custom.yeast_typical.empty() || !custom.yeast_possible.empty() || !welcome.empty()),
      names_hops_(!custom.hops_typical.empty() || !custom.hops_possible.empty()),
      names_a_base_(!custom.grist_base.empty()) {
    stand(custom.grist_base, base, words);
    stand(custom.grist_typical, usual_in_grist, words);
    stand(custom.grist_possible, possible_grist, words);
    stand(custom.grist_unusual, unusual_grist, words);
    stand(custom.yeast_typical, usual_yeast, words);
    stand(custom.yeast_possible, possible_yeast, words);
    stand(custom.hops_typical, usual_hop, words);
    stand(custom.hops_possible, possible_hop, words);
    for (const std::string& word : custom.grist_typical) {
        usual_grist_.push_back(words.number_of(word));
    }
    for (const std::string_view word : welcome) {
        if (const std::size_t number = words.number_of(word); number != CustomWords::none) {
            standing_[number] |= possible_grist;
        }
    }
}

void CustomOfStyle::stand(const std::vector<std::string>& texts, unsigned standing,
                          const CustomWords& words) {
    for (const std::string& text : texts) {
        if (const std::size_t number = words.number_of(text); number != CustomWords::none) {
            standing_[number] = static_cast<unsigned char>(standing_[number] | standing);
        }
    }
}

bool CustomOfStyle::is(std::size_t number, unsigned standing) const {
    return number != CustomWords::none && (standing_[number] & standing) != 0;
}

Customary CustomOfStyle::of_yeast(std::string_view yeast_class, std::size_t number) const {
    if (is(number, usual_yeast)) {
        return Customary::usual;
    }
    const bool is_welcome = std::find(welcome_.begin(), welcome_.end(), yeast_class) != welcome_.end();
    return is_welcome || !names_yeast_ || is(number, possible_yeast) ? Customary::possible
                                                                     : Customary::seldom;
}

Customary CustomOfStyle::of_hops(std::size_t family) const {
    if (any_hops_are_usual_ || is(family, usual_hop)) {
        return Customary::usual;
    }
    return any_hops_are_possible_ || !names_hops_ || is(family, possible_hop) ? Customary::possible
                                                                              : Customary::seldom;
}

/// How exactly it is named as such: by its own name, by a group of its, or not.
int CustomOfStyle::named_as(unsigned standing, const NumberedName& fermentable) const {
    if (is(fermentable.name, standing)) {
        return 2;
    }
    return std::any_of(fermentable.groups.begin(), fermentable.groups.end(),
                       [&](std::size_t group) { return is(group, standing); })
               ? 1
               : 0;
}

bool CustomOfStyle::is_base(const NumberedName& fermentable) const {
    return named_as(base, fermentable) > 0;
}

bool CustomOfStyle::is_unusual(const NumberedName& fermentable) const {
    const int unusual = named_as(unusual_grist, fermentable);
    return unusual > 0 && unusual > named_as(base | usual_in_grist | possible_grist, fermentable);
}

}  // namespace entrywise
