#!/usr/bin/env bash
# Puts a release on the host, with the chapter of the changelog as its words. What is there already is not written over.
#   $1  the tag
#   $2  the folder of the release
set -euo pipefail

here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
version=$("$here/tag.sh" "$1")
machines=()
while read -r machine; do machines+=("$machine"); done < "$here/machines"
"$here/verify.sh" "$2" "${machines[@]}"
notes=$(mktemp)
trap 'rm -f "$notes"' EXIT
"$here/notes.sh" "$version" > "$notes"
gh release create "$1" --verify-tag --title "Ohmstead $version" --notes-file "$notes" "$2"/*
