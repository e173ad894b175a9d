#!/usr/bin/env bash
# Makes what is handed out, for each architecture: a Debian package, a tarball, and the list of what is inside.
#
#   kiosk/package.sh [--arch amd64|arm64]... [--version VERSION] [--program FILE] [--out FOLDER]
#
#   --arch      this one only; both if not said
#   --version   another version than that of src/Directory.Build.props
#   --program   a program that is built already, for the one --arch given
#   --gym       the same of rackside-gym; without it no package of that is made where --program is given
#   --out       publish/packages if not said
#
# Needs the .NET 10 SDK, dpkg-deb, gzip and mandoc (or no check of the manual page); for the native compiler clang and
# zlib's headers, and for the other architecture its gcc and libc (gcc-aarch64-linux-gnu, libc6-dev-arm64-cross).
# The same sources give the same bytes: nothing in the packages tells when, where or by whom they were made.
set -euo pipefail
umask 022
export LC_ALL=C TZ=UTC DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1 MSBUILDTERMINALLOGGER=off

here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(dirname "$here")
architectures=()
version=$(sed -n 's/.*<Version>\(.*\)<\/Version>.*/\1/p' "$root/src/Directory.Build.props")
program='' gym='' out=$root/publish/packages

fail() { printf 'package.sh: %s\n' "$*" >&2; exit 1; }

while [ $# -gt 0 ]; do
  [ $# -gt 1 ] || fail "$1 needs a value, or is not an option; the head of this file names them"
  case $1 in
    --arch) architectures+=("$2") ;;
    --version) version=$2 ;;
    --program) program=$2 ;;
    --gym) gym=$2 ;;
    --out) out=$2 ;;
    *) fail "there is no option $1; the head of this file names them" ;;
  esac
  shift 2
done
[ ${#architectures[@]} -gt 0 ] || architectures=(amd64 arm64)
[ -z "$program" ] || [ ${#architectures[@]} -eq 1 ] || fail "--program goes with one --arch"
[[ $version =~ ^[0-9][0-9A-Za-z.+~]*$ ]] || fail "\"$version\" is no version; write one such as 1.2.0"

# The moment that files in the packages bear: that of the sources, never that of the making.
SOURCE_DATE_EPOCH=${SOURCE_DATE_EPOCH:-$(git -C "$root" log -1 --format=%ct 2>/dev/null || echo 1767225600)}
export SOURCE_DATE_EPOCH

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir -p "$out"
out=$(cd "$out" && pwd)

# A place of its own for the sources keeps publishing (other lock file, other runtime) out of the tree that tests use.
copy_sources() {
  mkdir -p "$work/source"
  tar -C "$root" --exclude=bin --exclude=obj -cf - LICENSE src | tar -C "$work/source" -xf -
}

publish() { # publish ARCHITECTURE: the native program and what the compiler was given
  local runtime linker=()
  case $1 in
    amd64) runtime=linux-x64 ;;
    arm64) runtime=linux-arm64 ;;
    *) fail "there is no architecture \"$1\"; it is amd64 or arm64" ;;
  esac
  if [ "$1" != "$(dpkg --print-architecture)" ]; then
    [ "$1" = arm64 ] || fail "$1 can be linked on $1 only"
    command -v aarch64-linux-gnu-gcc >/dev/null || fail "linking for $1 needs gcc-aarch64-linux-gnu and libc6-dev-arm64-cross"
    # What clang is told of its target, gcc knows already.
    cat >"$work/cross-linker" <<'LINKER'
#!/usr/bin/env bash
arguments=()
for argument in "$@"; do
  case $argument in --target=*) ;; *) arguments+=("$argument") ;; esac
done
exec aarch64-linux-gnu-gcc "${arguments[@]}"
LINKER
    chmod +x "$work/cross-linker"
    linker=(-p:CppCompilerAndLinker="$work/cross-linker" -p:ObjCopyName=aarch64-linux-gnu-objcopy)
  fi
  copy_sources
  dotnet publish "$work/source/src/RackSide" --configuration Release -p:PublishFor="$runtime" --output "$work/$1/program" \
    -p:RestoreLockedMode=true -p:ContinuousIntegrationBuild=true -p:PathMap="$work/source=/rackside" \
    -p:Version="$version" "${linker[@]}" >"$work/publish.log" 2>&1 || { cat "$work/publish.log" >&2; fail "publishing failed"; }
  dotnet publish "$work/source/src/RackSide.Server" --configuration Release -p:PublishFor="$runtime" --output "$work/$1/program" \
    -p:RestoreLockedMode=true -p:ContinuousIntegrationBuild=true -p:PathMap="$work/source=/rackside" \
    -p:Version="$version" "${linker[@]}" >"$work/publish.log" 2>&1 || { cat "$work/publish.log" >&2; fail "publishing failed"; }
  find "$work/source/src/RackSide/obj" -path "*$runtime*" -name '*.ilc.rsp' -exec cp {} "$work/$1/compiled.rsp" \;
  # For whoever is sent a trace of this version: its addresses become methods and lines (DEVELOPERS.md).
  mkdir -p "$out/symbols"
  gzip -9 -n <"$work/source/src/RackSide/bin/Release/net10.0/$runtime/native/rackside.dbg" >"$out/symbols/rackside_${version}_$1.dbg.gz"
}

put() { # put MODE FILE TARGET
  install -D -m "$1" "$2" "$3"
}

zipped() { # zipped FILE TARGET
  mkdir -p "$(dirname "$2")"
  gzip -9 -n <"$1" >"$2"
  chmod 644 "$2"
}

lay_out() { # lay_out ARCHITECTURE: the files of the Debian package
  local tree=$work/$1/deb doc=$work/$1/deb/usr/share/doc/rackside unit
  put 755 "$work/$1/program/rackside" "$tree/usr/lib/rackside/rackside"
  put 755 "$here/install.sh" "$tree/usr/lib/rackside/install.sh"
  put 755 "$here/stick.sh" "$tree/usr/lib/rackside/stick.sh"
  put 755 "$here/after-stop.sh" "$tree/usr/lib/rackside/after-stop.sh"
  put 644 "$here/rackside.bash" "$tree/usr/share/bash-completion/completions/rackside"
  zipped "$here/rackside.1" "$tree/usr/share/man/man1/rackside.1.gz"
  put 644 "$here/rackside.service" "$tree/usr/lib/systemd/system/rackside.service"
  for unit in "$here"/units/*; do
    case $unit in
      *.rules) put 644 "$unit" "$tree/usr/lib/udev/rules.d/$(basename "$unit")" ;;
      *.sysusers) put 644 "$unit" "$tree/usr/lib/sysusers.d/rackside.conf" ;;
      *) put 644 "$unit" "$tree/usr/lib/systemd/system/$(basename "$unit")" ;;
    esac
  done
  put 644 "$work/$1/copyright" "$doc/copyright"
  put 644 "$work/$1/contents.spdx.json" "$doc/contents.spdx.json"
  zipped "$root/docs/kiosk.md" "$doc/kiosk.md.gz"
  mkdir -p "$tree/usr/bin" "$tree/usr/sbin"
  ln -s ../lib/rackside/rackside "$tree/usr/bin/rackside"
  ln -s ../lib/rackside/install.sh "$tree/usr/sbin/rackside-kiosk"
}

control() { # control ARCHITECTURE
  local tree=$work/$1/deb
  mkdir -p "$tree/DEBIAN"
  cat >"$tree/DEBIAN/control" <<CONTROL
Package: rackside
Version: $version
Architecture: $1
Maintainer: RackSide contributors <rackside@example.invalid>
Installed-Size: $(du -k -s --apparent-size "$tree/usr" | cut -f1)
Depends: libc6 (>= $(newest_glibc "$tree/usr/lib/rackside/rackside")), libssl3 | libssl3t64
Recommends: tzdata
Suggests: kbd, console-setup, alsa-utils, bash-completion
Section: misc
Priority: optional
Description: training companion that stands beside a squat rack
 Turns a full-body plan into the next right set: loads, warm-up, rests, and
 why. Full screen in a terminal, or on a text console beside the rack; the
 numeric pad is enough. The unit for the console comes disabled:
 "rackside-kiosk" turns a small board into one for a household.
CONTROL
  put 755 "$here/prerm.sh" "$tree/DEBIAN/prerm"
  (cd "$tree" && find usr -type f -print0 | sort -z | xargs -0 md5sum) >"$tree/DEBIAN/md5sums"
  chmod 644 "$tree/DEBIAN/control" "$tree/DEBIAN/md5sums"
}

# The newest version of the C library that a symbol of the program asks for.
newest_glibc() {
  grep -aoE 'GLIBC_2\.[0-9]+(\.[0-9]+)?' "$1" | sed 's/GLIBC_//' | sort -V | tail -n 1
}

same_moment() { # same_moment FOLDER: everything in it bears the moment of the sources
  find "$1" -exec touch --no-dereference --date="@$SOURCE_DATE_EPOCH" {} +
}

make_deb() { # make_deb ARCHITECTURE
  lay_out "$1"
  control "$1"
  same_moment "$work/$1/deb"
  dpkg-deb --root-owner-group -Zxz --build "$work/$1/deb" "$out/rackside_${version}_$1.deb" >/dev/null
}

make_tarball() { # make_tarball ARCHITECTURE: for a laptop; it runs where it is unpacked
  local name=rackside-$version-linux-$1 folder
  folder=$work/$1/tarball/$name
  put 755 "$work/$1/program/rackside" "$folder/rackside"
  put 644 "$here/rackside.1" "$folder/rackside.1"
  put 644 "$here/rackside.bash" "$folder/rackside.bash"
  put 644 "$work/$1/copyright" "$folder/copyright"
  put 644 "$work/$1/contents.spdx.json" "$folder/contents.spdx.json"
  put 644 "$root/LICENSE" "$folder/LICENSE"
  same_moment "$folder"
  tar -C "$work/$1/tarball" --sort=name --owner=0 --group=0 --numeric-owner --mtime="@$SOURCE_DATE_EPOCH" -cf - "$name" |
    gzip -9 -n >"$out/$name.tar.gz"
}

# What speaks to a gym's server is a package of its own: a household has no use for it (docs/gym.md).
make_gym_deb() { # make_gym_deb ARCHITECTURE
  local tree=$work/$1/gym-deb
  put 755 "$work/$1/program/rackside-gym" "$tree/usr/lib/rackside/rackside-gym"
  put 644 "$here/copyright-gym" "$tree/usr/share/doc/rackside-gym/copyright"
  zipped "$root/docs/gym.md" "$tree/usr/share/doc/rackside-gym/gym.md.gz"
  mkdir -p "$tree/DEBIAN"
  cat >"$tree/DEBIAN/control" <<CONTROL
Package: rackside-gym
Version: $version
Architecture: $1
Maintainer: RackSide contributors <rackside@example.invalid>
Installed-Size: $(du -k -s --apparent-size "$tree/usr" | cut -f1)
Depends: rackside (= $version), libc6 (>= $(newest_glibc "$tree/usr/lib/rackside/rackside-gym")), libssl3 | libssl3t64
Section: misc
Priority: optional
Description: several racks, one gym, through a PostgreSQL server
 The program that rackside starts on a rack that has joined a gym: it speaks
 to the gym's PostgreSQL server, and to nothing else. One rack needs none.
CONTROL
  (cd "$tree" && find usr -type f -print0 | sort -z | xargs -0 md5sum) >"$tree/DEBIAN/md5sums"
  chmod 644 "$tree/DEBIAN/control" "$tree/DEBIAN/md5sums"
  same_moment "$tree"
  dpkg-deb --root-owner-group -Zxz --build "$tree" "$out/rackside-gym_${version}_$1.deb" >/dev/null
}

for architecture in "${architectures[@]}"; do
  mkdir -p "$work/$architecture/program"
  if [ -n "$program" ]; then
    cp "$program" "$work/$architecture/program/rackside"
    [ -z "$gym" ] || cp "$gym" "$work/$architecture/program/rackside-gym"
  else
    echo "publishing for $architecture ..." >&2
    publish "$architecture"
  fi
  "$here/contents.sh" "$version" "$architecture" "$root" "$work/$architecture"
  make_deb "$architecture"
  make_tarball "$architecture"
  [ ! -e "$work/$architecture/program/rackside-gym" ] || make_gym_deb "$architecture"
done
(cd "$out" && shopt -s nullglob && sha256sum rackside[_-]"$version"* rackside-gym_"$version"* >"SHA256SUMS" && ls -l)
