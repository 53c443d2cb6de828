// SPDX-License-Identifier: MIT
// The fields of a drift's shape: pattern, spacing, ground, length to width. Each plants it anew in
// place; of count, spacing and ground one answers the other.
#pragma once

#include "app/document/document.h"
#include "app/panels/field_form.h"

namespace tussock {

void addShapeFields(FieldForm& form, Document& document, Id<Drift> drift);

}  // namespace tussock
