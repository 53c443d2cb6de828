// SPDX-License-Identifier: MIT
// The findings of the yard: open ones first, the accepted folded under one line. Rows stay where
// they are and keep what is being typed while the checks look again.
#pragma once

#include <map>
#include <QWidget>
#include <string>

#include "app/document/document.h"

class QPushButton;
class QVBoxLayout;

namespace tussock {

class FindingRow;

class FindingsList : public QWidget {
  Q_OBJECT

 public:
  explicit FindingsList(Document& document, QWidget* parent = nullptr);

  [[nodiscard]] QString countWords() const;  // one line, also of why there is none
  // What the line leaves out while there is nothing to show.
  [[nodiscard]] QString emptyWords() const;
  [[nodiscard]] bool isEmpty() const { return openCount_ + acceptedCount_ == 0; }
  [[nodiscard]] bool hasOpen() const { return openCount_ > 0; }

 signals:
  void findingChosen(const tussock::Finding& finding);
  void countsChanged();
  void asking(QWidget* part);  // of a row, for words: it should be seen
  void told(const QString& words);
  void settled();

 private:
  void refresh();
  void fill(QVBoxLayout* layout, const std::vector<const Finding*>& findings);
  FindingRow* rowFor(const Finding& finding);
  void dropRows(const std::vector<const Finding*>& open,
                const std::vector<const Finding*>& accepted);

  Document& document_;
  std::map<std::string, FindingRow*> rows_;
  QVBoxLayout* open_ = nullptr;
  QVBoxLayout* accepted_ = nullptr;
  QWidget* acceptedBox_ = nullptr;
  QPushButton* more_ = nullptr;
  QPushButton* unfold_ = nullptr;
  std::size_t most_;
  std::size_t openCount_ = 0;
  std::size_t acceptedCount_ = 0;
};

}  // namespace tussock
