// SPDX-License-Identifier: MIT
// Length, Area and Angle: plain numbers with their unit in the type, so that a height cannot be
// passed for an angle, nor feet for metres. Metres, square metres and radians inside.
#pragma once

#include <compare>
#include <numbers>

namespace tussock {

inline constexpr double kMetresPerFoot = 0.3048;  // international foot, exact since 1959
inline constexpr double kMetresPerInch = 0.0254;  // exact
inline constexpr double kSquareFeetPerSquareYard = 9.0;

class Area;

class Length {
 public:
  constexpr Length() = default;
  [[nodiscard]] static constexpr Length metres(double value) { return Length(value); }
  [[nodiscard]] static constexpr Length centimetres(double value) { return Length(value / 100.0); }
  [[nodiscard]] static constexpr Length millimetres(double value) { return Length(value / 1000.0); }
  [[nodiscard]] static constexpr Length feet(double value) {
    return Length(value * kMetresPerFoot);
  }
  [[nodiscard]] static constexpr Length inches(double value) {
    return Length(value * kMetresPerInch);
  }

  [[nodiscard]] constexpr double metres() const { return metres_; }
  [[nodiscard]] constexpr double millimetres() const { return metres_ * 1000.0; }
  [[nodiscard]] constexpr double feet() const { return metres_ / kMetresPerFoot; }
  [[nodiscard]] constexpr double inches() const { return metres_ / kMetresPerInch; }

  constexpr auto operator<=>(const Length&) const = default;
  constexpr Length operator-() const { return Length(-metres_); }
  constexpr Length& operator+=(Length other) { return metres_ += other.metres_, *this; }
  constexpr Length& operator-=(Length other) { return metres_ -= other.metres_, *this; }
  friend constexpr Length operator+(Length a, Length b) { return Length(a.metres_ + b.metres_); }
  friend constexpr Length operator-(Length a, Length b) { return Length(a.metres_ - b.metres_); }
  friend constexpr Length operator*(Length a, double k) { return Length(a.metres_ * k); }
  friend constexpr Length operator*(double k, Length a) { return Length(a.metres_ * k); }
  friend constexpr Length operator/(Length a, double k) { return Length(a.metres_ / k); }
  friend constexpr double operator/(Length a, Length b) { return a.metres_ / b.metres_; }

 private:
  explicit constexpr Length(double value) : metres_(value) {}
  double metres_ = 0.0;
};

class Area {
 public:
  constexpr Area() = default;
  [[nodiscard]] static constexpr Area squareMetres(double value) { return Area(value); }
  [[nodiscard]] static constexpr Area squareFeet(double value) {
    return Area(value * kMetresPerFoot * kMetresPerFoot);
  }
  [[nodiscard]] static constexpr Area squareYards(double value) {
    return squareFeet(value * kSquareFeetPerSquareYard);
  }
  [[nodiscard]] constexpr double squareMetres() const { return squareMetres_; }
  [[nodiscard]] constexpr double squareFeet() const {
    return squareMetres_ / (kMetresPerFoot * kMetresPerFoot);
  }

  constexpr auto operator<=>(const Area&) const = default;
  constexpr Area& operator+=(Area other) { return squareMetres_ += other.squareMetres_, *this; }
  friend constexpr Area operator+(Area a, Area b) {
    return Area(a.squareMetres_ + b.squareMetres_);
  }
  friend constexpr Area operator-(Area a, Area b) {
    return Area(a.squareMetres_ - b.squareMetres_);
  }
  friend constexpr Area operator*(Area a, double k) { return Area(a.squareMetres_ * k); }
  friend constexpr double operator/(Area a, Area b) { return a.squareMetres_ / b.squareMetres_; }

 private:
  explicit constexpr Area(double value) : squareMetres_(value) {}
  double squareMetres_ = 0.0;
};

constexpr Area operator*(Length a, Length b) {
  return Area::squareMetres(a.metres() * b.metres());
}

// In radians.
inline constexpr double kFullTurn = 2.0 * std::numbers::pi;
inline constexpr double kDegree = std::numbers::pi / 180.0;

class Angle {
 public:
  constexpr Angle() = default;
  [[nodiscard]] static constexpr Angle radians(double value) { return Angle(value); }
  [[nodiscard]] static constexpr Angle degrees(double value) {
    return Angle(value * std::numbers::pi / 180.0);
  }
  [[nodiscard]] constexpr double radians() const { return radians_; }
  [[nodiscard]] constexpr double degrees() const { return radians_ * 180.0 / std::numbers::pi; }

  constexpr auto operator<=>(const Angle&) const = default;
  constexpr Angle operator-() const { return Angle(-radians_); }
  friend constexpr Angle operator+(Angle a, Angle b) { return Angle(a.radians_ + b.radians_); }
  friend constexpr Angle operator-(Angle a, Angle b) { return Angle(a.radians_ - b.radians_); }
  friend constexpr Angle operator*(Angle a, double k) { return Angle(a.radians_ * k); }

 private:
  explicit constexpr Angle(double value) : radians_(value) {}
  double radians_ = 0.0;
};

}  // namespace tussock
