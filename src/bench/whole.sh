#!/usr/bin/env bash
# Whole processes and one warm process, side by side in one run: this program, PDFBox alone, headless Chromium.
#   src/bench/whole.sh [RUNS [EDITS [TERMS]]]   (from the project's folder; 9 runs of each cold command, 80 edits and 5 times a term unless told otherwise)
# Needs bash, a JDK, Maven, GNU time and, for the comparison with it, Chromium. Takes some minutes. Nothing outside target/bench is written.
set -euo pipefail
cd "$(dirname "$0")/../.."
runs=${1:-9}
edits=${2:-80}
terms=${3:-5}
work=target/bench
procedure=procedures/soda-measures-an-acid.md
[ -f target/tarewright.jsa ] || mvn -q package -DskipTests
rm -rf $work && mkdir -p $work/classes
javac -nowarn -d $work/classes -cp target/tarewright.jar src/bench/java/tarewright/command/*.java
chromium=$(command -v chromium || command -v chromium-browser || command -v google-chrome || true)
warm="java -Xmx256m -XX:+UseParallelGC -cp target/tarewright.jar:$work/classes tarewright.command.InOneProcess"

# once COMMAND: its wall time and its processor time in seconds
once() { TIMEFORMAT='%R %U %S'; { time "$@" >/dev/null 2>$work/said; } 2>&1 | awk '{print $1, $2 + $3}'; }
median() { sort -n | awk '{a[NR] = $1} END {print a[int((NR + 1) / 2)]}'; }
row() { printf '| %-62s | %s |\n' "$1" "$2"; }
ours() { rm -rf $work/out; java @target/tarewright print --only handout,key,safety --out $work/out "$procedure"; }
figures() { java @target/tarewright figures "$procedure"; }
plain() { rm -rf $work/out; java -jar target/tarewright.jar print --only handout,key,safety --out $work/out "$procedure"; }
theirs() {
  for page in $work/xhtml/*.xhtml; do
    "$chromium" --headless --no-sandbox --disable-gpu --user-data-dir="$PWD/$work/profile" --no-pdf-header-footer --print-to-pdf="$PWD/${page%.xhtml}.pdf" "file://$PWD/$page"
  done
}

$warm xhtml $work/xhtml "$procedure" >/dev/null
[ -z "$chromium" ] || theirs >/dev/null 2>&1
figures >/dev/null && ours >/dev/null
for i in $(seq "$runs"); do
  once figures >>$work/figures
  once ours >>$work/print
  [ -z "$chromium" ] || once theirs >>$work/chromium
  [ "$i" -gt 3 ] || once plain >>$work/plain
done
cold() { echo "$(cut -d' ' -f1 $work/"$1" | median) s ($(cut -d' ' -f2 $work/"$1" | median) s of processor)"; }

echo "$(date -u +%Y-%m-%d), $(nproc) cores, $(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo | head -1), $(java -version 2>&1 | head -1), load $(cut -d' ' -f1 /proc/loadavg)"
row "figures, cold" "$(cold figures)"
row "print of one procedure, three documents, cold" "$(cold print)"
row "the same without the archive and its options" "$(cold plain)"
if [ -n "$chromium" ]; then
  row "headless Chromium, the same three XHTML, one process each" "$(cold chromium)"
  row "print against Chromium, wall" "$(echo "$(cut -d' ' -f1 $work/print | median) $(cut -d' ' -f1 $work/chromium | median)" | awk '{printf "%.2f", $1 / $2}')"
fi
row "a changed amount to three new PDF files, in one process" "$($warm edit $work/edit "$procedure" "0.0960 mol/L" "$edits")"
term=$($warm term $work procedures/spring-term.md "$terms")
row "a term, 6 sections, 5 procedures, 5 documents, -Xmx256m" "$term"
floor=$($warm floor $work $((4 * terms)))
row "PDFBox alone, the same documents, pages and words" "$floor"
row "PDFBox alone against the term, warm" "$(echo "$floor $term" | grep -o 'last [0-9]*' | awk '{a[NR] = $2} END {printf "%.1f", a[1] / a[2]}')"
