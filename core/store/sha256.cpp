// SPDX-License-Identifier: MIT
#include "core/store/sha256.h"

#include <array>
#include <stdexcept>

#include <fmt/format.h>
#include <openssl/evp.h>

namespace tussock {

std::string sha256(std::string_view bytes) {
  std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
  unsigned int size = 0;
  if (EVP_Digest(bytes.data(), bytes.size(), digest.data(), &size, EVP_sha256(), nullptr) != 1)
    throw std::runtime_error("SHA-256 is not available on this machine.");
  std::string hex;
  for (unsigned int i = 0; i < size; ++i) hex += fmt::format("{:02x}", digest[i]);
  return hex;
}

}  // namespace tussock
