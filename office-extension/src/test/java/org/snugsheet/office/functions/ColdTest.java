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

/** Winter weather, clothing and units. */
class ColdTest {

    private final PlainSheet sheet = new PlainSheet();

    /**
     * Wind chill: charts of the US National Weather Service and of Environment Canada, 2001. Garments: ANSI/ASHRAE Standard 55,
     * Table 5.2.2.2B, which the standard adds up: 0.08 + 0.24 + 0.10. Clothing needed: ISO 11079:2007, Table F.1, as quoted in
     * the public repository CenterForTheBuiltEnvironment/pythermalcomfort, tests/test_ireq.py; 7.2 km/h are 2 m/s. Units: NIST
     * SP 811, appendix B.8.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ROUND(COLD.WINDCHILL(-10;30);0) | -20 | 0",
                "ROUND(COLD.WINDCHILL(-35;10);0) | -45 | 0",
                "ROUND(COLD.WINDCHILL(5;10;\"F\");0) | -10 | 0",
                "ROUND(COLD.WINDCHILL(0;60;\"F\");0) | -33 | 0",
                "COLD.GARMENT(\"T-shirts\") | 0.08 | 1e-12",
                "COLD.GARMENT(\"boots\";\"tog\") | 0.155 | 1e-12",
                "COLD.OUTFIT({\"T-shirt\";\"thick trousers\";\"boots\"}) | 0.42 | 1e-9",
                "COLD.NEEDED.WORN(0;90;7.2) | 2.6 | 0.05",
                "COLD.NEEDED.WORN(0;145;7.2) | 1.5 | 0.05",
                "COLD.NEEDED.WORN(-10;90;7.2) | 3.5 | 0.05",
                "COLD.NEEDED.WORN(-20;115;7.2) | 3.4 | 0.05",
                "COLD.NEEDED.WORN(-20;115;25.2) | 3.5 | 0.05",
                "COLD.NEEDED.WORN(-30;115;7.2) | 4.0 | 0.05",
                "COLD.NEEDED.WORN(-30;175;18) | 2.6 | 0.05",
                "COLD.ANIMAL(\"wool\";50)/WRAP.LAYER(50;\"wool\") | 1 | 1e-12",
                "COLD.ANIMAL(\"wool\";50;\"low\")*WRAP.CONDUCTIVITY(\"wool\";;\"high\") | 0.05 | 1e-12",
                "TEMP.UNIT(1;\"US\";\"RSI\") | 0.1761102 | 5e-8",
                "TEMP.UNIT(2;\"clo\";\"tog\") | 3.1 | 1e-12",
                "TEMP.UNIT(1;\"cup\";\"ml\") | 236.5882 | 5e-5",
                "TEMP.UNIT(10;\"mph\";\"km/h\") | 16.09344 | 1e-9",
                "TEMP.READ(\"41,5 C\") | 41.5 | 1e-12",
                "TEMP.READ(\"35 °C\";\"F\") | 95 | 1e-9",
                "TEMP.ROUND(97.1;2;\"F\") | 98 | 1e-12",
            })
    void theTablesAreRightInACell(String formula, double answer, double tolerance) {
        assertEquals(answer, result(formula).number(), tolerance);
    }

    @Test
    void colderAirAndMoreWindNeedMoreClothing() {
        double mild = result("COLD.NEEDED(0;\"walking\")").number();
        double cold = result("COLD.NEEDED(-15;\"walking\")").number();
        double windy = result("COLD.NEEDED(-15;\"walking\";30)").number();
        double busy = result("COLD.NEEDED(-15;\"shovelling snow\")").number();
        assertTrue(mild < cold && cold < windy && busy < cold, mild + " " + cold + " " + windy + " " + busy);
        assertEquals(cold, result("COLD.NEEDED(5;150;;\"F\")").number(), 1e-9);
    }

    @Test
    void theRiskOfFrostbiteIsSaidWithItsCaution() {
        String words = result("COLD.FROSTBITE(-25;60)").text();
        assertTrue(words.contains("Faster in this wind") && words.endsWith("outdoor play come first."), words);
        assertTrue(result("COLD.FROSTBITE(5;0)").text().startsWith("It feels like 5 °C."));
        assertEquals(
                "No frost: the air is at 25 °C.",
                result("COLD.FROSTBITE(25;40)").text());
        // 15 °F, 0 °F: Child Care Weather Watch; −27 °C: Canadian Paediatric Society; calm air counts as it is.
        assertTrue(result("COLD.FROSTBITE(-9;0)").text().startsWith("Very cold for children"));
        assertTrue(result("COLD.FROSTBITE(1;0;\"F\")").text().startsWith("Very cold for children"));
        assertTrue(result("COLD.FROSTBITE(0;0;\"F\")").text().startsWith("Risk of frostbite for children"));
        assertTrue(result("COLD.FROSTBITE(-26;0)").text().startsWith("Risk of frostbite for children"));
        assertTrue(result("COLD.FROSTBITE(-27;0)").text().contains("Stay indoors"));
        assertTrue(result("COLD.FROSTBITE(\"-20 °F\";0)").text().contains("Stay indoors"));
        // The table says “faster in winds over 50 km/h” from 10 minutes on only.
        String milder = result("COLD.FROSTBITE(-20;60)").text();
        assertTrue(milder.contains("10 to 30 minutes") && !milder.contains("Faster"), milder);
    }

    /** Chart of the US National Weather Service: 0 °F and 15 mph feel like −19 °F, and skin can freeze in 30 minutes. */
    @Test
    void theRiskOfFrostbiteIsSaidInTheScaleAskedFor() {
        String words = result("COLD.FROSTBITE(0;15;\"F\")").text();
        assertTrue(words.contains("feels like -19 °F") && words.contains("30 minutes"), words);
        String calm = result("COLD.FROSTBITE(-40;0;\"F\")").text();
        assertTrue(calm.contains("feels like -40 °F"), calm);
    }

    @Test
    void anOutfitMayHaveBlanksAndTablesList() {
        sheet.text("A1", "T-shirt").text("A3", "boots").arrayFormula("C1:F80", "COLD.GARMENTS()");
        assertEquals(0.18, result("COLD.OUTFIT(A1:A4)").number(), 1e-9);
        List<List<CellResult>> garments = sheet.all("C1:F3");
        assertEquals(result("COLD.GARMENT(C3)").number(), garments.get(2).get(1).number(), 1e-12);
    }

    @Test
    void aBlankTemperatureStaysBlank() {
        sheet.text("A1", "95 °F").text("A3", "20").arrayFormula("B1:B3", "TEMP.READ(A1:A3)");
        assertEquals(35, sheet.at("B1").number(), 1e-9);
        assertEquals("", sheet.at("B2").text());
        assertEquals(20, sheet.at("B3").number(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "COLD.WINDCHILL(15;30)",
                "COLD.WINDCHILL(-10;2)",
                "COLD.WINDCHILL(Z1;30)",
                "COLD.WINDCHILL(-10;Z1)",
                "COLD.FROSTBITE(-10;-5)",
                "COLD.GARMENT(Z1)",
                "COLD.OUTFIT(Z1:Z3)",
                "COLD.NEEDED(-5;\"sleeping in a tree\")",
                "COLD.NEEDED(-5;Z1)",
                "COLD.ANIMAL(\"fur\";-5)",
                "COLD.ANIMAL(\"steel\";5)",
                "TEMP.UNIT(1;\"clo\";\"mm\")",
                "TEMP.UNIT(1;\"furlong\";\"mm\")",
                "TEMP.ROUND(20;0)",
            })
    void badInputIsACellErrorAndNeverANumber(String formula) {
        assertEquals(ErrorCodes.INVALID_ARGUMENT, result(formula).error(), formula);
    }

    private CellResult result(String formula) {
        return sheet.result(formula);
    }
}
