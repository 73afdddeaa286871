package org.snugsheet.office.sharing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSheetAnnotationAnchor;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellAddress;
import com.sun.star.text.XSimpleText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;

/** Answers are read and written in blocks: of all kinds, down and across, longer and wider than a block, beside notes. */
@ExtendWith(SharedOffice.class)
class ManyAnswersIT {

    private static final int DOWN = 45;

    /** Across the edge of the blocks that are read. */
    private static final int EDGE = 490;

    private static final int ACROSS = 40;
    private static final String ALL = "A1:BA" + (EDGE + DOWN + 20);

    private static final List<String> KINDS = List.of(
            "WRAP.LAYER(20;0.04)",
            "IF(WRAP.LAYER(20;0.04)>0;\"\";1)",
            "WRAP.LAYER(20;-1)",
            "\"=1+\"&WRAP.LAYER(20;0.04)",
            "\"'\"&WRAP.LAYER(20;0.04)",
            "\"2\"&IF(WRAP.LAYER(20;0.04)>0;\"5\";\"\")",
            "\"two\"&CHAR(10)&IF(WRAP.LAYER(20;0.04)>0;\"lines\";\"\")",
            "WRAP.LAYER(40;0.04)>0",
            "WRAP.LAYER(20;0.04)");

    @Test
    void everyKindOfAnswerStandsInItsPlaceAndComesBack(Office office) {
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formulasDown("A1", repeated(KINDS, DOWN))
                    .formulasDown("C" + EDGE, repeated(List.of("WRAP.LAYER(20;0.04)"), DOWN))
                    .arrayFormula("E3:H6", "WRAP.MATERIALS()");
            for (int i = 0; i < ACROSS; i++) {
                sheet.formula(CellName.of(10 + i, EDGE + DOWN + 9), KINDS.get(i % KINDS.size()));
            }
            note(office, sheet, 0, 4, "mine on a text");
            note(office, sheet, 2, EDGE - 1, "mine on a number");
            String[][] formulas = formulas(office, sheet);
            List<String> answers = answers(office, sheet, formulas);
            assertEquals(2 * DOWN + ACROSS + 1, office.call("sharing", () -> ShareCopy.make(sheet.uno())));
            assertFalse(Arrays.deepToString(formulas(office, sheet)).contains("WRAP"), "no formula of ours is left");
            assertEquals(answers, answers(office, sheet, formulas));
            assertEquals("mine on a text\n=\"'\"&WRAP.LAYER(20;0.04)", note(office, sheet, "A5"));
            assertEquals("mine on a number\n=WRAP.LAYER(20;0.04)", note(office, sheet, "C" + EDGE));
            assertEquals("=WRAP.LAYER(20;0.04)", note(office, sheet, "C" + (EDGE + 1)));
            assertEquals(2 * DOWN + ACROSS + 1, office.call("bringing back", () -> BringBack.into(sheet.uno())));
            assertArrayEquals(formulas, formulas(office, sheet));
            assertEquals(answers, answers(office, sheet, formulas));
            assertEquals("mine on a text", note(office, sheet, "A5"));
            assertEquals("", note(office, sheet, "C" + (EDGE + 1)));
        }
    }

    /** The contents of all cells that had a formula; of an error only that it is one. */
    private static List<String> answers(Office office, CalcDocument sheet, String[][] formulas) {
        Object[][] all = office.call(
                "reading answers",
                () -> Uno.as(
                                XCellRangeData.class,
                                Uno.sheets(sheet.uno()).get(0).getCellRangeByName(ALL))
                        .getDataArray());
        List<String> answers = new ArrayList<>();
        for (int row = 0; row < all.length; row++) {
            for (int column = 0; column < all[row].length; column++) {
                Object value = all[row][column];
                if (!formulas[row][column].isEmpty()) {
                    answers.add(value instanceof Double || value instanceof String ? value + "" : "an error");
                }
            }
        }
        return answers;
    }

    private static List<String> repeated(List<String> kinds, int count) {
        return Collections.nCopies(count / kinds.size() + 1, kinds).stream()
                .flatMap(List::stream)
                .limit(count)
                .toList();
    }

    private static String[][] formulas(Office office, CalcDocument sheet) {
        return office.call(
                "reading",
                () -> Uno.as(
                                XCellRangeFormula.class,
                                Uno.sheets(sheet.uno()).get(0).getCellRangeByName(ALL))
                        .getFormulaArray());
    }

    private static void note(Office office, CalcDocument sheet, int column, int row, String text) {
        office.call("noting", () -> {
            Uno.as(XSheetAnnotationsSupplier.class, Uno.sheets(sheet.uno()).get(0))
                    .getAnnotations()
                    .insertNew(new CellAddress((short) 0, column, row), text);
            return true;
        });
    }

    private static String note(Office office, CalcDocument sheet, String cell) {
        return office.call("reading a note", () -> {
            XSpreadsheet page = Uno.sheets(sheet.uno()).get(0);
            Object anchor = page.getCellRangeByName(cell).getCellByPosition(0, 0);
            return Uno.as(
                            XSimpleText.class,
                            Uno.as(XSheetAnnotationAnchor.class, anchor).getAnnotation())
                    .getString();
        });
    }
}
