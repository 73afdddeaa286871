package org.snugsheet.office.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XModel;
import com.sun.star.frame.XStorable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.uno.DocumentFile;
import org.snugsheet.office.uno.Uno;

/** A document that asks for a password before it is changed: everybody may read it and its copy, and the copy asks for the same one. */
@ExtendWith(SharedOffice.class)
class ModifyPasswordIT {

    /** For .xlsx by the legacy hash of ECMA-376, part 1, 18.2.12, fileSharing; it has sixteen bits, here by its first ones. */
    private static final int OF_XLSX = 0xCBEB;

    @ParameterizedTest
    @CsvSource({"ods, settings.xml, ModifyPasswordInfo", "xlsx, xl/workbook.xml, fileSharing"})
    void theCopyAsksForTheSamePassword(String ending, String part, String mark, Office office, @TempDir Path folder)
            throws IOException {
        Path file = folder.resolve("original." + ending);
        Path copy = folder.resolve("copy." + ending);
        String filter = ending.equals("ods") ? "calc8" : "Calc MS Excel 2007 XML";
        Object fingerprint = ending.equals("ods") ? fingerprint() : Integer.valueOf(OF_XLSX);
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", "WRAP.LAYER(20;0.04)");
            office.call("saving with a password before changes", () -> {
                Uno.as(XStorable.class, Uno.as(XModel.class, sheet.uno()))
                        .storeToURL(DocumentFile.address(file), new PropertyValue[] {
                            Uno.named("FilterName", filter), Uno.named("ModifyPasswordInfo", fingerprint)
                        });
                return true;
            });
        }
        assertTrue(part(file, part).contains(mark), "the original asks");
        try (CalcDocument opened = office.open(file)) {
            assertFalse(DocumentFile.hasPassword(opened.uno()), "nothing is asked for to read it");
            String other = ending.equals("ods") ? "xlsx" : "ods";
            String told = Menu.choose(
                    office,
                    opened,
                    MenuItem.SHARE,
                    Uno.named("Target", DocumentFile.address(folder.resolve("copy." + other))),
                    Menu.QUIET);
            assertEquals(
                    "This document asks for a password before changes. A copy that ends with ." + other
                            + " could not ask for it. Choose ." + ending + ".",
                    told);
            assertEquals(
                    1,
                    office.call(
                            "sharing",
                            () -> CopyFile.of(
                                    office.uno(),
                                    opened.uno(),
                                    DocumentFile.address(copy),
                                    Optional.empty(),
                                    Progress.UNSEEN)));
        }
        assertTrue(part(copy, part).contains(mark), "the copy asks");
        assertEquals(mark(part(file, part), mark), mark(part(copy, part), mark));
        try (CalcDocument sheet = office.open(copy)) {
            assertEquals(0.5, sheet.at("A1").number());
        }
    }

    /** As the office makes it of a password: PBKDF2 with a salt. */
    private static PropertyValue[] fingerprint() {
        return new PropertyValue[] {
            Uno.named("algorithm-name", "PBKDF2"),
            Uno.named("salt", new byte[] {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16}),
            Uno.named("iteration-count", 100000),
            Uno.named("hash", new byte[] {16, 15, 14, 13, 12, 11, 10, 9, 8, 7, 6, 5, 4, 3, 2, 1})
        };
    }

    private static String mark(String xml, String mark) {
        int from = xml.indexOf(mark);
        // Up to the end of the element, or of the last part of the setting.
        int end = mark.equals("fileSharing")
                ? xml.indexOf('>', from)
                : xml.indexOf("</config:config-item>", xml.indexOf("config:name=\"hash\"", from));
        return xml.substring(from, end);
    }

    private static String part(Path file, String name) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            return new String(zip.getInputStream(zip.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
