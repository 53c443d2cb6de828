// SPDX-License-Identifier: MIT
// What is looked at of the sun: hours on the ground or shadows at an instant, of the yard as it is,
// as an edit in hand would make it, or with its trees grown. No part of the file.
#pragma once

#include <chrono>
#include <memory>
#include <optional>
#include <QObject>

#include "app/document/civil_day.h"
#include "app/document/document.h"
#include "app/document/sun_worker.h"
#include "core/sun/hour_grid.h"
#include "core/sun/month_map.h"
#include "core/sun/position.h"

namespace tussock {

enum class SunLook { Off, Hours, Shadows };

struct SunChoice {
  SunLook look = SunLook::Off;
  SunSpan span = SunSpan::Season;
  std::chrono::month month = std::chrono::June;
  int yearsAhead = 0;  // that trees have grown on
  Date day{};
  int minute = kMinutesInDay / 2;  // on the clock, after midnight

  bool operator==(const SunChoice&) const = default;
};

class SunView : public QObject {
  Q_OBJECT

 public:
  explicit SunView(Document& document, QObject* parent = nullptr);
  ~SunView() override;

  [[nodiscard]] const SunChoice& choice() const { return choice_; }
  void choose(const SunChoice& choice);

  // The yard as an edit in hand would make it; nothing ends that.
  void preview(std::optional<Yard> yard);
  [[nodiscard]] bool previewing() const { return preview_.has_value(); }
  // The yard whose sun is shown: with the edit in hand made, and the trees grown.
  [[nodiscard]] const Yard& yard() const { return shown_; }

  // The map last worked out; null before the first and on an empty yard.
  [[nodiscard]] std::shared_ptr<const SunMap> map() const { return map_; }
  // Its hours for the span chosen; empty without a map.
  [[nodiscard]] const HourGrid& grid() const;
  // The months that can be chosen, in the season's order.
  [[nodiscard]] const std::vector<std::chrono::month>& months() const { return months_; }

  [[nodiscard]] CivilDay civilDay() const;
  [[nodiscard]] UtcTime instant() const;  // of day and clock
  [[nodiscard]] SunPosition sun() const;  // at that instant
  // Whether open ground has direct sun, by the clock of the day chosen.
  [[nodiscard]] bool isLitAt(int minute) const;

  void waitForMap();  // for tests

 signals:
  void choiceChanged();
  void yardChanged();  // the one whose sun is shown
  void mapChanged();
  void failed(const QString& message);

 private:
  void takeYard();
  [[nodiscard]] Yard grownYard() const;
  void takeMap(std::shared_ptr<const SunMap> map);
  void refresh();
  [[nodiscard]] bool documentsMapDoes() const;
  [[nodiscard]] SunWorker::Job job() const;
  [[nodiscard]] HourGrid gridOf(const SunMap& map) const;

  Document& document_;
  SunWorker worker_;
  SunChoice choice_;
  std::optional<Yard> preview_;
  Yard shown_;
  std::shared_ptr<const SunMap> map_;
  std::vector<std::chrono::month> months_;  // a map that follows a drag knows none
  mutable std::optional<HourGrid> grid_;    // of the map, once it is asked for
  std::optional<SunWorker::Job> asked_;     // of the worker, for what is shown or awaited
};

}  // namespace tussock
