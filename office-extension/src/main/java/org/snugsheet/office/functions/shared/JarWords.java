package org.snugsheet.office.functions.shared;

import org.snugsheet.engine.Phrase;

/** What a jar is called that nobody named. */
public enum JarWords implements Phrase {
    /** The words. */
    UNNAMED_JAR("jar {0}");

    private final String english;

    JarWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
