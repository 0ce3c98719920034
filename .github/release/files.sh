#!/usr/bin/env bash
# Makes all files of a release out of the published programs, and holds them against each other.
#   $1  the folder with program-MACHINE of each machine
#   $2  the commit, in full
#   $3  the folder of the release
set -euo pipefail

programs=$1 commit=$2 to=$3
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
SOURCE_DATE_EPOCH=$(git -C "$here" show --no-patch --format=%ct "$commit")
export SOURCE_DATE_EPOCH
machines=()
while read -r machine; do
  machines+=("$machine")
  "$here/archive.sh" "$machine" "$programs/program-$machine" "$commit" "$to"
done < "$here/machines"
dotnet pack "$here/../../src/Ohmstead" --configuration Release -p:BuiltFromCommit="$commit" --output "$to"
"$here/sums.sh" "$to"
"$here/verify.sh" "$to" "${machines[@]}"
