// CRC-32 as in IEEE 802.3 (the same as in gzip and PNG): notices a torn or garbled line; no
// protection against intent.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace store {

std::uint32_t crc32(std::string_view bytes);

// Eight hexadecimal digits.
std::string crc32_text(std::string_view bytes);

} // namespace store
