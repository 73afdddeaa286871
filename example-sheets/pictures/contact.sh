#!/usr/bin/env bash
# Prints worked sheets in four languages on two papers and puts all their pages on one picture each, to be looked at. Wants pdftoppm and
# montage (Debian: poppler-utils imagemagick), and `mvn package` before. Names of sheets may follow; left out: the lesson book and its
# example.
#
#   bash example-sheets/pictures/contact.sh [lesson-book example-class weather-diary …]
set -euo pipefail
project=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
out=$project/example-sheets/target/contact
[ $# -gt 0 ] || set -- lesson-book example-class
rm -rf "$out"
java -cp "$project/example-sheets/target/build-sheets.jar" org.snugsheet.sheets.ContactSheet \
    "$(ls "$project"/office-extension/target/snugsheet-*.oxt)" "$out" "$@" \
    en-a4-c en-letter-f es-a4-c es-letter-c fr-a4-c fr-letter-c de-a4-c de-letter-c
for pdf in "$out"/*.pdf; do
    pdftoppm -r 60 -png "$pdf" "${pdf%.pdf}"
    montage "${pdf%.pdf}"-*.png -tile 6x -geometry +6+6 "${pdf%.pdf}.png"
    echo "${pdf%.pdf}.png"
done
