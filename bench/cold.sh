#!/usr/bin/env bash
# From cold: one new process per round plans the guest shower and writes all its sheets, on built code.
# Prints best and median of five rounds (or as many as the first word says), wall clock and processor time, in seconds.
# Further words are the programs to compare, run in turn so that a busy machine is as unkind to each of them.
set -euo pipefail
export LC_ALL=C
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
rounds=${1:-5}
(($# > 1)) && programs=("${@:2}") || programs=("$root/artifacts/bin/Gaugerod.Cli/release/gaugerod.dll")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

TIMEFORMAT='%R %U %S'
for ((round = 0; round <= rounds; round++)); do
    for i in "${!programs[@]}"; do
        rm -rf "$work/out"
        # The job breaks no must; any other exit ends the measuring.
        spent=$({ time dotnet "${programs[i]}" plan "$root/samples/guest-shower.json" --out "$work/out" --quiet >"$work/words" 2>&1; } 2>&1)
        [[ -s $work/out/sheets.pdf ]]
        # The first round only fetches the files from the disk.
        ((round == 0)) || awk '{ printf "%.3f %.3f\n", $1, $2 + $3 }' <<<"$spent" >>"$work/$i"
    done
done

figures() { cut -d' ' -f"$2" "$work/$1" | sort -n | awk '{ all[NR] = $1 } END { printf "best %.2f, median %.2f", all[1], all[int((NR + 1) / 2)] }'; }
for i in "${!programs[@]}"; do
    echo "${programs[i]#"$root"/}: wall clock $(figures "$i" 1); processor time $(figures "$i" 2)"
done
