// SPDX-License-Identifier: MIT
// What the species of a bed come to together, as listed or as planted: bloom, heights, shares,
// diversity, and what is missing with the species that would fill it.
#pragma once

#include <QWidget>

#include "app/document/document.h"
#include "core/planting/bed_mix.h"

class QButtonGroup;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace tussock {

class BloomChart;
class FieldForm;
class HeightProfile;

class FiguresView : public QWidget {
  Q_OBJECT

 public:
  // One under the other, or in columns that scroll by themselves.
  enum class Flow { Down, Across };
  FiguresView(Document& document, Id<Bed> bed, Flow flow, QWidget* parent = nullptr);

  void refresh();

 private:
  void addHead(QVBoxLayout* column);
  void makeParts();
  void layDown();
  void layAcross();
  void addFacts();
  void showMissing();
  void addRemedy(const Remedy& remedy);
  [[nodiscard]] MixOf shownMix(const Bed& bed) const;
  [[nodiscard]] const Bed* bed() const;

  Document& document_;
  Id<Bed> bed_;
  BedMix mix_;
  std::optional<MixOf> chosen_;  // by hand
  QWidget* head_ = nullptr;
  QButtonGroup* which_ = nullptr;
  QWidget* body_ = nullptr;
  BloomChart* bloom_ = nullptr;
  HeightProfile* heights_ = nullptr;
  FieldForm* facts_ = nullptr;
  QVBoxLayout* missingRows_ = nullptr;
  QWidget* missing_ = nullptr;
};

}  // namespace tussock
