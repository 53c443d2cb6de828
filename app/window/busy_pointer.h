// SPDX-License-Identifier: MIT
// The pointer of a program that is at work, while this lives.
#pragma once

#include <QGuiApplication>

namespace tussock {

class BusyPointer {
 public:
  BusyPointer() { QGuiApplication::setOverrideCursor(Qt::WaitCursor); }
  ~BusyPointer() { QGuiApplication::restoreOverrideCursor(); }
  BusyPointer(const BusyPointer&) = delete;
  BusyPointer& operator=(const BusyPointer&) = delete;
};

}  // namespace tussock
