// SPDX-License-Identifier: MIT
#include "app/look/motion.h"

#include <QApplication>
#include <QStyle>

namespace tussock {

namespace {
MotionChoice chosen = MotionChoice::System;
}

void chooseMotion(MotionChoice choice) {
  chosen = choice;
}

MotionChoice motionChoice() {
  return chosen;
}

bool lessMotion() {
  if (chosen == MotionChoice::Less) return true;
  return QApplication::style()->styleHint(QStyle::SH_Widget_Animation_Duration) == 0;
}

}  // namespace tussock
