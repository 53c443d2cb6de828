// SPDX-License-Identifier: MIT
// While one lives, the files of others are as closed as they are to an ordinary user: a test run by
// root would otherwise find every file open to it.
#pragma once

#include <unistd.h>

namespace tussock::test {

class WithoutPrivileges {
 public:
  WithoutPrivileges() : changed_(::geteuid() == 0 && ::setresuid(kNobody, kNobody, 0) == 0) {}
  ~WithoutPrivileges() {
    if (changed_ && ::setresuid(0, 0, 0) != 0) ::_exit(1);
  }
  WithoutPrivileges(const WithoutPrivileges&) = delete;
  WithoutPrivileges& operator=(const WithoutPrivileges&) = delete;

 private:
  static constexpr uid_t kNobody = 65534;
  bool changed_;
};

}  // namespace tussock::test
