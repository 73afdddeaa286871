package org.snugsheet.office.sharing.lean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * Sheets in fewer letters, after ECMA-376, part 1, 18.3.1 (what an attribute is when it is left out; 18.3.1.40: a shared formula is that of its
 * first cell, moved). {@code LivingBookIT} has two programs read such a file.
 */
class LeanSheetTest {

    private static final String HEAD = "<sheetData>";
    private static final String TAIL = "</sheetData>";

    @Test
    void whatIsSoAnywayIsNotSaid() {
        String sheet = HEAD
                + "<row r=\"1\" customFormat=\"false\" ht=\"12.8\" hidden=\"false\" customHeight=\"false\" outlineLevel=\"0\" collapsed=\"false\">"
                + "<c r=\"A1\" s=\"0\" t=\"n\"><f aca=\"false\">1+1</f><v>2</v></c><c r=\"B1\" s=\"4\" t=\"str\"><v> s=\"0\"</v></c></row>"
                + "<row r=\"2\" hidden=\"true\" customHeight=\"true\"></row>" + TAIL;
        assertEquals(
                HEAD + "<row r=\"1\" ht=\"12.8\"><c r=\"A1\"><f>1+1</f><v>2</v></c>"
                        + "<c r=\"B1\" s=\"4\" t=\"str\"><v> s=\"0\"</v></c></row>"
                        + "<row r=\"2\" hidden=\"true\" customHeight=\"true\"></row>" + TAIL,
                LeanSheet.of(sheet, CellFormats.NONE));
    }

    /** Excel draws the borders of covered cells; and who unlocks a merged cell unlocks those that it covers. */
    @Test
    void coveredCellsStayIfTheyHaveABorderOrAreUnlocked() {
        String styles = "<borders count=\"2\"><border diagonalUp=\"false\"><left/><right/></border>"
                + "<border><left style=\"thin\"/><right/></border></borders>"
                + "<cellStyleXfs count=\"1\"><xf borderId=\"1\"></xf></cellStyleXfs><cellXfs count=\"3\">"
                + "<xf numFmtId=\"1\" borderId=\"0\"><protection locked=\"true\"/></xf>"
                + "<xf numFmtId=\"1\" borderId=\"1\"><protection locked=\"true\"/></xf>"
                + "<xf numFmtId=\"1\" borderId=\"0\"><protection locked=\"false\"/></xf></cellXfs>";
        CellFormats formats = CellFormats.of(styles);
        String row =
                "<row r=\"3\"><c r=\"A3\" s=\"0\"/><c r=\"B3\" s=\"0\"/><c r=\"C3\" s=\"1\"/><c r=\"D3\" s=\"2\"/><c r=\"E3\" s=\"7\"/></row>";
        String lean = LeanSheet.of(HEAD + row + TAIL + "<mergeCell ref=\"A3:D3\"/>", formats);
        assertTrue(lean.contains("<c r=\"A3\"/><c r=\"C3\" s=\"1\"/><c r=\"D3\" s=\"2\"/><c r=\"E3\" s=\"7\"/>"), lean);
        assertFalse(lean.contains("\"B3\""), lean);
    }

    /** The left and the lower neighbor of B2 have its lines, the others have another one or none; so B2 stays, and C3 goes. */
    @Test
    void aLineBetweenTwoCellsIsSaidOnce() {
        String line = " style=\"hair\"><color rgb=\"FF8C8C8C\"/></";
        String all = "<left" + line + "left><right" + line + "right><top" + line + "top><bottom" + line + "bottom>";
        CellFormats formats = CellFormats.of("<borders><border><left/></border><border>" + all + "</border><border>"
                + all.replace("<left style=\"hair\"", "<left style=\"thin\"")
                + "</border></borders><cellXfs count=\"4\">"
                + "<xf fillId=\"0\" borderId=\"0\"/><xf fillId=\"0\" borderId=\"1\"/><xf fillId=\"0\" borderId=\"2\"/>"
                + "<xf fillId=\"2\" borderId=\"1\"/><xf fontId=\"3\" fillId=\"0\" borderId=\"1\"/></cellXfs>");
        String squares = HEAD + squares(2, "ABCD", 1) + squares(3, "ABCD", 1) + squares(4, "ABCD", 1) + TAIL;
        String isProtected = "<sheetProtection sheet=\"true\"/>";
        String lean = LeanSheet.of(squares + isProtected, formats);
        assertEquals(
                HEAD + squares(2, "ABCD", 1) + squares(3, "ABD", 1) + squares(4, "ABCD", 1) + TAIL + isProtected, lean);
        assertEquals(squares, LeanSheet.of(squares, formats), "somebody may type there");
        for (int other : new int[] {2, 3, 4}) {
            String unlike = squares.replace("\"C3\" s=\"1\"", "\"C3\" s=\"" + other + "\"") + isProtected;
            assertEquals(unlike, LeanSheet.of(unlike, formats), "another line, filled, or another font");
            String beside = squares.replace("\"D3\" s=\"1\"", "\"D3\" s=\"" + other + "\"") + isProtected;
            assertEquals(other == 2, LeanSheet.of(beside, formats).contains("\"C3\""), "a neighbor with another line");
        }
        String merged = squares + isProtected + "<mergeCell ref=\"D3:E3\"/>";
        assertEquals(merged, LeanSheet.of(merged, formats), "a merged cell may look otherwise");
    }

    private static String squares(int row, String columns, int format) {
        String cells = columns.chars()
                .mapToObj(column -> "<c r=\"" + (char) column + row + "\" s=\"" + format + "\"/>")
                .collect(java.util.stream.Collectors.joining());
        return "<row r=\"" + row + "\">" + cells + "</row>";
    }

    /** A page with a small array formula is one that people read, also where nothing is worked out: the others keep their values. */
    @Test
    void whatIsPickedFromCellsOfAnArrayIsWorkedOutAnew() {
        String picking = "<c r=\"D1\" s=\"3\" t=\"str\"><f>INDEX($A$1:$A$2,2)</f><v>old</v></c>";
        String other = "<c r=\"E1\"><f>A1+1</f><v>2</v></c>";
        String array =
                "<c r=\"A1\"><f t=\"array\" ref=\"A1:A2\">INDEX(B1:B2,0)</f><v>1</v></c><c r=\"A2\"><v>3</v></c>";
        assertEquals(HEAD + picking + other + TAIL, LeanSheet.workedOutAnew(HEAD + picking + other + TAIL));
        assertEquals(
                HEAD + array + "<c r=\"D1\" s=\"3\"><f>INDEX($A$1:$A$2,2)</f></c>" + other + TAIL,
                LeanSheet.workedOutAnew(HEAD + array + picking + other + TAIL));
    }

    /** Of a large one only what is typed keeps its value. */
    @Test
    void aPageOfLargeArraysIsWorkedOutAnew() {
        String typed = "<c r=\"AD2\" s=\"3\"><v>4</v></c><c r=\"A99\" t=\"s\"><v>5</v></c>";
        String array = "<c r=\"A1\"><f t=\"array\" ref=\"A1:Z20\">AE1:BE20</f>";
        assertEquals(
                HEAD + array + "</c><c r=\"B1\" s=\"2\"/><c r=\"A2\"/><c r=\"AC1\"><f>A1+1</f></c>" + typed + TAIL,
                LeanSheet.workedOutAnew(HEAD + array
                        + "<v>1</v></c><c r=\"B1\" s=\"2\" t=\"s\"><v>3</v></c><c r=\"A2\" t=\"str\"><v></v></c>"
                        + "<c r=\"AC1\"><f>A1+1</f><v>2</v></c>" + typed + TAIL));
    }

    /** B2 to B4 name the cell beside them and one that stays; B9 names another one that stays, and C4 is in another column. */
    @Test
    void formulasThatAreAlikeAreWrittenOnce() {
        String lean = SharedFormulas.in(HEAD
                + cell("B2", "$A$2*$A$1")
                + cell("B3", "$A$3*$A$1")
                + cell("B4", "$A$4*$A$1")
                + cell("C4", "$A$4*$A$1")
                + cell("B9", "$A$9*$A$8")
                + TAIL);
        assertEquals(
                HEAD + "<c r=\"B2\"><f t=\"shared\" ref=\"B2:B4\" si=\"0\">$A2*$A$1</f><v>7</v></c>"
                        + "<c r=\"B3\"><f t=\"shared\" si=\"0\"/><v>7</v></c>"
                        + "<c r=\"B4\"><f t=\"shared\" si=\"0\"/><v>7</v></c>"
                        + "<c r=\"C4\"><f>$A$4*$A$1</f><v>7</v></c><c r=\"B9\"><f>$A$9*$A$8</f><v>7</v></c>" + TAIL,
                lean);
    }

    /** What looks like a cell inside a text or the name of a function is none; a number is another formula. */
    @Test
    void onlyReferencesAreMoved() {
        String lean = SharedFormulas.in(cell("D1", "LOG10(A1)&amp;&quot; A1&quot;")
                + cell("D2", "LOG10(A2)&amp;&quot; A1&quot;")
                + cell("D3", "LOG10(A3)&amp;&quot; A2&quot;")
                + cell("D4", "A1*2")
                + cell("D5", "A2*3"));
        assertEquals(
                "<c r=\"D1\"><f t=\"shared\" ref=\"D1:D2\" si=\"0\">LOG10($A1)&amp;&quot; A1&quot;</f><v>7</v></c>"
                        + "<c r=\"D2\"><f t=\"shared\" si=\"0\"/><v>7</v></c>"
                        + "<c r=\"D3\"><f>LOG10(A3)&amp;&quot; A2&quot;</f><v>7</v></c>"
                        + "<c r=\"D4\"><f>A1*2</f><v>7</v></c><c r=\"D5\"><f>A2*3</f><v>7</v></c>",
                lean);
    }

    @Test
    void anotherSheetIsNotShared() {
        String cells = cell("B2", "&apos;The jars&apos;!A2")
                + cell("B3", "&apos;The jars&apos;!A3")
                + cell("C2", "Jars!A2")
                + cell("C3", "Jars!A3");
        assertEquals(cells.replace(" aca=\"false\"", ""), SharedFormulas.in(cells));
    }

    /** A cell that is typed keeps its value, and an empty one goes if nothing is seen in it. */
    @Test
    void stepsHaveNoValues() {
        CellFormats formats = CellFormats.of("<borders><border><left/></border></borders><cellXfs count=\"2\">"
                + "<xf fillId=\"0\" borderId=\"0\"/><xf fillId=\"3\" borderId=\"0\"/></cellXfs>");
        String typed = "<c r=\"A1\" t=\"s\"><v>3</v></c><c r=\"A2\"><v>4.5</v></c><c r=\"A3\" s=\"1\"/>";
        String sheet = typed + "<c r=\"A4\" s=\"0\"/><c r=\"B1\" s=\"0\" t=\"str\"><f aca=\"false\">A1</f><v></v></c>"
                + "<c r=\"B2\" s=\"5\" t=\"e\"><f aca=\"false\">NA()</f><v>#N/A</v></c>";
        assertEquals(
                typed + "<c r=\"B1\"><f>A1</f></c><c r=\"B2\" s=\"5\"><f>NA()</f></c>",
                LeanSheet.ofSteps(sheet, formats));
    }

    @Test
    void aChartIsAsExactAsItsLines() {
        assertEquals(
                "<c:v>33.3436</c:v><c:v>-0.1234</c:v><c:v>12</c:v><c:v>1.5E-07</c:v><c:v>wool 1.234567</c:v>",
                LeanSheet.ofChart(
                        "<c:v>33.3436363979231</c:v><c:v>-0.12345</c:v><c:v>12</c:v><c:v>1.5E-07</c:v><c:v>wool 1.234567</c:v>"));
    }

    private static String cell(String at, String formula) {
        return "<c r=\"" + at + "\"><f aca=\"false\">" + formula + "</f><v>7</v></c>";
    }
}
