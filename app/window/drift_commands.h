// SPDX-License-Identifier: MIT
// What the Drift menu does with the drifts selected.
#pragma once

#include <QObject>

#include "app/document/document.h"

namespace tussock {

class DriftCommands : public QObject {
  Q_OBJECT

 public:
  explicit DriftCommands(Document& document, QObject* parent = nullptr)
      : QObject(parent), document_(document) {}

  void merge();         // two selected drifts
  void setOutAnew();    // each selected drift, by the rules, where it stands
  void settle();        // plants of the selected drifts that break a rule
  void lockOrUnlock();  // locks all unless all are locked

 signals:
  void told(const QString& words);  // what could not be done, or what was done beside

 private:
  [[nodiscard]] std::vector<Id<Drift>> selected() const;
  void commit(const Yard& after, const QString& label);

  Document& document_;
};

}  // namespace tussock
