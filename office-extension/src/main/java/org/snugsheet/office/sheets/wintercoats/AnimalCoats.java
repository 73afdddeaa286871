package org.snugsheet.office.sheets.wintercoats;

import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.words.Language;

/** The coats of animals in {@link WinterCoats}: how thick they are, and how much they keep in. */
final class AnimalCoats {

    /** The row of the first animal. */
    static final int FIRST = 16;

    /** How many animals there is room for. */
    static final int ROOM = 6;

    /**
     * Thickness, as published. Reindeer and musk deer, measured: Blix and others, Rangifer 35 (2015), 53, abstract
     * (https://doi.org/10.7557/2.35.1.3575). Of two others the hair was measured, which lies at a slant, so that the coat is no thicker:
     * sea otter, underhair up to 26 mm: Williams and others 1992, as told at https://wildliferesearch.com/rehab_course/ch6-structure;
     * arctic fox in winter, 45 to 60 mm: Arctic Fox Center, Iceland, as told at
     * http://maxyweb.blogspot.com/2015/10/an-arctic-fox-vulpes-lagopus-in-norway.html.
     */
    private record Animal(Phrase name, String covering, double millimeters) {}

    private static final List<Animal> COATS = List.of(
            new Animal(CoatsWords.REINDEER, "fur", 40),
            new Animal(CoatsWords.MUSK_DEER, "fur", 30),
            new Animal(CoatsWords.ARCTIC_FOX, "fur", 45),
            new Animal(CoatsWords.SEA_OTTER, "fur", 26));

    private AnimalCoats() {}

    static void write(Page page, Language language) throws com.sun.star.uno.Exception {
        int last = FIRST + ROOM - 1;
        page.look("E14:H14", CellStyleName.SECTION).text("E14", language.words(CoatsWords.ANIMALS));
        page.look("E15:H15", CellStyleName.HEAD)
                .text("E15", language.words(CoatsWords.ANIMAL))
                .text("F15", language.words(CoatsWords.COVERING));
        page.text("G15", language.words(CoatsWords.MM_THICK)).text("H15", language.words(CoatsWords.ANIMAL_KEEPS_IN));
        page.look("E" + FIRST + ":G" + last, CellStyleName.INPUT);
        page.look("H" + FIRST + ":H" + last, CellStyleName.RESULT).numbers("H" + FIRST + ":H" + last, "0.0");
        for (int i = 0; i < ROOM; i++) {
            int row = FIRST + i;
            if (i < COATS.size()) {
                Animal animal = COATS.get(i);
                page.text("E" + row, language.words(animal.name()));
                page.text("F" + row, BehindTheCoats.covering(animal.covering(), language));
                page.number("G" + row, animal.millimeters());
            }
            page.formula(
                    "H" + row,
                    "=IF(F" + row + "=\"\";\"\";IFERROR(COLD.ANIMAL(F" + row + ";G" + row + ";\"typical\";\"clo\");"
                            + FormulaText.quoted(language, CoatsWords.LOOK_AGAIN) + "))");
        }
    }
}
