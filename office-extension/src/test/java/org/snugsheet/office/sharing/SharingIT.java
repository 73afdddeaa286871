package org.snugsheet.office.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.sheet.XSheetAnnotationAnchor;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.text.XSimpleText;
import com.sun.star.util.XProtectable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeFailure;
import org.snugsheet.office.harness.Printing;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.harness.WithoutExtension;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;

/** A copy to share: in an office without the extension, saved there, and brought back. */
@ExtendWith(SharedOffice.class)
class SharingIT {

    private static final String ALL = "A1:I12";

    /** Where people write 0,07 the office’s parser once took 0.07 for a word that it did not know. */
    @Test
    void formulasWithFractionsComeBackWherePeopleWriteCommas(Office office, @TempDir Path folder) {
        Path shared = folder.resolve("geteilt.ods");
        String formula = "COOL.TEMP(10.5;40;10;0.07)+0.25";
        try (Office german = office.setup().inLocale(java.util.Locale.GERMANY).start()) {
            String before;
            try (CalcDocument sheet = german.newDocument().formula("A1", formula)) {
                before = sheet.formulaAt("A1");
                assertEquals(1, german.call("sharing", () -> ShareCopy.make(sheet.uno())));
                sheet.saveAs(shared, FileFormat.ODS);
            }
            try (CalcDocument sheet = german.open(shared)) {
                String told = german.call(
                        "bringing back",
                        () -> BringBack.proposed(sheet.uno())
                                .carryOut(Progress.UNSEEN, org.snugsheet.office.words.Language.ENGLISH));
                assertEquals(before, sheet.formulaAt("A1"), told);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "FODS", "XLSX"})
    void aColleagueWithoutUsSeesTheSameAndTheFormulasComeBack(
            FileFormat format, Office office, @WithoutExtension Office plain, @TempDir Path folder) {
        Path original = folder.resolve("original." + format.extension());
        Path shared = folder.resolve("shared." + format.extension());
        Path again = folder.resolve("again." + format.extension());
        Path returned = folder.resolve("returned." + format.extension());
        try (CalcDocument sheet = filled(office)) {
            sheet.saveAs(original, format);
        }
        List<List<CellResult>> before;
        List<String> formulas;
        int paper;
        try (CalcDocument sheet = office.open(original)) {
            paper = Printing.sheetsOfPaper(office, sheet);
            before = sheet.calculateAll().all(ALL);
            formulas = formulas(sheet);
            assertEquals(6, office.call("sharing", () -> ShareCopy.make(sheet.uno())));
            sheet.saveAs(shared, format);
        }
        try (CalcDocument sheet = plain.open(shared)) {
            assertSameAnswers(before, sheet.calculateAll().all(ALL));
            assertTrue(sheet.formulaAt("D5").startsWith("=COUNT("), "formulas of the office stay");
            assertTrue(sheet.sheetNames().contains(SharingWords.PAGE.english()));
            assertEquals("A1:D10", Printing.areas(plain, sheet, SharingWords.PAGE.english()), "a short list, whole");
            assertEquals(paper + 1, Printing.sheetsOfPaper(plain, sheet), "on one sheet of paper");
            sheet.saveAs(returned, format);
        }
        try (CalcDocument sheet = office.open(returned)) {
            String told = office.call(
                    "bringing back",
                    () -> BringBack.proposed(sheet.uno())
                            .carryOut(Progress.UNSEEN, org.snugsheet.office.words.Language.ENGLISH));
            assertTrue(told.startsWith("Formulas back in their cells: 6."), told);
            assertEquals(before, sheet.calculateAll().all(ALL));
            assertFalse(sheet.sheetNames().contains(SharingWords.PAGE.english()));
            assertEquals("mine", note(office, sheet, "D2"));
            assertEquals("", note(office, sheet, "D1"));
            sheet.saveAs(again, format);
        }
        try (CalcDocument sheet = office.open(again)) {
            assertEquals(formulas, formulas(sheet));
            assertEquals(before, sheet.calculateAll().all(ALL));
        }
    }

    /** Of an .xlsx {@code LivingBookIT} shows it. */
    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "FODS"})
    void aCopyGoesOnWorkingInEachKindOfFile(
            FileFormat format, Office office, @WithoutExtension Office plain, @TempDir Path folder) {
        Path shared = folder.resolve("living." + format.extension());
        List<List<CellResult>> before;
        List<List<CellResult>> after;
        try (CalcDocument sheet = filled(office)) {
            before = following(sheet.calculateAll());
            String told = Menu.shareLiving(office, sheet, shared);
            assertTrue(Files.exists(shared), told);
            after = following(sheet.number("B3", 31).calculateAll());
        }
        assertNotEquals(before, after);
        try (CalcDocument sheet = plain.open(shared)) {
            assertSameAnswers(before, following(sheet), 1e-9);
            assertSameAnswers(after, following(sheet.number("B3", 31)), 1e-9);
        }
    }

    /** The curve and its table; what was found among the readings does not follow. */
    private static List<List<CellResult>> following(CalcDocument sheet) {
        List<List<CellResult>> all = new ArrayList<>(sheet.all("D1:D3"));
        all.addAll(sheet.all("F1:H3"));
        return all;
    }

    @Test
    void theOriginalFormulaIsTheNoteOfItsCell(Office office) {
        try (CalcDocument sheet = filled(office)) {
            office.call("sharing", () -> ShareCopy.make(sheet.uno()));
            assertEquals("=COOL.RATE(A1:A5;B1:B5;C1)", note(office, sheet, "D1"));
            assertEquals("mine\n=2*COOL.HALFTIME(A1:A5;B1:B5;C1)", note(office, sheet, "D2"));
        }
    }

    @Test
    void aSheetOfNoneOfOursStaysAsItIs(Office office) {
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", "SUM(1;2)").text("A2", "COOL.RATE(1)");
            assertEquals(0, office.call("sharing", () -> ShareCopy.make(sheet.uno())));
            assertEquals(1, sheet.sheetNames().size());
        }
    }

    @Test
    void aCopyIsNotCopiedAndNothingIsBroughtBackFromNowhere(Office office) {
        try (CalcDocument sheet = filled(office)) {
            refused(office, () -> BringBack.into(sheet.uno()), "keeps no Snugsheet formulas");
            office.call("sharing", () -> ShareCopy.make(sheet.uno()));
            refused(office, () -> ShareCopy.make(sheet.uno()), "copy to share already");
            office.call("renaming", () -> {
                rename(sheet);
                return true;
            });
            assertEquals(6, office.call("a renamed sheet is followed", () -> BringBack.into(sheet.uno())));
        }
    }

    @Test
    void aSheetWithAPasswordIsLeftAlone(Office office) {
        try (CalcDocument sheet = filled(office)) {
            office.call("protecting", () -> {
                Uno.as(XProtectable.class, first(sheet)).protect("secret");
                return true;
            });
            refused(office, () -> ShareCopy.make(sheet.uno()), "password");
        }
    }

    @Test
    void aProtectedSheetIsProtectedAgain(Office office) {
        try (CalcDocument sheet = filled(office)) {
            office.call("sharing", () -> {
                Uno.as(XProtectable.class, first(sheet)).protect("");
                ShareCopy.make(sheet.uno());
                return true;
            });
            assertTrue(office.call(
                    "asking", () -> Uno.as(XProtectable.class, first(sheet)).isProtected()));
        }
    }

    /** A number, a sum with a Snugsheet function inside, an error, a text, a table, a formula of the office, and a note somebody wrote. */
    private static CalcDocument filled(Office office) {
        CalcDocument sheet = office.newDocument();
        sheet.numbersDown("A1", 0, 5, 10, 15, 20)
                .numbersDown("B1", 40, 34, 30, 26, 24)
                .number("C1", 10);
        sheet.formula("D1", "COOL.RATE(A1:A5;B1:B5;C1)")
                .formula("D2", "2*COOL.HALFTIME(A1:A5;B1:B5;C1)")
                .formula("D3", "COOL.RATE(A1:A2;B1:B2;C1)")
                .formula("D4", "IF(D1>0;CHECK.READINGS(A1:A5;B1:B5;C1);\"COOL.RATE(\")")
                .formula("D5", "COUNT(D1:D4)")
                .formula("D6", "WRAP.LAYER(20;0.04)")
                .arrayFormula("F1:H3", "COOL.CURVE(A2:A3;A1:A5;B1:B5;C1)");
        office.call("writing a note", () -> {
            Uno.as(com.sun.star.sheet.XSheetAnnotationsSupplier.class, first(sheet))
                    .getAnnotations()
                    .insertNew(new com.sun.star.table.CellAddress((short) 0, 3, 1), "mine");
            return true;
        });
        return sheet;
    }

    /** An answer stays what it is; a refusal is still an error, if another one. */
    static void assertSameAnswers(List<List<CellResult>> before, List<List<CellResult>> after) {
        // Files hold fifteen digits.
        assertSameAnswers(before, after, 1e-14);
    }

    private static void assertSameAnswers(
            List<List<CellResult>> before, List<List<CellResult>> after, double difference) {
        for (int row = 0; row < before.size(); row++) {
            for (int column = 0; column < before.get(row).size(); column++) {
                CellResult was = before.get(row).get(column);
                CellResult is = after.get(row).get(column);
                if (was instanceof CellResult.OfError) {
                    assertTrue(is instanceof CellResult.OfError, is.toString());
                } else if (was instanceof CellResult.OfNumber number) {
                    assertEquals(number.number(), is.number(), difference * Math.abs(number.number()));
                } else {
                    assertEquals(was, is);
                }
            }
        }
    }

    private static List<String> formulas(CalcDocument sheet) {
        List<String> formulas = new ArrayList<>();
        for (int column = 0; column < 9; column++) {
            for (int row = 0; row < 12; row++) {
                formulas.add(sheet.formulaAt(CellName.of(column, row)));
            }
        }
        return formulas;
    }

    private static String note(Office office, CalcDocument sheet, String cell) {
        return office.call(
                "reading a note",
                () -> Uno.as(
                                XSimpleText.class,
                                Uno.as(
                                                XSheetAnnotationAnchor.class,
                                                first(sheet)
                                                        .getCellRangeByName(cell)
                                                        .getCellByPosition(0, 0))
                                        .getAnnotation())
                        .getString());
    }

    private static void rename(CalcDocument sheet) throws com.sun.star.uno.Exception {
        Uno.as(com.sun.star.container.XNamed.class, first(sheet)).setName("another");
    }

    private static XSpreadsheet first(CalcDocument sheet) throws com.sun.star.uno.Exception {
        return Uno.sheets(sheet.uno()).get(0);
    }

    private static void refused(Office office, java.util.concurrent.Callable<?> work, String words) {
        RuntimeException refusal = assertThrows(RuntimeException.class, () -> office.call("something refused", work));
        Throwable said = refusal instanceof OfficeFailure ? refusal.getCause() : refusal;
        assertTrue(String.valueOf(said).contains(words), String.valueOf(refusal));
    }
}
