#!/usr/bin/env bash
# Draws the pictures of the README from the worked sheets as they are printed. Wants pdftoppm (Debian: poppler-utils), and the
# sheets built before, by `bash .ci/try` or `java -jar example-sheets/target/build-sheets.jar …`; names their folder if it is
# another than example-sheets/target/sheets. What can be read on them comes from the test PicturesAreFreshIT, which fails when the
# sheets say something else.
set -euo pipefail
pictures=$(dirname "${BASH_SOURCE[0]}")
sheets=${1:-$pictures/../target/sheets}

draw() { # name of the sheet, its page, name of the picture
    pdftoppm -r 66 -f "$2" -singlefile -png "$sheets/$1.pdf" "$pictures/$3"
}

draw first-five-minutes 1 first-five-minutes
# Start, two pages of the plan, eight sheets of each kind for pupils, the readings, two pages of answers, the wall.
draw example-class 1 book-start
draw example-class 4 book-drawn
draw example-class 12 book-pupil
draw example-class 23 book-wall
cp "$pictures"/../target/pictures/*.txt "$pictures/"
