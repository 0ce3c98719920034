#!/usr/bin/env bash
# Says whether a folder is a whole release and each file in it what it should be; the first that is not is told in one line.
#   $1   the folder: archives, bills of materials, the package, SHA256SUMS
#   $2…  the machines of which there must be an archive
set -euo pipefail

refuse() {
  echo "$1" >&2
  exit 1
}

cd "$1"
shift
[ -f SHA256SUMS ] || refuse "there is no SHA256SUMS"

# Every file has one sum, and every sum is that of its file.
files=0
for file in *; do
  [ "$file" != SHA256SUMS ] || continue
  if [ ! -f "$file" ] || [ -L "$file" ]; then refuse "$file is no plain file"; fi
  files=$((files + 1))
  wanted=$(awk -v name="$file" '$2 == name { print $1 }' SHA256SUMS)
  [[ "$wanted" =~ ^[0-9a-f]{64}$ ]] || refuse "SHA256SUMS has not one sum of $file"
  is=$(sha256sum < "$file" | cut -d ' ' -f 1)
  [ "$is" = "$wanted" ] || refuse "$file is not the one that was meant: its SHA-256 is $is and $wanted was expected"
done
[ "$(wc -l < SHA256SUMS)" -eq "$files" ] || refuse "SHA256SUMS names a file that is not there"
# An archive and a bill for each machine, and the package: whatever is more or less is told below or here.
compgen -G '*.nupkg' > /dev/null || refuse "there is no package of the tool"
[ "$files" -le $(($# * 2 + 1)) ] || refuse "there are $files files, and $(($# * 2 + 1)) were expected: an archive and a bill for each machine, and the package"

# What each program begins with on its machine, in hexadecimal: a file of another kind would not start there. Of an ELF file that is its
# kind and, from the eighteenth byte on, its processor; of the others their kind.
begins() { head -c 20 "$1" | od -An -v -tx1 | tr -d ' \n'; }
is_for() {
  case $1 in
    linux-*x64) [[ "$(begins "$2")" == 7f454c460201*3e00 ]] ;;
    linux-*arm64) [[ "$(begins "$2")" == 7f454c460201*b700 ]] ;;
    osx-arm64) [[ "$(begins "$2")" == cffaedfe0c000001* || "$(begins "$2")" == cafebabe* ]] ;; # or for several processors at once
    win-*) [[ "$(begins "$2")" == 4d5a* ]] ;;
    *) return 1 ;;
  esac
}

unpacked=$(mktemp -d)
trap 'rm -rf "$unpacked"' EXIT
for machine in "$@"; do
  archive=ohmstead-$machine.tar.gz
  [ -f "$archive" ] || refuse "there is no $archive"
  case $machine in
    win-*) program=ohmstead.exe pictures=libSkiaSharp.dll ;;
    osx-*) program=ohmstead pictures=libSkiaSharp.dylib ;;
    *) program=ohmstead pictures=libSkiaSharp.so ;;
  esac
  listed=$(tar -tzvf "$archive" 2> /dev/null) || refuse "$archive cannot be unpacked"
  # Plain files and the folder of licences, none of them outside: the first letter of each line is what it is.
  other=$(grep -Ev '^(-r[w-][x-]r-[x-]r-[x-] |drwxr-xr-x .* licences/$)' <<< "$listed" | head -n 1) || true
  [ -z "$other" ] || refuse "$archive holds what is neither a plain file nor the folder of licences: $other"
  names=$(tar -tzf "$archive" | grep -v '^licences/' | LC_ALL=C sort | tr '\n' ' ')
  [ "$names" = "$(printf '%s\n' LICENSE NOTICES.txt "$program" "$pictures" | LC_ALL=C sort | tr '\n' ' ')" ] ||
    refuse "$archive holds: ${names% }; LICENSE, NOTICES.txt, $program and $pictures were expected"
  rm -rf "${unpacked:?}"/*
  tar -xzf "$archive" -C "$unpacked"
  [ -x "$unpacked/$program" ] || refuse "$archive holds a $program that may not be run"
  for file in "$program" "$pictures"; do
    is_for "$machine" "$unpacked/$file" || refuse "$archive holds a $file that is not for $machine"
  done
  for notices in licences/dotnet.txt licences/skiasharp.txt; do
    [ -s "$unpacked/$notices" ] || refuse "$archive has no $notices"
  done

  bill=ohmstead-$machine.cdx.json
  [ -f "$bill" ] || refuse "there is no $bill"
  told=$(jq --raw-output '.metadata.component.hashes[0].content' "$bill") || refuse "$bill cannot be read"
  [ "$told" = "$(sha256sum < "$archive" | cut -d ' ' -f 1)" ] || refuse "$bill is about another archive"
  # A library that the notices name is in the bill, and the other way round; the runtime has a line of its own.
  diff <(sed -nE 's/^([^ ]+) [^ ]+ \| .*/\1/p' "$unpacked/NOTICES.txt" | grep -v '^SkiaSharp.NativeAssets' | LC_ALL=C sort) \
    <(jq --raw-output '.components[] | select(.type == "library") | .name' "$bill" | grep -v '^SkiaSharp.NativeAssets' | LC_ALL=C sort) > /dev/null ||
    refuse "$bill and NOTICES.txt of $archive do not name the same libraries"
done
