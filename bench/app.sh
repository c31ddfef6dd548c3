#!/usr/bin/env bash
# What the app costs on this machine, in Debian's Chromium: runs the tests that measure, on what ./test has built and
# published, and prints their figures. Nothing else should run meanwhile. Results of one machine are kept in bench/results.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
said=$(mktemp)
trap 'rm -f "$said"' EXIT
code=0
dotnet test artifacts/bin/Gaugerod.App.Tests/release/Gaugerod.App.Tests.dll --nologo --logger "console;verbosity=detailed" \
    --filter "FullyQualifiedName~AnswerTests|FullyQualifiedName~LinesSpeedTests|FullyQualifiedName~SheetsPaceTests|FullyQualifiedName~StartTests" >"$said" 2>&1 || code=$?
echo "$(date -u +%F), $(nproc) cores"
grep -hE '^ .* ms\b' "$said" | grep -vE '^  (Passed|Failed)|\[xUnit' | sed 's/^ */- /' || true
packed=0
while read -r file; do
    packed=$((packed + $(stat -c %s "artifacts/publish/Gaugerod.App/release/wwwroot/$file.br" 2>/dev/null || stat -c %s "artifacts/publish/Gaugerod.App/release/wwwroot/$file")))
done < <(grep -o '"url": "[^"]*"' artifacts/publish/Gaugerod.App/release/wwwroot/service-worker-assets.js | cut -d'"' -f4 | grep -v '^service-worker')
echo "- kept for places without a network, brotli: $packed bytes"
((code == 0)) || { echo "Some limits were not met:"; grep -E '^  Failed' "$said"; exit "$code"; }
