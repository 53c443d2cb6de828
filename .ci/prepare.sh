# SPDX-License-Identifier: MIT
# Sourced by app/run and tests/run: installs what is missing, by package name.

# packages_for GROUP...: the names listed under those headings of .ci/packages
packages_for() {
  local group
  for group in "$@"; do
    awk -v want="# $group" '/^# /{on=($0==want)} on && !/^#/' "$root/.ci/packages"
  done
}

missing_of() {
  local name
  for name in "$@"; do
    dpkg-query -W -f='${Status}' "$name" 2>/dev/null | grep -q 'ok installed' || echo "$name"
  done
}

# install_missing YES GROUP...: YES is 1 when nobody is to be asked
install_missing() {
  local yes=$1 missing sudo=
  shift
  mapfile -t missing < <(missing_of $(packages_for "$@"))
  [ ${#missing[@]} -gt 0 ] || return 0
  echo "These Debian packages are needed and not installed: ${missing[*]}"
  if [ "$yes" != 1 ] && [ "${CI:-}" != true ] && [ -t 0 ]; then
    local answer
    read -r -p "Install them now with apt-get? [y/N] " answer
    case "$answer" in
      y | Y | yes) ;;
      *) echo "Nothing was installed. Install them by hand, then run this again."; return 1 ;;
    esac
  fi
  if [ "$(id -u)" != 0 ]; then sudo=sudo; fi
  $sudo apt-get update -qq
  DEBIAN_FRONTEND=noninteractive $sudo apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
}

# configure_and_build FOLDER TARGET SWITCH...: a Release build
configure_and_build() {
  local folder=$1 target=$2
  shift 2
  mkdir -p "$folder"
  cmake -S "$root" -B "$folder" -G Ninja -DCMAKE_BUILD_TYPE=Release "$@" >"$folder/configure.log" 2>&1 ||
    { cat "$folder/configure.log"; return 1; }
  cmake --build "$folder" --target "$target" --parallel
}
