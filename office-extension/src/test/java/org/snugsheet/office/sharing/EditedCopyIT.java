package org.snugsheet.office.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyValue;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.util.XSortable;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.harness.WithoutExtension;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** A copy that somebody else worked on before it came back. */
@ExtendWith(SharedOffice.class)
class EditedCopyIT {

    private static final String PAGE = SharingWords.PAGE.english();

    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "FODS", "XLSX"})
    void rowsThatCameAndWentAreFollowed(
            FileFormat format, Office office, @WithoutExtension Office plain, @TempDir Path folder) {
        Path back = edited(office, plain, folder, format, sheet -> {
            rows(plain, sheet).insertByIndex(0, 2);
            rows(plain, sheet).insertByIndex(4, 1);
            rows(plain, sheet).removeByIndex(7, 1);
            return true;
        });
        try (CalcDocument sheet = office.open(back)) {
            String told = bringBack(office, sheet);
            assertTrue(told.contains("back in their cells: 4."), told);
            assertEquals("=SNUGSHEET.COOL.RATE(A4:A8;B4:B8;C4)", sheet.formulaAt("D4"));
            assertEquals("=2*SNUGSHEET.COOL.HALFTIME(A4:A8;B4:B8;$C$4)", sheet.formulaAt("E4"));
            assertEquals("{=SNUGSHEET.COOL.CURVE(A6:A7;A4:A8;B4:B8;C4)}", sheet.formulaAt("F10"));
            assertEquals("what", sheet.at("A3").text());
            assertEquals(1, sheet.sheetNames().size());
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "XLSX"})
    void whatWasTypedOverStaysAndIsTold(
            FileFormat format, Office office, @WithoutExtension Office plain, @TempDir Path folder) {
        Path back = edited(office, plain, folder, format, sheet -> {
            sheet.number("D2", 99).text("F9", "typed");
            return true;
        });
        try (CalcDocument sheet = office.open(back)) {
            String told = bringBack(office, sheet);
            assertTrue(told.contains("back in their cells: 2."), told);
            assertTrue(told.contains("Sheet1.D2:  Something else was typed there. It stays."), told);
            assertTrue(told.contains("Sheet1.F8:H10:  Something else was typed there. It stays."), told);
            assertEquals(99, sheet.at("D2").number());
            assertEquals("typed", sheet.at("F9").text());
        }
    }

    @Test
    void aDeletedCellIsTold(Office office, @WithoutExtension Office plain, @TempDir Path folder) {
        Path back = edited(office, plain, folder, FileFormat.ODS, sheet -> {
            Uno.as(XColumnRowRange.class, first(sheet)).getColumns().removeByIndex(3, 1);
            return true;
        });
        try (CalcDocument sheet = office.open(back)) {
            String told = bringBack(office, sheet);
            assertTrue(told.contains("Sheet1.D2:  Its cell was deleted."), told);
            assertEquals("=2*SNUGSHEET.COOL.HALFTIME(A2:A6;B2:B6;$C$2)", sheet.formulaAt("D2"));
        }
    }

    @Test
    void deletedReadingsAreTold(Office office, @WithoutExtension Office plain, @TempDir Path folder) {
        Path back = edited(office, plain, folder, FileFormat.ODS, sheet -> {
            Uno.as(XColumnRowRange.class, first(sheet)).getColumns().removeByIndex(1, 1);
            return true;
        });
        try (CalcDocument sheet = office.open(back)) {
            String told = bringBack(office, sheet);
            assertTrue(told.contains("Sheet1.D2:  Cells it works with were deleted."), told);
            assertEquals("", sheet.formulaAt("C2"));
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "XLSX"})
    void aSortedTableTakesItsFormulasAlong(
            FileFormat format, Office office, @WithoutExtension Office plain, @TempDir Path folder) {
        Path shared = folder.resolve("shared." + format.extension());
        Path back = folder.resolve("back." + format.extension());
        try (CalcDocument sheet = office.newDocument()) {
            sheet.numbersDown("A1", 30, 10, 20);
            for (int row = 1; row <= 3; row++) {
                sheet.formula("B" + row, "WRAP.LAYER(A" + row + ";0.04)");
            }
            office.call("sharing", () -> ShareCopy.make(sheet.uno()));
            sheet.saveAs(shared, format);
        }
        try (CalcDocument sheet = plain.open(shared)) {
            plain.call("sorting", () -> {
                com.sun.star.table.TableSortField by = new com.sun.star.table.TableSortField();
                by.Field = 0;
                by.IsAscending = true;
                Uno.as(XSortable.class, first(sheet).getCellRangeByName("A1:B3"))
                        .sort(new PropertyValue[] {
                            Uno.named("SortFields", new com.sun.star.table.TableSortField[] {by}),
                            Uno.named("IsSortColumns", false)
                        });
                return true;
            });
            assertEquals(10, sheet.at("A1").number());
            sheet.saveAs(back, format);
        }
        try (CalcDocument sheet = office.open(back)) {
            String told = bringBack(office, sheet);
            assertTrue(told.contains("back in their cells: 3."), told);
            for (int row = 1; row <= 3; row++) {
                assertEquals("=SNUGSHEET.WRAP.LAYER(A" + row + ";0.04)", sheet.formulaAt("B" + row));
                assertEquals(row * 0.25, sheet.calculateAll().at("B" + row).number(), 1e-12);
            }
        }
    }

    @Test
    void aPageThatSomebodyWroteOnStays(Office office, @WithoutExtension Office plain, @TempDir Path folder) {
        Path back = edited(office, plain, folder, FileFormat.ODS, sheet -> {
            sheet.text(PAGE + ".B20", "Why is this one slower?");
            return true;
        });
        try (CalcDocument sheet = office.open(back)) {
            String told = bringBack(office, sheet);
            assertTrue(told.contains("The page “" + PAGE + "” stays"), told);
            assertEquals("Why is this one slower?", sheet.at(PAGE + ".B20").text());
        }
    }

    @Test
    void aPageThatOthersReferToStays(Office office, @WithoutExtension Office plain, @TempDir Path folder) {
        Path back = edited(office, plain, folder, FileFormat.ODS, sheet -> {
            sheet.formula("A20", "'" + PAGE + "'.C5");
            return true;
        });
        try (CalcDocument sheet = office.open(back)) {
            bringBack(office, sheet);
            assertTrue(sheet.at("A20").text().startsWith("=COOL.RATE("));
        }
    }

    @Test
    void aCommentOnThePageStays(Office office, @WithoutExtension Office plain, @TempDir Path folder) {
        Path back = edited(office, plain, folder, FileFormat.ODS, sheet -> {
            XSpreadsheet page =
                    Uno.as(XSpreadsheet.class, sheet.uno().getSheets().getByName(PAGE));
            Uno.as(com.sun.star.sheet.XSheetAnnotationsSupplier.class, page)
                    .getAnnotations()
                    .insertNew(new com.sun.star.table.CellAddress((short) 1, 0, 0), "Nice.");
            return true;
        });
        try (CalcDocument sheet = office.open(back)) {
            assertTrue(bringBack(office, sheet).contains("stays"));
            assertTrue(sheet.sheetNames().contains(PAGE));
        }
    }

    /** A word beside the formula in a note is somebody’s, and stays. */
    @Test
    void whatSomebodyAddsToANoteStays(Office office) {
        try (CalcDocument sheet = filled(office)) {
            office.call("sharing", () -> {
                ShareCopy.make(sheet.uno());
                XSpreadsheet first = first(sheet);
                Notes.set(
                        first,
                        new com.sun.star.table.CellAddress((short) 0, 3, 1),
                        Notes.text(first.getCellByPosition(3, 1)) + "\nSure?");
                return true;
            });
            String told = bringBack(office, sheet);
            assertTrue(told.contains("back in their cells: 4."), told);
            assertEquals(
                    "Sure?",
                    office.call("reading", () -> Notes.text(first(sheet).getCellByPosition(3, 1))));
        }
    }

    /** Shared, opened by somebody without the extension, changed and saved. */
    private static Path edited(Office office, Office plain, Path folder, FileFormat format, Editing editing) {
        Path shared = folder.resolve("shared." + format.extension());
        Path back = folder.resolve("back." + format.extension());
        try (CalcDocument sheet = filled(office)) {
            assertEquals(4, office.call("sharing", () -> ShareCopy.make(sheet.uno())));
            sheet.saveAs(shared, format);
        }
        try (CalcDocument sheet = plain.open(shared)) {
            plain.call("editing", (Callable<Boolean>) () -> editing.in(sheet));
            sheet.saveAs(back, format);
        }
        return back;
    }

    private interface Editing {
        boolean in(CalcDocument sheet) throws Exception;
    }

    private static String bringBack(Office office, CalcDocument sheet) {
        return office.call(
                "bringing back", () -> BringBack.proposed(sheet.uno()).carryOut(Progress.UNSEEN, Language.ENGLISH));
    }

    /** Heads, readings, a rate, a half-time, a curve, and a text. */
    private static CalcDocument filled(Office office) {
        return office.newDocument()
                .text("A1", "what")
                .numbersDown("A2", 0, 5, 10, 15, 20)
                .numbersDown("B2", 40, 34, 30, 26, 24)
                .number("C2", 10)
                .formula("D2", "COOL.RATE(A2:A6;B2:B6;C2)")
                .formula("E2", "2*COOL.HALFTIME(A2:A6;B2:B6;$C$2)")
                .arrayFormula("F8:H10", "COOL.CURVE(A3:A4;A2:A6;B2:B6;C2)")
                .formula("D6", "CHECK.READINGS(A2:A6;B2:B6;C2)");
    }

    private static com.sun.star.table.XTableRows rows(Office office, CalcDocument sheet) {
        return office.call(
                "finding rows",
                () -> Uno.as(XColumnRowRange.class, first(sheet)).getRows());
    }

    private static XSpreadsheet first(CalcDocument sheet) throws com.sun.star.uno.Exception {
        return Uno.sheets(sheet.uno()).get(0);
    }
}
