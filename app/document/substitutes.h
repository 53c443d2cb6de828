// SPDX-License-Identifier: MIT
// Looks for species to take the place of another, beside the window. All checks are run once for
// each. An edit of the yard meanwhile ends the search; one afterwards makes its results void.
#pragma once

#include <memory>
#include <QObject>
#include <QString>
#include <thread>

#include "app/document/document.h"
#include "core/checks/substitute.h"

namespace tussock {

class Substitutes : public QObject {
  Q_OBJECT

 public:
  explicit Substitutes(Document& document, QObject* parent = nullptr);
  ~Substitutes() override;

  void look(const std::string& species);  // ends what is under way
  void drop();
  // Puts it in the place of the species looked for, in one edit. False when nothing was done.
  bool put(const Species& with);

  enum class State { Idle, Looking, Found };
  [[nodiscard]] State state() const { return state_; }
  [[nodiscard]] const std::string& species() const { return species_; }
  [[nodiscard]] const std::vector<Substitute>& found() const { return found_; }
  void wait();  // until there is nothing under way; for tests

 signals:
  void changed();

 private:
  void hand(std::uint64_t run, std::vector<Substitute> found);
  void setState(State state);

  Document& document_;
  State state_ = State::Idle;
  std::string species_;
  Catalogue facts_;  // what `found_` points into
  std::vector<Substitute> found_;
  std::uint64_t run_ = 0;  // what an ended thread still hands over is for nobody
  std::jthread thread_;
};

}  // namespace tussock
