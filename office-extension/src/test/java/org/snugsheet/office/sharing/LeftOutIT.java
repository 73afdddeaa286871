package org.snugsheet.office.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.Property;
import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.sheet.ConditionOperator;
import com.sun.star.sheet.ValidationType;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSheetAnnotation;
import com.sun.star.sheet.XSheetAnnotationAnchor;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.sheet.XSheetConditionalEntries;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellAddress;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.office.functions.FunctionIndex;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.harness.WithoutExtension;
import org.snugsheet.office.uno.Uno;

/** What calls Snugsheet functions outside of cells, somebody’s own notes, and long properties. */
@ExtendWith(SharedOffice.class)
class LeftOutIT {

    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "XLSX"})
    void nothingOfOursIsLeftInTheCopy(
            FileFormat format, Office office, @WithoutExtension Office plain, @TempDir Path folder) {
        Path copy = folder.resolve("copy." + format.extension());
        try (CalcDocument sheet = office.newDocument()) {
            sheet.number("A1", 20).formula("B1", "WRAP.LAYER(A1;0.04)");
            office.call("naming", () -> {
                names(sheet).addNewByName("thick", "WRAP.LAYER($Sheet1.$A$1;0.04)", new CellAddress(), 0);
                Object cell = first(sheet).getCellRangeByName("A1");
                XSheetConditionalEntries entries =
                        Uno.as(XSheetConditionalEntries.class, Uno.property(cell, "ConditionalFormat"));
                entries.addNew(new PropertyValue[] {
                    Uno.named("Operator", com.sun.star.sheet.ConditionOperator.FORMULA),
                    Uno.named("Formula1", "WRAP.LAYER(A1;0.04)>1"),
                    Uno.named("StyleName", "Result")
                });
                Uno.set(cell, "ConditionalFormat", entries);
                Object check = Uno.property(cell, "Validation");
                Uno.set(check, "Type", ValidationType.CUSTOM);
                Uno.as(XSheetCondition.class, check).setOperator(ConditionOperator.FORMULA);
                Uno.as(XSheetCondition.class, check).setFormula1("WRAP.LAYER(A1;0.04)<9");
                Uno.set(cell, "Validation", check);
                return true;
            });
            sheet.formula("C1", "thick*2");
            assertEquals(1, office.call("sharing", () -> ShareCopy.make(sheet.uno())));
            sheet.saveAs(copy, format);
        }
        try (CalcDocument sheet = plain.open(copy)) {
            assertEquals(1, sheet.calculateAll().at("C1").number());
            plain.call("looking", () -> {
                assertEquals(
                        "0.5",
                        Uno.as(
                                        com.sun.star.sheet.XNamedRange.class,
                                        names(sheet).getByName("thick"))
                                .getContent());
                Object cell = first(sheet).getCellRangeByName("A1");
                Object entries = Uno.property(cell, "ConditionalFormat");
                assertEquals(
                        0,
                        Uno.as(com.sun.star.container.XIndexAccess.class, entries)
                                .getCount());
                assertFalse(FunctionIndex.in(Uno.as(XSheetCondition.class, Uno.property(cell, "Validation"))
                        .getFormula1()));
                return true;
            });
            String page = SharingWords.PAGE.english();
            int name = sheet.rowOf("thick", page + ".A1");
            assertEquals(
                    "=WRAP.LAYER($Sheet1.$A$1;0.04)",
                    sheet.at(page + ".C" + name).text());
            assertEquals(
                    SharingWords.FORMAT.english(),
                    sheet.at(page + ".B" + (name + 1)).text());
            assertEquals(
                    SharingWords.INPUT_CHECK.english(),
                    sheet.at(page + ".B" + (name + 2)).text());
        }
    }

    /** Author, date and shown state of a note are somebody’s; also on an array formula, and however often a copy is made. */
    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "XLSX"})
    void aNoteOfSomebodysStaysAsItIs(FileFormat format, Office office, @TempDir Path folder) {
        Path copy = folder.resolve("copy." + format.extension());
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("B1", "WRAP.LAYER(20;0.04)").arrayFormula("D1:F20", "WRAP.MATERIALS()");
            office.call("noting", () -> {
                for (int column : new int[] {1, 3}) {
                    CellAddress at = new CellAddress((short) 0, column, 0);
                    Uno.as(XSheetAnnotationsSupplier.class, first(sheet))
                            .getAnnotations()
                            .insertNew(at, "mine");
                    note(sheet, column).setIsVisible(true);
                }
                return true;
            });
            sheet.saveAs(copy, format);
        }
        for (int round = 0; round < 2; round++) {
            try (CalcDocument sheet = office.open(copy)) {
                String before = notes(office, sheet);
                office.call("sharing", () -> ShareCopy.make(sheet.uno()));
                sheet.saveAs(copy, format);
                try (CalcDocument shared = office.open(copy)) {
                    assertTrue(notes(office, shared).contains("mine\n=WRAP.LAYER(20;0.04)"), notes(office, shared));
                    assertEquals(2, office.call("bringing back", () -> BringBack.into(shared.uno())));
                    assertEquals(before, notes(office, shared));
                    shared.saveAs(copy, format);
                }
            }
        }
    }

    @Test
    void noPropertyIsLongerThanStrictReadersTake(Office office) {
        String text = "\"" + "wool ".repeat(100) + "\"";
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", "IF(CHECK.VERSION()=\"\";" + text + ";1)").formula("A2", "WRAP.LAYER(20;0.04)");
            String formula = sheet.formulaAt("A1");
            office.call("sharing", () -> ShareCopy.make(sheet.uno()));
            office.call("looking", () -> {
                XPropertySet all = Uno.as(
                        XPropertySet.class,
                        Uno.as(XDocumentPropertiesSupplier.class, sheet.uno())
                                .getDocumentProperties()
                                .getUserDefinedProperties());
                for (Property property : all.getPropertySetInfo().getProperties()) {
                    String value = String.valueOf(all.getPropertyValue(property.Name));
                    assertTrue(value.length() <= 255, property.Name + " " + value.length());
                }
                return true;
            });
            assertEquals(2, office.call("bringing back", () -> BringBack.into(sheet.uno())));
            assertEquals(formula, sheet.formulaAt("A1"));
        }
    }

    private static String notes(Office office, CalcDocument sheet) {
        return office.call("reading notes", () -> {
            StringBuilder all = new StringBuilder();
            for (int column : new int[] {1, 3}) {
                XSheetAnnotation note = note(sheet, column);
                all.append(Notes.text(first(sheet).getCellByPosition(column, 0)))
                        .append('|')
                        .append(note.getAuthor())
                        .append('|')
                        .append(note.getDate())
                        .append('|')
                        .append(note.getIsVisible())
                        .append('\n');
            }
            return all.toString();
        });
    }

    private static XSheetAnnotation note(CalcDocument sheet, int column) throws com.sun.star.uno.Exception {
        return Uno.as(XSheetAnnotationAnchor.class, first(sheet).getCellByPosition(column, 0))
                .getAnnotation();
    }

    private static XNamedRanges names(CalcDocument sheet) throws com.sun.star.uno.Exception {
        return Uno.as(XNamedRanges.class, Uno.property(sheet.uno(), "NamedRanges"));
    }

    private static XSpreadsheet first(CalcDocument sheet) throws com.sun.star.uno.Exception {
        return Uno.sheets(sheet.uno()).get(0);
    }
}
