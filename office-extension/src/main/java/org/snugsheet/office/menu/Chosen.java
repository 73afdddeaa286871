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
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.explaining.Explanation;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Declined;

/** Does what a line of the menu stands for, in one window, and tells the user how it went. */
final class Chosen {

    private final Choice choice;

    private Chosen(Choice choice) {
        this.choice = choice;
    }

    /**
     * Does it.
     *
     * @return what was said, for a macro
     */
    static String run(MenuItem item, Choice choice) {
        return told(choice, new Chosen(choice).outcome(item));
    }

    /**
     * Opens the reference at a function.
     *
     * @return the address, or why that did not work
     */
    static String help(FunctionDeclaration function, Choice choice) {
        return told(choice, new Chosen(choice).tried(() -> Outcome.seen(Reference.openAt(choice, function))));
    }

    private static String told(Choice choice, Outcome outcome) {
        if (!choice.isQuiet()) {
            Windows.show(choice, outcome);
        }
        return outcome.text();
    }

    private Outcome outcome(MenuItem item) {
        return tried(() -> switch (item) {
            case LAY_OUT -> Pages.layOut(choice);
            case DRAW -> Pages.draw(choice);
            case EXPLAIN -> explain();
            case SHARE -> Sharing.share(choice);
            case BRING_BACK -> Sharing.bringBack(choice);
            case REFERENCE -> Outcome.seen(Reference.open(choice));
            case CAUTIONS -> Outcome.said(cautions());
        });
    }

    private Outcome tried(Callable<Outcome> work) {
        try {
            return work.call();
        } catch (Declined declined) {
            return Outcome.said(declined.sentence(choice.language()));
        } catch (Refusal refusal) {
            return Outcome.said(choice.language().say(refusal.finding()));
        } catch (Exception failed) {
            // Whatever the office threw, the user is to hear of it rather than to wonder.
            return Outcome.said(choice.language().say(MenuWords.FAILED, String.valueOf(failed.getMessage())));
        }
    }

    private Outcome explain() throws com.sun.star.uno.Exception {
        XSpreadsheetDocument document = choice.document();
        return Outcome.toRead(Explanation.of(choice.office(), document, chosenCell(), choice.language()));
    }

    private CellAddress chosenCell() {
        Object selection = Uno.as(XSelectionSupplier.class, choice.window().getController())
                .getSelection();
        XSheetCellRanges several = UnoRuntime.queryInterface(XSheetCellRanges.class, selection);
        XCellRangeAddressable one = UnoRuntime.queryInterface(XCellRangeAddressable.class, selection);
        if (several == null && one == null) {
            // A chart, say.
            throw new Declined(MenuWords.NO_CELL);
        }
        CellRangeAddress place = one != null ? one.getRangeAddress() : several.getRangeAddresses()[0];
        return new CellAddress(place.Sheet, place.StartColumn, place.StartRow);
    }

    private String cautions() {
        return Caution.ofEveryLesson().stream().map(choice.language()::words).collect(Collectors.joining("\n\n"));
    }
}
