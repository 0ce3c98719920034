#!/usr/bin/env bash
# Makes the archive of a machine and its bill of materials. The same folder and the same day give the same bytes, whoever runs it.
#   $1  the machine, such as linux-x64
#   $2  the folder that publish.sh made, from wherever it was carried: modes are set here
#   $3  the commit, in full
#   $4  the folder of the release
# SOURCE_DATE_EPOCH is the moment that all files have: that of the commit.
set -euo pipefail

refuse() {
  echo "$1" >&2
  exit 1
}

machine=$1 from=$2 commit=$3 to=$4
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
version=$(sed -nE 's/.*<Version>(.*)<\/Version>.*/\1/p' "$root/Directory.Build.props")
case $machine in
  win-*) program=ohmstead.exe ;;
  *) program=ohmstead ;;
esac
[ -f "$from/program/$program" ] || refuse "$from holds no program/$program: publish.sh makes it for $machine"

stage=$(mktemp -d)
trap 'rm -rf "$stage"' EXIT
mkdir "$stage/licences"
cp "$from/program"/* "$stage"
cp "$from/licences"/* "$stage/licences"
cp "$root/LICENSE" "$root/.github/release/NOTICES.txt" "$stage"
find "$stage" -type d -exec chmod 755 {} +
find "$stage" -type f -exec chmod 644 {} +
chmod 755 "$stage/$program"

mkdir -p "$to"
to=$(cd "$to" && pwd)
archive=$to/ohmstead-$machine.tar.gz
names=(LICENSE NOTICES.txt licences)
for file in "$from/program"/*; do names+=("${file##*/}"); done
# By its name a file called -x could be an option: the names follow two dashes.
tar --create --sort=name --format=ustar --owner=0 --group=0 --numeric-owner --mtime="@$SOURCE_DATE_EPOCH" \
  --directory "$stage" -- "${names[@]}" | gzip --no-name > "$archive"

jq --null-input --from-file "$root/.github/release/bom.jq" \
  --slurpfile lock "$from/packages.lock.json" --rawfile notices "$root/.github/release/NOTICES.txt" \
  --arg version "$version" --arg commit "$commit" --arg machine "$machine" \
  --arg sum "$(sha256sum < "$archive" | cut -d ' ' -f 1)" > "$to/ohmstead-$machine.cdx.json"
