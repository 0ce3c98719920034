#!/usr/bin/env bash
# Publishes the program for the machine that this runs on, with what an archive of it needs beside it.
#   $1  the machine, such as linux-x64
#   $2  the commit, in full, which --version tells
#   $3  the folder to make: program/, licences/ and the lock file of the packages that were taken
set -euo pipefail

machine=$1 commit=$2 to=$3
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
mkdir -p "$to/licences"
to=$(cd "$to" && pwd)
cd "$root"
dotnet publish src/Ohmstead --configuration Release -p:PublishFor="$machine" -p:BuiltFromCommit="$commit" --output "$to/program"
cp "artifacts/publish/$machine.lock.json" "$to/packages.lock.json"

# What is linked in brings notices of its own, as long as books: each as its package has it. (jq ends lines as its system does.)
packages=${NUGET_PACKAGES:-$HOME/.nuget/packages}
jq --raw-output '[.dependencies[] | to_entries[] | select(.value.resolved) | "\(.key | ascii_downcase)/\(.value.resolved)"] | unique[]' \
  "$to/packages.lock.json" | tr -d '\r' | while read -r package; do
  case $package in
    skiasharp.*) name=skiasharp ;; # one text for every system
    runtime.*.ilcompiler/*) name=dotnet ;;
    microsoft.*) continue ;; # what builds, and stays behind
    *) name=${package%%/*} ;;
  esac
  for notices in "$packages/$package"/THIRD-PARTY-NOTICES.*; do
    [ ! -f "$notices" ] || cp "$notices" "$to/licences/$name.txt"
  done
done
