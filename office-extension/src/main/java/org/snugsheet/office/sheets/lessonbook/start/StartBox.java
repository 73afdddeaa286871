package org.snugsheet.office.sheets.lessonbook.start;

import java.util.List;

/** The boxes of the first page from top to bottom. */
enum StartBox {
    SCALE("typed_scale", StartWords.SCALE),
    MARK("typed_mark", StartWords.MARK),
    SHOWN("typed_shown", StartWords.SHOWN),
    PLACE("typed_place", StartWords.PLACE),
    SURROUNDINGS("typed_surroundings", StartWords.SURROUNDINGS),
    START("typed_start", StartWords.START),
    VOLUME("typed_volume", StartWords.VOLUME),
    LESSON("typed_lesson", StartWords.LESSON_LASTS),
    INTERVAL("typed_interval", StartWords.INTERVAL),
    HOT("typed_hot", StartWords.HOT_TAP),
    COLD("typed_cold", StartWords.COLD_TAP),
    ROOM("typed_room", StartWords.ROOM),
    TUB("typed_tub", StartWords.TUB_VOLUME),
    DRY("typed_dry", StartWords.KEPT_DRY);

    /** The row of the first box. */
    static final int FIRST_ROW = 7;

    private final String boxName;
    private final StartWords label;

    StartBox(String name, StartWords label) {
        this.boxName = name;
        this.label = label;
    }

    int row() {
        return FIRST_ROW + List.of(values()).indexOf(this);
    }

    String cell() {
        return "B" + row();
    }

    /** What formulas call it. */
    String boxName() {
        return boxName;
    }

    StartWords label() {
        return label;
    }
}
