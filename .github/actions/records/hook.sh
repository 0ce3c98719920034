#!/usr/bin/env bash
# The hook of a manager of hooks, with a program of its own: the archive of a release whose SHA-256 the keeper wrote down. It is fetched
# once, kept under that sum, and checks what is staged by the very file that `start collection` writes as a hook.
#   --release ADDRESS   the https address of the folder with the archives of the release
#   --sha256 DIGITS     the SHA-256 of the archive for this machine; once for each kind of machine on which the hook runs
#   and behind them the folder of the collection, where that is not the whole repository
set -euo pipefail

refuse() {
  echo "the records were not checked: $1" >&2
  exit 1
}

release='' sums=()
while [ $# -gt 1 ]; do
  case $1 in
    --release) release=$2 ;;
    --sha256) sums+=("$2") ;;
    *) break ;;
  esac
  shift 2
done
[[ "$release" == https://* ]] || refuse "nothing says which release checks them: write args: [--release, ADDRESS, --sha256, DIGITS]"
[ ${#sums[@]} -gt 0 ] || refuse "nobody wrote down which archive is meant: write args: [--release, ADDRESS, --sha256, DIGITS]"

case $(uname -s)-$(uname -m) in
  Linux-x86_64) machine=linux-x64 ;;
  Linux-aarch64) machine=linux-arm64 ;;
  Darwin-arm64) machine=osx-arm64 ;;
  MINGW*-x86_64 | MSYS*-x86_64) machine=win-x64 ;;
  *) refuse "no archive is made for this machine" ;;
esac

here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
cache=${XDG_CACHE_HOME:-$HOME/.cache}/ohmstead
told='' kept=''
for sum in "${sums[@]}"; do
  [[ "$sum" =~ ^[0-9a-f]{64}$ ]] || refuse "'$sum' is no SHA-256: sixty-four small hexadecimal digits were expected"
  [ ! -d "$cache/$machine-$sum" ] || kept=$cache/$machine-$sum
done
for sum in "${sums[@]}"; do
  [ -z "$kept" ] || break
  # Under a name of its own until it is whole, for two hooks may run at once.
  mkdir -p "$cache"
  new=$(mktemp -d "$cache/.new-XXXXXX")
  if told=$("$here/obtain.sh" "$release" "$machine" "$sum" "$new"); then
    kept=$cache/$machine-$sum
    [ -d "$kept" ] || mv "$new" "$kept"
  fi
  rm -rf "$new"
done
[ -n "$kept" ] || refuse "$told"

# Found by its name, since the folder of a person may have spaces in it.
unset OHMSTEAD
PATH=$kept:$PATH exec "$here/../../../src/Ohmstead/Starting/Files/pre-commit" --all "$@"
