#!/bin/sh
# SPDX-License-Identifier: MIT
# Hours of direct sun on the ground of scene.csv by GRASS GIS r.sun, as reference.csv. Run as
#   sh insolation.sh > reference.csv        (Debian 12: apt-get install grass-core; a minute)
# UTM zone 31 on its central meridian, so that the grid's north is true north; the scene's origin
# is at 40 degrees north, 3 degrees east. Times are by local solar time, in steps of 0.1 h, looking
# along the light every half cell.
# "sh insolation.sh 0.25 0.5 > reference_quarter_hour.csv" has steps of 0.25 h instead; with 0.25 1
# it looks once a cell. The times told at the end are of this shell and of what it ran: to be set
# beside the benchmark SunMapFourDays.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
if [ -z "${GISRC:-}" ]; then
  exec grass --tmp-location EPSG:32631 --exec sh "$here/insolation.sh" "$@"
fi
exec 3>&1 >&2
east=500000 north=4427757
g.region w=$east e=$((east + 40)) s=$north n=$((north + 25)) res=0.25
heights=0
while IFS=, read -r what x0 y0 x1 y1 height; do
  [ "$what" = what ] && continue
  heights="max($heights,if(x()>$east+$x0&&x()<$east+$x1&&y()>$north+$y0&&y()<$north+$y1,$height,0))"
done < "$here/scene.csv"
r.mapcalc --quiet "elevation = double($heights)"
for day in 80 172 199 266 355; do # 21 March, 21 June, 18 July, 23 September, 21 December
  r.sun --quiet elevation=elevation day=$day step="${1:-0.1}" distance_step="${2:-0.5}" insol_time=hours_$day
done
times >&2
# Every third cell each way, ground only: x, y, hours on the five days.
echo x_m,y_m,march_h,june_h,july_h,september_h,december_h >&3
r.out.xyz --quiet input=elevation,hours_80,hours_172,hours_199,hours_266,hours_355 separator=comma |
  awk -F, -v e=$east -v n=$north '$3 == 0 {
    x = $1 - e; y = $2 - n
    if (int(x * 4) % 3 == 0 && int(y * 4) % 3 == 0) printf "%.3f,%.3f,%g,%g,%g,%g,%g\n", x, y, $4, $5, $6, $7, $8
  }' >&3
