// SPDX-License-Identifier: MIT
#include "core/geometry/point_index.h"

#include <boost/geometry/index/rtree.hpp>

#include "core/geometry/boost_adapt.h"

namespace tussock {

using namespace boosted;
namespace bgi = boost::geometry::index;

struct PointIndex::Tree {
  using Value = std::pair<BoostPoint, std::size_t>;
  bgi::rtree<Value, bgi::rstar<16>> values;
};

PointIndex::PointIndex(const std::vector<Point>& points) : tree_(std::make_unique<Tree>()) {
  std::vector<Tree::Value> values;
  values.reserve(points.size());
  for (std::size_t i = 0; i < points.size(); ++i)
    values.emplace_back(BoostPoint(points[i].x, points[i].y), i);
  tree_->values = {values.begin(), values.end()};
}

PointIndex::~PointIndex() = default;
PointIndex::PointIndex(PointIndex&&) noexcept = default;
PointIndex& PointIndex::operator=(PointIndex&&) noexcept = default;

std::vector<std::size_t> PointIndex::within(Point centre, double metres) const {
  const bg::model::box<BoostPoint> box({centre.x - metres, centre.y - metres},
                                       {centre.x + metres, centre.y + metres});
  std::vector<std::size_t> result;
  for (auto it = tree_->values.qbegin(bgi::intersects(box)); it != tree_->values.qend(); ++it)
    if (distance(centre, {it->first.x(), it->first.y()}) <= metres) result.push_back(it->second);
  return result;
}

std::vector<std::size_t> PointIndex::nearest(Point centre, std::size_t count) const {
  std::vector<std::size_t> result;
  const BoostPoint at(centre.x, centre.y);
  for (auto it = tree_->values.qbegin(bgi::nearest(at, static_cast<unsigned>(count)));
       it != tree_->values.qend(); ++it)
    result.push_back(it->second);
  return result;
}

}  // namespace tussock
