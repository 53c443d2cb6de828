// SPDX-License-Identifier: MIT
// Whether things on the screen may move by themselves.
#pragma once

namespace tussock {

enum class MotionChoice { System, Less };
void chooseMotion(MotionChoice choice);
[[nodiscard]] MotionChoice motionChoice();
// True when less motion is chosen, or when the system's widget style animates nothing.
[[nodiscard]] bool lessMotion();

}  // namespace tussock
