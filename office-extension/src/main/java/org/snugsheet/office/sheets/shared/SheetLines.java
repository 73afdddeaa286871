package org.snugsheet.office.sheets.shared;

import org.snugsheet.engine.Phrase;

/** The lines of the worked sheets in the menu: the title, and in a few words what it is for. */
public enum SheetLines implements Phrase {
    FIRST_FIVE_MINUTES("First five minutes – one thermometer, one answer"),
    ONE_JAR("One jar, one curve – what one jar’s readings tell you"),
    DESIGN("Design a wrap – layers, and what to expect of them"),
    COATS("Winter coats – wind chill, clothes, animals"),
    DIARY("Weather diary – a month of school days");

    private final String english;

    SheetLines(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
