package org.snugsheet.office.menu;

import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.view.XSelectionSupplier;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.explaining.Explanation;
import org.snugsheet.office.explaining.WholeTable;
import org.snugsheet.office.explaining.WholeTableWords;
import org.snugsheet.office.uno.DocumentFile;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;
import org.snugsheet.office.words.Language;

/** Carries out a line of the menu, in one window, and tells the user how it went. */
final class MenuCommands {

    private static final System.Logger LOG = System.getLogger(MenuCommands.class.getName());

    private final MenuInvocation choice;

    private MenuCommands(MenuInvocation choice) {
        this.choice = choice;
    }

    /**
     * Does it.
     *
     * @return what was said, for a macro
     */
    static String run(MenuItem item, MenuInvocation choice) {
        return told(choice, new MenuCommands(choice).outcome(item));
    }

    /**
     * Opens the reference at a function.
     *
     * @return the address, or why that did not work
     */
    static String help(FunctionDeclaration function, MenuInvocation choice) {
        return told(
                choice,
                new MenuCommands(choice)
                        .tried(FunctionHelp.ADDRESS, () -> Outcome.seen(Reference.openAt(choice, function))));
    }

    /**
     * Opens a worked sheet.
     *
     * @return its line, or why that did not work
     */
    static String open(String sheet, MenuInvocation choice) {
        return told(
                choice, new MenuCommands(choice).tried(SheetLine.ADDRESS + sheet, () -> SheetLine.open(choice, sheet)));
    }

    private static String told(MenuInvocation choice, Outcome outcome) {
        if (!choice.isQuiet()) {
            Windows.show(choice, outcome);
        }
        return outcome.text();
    }

    private Outcome outcome(MenuItem item) {
        return tried(item.address(), () -> switch (item) {
            case BOOK -> BookLine.open(choice);
            case DRAW -> Pages.draw(choice);
            case EXPLAIN -> explain();
            case TABLE -> table();
            case SHARE -> Sharing.share(choice);
            case BRING_BACK -> Sharing.bringBack(choice);
            case REFERENCE -> reference();
            case CAUTIONS -> Outcome.said(cautions());
        });
    }

    private Outcome tried(String address, Callable<Outcome> work) {
        try {
            return work.call();
        } catch (DeclinedException declined) {
            return Outcome.said(declined.sentence(choice.language()));
        } catch (InvalidInputException refusal) {
            return Outcome.said(choice.language().say(refusal.finding()));
        } catch (Exception failed) {
            // The user hears in plain words that the office failed; somebody who is asked for help finds the cause in
            // the log.
            LOG.log(System.Logger.Level.ERROR, "Failed: " + address, failed);
            return Outcome.said(choice.language().words(MenuWords.FAILED));
        }
    }

    private Outcome explain() throws com.sun.star.uno.Exception {
        XSpreadsheetDocument document = choice.document();
        return Outcome.toRead(
                MenuWords.EXPLAINED, Explanation.of(choice.office(), document, chosenCell(), choice.language()));
    }

    private Outcome table() throws com.sun.star.uno.Exception {
        XSpreadsheetDocument document = choice.document();
        CellAddress at = chosenCell();
        String step = choice.language().words(MenuItem.TABLE).replace("~", "");
        CellRangeAddress cells = WholeTable.show(choice.office(), document, at, step);
        Uno.as(XSelectionSupplier.class, choice.window().getController())
                .select(Uno.sheets(document)
                        .get(cells.Sheet)
                        .getCellRangeByPosition(cells.StartColumn, cells.StartRow, cells.EndColumn, cells.EndRow));
        return Outcome.seen(choice.language().say(WholeTableWords.SHOWN, WholeTable.written(cells)));
    }

    private CellAddress chosenCell() {
        Object selection = Uno.as(XSelectionSupplier.class, choice.window().getController())
                .getSelection();
        XSheetCellRanges several = UnoRuntime.queryInterface(XSheetCellRanges.class, selection);
        XCellRangeAddressable one = UnoRuntime.queryInterface(XCellRangeAddressable.class, selection);
        if (several == null && one == null) {
            // A chart, say.
            throw new DeclinedException(MenuWords.NO_CELL);
        }
        CellRangeAddress place = one != null ? one.getRangeAddress() : several.getRangeAddresses()[0];
        return new CellAddress(place.Sheet, place.StartColumn, place.StartRow);
    }

    /** Whether a browser answers cannot be seen from here, so its place is told. */
    private Outcome reference() throws com.sun.star.uno.Exception {
        String address = Reference.open(choice);
        return choice.isQuiet()
                ? Outcome.seen(address)
                : Outcome.said(choice.language().say(MenuWords.REFERENCE_OPENED, DocumentFile.written(address)));
    }

    private String cautions() {
        Language language = choice.language();
        return Stream.concat(
                        Stream.of(StartLimit.in(language)),
                        Caution.ofEveryLesson().stream().map(language::words))
                .collect(Collectors.joining("\n\n"));
    }
}
