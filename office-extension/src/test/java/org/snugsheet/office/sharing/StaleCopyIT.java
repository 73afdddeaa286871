package org.snugsheet.office.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.container.XNameContainer;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.util.XProtectable;
import java.nio.file.Path;
import java.util.function.Consumer;
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
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.uno.Uno;

/** A copy says so as soon as what was typed is no longer what its answers were worked out from. */
@ExtendWith(SharedOffice.class)
class StaleCopyIT {

    /** A whole column is read on the sheet below, so none of its lines is free: right of all. */
    private static final String LINE = "G1";

    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "FODS", "XLSX"})
    void whateverIsTypedBringsTheLineAndTypingItBackTakesItAway(
            FileFormat format, Office office, @WithoutExtension Office plain, @TempDir Path folder) {
        Path copy = folder.resolve("copy." + format.extension());
        try (CalcDocument sheet = filled(office)) {
            choose(office, sheet, copy);
        }
        try (CalcDocument sheet = plain.open(copy)) {
            assertEquals("", sheet.at(LINE).shown());
            assertEquals("", sheet.at(SharingWords.PAGE.english() + ".A3").shown());
            typed(sheet, one -> one.number("B6", 33.9), one -> one.number("B6", 34));
            typed(sheet, one -> one.text("C5", "ten"), one -> one.number("C5", 10));
            typed(sheet, one -> one.text("D5", "Wool"), one -> one.text("D5", "wool"));
            typed(sheet, one -> one.text("D5", ""), one -> one.text("D5", "wool"));
            typed(sheet, one -> one.text("B6", "34"), one -> one.number("B6", 34));
            typed(sheet, one -> one.number("B8", 0), one -> one.text("B8", ""));
            typed(sheet, one -> one.number("B12", 20), one -> one.text("B12", ""));
            typed(sheet, one -> one.formula("B6", "1/0"), one -> one.number("B6", 34));
            assertTrue(sheet.calculateAll().at("A16").shown().isEmpty(), "a cell that no answer needs");
            sheet.number("A16", 3);
            assertEquals("", sheet.at(LINE).shown());
        }
    }

    @Test
    void theLineNamesTheDayInTheLanguageOfTheDocument(Office office, @TempDir Path folder) {
        Path copy = folder.resolve("copy.ods");
        try (CalcDocument sheet = filled(office).locale("de-DE")) {
            choose(office, sheet, copy);
        }
        try (CalcDocument sheet = office.open(copy)) {
            sheet.number("B6", 1);
            String day = java.time.LocalDate.now(java.time.ZoneId.systemDefault())
                    .format(java.time.format.DateTimeFormatter.ofLocalizedDate(java.time.format.FormatStyle.LONG)
                            .withLocale(java.util.Locale.GERMAN));
            assertEquals(
                    "Diese Ergebnisse gehören zu den Messwerten, wie sie am " + day
                            + " waren; Änderungen folgen sie nicht.",
                    sheet.at(LINE).text());
        }
    }

    /** A sentence that promises to follow gives its place to the line, and comes back with the formulas. */
    @Test
    void promisesAreNotInTheCopy(Office office, @TempDir Path folder) {
        Path copy = folder.resolve("copy.ods");
        try (CalcDocument sheet = filled(office)) {
            sheet.text("F1", "The results below follow by themselves.").text("F2", "Nothing else is to be done.");
            office.call("styling", () -> {
                XNameContainer styles = Uno.as(
                        XNameContainer.class,
                        Uno.as(XStyleFamiliesSupplier.class, sheet.uno())
                                .getStyleFamilies()
                                .getByName("CellStyles"));
                styles.insertByName("Snugsheet follows", Uno.make(sheet.uno(), "com.sun.star.style.CellStyle"));
                Uno.set(first(sheet).getCellRangeByName("F1:F2"), "CellStyle", "Snugsheet follows");
                Uno.as(XProtectable.class, first(sheet)).protect("");
                return true;
            });
            choose(office, sheet, copy);
            assertEquals(
                    "The results below follow by themselves.", sheet.at("F1").text());
        }
        try (CalcDocument sheet = office.open(copy)) {
            assertEquals("", sheet.at("F1").shown());
            assertEquals("", sheet.at("F2").shown());
            office.call("opening", () -> {
                Uno.as(XProtectable.class, first(sheet)).unprotect("");
                return true;
            });
            sheet.number("B6", 1);
            assertTrue(sheet.at("F1").text().startsWith("These answers are of the readings as they were on"));
            Menu.choose(office, sheet, MenuItem.BRING_BACK, Menu.QUIET);
            assertEquals(
                    "The results below follow by themselves.", sheet.at("F1").text());
            assertEquals("Nothing else is to be done.", sheet.at("F2").text());
            assertEquals(1, sheet.sheetNames().size());
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "FODS", "XLSX"})
    void theCopyOpensOnThePageThatWasOpen(FileFormat format, Office office, @TempDir Path folder) {
        Path copy = folder.resolve("copy." + format.extension());
        try (CalcDocument sheet = filled(office)) {
            office.call("adding a page", () -> {
                sheet.uno().getSheets().insertNewByName("Empty", (short) 0);
                view(sheet)
                        .setActiveSheet(Uno.as(
                                XSpreadsheet.class, sheet.uno().getSheets().getByName("Sheet1")));
                return true;
            });
            choose(office, sheet, copy);
        }
        try (CalcDocument sheet = office.open(copy)) {
            assertEquals(
                    "Sheet1",
                    office.call(
                            "looking",
                            () -> Uno.as(
                                            com.sun.star.container.XNamed.class,
                                            view(sheet).getActiveSheet())
                                    .getName()));
        }
    }

    /** An answer that is an empty text is still one: COUNTA counts it, and a sum refuses it. */
    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "XLSX"})
    void anEmptyAnswerStaysAText(
            FileFormat format, Office office, @WithoutExtension Office plain, @TempDir Path folder) {
        Path copy = folder.resolve("copy." + format.extension());
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", "IF(CHECK.VERSION()=\"\";1;\"\")")
                    .formula("A2", "COUNTA(A1)")
                    .formula("A3", "A1+1");
            choose(office, sheet, copy);
        }
        try (CalcDocument sheet = plain.open(copy)) {
            sheet.calculateAll();
            assertEquals(1, sheet.at("A2").number());
            assertEquals("#VALUE!", sheet.at("A3").shown());
        }
        try (CalcDocument sheet = office.open(copy)) {
            String told = Menu.choose(office, sheet, MenuItem.BRING_BACK, Menu.QUIET);
            assertTrue(sheet.formulaAt("A1").contains("CHECK.VERSION"), told);
        }
    }

    private static void typed(CalcDocument sheet, Consumer<CalcDocument> change, Consumer<CalcDocument> back) {
        change.accept(sheet);
        String shown = sheet.at(LINE).shown();
        assertTrue(shown.startsWith("These answers are of the readings as they were on"), shown);
        assertEquals(shown, sheet.at(SharingWords.PAGE.english() + ".A3").shown());
        back.accept(sheet);
        assertEquals("", sheet.at(LINE).shown());
    }

    private static void choose(Office office, CalcDocument sheet, Path copy) {
        String told = Menu.share(office, sheet, copy);
        assertTrue(told.startsWith("The copy is saved as") || told.startsWith("Die Kopie ist"), told);
    }

    /** A title, a free line, heads, readings with a blank, a text, and answers over a block, a whole column and a failing cell. */
    private static CalcDocument filled(Office office) {
        return office.newDocument()
                .text("A1", "Cooling")
                .text("A4", "min")
                .text("B4", "°C")
                .numbersDown("A5", 0, 5, 10, 15, 20)
                .numbersDown("B5", 40, 34, 30)
                .number("B9", 24)
                .number("C5", 10)
                .text("D5", "wool")
                .formula("E5", "COOL.RATE(A5:A9;B5:B9;C5)")
                .formula("E6", "WRAP.CONDUCTIVITY(D5)")
                .formula("E7", "COUNT(B:B)+CHECK.VERSION()*0")
                .formula("E8", "IF(COUNT(B:B)>0;CHECK.READINGS(A5:A9;B5:B9;C5);\"\")")
                .formula("E9", "IFERROR(COOL.RATE(E7:E7;E7:E7;C5);CHECK.VERSION())");
    }

    private static XSpreadsheetView view(CalcDocument sheet) {
        return Uno.as(XSpreadsheetView.class, Uno.as(XModel.class, sheet.uno()).getCurrentController());
    }

    private static XSpreadsheet first(CalcDocument sheet) throws com.sun.star.uno.Exception {
        return Uno.sheets(sheet.uno()).get(0);
    }
}
