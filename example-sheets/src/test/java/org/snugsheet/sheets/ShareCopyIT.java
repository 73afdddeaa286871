package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XIndexAccess;
import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.XDispatchHelper;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUniqueCellFormatRangesSupplier;
import com.sun.star.table.CellRangeAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.Printing;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.harness.WithoutExtension;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.sheets.WorkedSheets;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.uno.Uno;

/** A copy to share of every worked sheet shows the same in an office that has no extension. */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class ShareCopyIT {

    /** Row and column, as {@link Opened#contents} writes them before what a cell holds. */
    private static final Pattern PLACE = Pattern.compile("(\\d+/\\d+) ");

    static Stream<String> sheets() {
        return WorkedSheets.all().stream().map(WorkedSheet::fileName);
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void aColleagueWithoutTheExtensionSeesTheSame(
            String name, Office office, @WithoutExtension Office plain, BuiltSheets.All built, @TempDir Path folder) {
        Path copy = folder.resolve(name + ".ods");
        List<List<String>> before;
        int paper;
        try (CalcDocument document = office.open(built.named(name).ods())) {
            before = contents(office, document.calculateAll());
            paper = Printing.sheetsOfPaper(office, document);
            dropPromises(office, document, before);
            share(office, document, copy);
        }
        try (CalcDocument document = plain.open(copy)) {
            List<List<String>> after = contents(plain, document.calculateAll());
            // The last page is the one that keeps the formulas.
            assertEquals(before.size() + 1, after.size());
            int more = Printing.sheetsOfPaper(plain, document) - paper;
            assertTrue(more == 1 || more == 2, () -> more + " sheets of paper for the formulas");
            for (int page = 0; page < before.size(); page++) {
                assertEquals(before.get(page), after.get(page), name);
            }
        }
    }

    /** By the menu, inside the office: a copy made from outside takes minutes. */
    private static void share(Office office, CalcDocument document, Path copy) {
        XDispatchHelper helper = office.service("com.sun.star.frame.DispatchHelper", XDispatchHelper.class);
        Object told = office.call("sharing", () -> {
            Object window =
                    Uno.as(XModel.class, document.uno()).getCurrentController().getFrame();
            Object result = helper.executeDispatch(
                    Uno.as(XDispatchProvider.class, window), MenuItem.SHARE.address(), "_self", 0, new PropertyValue[] {
                        Uno.named("Target", copy.toUri().toString()), Uno.named("Quiet", true)
                    });
            return ((DispatchResultEvent) result).Result;
        });
        assertTrue(Files.exists(copy), () -> "told: " + told);
    }

    /** Sentences that promise that results follow are not in a copy, in which they do not. */
    private static void dropPromises(Office office, CalcDocument document, List<List<String>> contents) {
        office.call("looking for promises", () -> {
            List<XSpreadsheet> pages = Opened.pages(document);
            for (int page = 0; page < pages.size(); page++) {
                Set<String> promises = promises(pages.get(page));
                contents.get(page).removeIf(entry -> promises.contains(place(entry)));
            }
            return contents;
        });
    }

    /** Where they are; asked once for all cells that look the same, for a page has thousands of cells. */
    private static Set<String> promises(XSpreadsheet page) throws com.sun.star.uno.Exception {
        Set<String> promises = new HashSet<>();
        XIndexAccess groups =
                Uno.as(XUniqueCellFormatRangesSupplier.class, Opened.used(page)).getUniqueCellFormatRanges();
        int count = groups.getCount();
        for (int i = 0; i < count; i++) {
            Object group = groups.getByIndex(i);
            if (CellStyleName.FOLLOWS.styleName().equals(Opened.property(group, "CellStyle"))) {
                for (CellRangeAddress cells :
                        Uno.as(XSheetCellRanges.class, group).getRangeAddresses()) {
                    for (int row = cells.StartRow; row <= cells.EndRow; row++) {
                        for (int column = cells.StartColumn; column <= cells.EndColumn; column++) {
                            promises.add(row + 1 + "/" + (column + 1));
                        }
                    }
                }
            }
        }
        return promises;
    }

    private static String place(String entry) {
        Matcher place = PLACE.matcher(entry);
        return place.lookingAt() ? place.group(1) : "";
    }

    private static List<List<String>> contents(Office office, CalcDocument document) {
        return office.call("reading all pages", () -> {
            List<List<String>> all = new ArrayList<>();
            for (XSpreadsheet page : Opened.pages(document)) {
                assertEquals("", Opened.failingCells(page));
                all.add(Opened.contents(page));
            }
            return all;
        });
    }
}
