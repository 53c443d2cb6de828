// SPDX-License-Identifier: MIT
// Loosens a planting that keeps the rules already: plants that the edges of a narrow place have
// lined up leave their lines, and what stands closer than it need moves apart.
#pragma once

#include "core/planting/fill_random.h"
#include "core/planting/fill_settle.h"
#include "core/planting/fill_watch.h"

namespace tussock {

// Plants move one by one, at random; a move counts where the sum of crowding and of pairs in line
// falls, every placement rule holds and no drift is parted (simulated annealing).
// Nothing is done where no line shows and plants stand apart.
void loosen(Settling& settling, Chance& chance, const WorkWatch& watch);

}  // namespace tussock
