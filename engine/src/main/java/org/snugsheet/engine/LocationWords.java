package org.snugsheet.engine;

/** The words of a {@link Location}; a sentence that begins with them begins with a capital. */
enum LocationWords implements Phrase {
    /** Only the row is known. */
    ROW("row {0}"),
    /** The row, with the time typed in it. */
    ROW_MINUTE("row {0} (minute {1})"),
    /** A time that all jars share; {0} is its row. */
    MINUTE("minute {1}"),
    /** A jar and a time. */
    JAR_MINUTE("{0}, minute {1}"),
    /** A jar and a row without a time. */
    JAR_ROW("{0}, row {1}");

    private final String english;

    LocationWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
