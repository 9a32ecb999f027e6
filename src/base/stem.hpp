#pragma once

#include <string>
#include <string_view>

namespace entrywise {

/// What is left of an English word when its endings are taken off, so that `hops`, `hoppy` and `hop`, or
/// `bitter` and `bitterness`, are one. In small letters; no word itself, for comparing only. Light: it takes
/// off plurals, -ness, -ly, -ion, -ity, -ic and -y where three letters are left, -ing, -ed and a silent e
/// where four are. Words of up to three letters stay as they are. In the manner of Harman, How effective is
/// suffixing?, Journal of the American Society for Information Science 42, 1991.
std::string stem_of(std::string_view word);

}  // namespace entrywise
