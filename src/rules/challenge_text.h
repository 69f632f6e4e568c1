// How challenge ratings are written.
#pragma once

#include <string>

namespace rules {

// "1/8", "3", "2.5": a challenge rating as the documents write it. Any number from 0 up.
std::string challenge_text(double challenge);

} // namespace rules
