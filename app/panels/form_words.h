// SPDX-License-Identifier: MIT
// Words of the margin's forms.
#pragma once

#include <QCoreApplication>
#include <QString>

namespace tussock {

inline QString formTr(const char* source) {
  return QCoreApplication::translate("Forms", source);
}

}  // namespace tussock
