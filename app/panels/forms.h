// SPDX-License-Identifier: MIT
// What the margin says of each kind of object: facts, and fields that edit.
#pragma once

#include "app/document/document.h"
#include "app/panels/field_form.h"

namespace tussock {

void fillForm(FieldForm& form, Document& document, Id<Settings> id);
void fillForm(FieldForm& form, Document& document, Id<Bed> id);
void fillForm(FieldForm& form, Document& document, Id<Patch> id);
void fillForm(FieldForm& form, Document& document, Id<Drift> id);
void fillForm(FieldForm& form, Document& document, Id<Building> id);
void fillForm(FieldForm& form, Document& document, Id<Barrier> id);
void fillForm(FieldForm& form, Document& document, Id<Tree> id);
void fillForm(FieldForm& form, Document& document, Id<LotLine> id);
void fillForm(FieldForm& form, Document& document, Id<Paving> id);
void fillForm(FieldForm& form, Document& document, Id<SteppingPlace> id);
void fillForm(FieldForm& form, Document& document, Id<WaterPoint> id);
void fillForm(FieldForm& form, Document& document, Id<HeightLimit> id);
void fillForm(FieldForm& form, Document& document, Id<BuriedLine> id);
void fillForm(FieldForm& form, Document& document, Id<Photo> id);
void fillForm(FieldForm& form, Document& document, Id<SunReading> id);

[[nodiscard]] QString areaText(const Document& document, Area area);
[[nodiscard]] QString stockWords(StockSize size);
[[nodiscard]] QString layerWords(Layer layer);

}  // namespace tussock
