package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;

/** A document as it would be saved: all that is on its sheets, charts included, to be compared with what it was before. */
public final class Written {

    private Written() {}

    /**
     * Everything on the sheets, line by line, with the automatic styles that it uses. Set-ups of pages are left out: the office keeps
     * those that no sheet uses; so is when a chart is told of changes, which is always.
     */
    public static List<String> body(CalcDocument sheet) {
        String all = file(sheet);
        return all.substring(all.indexOf("<office:automatic-styles>"))
                .replaceAll("(?s)<style:page-layout .*?</style:page-layout>", "")
                .replaceAll("(?s)<office:master-styles>.*?</office:master-styles>", "")
                .replaceAll(" draw:notify-on-update-of-ranges=\"[^\"]*\"", "")
                .lines()
                .toList();
    }

    /** That a document is what it was; only the lines that differ are told. */
    public static void assertAgain(List<String> before, CalcDocument sheet) {
        List<String> now = body(sheet);
        assertEquals(
                String.join(
                        "\n",
                        before.stream().filter(line -> !now.contains(line)).toList()),
                String.join(
                        "\n",
                        now.stream().filter(line -> !before.contains(line)).toList()));
        assertEquals(before, now);
    }

    /** The styles that have names. */
    public static String styles(CalcDocument sheet) {
        String all = file(sheet);
        return all.substring(all.indexOf("<office:styles>"), all.indexOf("<office:automatic-styles>"));
    }

    private static String file(CalcDocument sheet) {
        try {
            Path file = Files.createTempFile("written", ".fods");
            try {
                sheet.saveAs(file, FileFormat.FODS);
                return Files.readString(file);
            } finally {
                Files.delete(file);
            }
        } catch (IOException full) {
            throw new IllegalStateException(full);
        }
    }
}
