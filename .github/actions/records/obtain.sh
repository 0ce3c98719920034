#!/usr/bin/env bash
# Obtains the program from a release: nothing of an archive is unpacked or run before its SHA-256 is the one that was meant. What is refused
# is told in one line.
#   $1  the address of the folder with the archives
#   $2  the machine, such as linux-x64
#   $3  the SHA-256 of the archive; that of SHA256SUMS beside it when empty
#   $4  the folder in which the program is to lie
set -euo pipefail

release=${1%/} archive=ohmstead-$2.tar.gz wanted=$3 to=$4
own=$(mktemp -d)
trap 'rm -rf "$own"' EXIT

refuse() {
  echo "$1"
  exit 1
}

fetch() {
  curl --fail --silent --show-error --location --proto '=https' --proto-redir '=https' --retry 3 --max-filesize 268435456 \
    --output "$own/$1" "$release/$1" || refuse "$1 could not be fetched from the release; see the line above"
}

sum() {
  if command -v sha256sum > /dev/null; then sha256sum < "$1"; else shasum -a 256 < "$1"; fi | cut -d ' ' -f 1
}

fetch "$archive"
if [ -z "$wanted" ]; then
  fetch SHA256SUMS
  wanted=$(awk -v name="$archive" '$2 == name || $2 == "*" name { print $1 }' "$own/SHA256SUMS")
fi

# Two sums of one name are none.
[[ "$wanted" =~ ^[0-9a-f]{64}$ ]] ||
  refuse "no SHA-256 is known of $archive: sixty-four small hexadecimal digits were expected, in 'sha256' or once in SHA256SUMS"
is=$(sum "$own/$archive")
[ "$is" = "$wanted" ] ||
  refuse "$archive is not the one that was meant: its SHA-256 is $is and $wanted was expected; nothing of it was unpacked"

mkdir -p "$to"
tar -xzf "$own/$archive" -C "$to"
[ -x "$to/ohmstead" ] || [ -x "$to/ohmstead.exe" ] || refuse "$archive holds no program 'ohmstead'"
