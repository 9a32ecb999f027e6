#pragma once

#include <cstddef>
#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "style/customary.hpp"
#include "style/style.hpp"

namespace entrywise {

/// The words by which styles name what is customary for them, numbered, so that many recipes can be held
/// against many styles without comparing letters.
class CustomWords {
  public:
    static constexpr std::size_t none = static_cast<std::size_t>(-1);

    explicit CustomWords(const std::vector<Style>& styles);

    /// `none` for a word that no style has.
    std::size_t number_of(std::string_view word) const;
    std::string_view word(std::size_t number) const { return words_[number]; }
    std::size_t count() const { return words_.size(); }

  private:
    std::map<std::string, std::size_t, std::less<>> number_of_;
    std::vector<std::string_view> words_;  ///< of the map
};

/// Something of a recipe by its own name, and by the groups that it belongs to.
struct NumberedName {
    std::size_t name = CustomWords::none;
    std::vector<std::size_t> groups;
};

/// What is customary for one style, by numbers of words.
class CustomOfStyle {
  public:
    /// `welcome` are words that are possible in it whatever it says itself.
    CustomOfStyle(const Custom& custom, const CustomWords& words,
                  std::span<const std::string_view> welcome = {});

    /// Of a class of yeast, and of a family of hops, as `custom_of_yeast` and `custom_of_hops`. Where a style
    /// names nothing that is customary, anything is possible in it: what is not said must neither speak for a
    /// style nor rule it out.
    Customary of_yeast(std::string_view yeast_class, std::size_t number) const;
    Customary of_hops(std::size_t family) const;

    /// Whether the style names it, by its name or by a group, as a base of its grist.
    bool is_base(const NumberedName& fermentable) const;
    bool names_a_base() const { return names_a_base_; }
    /// Whether the style names it as unusual, more exactly than as usual or possible.
    bool is_unusual(const NumberedName& fermentable) const;
    const std::vector<std::size_t>& usual_grist() const { return usual_grist_; }

  private:
    bool is(std::size_t number, unsigned standing) const;
    int named_as(unsigned standing, const NumberedName& fermentable) const;
    void stand(const std::vector<std::string>& texts, unsigned standing, const CustomWords& words);

    std::vector<unsigned char> standing_;  ///< by number: all that a word stands for in this style
    std::vector<std::size_t> usual_grist_;
    std::vector<std::string_view> welcome_;
    bool any_hops_are_usual_ = false;
    bool any_hops_are_possible_ = false;
    bool names_yeast_ = false;
    bool names_hops_ = false;
    bool names_a_base_ = false;
};

}  // namespace entrywise
