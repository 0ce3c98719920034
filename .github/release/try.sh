#!/usr/bin/env bash
# Starts a published program: it tells the commit it was made from, judges the demo and sizes a picture.
#   $1  the folder of the program
#   $2  the commit
set -euo pipefail

refuse() {
  echo "$1" >&2
  exit 1
}

program=$(cd "$1" && pwd)/ohmstead
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
told=$("$program" --version | tr -d '\r')
[[ "$told" == *$'\n'"commit $2"$'\n'* ]] || refuse "the program says it is: ${told//$'\n'/; }; commit $2 was expected"
pages=$(mktemp -d)
trap 'rm -rf "$pages"' EXIT
said=$("$program" report records --to "$pages/report")
[[ "$said" == *" pictures sized"* ]] || refuse "the program wrote a report and sized no picture: ${said//$'\n'/; }"
"$program" check records --thorough
