#!/usr/bin/env bash
# Fuzzes what reads words of strangers, led by coverage:  tests/Ohmstead.Fuzz/fuzz.sh [SECONDS] [TARGET...]
# SECONDS is the time of each target, 60 when not given; all targets run when none is named. Needs afl-fuzz (Debian's package afl++).
# What was found lies under artifacts/fuzz/TARGET/default/crashes and hangs; an input that was mended goes into Corpus/TARGET.
set -euo pipefail

here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd "$here/../.." && pwd)
out="$root/artifacts/fuzz"
seconds=${1:-60}
shift || true
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

command -v afl-fuzz > /dev/null || { echo "afl-fuzz is not there: install afl++" >&2; exit 3; }
dotnet build -nologo -v quiet -c Release "$here"
rm -rf "$out/program"
mkdir -p "$out"
cp -r "$root/artifacts/bin/Ohmstead.Fuzz/release" "$out/program"
tool="$out/tool"
[ -x "$tool/sharpfuzz" ] || dotnet tool install SharpFuzz.CommandLine --version 2.3.0 --tool-path "$tool" > /dev/null
for library in Ohmstead.Electronics Ohmstead.Records Ohmstead.Yaml Ohmstead.Assessment Ohmstead.Report ohmstead YamlDotNet Markdig CsvHelper; do
  "$tool/sharpfuzz" "$out/program/$library.dll"
done

[ $# -gt 0 ] || set -- $(cd "$here/Corpus" && ls)
# The fuzzer wants core dumps off and a fixed clock rate, neither of which matters for finding exceptions; workers of .NET need more memory than it allows.
export AFL_SKIP_BIN_CHECK=1 AFL_SKIP_CPUFREQ=1 AFL_I_DONT_CARE_ABOUT_MISSING_CRASHES=1 AFL_NO_UI=1 AFL_NO_AFFINITY=1 AFL_AUTORESUME=1
status=0
for target; do
  afl-fuzz -i "$here/Corpus/$target" -o "$out/$target" -V "$seconds" -t 10000 -m none -- dotnet "$out/program/Ohmstead.Fuzz.dll" "$target" > "$out/$target.log" 2>&1 \
    || { tail -n 20 "$out/$target.log" >&2; status=1; }
  stats="$out/$target/default/fuzzer_stats"
  crashes=$(find "$out/$target/default/crashes" -name 'id*' | wc -l)
  hangs=$(find "$out/$target/default/hangs" -name 'id*' | wc -l)
  echo "$target: $(sed -nE 's/^execs_done *: //p' "$stats") inputs, $(sed -nE 's/^bitmap_cvg *: //p' "$stats") of the table reached, $crashes crashes, $hangs hangs"
  [ "$((crashes + hangs))" -eq 0 ] || status=1
done
exit "$status"
