#!/usr/bin/env bash
# Makes a frozen logbook with the writer of some commit: sets are written, eight between closing and opening again, and after
# forty answers the writer is killed. What it had acknowledged stands beside the files.
# Usage: make.sh COMMIT FOLDER      (a folder that is not there yet; needs the .NET SDK)
set -euo pipefail

commit=$1 folder=$(realpath -m "$2")
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../../.." && pwd)
work=$(mktemp -d)
trap 'git -C "$root" worktree remove --force "$work/tree"; rm -rf "$work"' EXIT

git -C "$root" worktree add --detach "$work/tree" "$commit" >/dev/null 2>&1
dotnet build "$work/tree/tests/RackSide.Logbook.Writer" --configuration Release --output "$work/writer" >"$work/build.log" 2>&1
dotnet "$work/writer/RackSide.Logbook.Writer.dll" "$folder" 8 >"$work/told" &
writer=$!
while [ "$(wc -l <"$work/told")" -lt 40 ]; do sleep 0.01; done
kill -9 "$writer"
wait "$writer" 2>/dev/null || true
grep -v closing "$work/told" >"$folder/acknowledged.txt"
rm "$folder/log.lock"
