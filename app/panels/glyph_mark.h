// SPDX-License-Identifier: MIT
// A species' drawn symbol, in flower, as it stands on the canvas and on the cards.
#pragma once

#include <QWidget>
#include <string>

#include "app/document/document.h"

namespace tussock {

// Empty for a species that the plant facts do not know.
class GlyphMark : public QWidget {
 public:
  GlyphMark(Document& document, std::string species, QWidget* parent);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  Document& document_;
  std::string species_;
};

}  // namespace tussock
