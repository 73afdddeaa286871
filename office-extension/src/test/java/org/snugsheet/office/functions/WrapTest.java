package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.ErrorCodes;

/** Wraps, against the handbooks’ worked examples and in all the ways a teacher may mistype them. */
class WrapTest {

    private static final String JAR = "250;35;A1:A3;B1:B3;C1;C2";

    private final PlainSheet sheet = new PlainSheet();

    WrapTest() {
        sheet.number("A1", 3)
                .text("B1", "glass")
                .number("A2", 10)
                .text("B2", "wool")
                .number("C1", 40)
                .number("C2", 5);
    }

    /**
     * Building Construction Handbook, p. 468 (U 2.17 of a brick wall); a pipe in fiber glass (U 2.789 on its inside
     * diameter); Holman, Heat Transfer, Example 2-6 (critical radius 5.67 cm, from memory); Incropera, Example 3.5 (11 mm,
     * from memory). The rest is ISO 6946:2017, 6.7.1, by hand.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1/WRAP.FLAT({13;215};{0.5;0.84};0.123;0.055) | 2.17 | 0.005",
                "1/WRAP.ROUND(10;{2;20};{1000000000;0.05};0.1;0.2) | 2.789 | 0.002",
                "WRAP.TURNING(0.17;3)/10 | 5.67 | 0.005",
                "WRAP.TURNING(0.055;5) | 11 | 0.05",
                "WRAP.THICKNESS(1;0.04;;\"clo\") | 6.2 | 1e-9",
                "WRAP.THICKNESS(WRAP.ROUND(40;7;0.05);0.05;40) | 7 | 1e-9",
                "WRAP.CONDUCTIVITY(\"sand\";\"soaked\")/WRAP.CONDUCTIVITY(\"nasser Sand\") | 1 | 1e-12",
                "WRAP.CONDUCTIVITY(\"fleece\";;;\"k-factor\")*0.14422788886/WRAP.CONDUCTIVITY(\"polaire\") | 1 | 1e-9",
                "WRAP.LAYER(10;\"air gap\") | 0.15 | 1e-12",
                "WRAP.SURFACE(\"contact\";30;5) | 0 | 0",
            })
    void theHandbooksAreRightInACell(String formula, double answer, double tolerance) {
        assertEquals(answer, result(formula).number(), tolerance);
    }

    @Test
    void theTableBetweenTheLayersBalances() {
        sheet.arrayFormula("F1:I5", "WRAP.BETWEEN(" + JAR + ")");
        List<List<CellResult>> table = sheet.all("F1:I5");

        assertEquals("wool", table.get(3).get(0).text());
        assertEquals(40, table.get(1).get(2).number());
        assertEquals(5, table.get(4).get(3).number());
        double flux = flux(table.get(1));
        for (List<CellResult> row : table.subList(2, 5)) {
            assertEquals(flux, flux(row), 1e-9 * flux);
        }
        assertEquals(
                table.get(3).get(3).number(), result("WRAP.FACE(2;" + JAR + ")").number(), 1e-12);
        assertEquals(
                table.get(3).get(1).number(),
                result("WRAP.ROUND(38;10;\"wool\")*35/38").number(),
                1e-12);
    }

    @Test
    void whatAJarLosesIsWhatItsRateSays() {
        double watts = result("WRAP.FLOW(" + JAR + ")").number();
        assertEquals(
                watts, result("COOL.POWER(250;WRAP.EXPECT(" + JAR + ");C1;C2)").number(), 1e-9);
        // The surface of 250 ml in a cylinder of 35 mm radius, by hand.
        double area = 2 * 0.25e-3 / 0.035 + 2 * Math.PI * 0.035 * 0.035;
        assertEquals(watts, result("(C1-C2)/WRAP.VESSEL(" + JAR + ")").number() * area, 1e-9);
    }

    @Test
    void fahrenheitGivesTheSameJar() {
        sheet.number("D1", 104).number("D2", 41);
        String fahrenheit = "250;35;A1:A3;B1:B3;D1;D2;;;;";
        assertEquals(
                result("WRAP.FLOW(" + JAR + ")").number(),
                result("WRAP.FLOW(" + fahrenheit + ";\"F\")").number(),
                1e-9);
        assertEquals(
                result("TEMP.CONVERT(WRAP.FACE(1;" + JAR + ");\"C\";\"F\")").number(),
                result("WRAP.FACE(1;" + fahrenheit + ";\"F\")").number(),
                1e-9);
    }

    @Test
    void aBareJarNeedsNoLayersAndAWrapSlowsIt() {
        double bare = result("WRAP.EXPECT(250;35;Z1;Z2;C1;C2)").number();
        double wrapped = result("WRAP.EXPECT(" + JAR + ")").number();
        double inWind = result("WRAP.EXPECT(" + JAR + ";\"wind 20 km/h\")").number();
        double inWater = result("WRAP.EXPECT(" + JAR + ";\"stirred water\")").number();
        assertTrue(wrapped < bare && wrapped < inWind && inWind < inWater, wrapped + " " + bare + " " + inWind);
    }

    @Test
    void whatTheReadingsShowComesBack() {
        sheet.formula("E1", "WRAP.EXPECT(250;35;Z1;Z2;C1;C2;0.1)").formula("E2", "WRAP.ONEJAR(E1;250;219.8)");
        assertEquals("OK", result("CHECK.WRAP(A1:A3;B1:B3)").text());
        // 0.1 outside, and a little for the film of water inside; the mean of 40 °C and 30 °C shifts it by 0.4 %.
        assertEquals(0.105, sheet.at("E2").number(), 0.003);
        // At the temperature that WRAP.EXPECT was asked for, nothing is left but rounding.
        double all = result("WRAP.VESSEL(250;35;Z1;Z2;C1;C2;0.1)").number();
        assertEquals(all, result("WRAP.ONEJAR(E1;250;219.82616;;;;;;C1)").number(), 1e-6 * all);
        assertEquals(
                all,
                result("WRAP.ONEJAR(E1;250;219.82616;;;;;\"SI\";104;\"F\")").number(),
                1e-6 * all);
        String verdict = result("WRAP.VERDICT(WRAP.EXPECT(" + JAR + ");0.0005;" + JAR + ")")
                .text();
        assertTrue(verdict.endsWith("they agree."), verdict);
    }

    @Test
    void aJarInATubHasItsLidInTheAir() {
        String tub = JAR + ";\"stirred water\";;;\"25 °C\"";
        double watts = result("WRAP.FLOW(" + tub + ")").number();
        double end = result("WRAP.END(" + tub + ")").number();
        assertTrue(end > 5 && end < 25, "" + end);
        assertEquals(5, result("WRAP.END(" + JAR + ")").number(), 1e-12, "in air it ends as cold as the air");
        assertEquals(
                watts,
                result("COOL.POWER(250;WRAP.EXPECT(" + tub + ");C1;WRAP.END(" + tub + "))")
                        .number(),
                1e-9);
        assertEquals(
                result("WRAP.VESSEL(" + tub + ")").number(),
                result("WRAP.ONEJAR(WRAP.EXPECT(" + tub + ");250;219.82616;;;;;;C1)")
                        .number(),
                1e-8);
        // The wall of the jar, the lid and the base are the same; so the wrap alone is left, but for its films.
        String bare = "250;35;A1;B1;C1;C2;\"stirred water\"";
        String bag = "250;35;A1:A3;B1:B3;C1;C2;\"stirred water\"";
        sheet.number("A3", 0.05).text("B3", "plastic bag");
        double wrap = result("WRAP.ROUND(38;A2:A3;B2:B3)").number();
        double side = Math.PI * 2 * 3.5 * 6.496;
        double measured = result("WRAP.MEASURED(WRAP.EXPECT(" + bare + ");WRAP.EXPECT(" + bag + ");250;" + side
                        + ";;;;WRAP.LEAK(" + bag + ");;C1)")
                .number();
        assertEquals(wrap * 35 / 38, measured, 0.02 * wrap);
    }

    /** A room at freezing is typed in quotes, or with its unit: a plain 0 is refused, for a blank cell arrives so, too. */
    @Test
    void aRoomAtFreezingIsNotTheUsualRoom() {
        String usual = "WRAP.END(" + JAR + ";\"still water\")";
        String freezing = "WRAP.END(" + JAR + ";\"still water\";;;\"0\")";
        assertTrue(result(freezing).number() < 5);
        assertTrue(result(usual).number() > 5);
        assertEquals(
                result(freezing).number(),
                result("WRAP.END(" + JAR + ";\"still water\";;;\"32 °F\")").number(),
                1e-9);
    }

    @Test
    void aWrapThatWaterEntersIsSoakedAndSaysSo() {
        String tub = JAR + ";\"still water\"";
        sheet.arrayFormula("F1:I5", "WRAP.BETWEEN(" + tub + ")");
        assertEquals("wool (soaked)", sheet.at("F4").text());
        assertEquals(
                result("WRAP.ROUND(38;10;\"soaked wool\")*35/38").number(),
                sheet.at("G4").number(),
                1e-12);
        String verdict = result("WRAP.VERDICT(WRAP.EXPECT(" + tub + ");0.0005;" + tub + ")")
                .text();
        assertTrue(verdict.contains("they agree. The wrap is taken as soaked"), verdict);
        assertTrue(
                verdict.endsWith("6.0 °C as the surroundings: with its lid in the air, the jar cools toward that."),
                verdict);
        double soaked = result("WRAP.FLOW(" + tub + ")").number();
        sheet.number("A3", 0.05).text("B3", "plastic bag");
        assertTrue(result("WRAP.FLOW(" + tub + ")").number() < soaked / 3);
    }

    @Test
    void everyMaterialOfTheTableIsFound() {
        sheet.arrayFormula("F1:M100", "WRAP.MATERIALS()");
        List<List<CellResult>> table = sheet.all("F1:M100");
        assertEquals("material", table.get(0).get(0).text());
        assertEquals("wool", table.get(1).get(0).text());
        assertEquals(
                result("WRAP.CONDUCTIVITY(\"wool\";\"dry\";\"high\")").number(),
                table.get(1).get(4).number());
        assertEquals(
                result("WRAP.USUAL(\"wool\")").number(), table.get(1).get(5).number());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "WRAP.ROUND(-40;10;0.04)",
                "WRAP.ROUND(Z1;10;0.04)",
                "WRAP.ROUND(40;10;\"unobtainium\")",
                "WRAP.CONDUCTIVITY(Z1)",
                "WRAP.CONDUCTIVITY(\"wool\";\"damp\")",
                "WRAP.CONDUCTIVITY(\"wool\";;\"middling\")",
                "WRAP.CONDUCTIVITY(\"wool\";;;\"clo\")",
                "WRAP.USUAL(\"sand\")",
                "WRAP.THICKNESS(1;0.04;-5)",
                "WRAP.TURNING(0;3)",
                "WRAP.SURFACE(\"still air\";Z1;5)",
                "WRAP.SURFACE(\"still air\";-300;5)",
                "WRAP.SURFACE(\"still water\";5;-5)",
                "WRAP.SURFACE(\"still air\";30;5;100;\"left\")",
                "WRAP.SURFACE(\"still air\";30;5;100;\"side\";2)",
                "WRAP.EXPECT(0;35;A1:A3;B1:B3;40;5)",
                "WRAP.EXPECT(250;Z1;A1:A3;B1:B3;40;5)",
                "WRAP.EXPECT(250;35;A1:A3;B1:B2;40;5)",
                "WRAP.EXPECT(250;35;A1:A3;B1:B3;Z1;5)",
                "WRAP.EXPECT(250;35;A1:A3;B1:B3;40;5;\"a gale\")",
                "WRAP.EXPECT(250;35;A1:A3;B1:B3;40;5;;-1)",
                "WRAP.FACE(0.5;250;35;A1:A3;B1:B3;40;5)",
                "WRAP.MEASURED(Z1;0.02;250;220)",
                "WRAP.MEASURED(0.04;0.02;250;0)",
                "WRAP.ONEJAR(-0.01;250;220)",
                "WRAP.EXPECT(250;35;A1;B1;40;5;\"still water\";;;0)",
                "WRAP.EXPECT(250;35;A1;B1;40;5;\"still water\";;;Z1)",
                "WRAP.ONEJAR(0.01;250;220;;;;5)",
                "WRAP.ONEJAR(0.01;250;220;;;;-1)",
                "WRAP.VERDICT(0.01;0;250;35;A1:A3;B1:B3;40;5)",
            })
    void badInputIsACellErrorAndNeverANumber(String formula) {
        assertEquals(ErrorCodes.INVALID_ARGUMENT, result(formula).error(), formula);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "CHECK.WRAP({3;10};{\"wool\";\"socks\"}) | Layer 2: “socks” is not a material known here. Did you mean “wool sock”?",
                "CHECK.WRAP({3;-10};{\"wool\";\"felt\"}) | Layer 2: the thickness must be more than zero, but it is -10. Check that cell.",
                "CHECK.WRAP({3;10};{\"wool\";0}) | Layer 2: the conductivity must be more than zero, but it is 0. Check that cell.",
                "CHECK.WRAP({3;\"\";\"\"};{\"wool\";\"\";\"felt\"}) | Layer 3: its thickness is blank. Type its millimeters, or clear its material too.",
                "CHECK.WRAP({3;5};{\"wool\";\"\"}) | Layer 2: its material is blank. Choose one or type its conductivity, or clear its thickness too.",
                "CHECK.WRAP({3;\"thick\"};{\"wool\";\"felt\"}) | Layer 2 says “thick”, which is not a number. Type a plain number there.",
                "CHECK.WRAP({3;10};{\"wool\"}) | There are 2 thicknesses but 1 materials. Give one material for each thickness.",
                "CHECK.WRAP({3};{0.04};;;\"mm\") | mm measures length, but m²·K/W measures thermal resistance: one cannot be turned into the other. Check both units.",
            })
    void aBadLayerIsNamedInWords(String formula, String sentence) {
        assertEquals(sentence, result(formula).text());
    }

    private static double flux(List<CellResult> row) {
        return (row.get(2).number() - row.get(3).number()) / row.get(1).number();
    }

    private CellResult result(String formula) {
        return sheet.result(formula);
    }
}
