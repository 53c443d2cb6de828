// SPDX-License-Identifier: MIT
// Baseline of the sun map where Embree 3 is installed: occlusion rays in packets of eight, from
// every cell of the reference yard towards the sun, against the same solids taken as opaque. Flat
// faces are triangles; a crown is a mesh of 24 by 12 faces. Compare `per_cell_and_step`.
#include <algorithm>
#include <cmath>
#include <cstring>
#include <numbers>
#include <vector>

#include <benchmark/benchmark.h>
#include <embree3/rtcore.h>

#include "core/sun/solids.h"
#include "core/sun/sun_days.h"
#include "tests/bench/sun_scene.h"

namespace tussock {
namespace {

struct Corner {
  double x, y, z;
};
Corner operator-(Corner a, Corner b) {
  return {a.x - b.x, a.y - b.y, a.z - b.z};
}
Corner cross(Corner a, Corner b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
double dot(Corner a, Corner b) {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

struct Mesh {
  std::vector<Corner> corners;
  std::vector<unsigned> triangles;  // three to each

  void addFace(const std::vector<Corner>& face) {  // convex
    const auto first = static_cast<unsigned>(corners.size());
    corners.insert(corners.end(), face.begin(), face.end());
    for (unsigned i = 2; i < face.size(); ++i)
      triangles.insert(triangles.end(), {first, first + i - 1, first + i});
  }
};

// Those on the plane through three corners, in order around it; none when it is no face.
std::vector<Corner> faceThrough(const std::vector<Corner>& all, Corner a, Corner b, Corner c) {
  const Corner normal = cross(b - a, c - a);
  const double size = std::sqrt(dot(normal, normal));
  std::vector<Corner> face;
  if (size < 1e-9) return face;
  for (const Corner& p : all) {
    const double height = dot(p - a, normal) / size;
    if (height > 1e-7) return {};
    if (height > -1e-7) face.push_back(p);
  }
  const Corner u = b - a;
  const Corner v = cross(normal, u);
  Corner middle{0, 0, 0};
  for (const Corner& p : face)
    middle.x += p.x / double(face.size()), middle.y += p.y / double(face.size()),
        middle.z += p.z / double(face.size());
  const auto turn = [&](Corner p) {
    return std::atan2(dot(p - middle, v) / std::sqrt(dot(v, v)),
                      dot(p - middle, u) / std::sqrt(dot(u, u)));
  };
  std::sort(face.begin(), face.end(), [&](Corner p, Corner q) { return turn(p) < turn(q); });
  return face;
}

// Every face once: by its three corners of lowest number.
void addHull(const ConvexSolid& body, Mesh& mesh) {
  std::vector<Corner> all;
  for (const SitePoint& corner : body.corners) {
    const Corner p{corner.at.x, corner.at.y, corner.up};
    if (std::none_of(all.begin(), all.end(), [p](Corner q) { return dot(p - q, p - q) < 1e-12; }))
      all.push_back(p);
  }
  std::vector<Corner> normals;
  for (const Corner& a : all)
    for (const Corner& b : all)
      for (const Corner& c : all) {
        const Corner normal = cross(b - a, c - a);
        const double size = std::sqrt(dot(normal, normal));
        const auto same = [&](Corner n) { return dot(n, normal) > size * (1.0 - 1e-9); };
        if (size < 1e-9 || std::any_of(normals.begin(), normals.end(), same)) continue;
        const std::vector<Corner> face = faceThrough(all, a, b, c);
        if (face.size() < 3) continue;
        normals.push_back({normal.x / size, normal.y / size, normal.z / size});
        mesh.addFace(face);
      }
}

double radiusAt(const Crown& crown, double share) {
  switch (crown.shape) {
    case CrownShape::Ellipsoid:
      return crown.radius * 2.0 * std::sqrt(std::max(0.0, share * (1.0 - share)));
    case CrownShape::Cone:
      return crown.radius * (1.0 - share);
    case CrownShape::Column:
      return crown.radius;
  }
  return 0.0;
}

void addCrown(const Crown& crown, Mesh& mesh) {
  constexpr int kSides = 24;
  constexpr int kRings = 12;
  const auto at = [&](int ring, int side) {
    const double share = (1.0 - std::cos(std::numbers::pi * ring / kRings)) / 2.0;
    const double angle = 2.0 * std::numbers::pi * side / kSides;
    const double radius = radiusAt(crown, share);
    return Corner{crown.at.x + radius * std::cos(angle), crown.at.y + radius * std::sin(angle),
                  crown.base + (crown.top - crown.base) * share};
  };
  for (int ring = 0; ring < kRings; ++ring)
    for (int side = 0; side < kSides; ++side)
      mesh.addFace(
          {at(ring, side), at(ring, side + 1), at(ring + 1, side + 1), at(ring + 1, side)});
}

void addTrunk(const Crown& crown, Mesh& mesh) {
  ConvexSolid trunk;
  for (int side = 0; side < 8; ++side) {
    const double angle = std::numbers::pi * side / 4.0;
    const Point p = crown.at + Point{std::cos(angle), std::sin(angle)} * crown.trunkRadius;
    trunk.corners.push_back({p, 0.0});
    trunk.corners.push_back({p, crown.base});
  }
  addHull(trunk, mesh);
}

Mesh meshOf(const Solids& solids) {
  Mesh mesh;
  for (const ConvexSolid& body : solids.bodies) addHull(body, mesh);
  for (const Crown& crown : solids.crowns) {
    if (crown.radius > 0.0) addCrown(crown, mesh);
    if (crown.trunkRadius > 0.0) addTrunk(crown, mesh);
  }
  return mesh;
}

class RayScene {
 public:
  explicit RayScene(const Mesh& mesh)
      : device_(rtcNewDevice("threads=1")), scene_(rtcNewScene(device_)) {
    const RTCGeometry geometry = rtcNewGeometry(device_, RTC_GEOMETRY_TYPE_TRIANGLE);
    auto* corners = static_cast<float*>(
        rtcSetNewGeometryBuffer(geometry, RTC_BUFFER_TYPE_VERTEX, 0, RTC_FORMAT_FLOAT3,
                                3 * sizeof(float), mesh.corners.size()));
    for (const Corner& p : mesh.corners) {
      *corners++ = static_cast<float>(p.x);
      *corners++ = static_cast<float>(p.y);
      *corners++ = static_cast<float>(p.z);
    }
    void* triangles = rtcSetNewGeometryBuffer(geometry, RTC_BUFFER_TYPE_INDEX, 0, RTC_FORMAT_UINT3,
                                              3 * sizeof(unsigned), mesh.triangles.size() / 3);
    std::memcpy(triangles, mesh.triangles.data(), mesh.triangles.size() * sizeof(unsigned));
    rtcCommitGeometry(geometry);
    rtcAttachGeometry(scene_, geometry);
    rtcReleaseGeometry(geometry);
    rtcSetSceneBuildQuality(scene_, RTC_BUILD_QUALITY_HIGH);
    rtcCommitScene(scene_);
  }
  ~RayScene() {
    rtcReleaseScene(scene_);
    rtcReleaseDevice(device_);
  }
  RayScene(const RayScene&) = delete;
  RayScene& operator=(const RayScene&) = delete;

  // How many of a row's cells are shaded, eight at a time.
  int shadedInRow(double y, int columns, double cell, Corner towards) const {
    RTCIntersectContext context;
    rtcInitIntersectContext(&context);
    context.flags = RTC_INTERSECT_CONTEXT_FLAG_COHERENT;
    int shaded = 0;
    for (int from = 0; from < columns; from += 8) {
      alignas(32) int valid[8];
      RTCRay8 rays{};
      for (int i = 0; i < 8; ++i) {
        valid[i] = from + i < columns ? -1 : 0;
        rays.org_x[i] = static_cast<float>((from + i + 0.5) * cell);
        rays.org_y[i] = static_cast<float>(y);
        rays.dir_x[i] = static_cast<float>(towards.x);
        rays.dir_y[i] = static_cast<float>(towards.y);
        rays.dir_z[i] = static_cast<float>(towards.z);
        rays.tfar[i] = 1e9f;
        rays.mask[i] = ~0u;
      }
      rtcOccluded8(valid, scene_, &context, &rays);
      for (int i = 0; i < 8; ++i) shaded += valid[i] != 0 && rays.tfar[i] < 0.0f;
    }
    return shaded;
  }

 private:
  RTCDevice device_;
  RTCScene scene_;
};

void sunRaysEmbree(benchmark::State& state) {
  const Yard yard = bench::referenceYard();
  const RayScene scene(meshOf(solidsOf(yard)));
  const auto steps = stepsOf(Date(std::chrono::year(2026), std::chrono::July, std::chrono::day(15)),
                             yard.settings.latitude, yard.settings.longitude, 60);
  const bench::OneCore oneCore;
  int shaded = 0;
  for (auto _ : state) {
    shaded = 0;
    for (const SunStep& step : steps) {
      const double altitude = step.sun.altitude.radians();
      const Point away = directionOf(step.sun.azimuth) * std::cos(altitude);
      for (int row = 0; row < 250; ++row)
        shaded +=
            scene.shadedInRow((row + 0.5) * 0.1, 400, 0.1, {away.x, away.y, std::sin(altitude)});
    }
    benchmark::DoNotOptimize(shaded);
  }
  const double rays = static_cast<double>(steps.size()) * 250 * 400;
  state.counters["shaded"] = shaded / rays;
  state.counters["per_cell_and_step"] = benchmark::Counter(
      rays, benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}

BENCHMARK(sunRaysEmbree)
    ->Name("SunRaysEmbree")
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime();

}  // namespace
}  // namespace tussock
