#!/usr/bin/env bash
# Lists what is inside a published program, with licences: as SPDX 2.3 (spdx.dev, ISO/IEC 5962) for machines, and as
# Debian's machine-readable copyright file for people. The packages are those the native compiler was really given.
# Usage: contents.sh VERSION ARCHITECTURE ROOT FOLDER      (the folder holds compiled.rsp where the program was published here)
set -euo pipefail
export LC_ALL=C

version=$1 architecture=$2 root=$3 folder=$4
program=$folder/program/rackside
packages=${NUGET_PACKAGES:-$HOME/.nuget/packages}

tag() { # tag NAME FILE: the text of an element of a package's description
  tr -d '\r\n' <"$2" | sed -n "s/.*<$1[^>]*>\([^<]*\)<\/$1>.*/\1/p" | sed 's/&amp;/\&/g; s/&quot;/"/g; s/  */ /g; s/^ //; s/ $//'
}

# A licence that a package gives as a file is named here by hand, after reading that file.
by_hand() {
  case $1 in
    *) echo NOASSERTION ;;
  esac
}

licence() { # licence NAME FILE
  local expression
  expression=$(tr -d '\r\n' <"$2" | sed -n 's/.*<license type="expression">\([^<]*\)<\/license>.*/\1/p')
  # Where a package leaves the choice, we take Apache-2.0.
  case $expression in
    '') by_hand "$1" ;;
    *' OR Apache-2.0' | 'Apache-2.0 OR '*) echo Apache-2.0 ;;
    *) echo "$expression" ;;
  esac
}

# One line for each package: name, version, licence, who holds the copyright. A program that was not published here has
# no list of its own, and then only itself stands in it.
list() {
  [ -f "$folder/compiled.rsp" ] || return 0
  grep -oE "$packages/[^/]+/[^/]+/" "$folder/compiled.rsp" | sort -u | while read -r place; do
    local name=${place#"$packages"/} number spec
    number=${name#*/} number=${number%/} name=${name%%/*}
    spec=$(find "$place" -maxdepth 1 -name '*.nuspec' | head -n 1)
    [ -n "$spec" ] || { echo "contents.sh: $place has no description" >&2; exit 1; }
    printf '%s\t%s\t%s\t%s\n' "$(tag id "$spec")" "$number" "$(licence "$name" "$spec")" "$(holder "$spec")"
  done
}

holder() { # holder FILE: the copyright line, or who wrote it where there is none
  local line
  line=$(tag copyright "$1")
  # Some write their licence where the copyright should be.
  case $line in '' | MIT) tag authors "$1" ;; *) echo "$line" ;; esac
}

quoted() { sed 's/\\/\\\\/g; s/"/\\"/g' <<<"$1"; }

list >"$folder/packages"
unknown=$(cut -f1,3 "$folder/packages" | grep NOASSERTION | cut -f1 || true)
[ -z "$unknown" ] || { echo "contents.sh: read the licence of these and name it in by_hand: $unknown" >&2; exit 1; }
others=$(cut -f3 "$folder/packages" | sort -u | grep -vxE 'MIT|Apache-2.0|BSD-2-Clause' || true)
[ -z "$others" ] || { echo "contents.sh: the text of these licences is not here yet: $others" >&2; exit 1; }
made=$(date --utc --date="@${SOURCE_DATE_EPOCH:-0}" +%Y-%m-%dT%H:%M:%SZ)

{
  cat <<HEAD
{
  "spdxVersion": "SPDX-2.3",
  "dataLicense": "CC0-1.0",
  "SPDXID": "SPDXRef-DOCUMENT",
  "name": "rackside-$version-linux-$architecture",
  "documentNamespace": "https://rackside.example.invalid/spdx/$version/$architecture/$(sha256sum "$program" | cut -c1-16)",
  "creationInfo": { "created": "$made", "creators": ["Tool: kiosk-contents.sh"] },
  "documentDescribes": ["SPDXRef-rackside"],
  "packages": [
    {
      "name": "rackside", "SPDXID": "SPDXRef-rackside", "versionInfo": "$version",
      "downloadLocation": "NOASSERTION", "filesAnalyzed": false, "licenseConcluded": "MIT", "licenseDeclared": "MIT",
      "copyrightText": "RackSide contributors",
      "checksums": [{ "algorithm": "SHA256", "checksumValue": "$(sha256sum "$program" | cut -d' ' -f1)" }]
HEAD
  while IFS=$'\t' read -r name number licence holder; do
    printf '    },\n    {\n      "name": "%s", "SPDXID": "SPDXRef-%s", "versionInfo": "%s",\n' "$name" "${name//[^A-Za-z0-9.]/-}" "$number"
    printf '      "downloadLocation": "NOASSERTION", "filesAnalyzed": false, "licenseConcluded": "%s", "licenseDeclared": "%s",\n' "$licence" "$licence"
    printf '      "copyrightText": "%s",\n' "$(quoted "$holder")"
    printf '      "externalRefs": [{ "referenceCategory": "PACKAGE-MANAGER", "referenceType": "purl", "referenceLocator": "pkg:nuget/%s@%s" }]\n' "$name" "$number"
  done <"$folder/packages"
  printf '    }\n  ],\n  "relationships": ['
  separator=''
  cut -f1 "$folder/packages" | while read -r name; do
    printf '%s\n    { "spdxElementId": "SPDXRef-rackside", "relationshipType": "CONTAINS", "relatedSpdxElement": "SPDXRef-%s" }' "$separator" "${name//[^A-Za-z0-9.]/-}"
    separator=,
  done
  printf '\n  ]\n}\n'
} >"$folder/contents.spdx.json"

licence_text() {
  # The licence of RackSide is also that of all the others, word for word but for the names.
  sed '1,/^$/d; /^Copyright/d' "$root/LICENSE" | sed '/./,$!d; s/^$/./; s/^/ /'
}

{
  cat <<HEAD
Format: https://www.debian.org/doc/packaging-manuals/copyright-format/1.0/
Upstream-Name: RackSide
Comment: The program is one file; it holds these libraries, compiled into it.

Files: *
Copyright: RackSide contributors
License: MIT
HEAD
  while IFS=$'\t' read -r name number licence holder; do
    printf '\nFiles: usr/lib/rackside/rackside\nComment: %s %s\nCopyright: %s\nLicense: %s\n' "$name" "$number" "$holder" "$licence"
  done <"$folder/packages"
  printf '\nLicense: MIT\n'
  licence_text
  cat <<'TEXTS'

License: Apache-2.0
 On Debian systems its full text is /usr/share/common-licenses/Apache-2.0; elsewhere it is at
 https://www.apache.org/licenses/LICENSE-2.0

License: BSD-2-Clause
 Redistribution and use in source and binary forms, with or without modification, are permitted provided that the
 following conditions are met:
 .
 1. Redistributions of source code must retain the above copyright notice, this list of conditions and the following
 disclaimer.
 .
 2. Redistributions in binary form must reproduce the above copyright notice, this list of conditions and the following
 disclaimer in the documentation and/or other materials provided with the distribution.
 .
 THIS SOFTWARE IS PROVIDED BY THE COPYRIGHT HOLDERS AND CONTRIBUTORS "AS IS" AND ANY EXPRESS OR IMPLIED WARRANTIES,
 INCLUDING, BUT NOT LIMITED TO, THE IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS FOR A PARTICULAR PURPOSE ARE
 DISCLAIMED. IN NO EVENT SHALL THE COPYRIGHT HOLDER OR CONTRIBUTORS BE LIABLE FOR ANY DIRECT, INDIRECT, INCIDENTAL,
 SPECIAL, EXEMPLARY, OR CONSEQUENTIAL DAMAGES (INCLUDING, BUT NOT LIMITED TO, PROCUREMENT OF SUBSTITUTE GOODS OR
 SERVICES; LOSS OF USE, DATA, OR PROFITS; OR BUSINESS INTERRUPTION) HOWEVER CAUSED AND ON ANY THEORY OF LIABILITY,
 WHETHER IN CONTRACT, STRICT LIABILITY, OR TORT (INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT OF THE USE OF
 THIS SOFTWARE, EVEN IF ADVISED OF THE POSSIBILITY OF SUCH DAMAGE.
TEXTS
} >"$folder/copyright"
