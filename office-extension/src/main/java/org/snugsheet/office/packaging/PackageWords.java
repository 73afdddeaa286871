package org.snugsheet.office.packaging;

import org.snugsheet.engine.Phrase;

/** What the Extension Manager of the office shows of this extension. */
enum PackageWords implements Phrase {
    /** Its name there. */
    NAME("Snugsheet"),
    /** What it does, what it needs, and the one thing to do when the office has no Java, for then no code of the extension can say so. */
    DESCRIPTION(
            "Cell functions that turn classroom thermometer readings into cooling curves, R-values of layered wraps and a"
                    + " fair comparison of materials. Needs LibreOffice 7.4 or newer and Java 17 or newer. If all our cells show"
                    + " Err:504 or #NULL!, the office has no Java: install one, choose it under Tools ▸ Options ▸ LibreOffice ▸"
                    + " Advanced, and start the office again.");

    private final String english;

    PackageWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
