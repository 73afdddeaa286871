package org.snugsheet.office.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Filling, reading, saving and opening documents. */
@ExtendWith(SharedOffice.class)
class CalcDocumentIT {
    @Test
    void cellsHoldWhatWasPutIn(@WithoutExtension Office office) {
        try (CalcDocument document = office.newDocument()) {
            document.number("A1", 48.25).text("A2", "21,5").text("A3", "=1+1").formula("B2", "=A1*2");
            assertEquals(new CellResult.OfNumber(48.25, "48.25"), document.at("A1"));
            assertEquals(new CellResult.OfText("21,5"), document.at("A2"));
            assertEquals(new CellResult.OfText("=1+1"), document.at("A3"));
            assertEquals(96.5, document.at("B2").number());
            assertEquals(new CellResult.Blank(), document.at("C9"));
            assertEquals("=A1*2", document.formulaAt("B2"));
            assertEquals("", document.formulaAt("A1"));
        }
    }

    @Test
    void anArrayFormulaFillsItsRange(@WithoutExtension Office office) {
        try (CalcDocument document = office.newDocument()) {
            document.numbersDown("A1", 1, 2, 3).arrayFormula("C1:E1", "=TRANSPOSE(A1:A3*10)");
            List<CellResult> row = document.all("C1:E1").get(0);
            assertEquals(
                    List.of(10.0, 20.0, 30.0),
                    row.stream().map(CellResult::number).toList());
        }
    }

    @Test
    void aThousandFormulasGoInAtOnce(@WithoutExtension Office office) {
        try (CalcDocument document = office.newDocument()) {
            document.formulasDown("B5", Collections.nCopies(1000, "=ROW()"));
            List<List<CellResult>> rows = document.all("B5:B1004");
            assertEquals(1000, rows.size());
            assertEquals(5, rows.get(0).get(0).number());
            assertEquals(1004, rows.get(999).get(0).number());
            assertEquals(new CellResult.Blank(), document.at("B1005"));
        }
    }

    @Test
    void calculatingAnewRunsEveryFormula(@WithoutExtension Office office) {
        try (CalcDocument document = office.newDocument()) {
            document.formula("A1", "=RAND()");
            double before = document.at("A1").number();
            assertEquals(before, document.at("A1").number(), "reading alone calculates nothing");
            assertTrue(document.calculateAll().at("A1").number() != before);
        }
    }

    @Test
    void otherSheetsAreReachedByName(@WithoutExtension Office office) {
        try (CalcDocument document = office.newDocument()) {
            document.uno().getSheets().insertNewByName("Jars", (short) 1);
            document.numbersDown("Jars.B2", 30, 40).formula("A1", "=SUM($Jars.B2:B3)");
            assertEquals(70, document.at("A1").number());
            assertEquals(40, document.at("Jars.B3").number());
            assertEquals("Jars", document.sheetNames().get(1));
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "FODS", "XLSX"})
    void aSheetSurvivesItsFile(FileFormat format, @WithoutExtension Office office, @TempDir Path folder) {
        Path file = folder.resolve("snowy window sill ü." + format.extension());
        try (CalcDocument document = office.newDocument()) {
            document.text("A1", "newspaper").numbersDown("A2", 48, 1.0 / 3).formula("A4", "=A2*A3");
            document.formula("A5", "=1/0").arrayFormula("B1:B2", "=A2:A3+1");
            assertEquals(file, document.saveAs(file, format));
        }
        try (CalcDocument document = office.open(file)) {
            assertEquals("newspaper", document.at("A1").text());
            assertEquals(48, document.at("A2").number());
            assertEquals(1.0 / 3, document.at("A3").number(), 1e-15, "all digits");
            assertEquals(16, document.at("A4").number(), 1e-12);
            assertEquals("=A2*A3", document.formulaAt("A4"));
            assertEquals(ErrorCodes.DIVISION_BY_ZERO, document.at("A5").error());
            assertEquals(49, document.at("B1").number());
            assertEquals("{=A2:A3+1}", document.formulaAt("B1"));
            assertEquals(new CellResult.Blank(), document.at("C1"));
        }
    }

    @Test
    void pagesArePrintedToPdf(@WithoutExtension Office office, @TempDir Path folder) throws IOException {
        try (CalcDocument document = office.newDocument()) {
            document.text("A1", "fleece");
            byte[] pdf = Files.readAllBytes(document.saveAs(folder.resolve("fleece.pdf"), FileFormat.PDF));
            String text = new String(pdf, StandardCharsets.ISO_8859_1);
            assertTrue(text.startsWith("%PDF-1."), "ISO 32000-1, 7.5.2: the header");
            assertTrue(text.stripTrailing().endsWith("%%EOF"), "ISO 32000-1, 7.5.5: the last line");
            assertTrue(text.contains("/Count 1"), "one page");
        }
    }

    @Test
    void valuesAreWrittenAsText(@WithoutExtension Office office, @TempDir Path folder) throws IOException {
        try (CalcDocument document = office.newDocument()) {
            document.text("A1", "Söckchen, grün").number("B1", 20.5).formula("A2", "=1/0");
            Path csv = document.saveAs(folder.resolve("socks.csv"), FileFormat.CSV);
            assertEquals(List.of("\"Söckchen, grün\",20.5", "\"#DIV/0!\","), Files.readAllLines(csv));
        }
    }

    @Test
    void anExistingFileIsReplaced(@WithoutExtension Office office, @TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("old.csv"), "old");
        try (CalcDocument document = office.newDocument()) {
            document.number("A1", 7).saveAs(file, FileFormat.CSV);
        }
        assertEquals(List.of("7"), Files.readAllLines(file));
    }

    @Test
    void aFileThatIsNotThereIsNamed(@WithoutExtension Office office, @TempDir Path folder) {
        OfficeFailure failure = assertThrows(OfficeFailure.class, () -> office.open(folder.resolve("melted.ods")));
        assertTrue(failure.getMessage().contains("melted.ods"), failure.getMessage());
    }

    @Test
    void aClosedDocumentMayBeClosedAgainButNotRead(@WithoutExtension Office office) {
        CalcDocument document = office.newDocument();
        document.close();
        document.close();
        assertThrows(OfficeFailure.class, () -> document.at("A1"));
        assertTrue(office.isAlive());
    }
}
