#!/usr/bin/env bash
# Says which SDK the program is built with, from its own global.json: what sets up the SDK looks for such a file in the collection alone.
set -euo pipefail

version=$(sed -nE 's/.*"version": *"([0-9.]+)".*/\1/p' "$GITHUB_ACTION_PATH/../../../global.json")
[ -n "$version" ] || { echo "::error::the program's global.json names no version of the SDK"; exit 1; }
echo "version=$version" >> "$GITHUB_OUTPUT"
