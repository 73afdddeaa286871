package org.snugsheet.office.sheets.designawrap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.snugsheet.office.sheets.designawrap.DesignReference.PRECISION;
import static org.snugsheet.office.sheets.designawrap.DesignReference.assertResults;
import static org.snugsheet.office.sheets.designawrap.DesignReference.open;
import static org.snugsheet.office.sheets.designawrap.DesignReference.reference;
import static org.snugsheet.sheets.Opened.failingCells;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.sheets.BuiltSheets;

/** What happens in the worked sheet “design a wrap” when somebody chooses other layers. */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class DesignAWrapLayersIT {
    @Test
    void anotherMaterialFromTheListChangesItsResistance(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            double ofWool = document.at("E20").number();
            double whole = document.at("M37").number();
            List<String> list = chosenFrom(document);
            for (String material : List.of("fleece", "damp sand", "aluminum foil")) {
                assertTrue(list.contains(material), list.toString());
                document.text("B20", material).calculate();
                assertEquals("", failingCells(document), material);
                assertNotEquals(ofWool, document.at("E20").number(), 1e-4, material);
                assertNotEquals(whole, document.at("M37").number(), 1e-5, material);
            }
            // 3 mm of fleece from a radius of 38 mm, at 0.0543 W/(m·K): 0.035·ln(41/38)/0.0543.
            document.text("B20", "fleece").calculate();
            assertEquals(
                    0.035 * Math.log(41.0 / 38) / 0.0543, document.at("E20").number(), 1e-9);
            assertEquals("2 fleece", document.at("Curves.H30").text());
        }
    }

    @Test
    void theListHasEveryMaterialOfTheFunctionsAndNoBlankAtItsEnd(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            List<String> list = chosenFrom(document);
            assertEquals(Materials.all().size(), list.size());
            list.forEach(Materials::find);
            assertEquals(list.size(), List.copyOf(new java.util.HashSet<>(list)).size(), "no name twice");
            document.formula("P1", "=ROWS(materials)").calculate();
            assertEquals(list.size(), document.at("P1").number());
        }
    }

    @Test
    void aBlankRowBetweenLayersIsLeftOut(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            double whole = document.at("M37").number();
            // The bubble wrap two rows farther out: the same layers in the same order.
            document.text("B22", "").text("C22", "");
            document.text("B24", "small bubble wrap").number("C24", 5).calculate();
            assertEquals("", failingCells(document));
            assertEquals(whole, document.at("M37").number(), 1e-12);
            assertEquals("", document.at("E22").text());
            assertEquals(reference("way 4 R"), document.at("E24").number(), PRECISION);
            document.text("B24", "").text("C24", "").calculate();
            assertEquals("", failingCells(document));
            assertTrue(document.at("M37").number() < whole);
        }
    }

    @Test
    void aBareJarIsADesignToo(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            for (String row : List.of("19", "20", "21", "22", "27", "28")) {
                document.text("B" + row, "").text("C" + row, "");
            }
            document.calculate();
            assertEquals("", failingCells(document));
            assertTrue(
                    document.at("A29").text().startsWith("OK:"),
                    document.at("A29").text());
            assertEquals(0, document.at("M39").number(), 1e-12, "a wrap of nothing adds nothing");
            assertEquals(1, document.at("H26").number(), 1e-12);
        }
    }

    @Test
    void aWrongMaterialIsNamedAndGivesNoNumber(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            document.text("B21", "newspapper").calculate();
            assertEquals(
                    "Layer 3: “newspapper” is not a material known here. Did you mean “newspaper”?",
                    document.at("A29").text());
            for (String cell : List.of(
                    "E18", "E20", "E21", "E26", "F26", "G20", "H20", "H26", "M33", "M35", "M37", "N37", "M39", "N39",
                    "M41")) {
                assertEquals("–", document.at(cell).text(), cell);
            }
            assertEquals(
                    "No answer yet: fix first what the messages above say.",
                    document.at("A40").text());
            assertEquals(0, document.at("K37").error(), "the bare jar does not depend on it");
            document.text("B21", "newspaper").text("B27", "felt hat").calculate();
            assertTrue(
                    document.at("A29").text().startsWith("Lid: "),
                    document.at("A29").text());
            for (String cell : List.of("E27", "K33", "M33", "K41", "M41")) {
                assertEquals("–", document.at(cell).text(), cell);
            }
            document.text("B27", "felt").calculate();
            assertResults(document);
        }
    }

    @Test
    void aThicknessWithoutAMaterialIsAskedFor(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            document.number("C23", 3).calculate();
            assertTrue(
                    document.at("A29").text().startsWith("Layer 5: its material is blank"),
                    document.at("A29").text());
            document.text("C23", "").text("C20", "").calculate();
            assertTrue(
                    document.at("A29").text().startsWith("Layer 2: its thickness is blank"),
                    document.at("A29").text());
        }
    }

    @Test
    void theUsualThicknessStandsBesideWhereOneIsUsual(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            assertEquals(3, document.at("D20").number());
            document.number("B20", 0.05).calculate();
            assertEquals("", document.at("D20").text());
            // 3 mm, as the fleece above, at the typed 0.05 W/(m·K).
            assertEquals(0.035 * Math.log(41.0 / 38) / 0.05, document.at("E20").number(), 1e-9);
            assertEquals("", failingCells(document));
        }
    }

    private static List<String> chosenFrom(CalcDocument document) {
        return document.all("Materials.A6:A130").stream()
                .map(row -> row.get(0).shown())
                .takeWhile(name -> !name.isEmpty())
                .toList();
    }
}
