package org.snugsheet.office.menu;

import com.sun.star.awt.XWindow2;
import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.frame.XDispatchHelper;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.sheet.XViewPane;
import com.sun.star.view.XSelectionSupplier;
import java.util.Optional;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.dialog.TypedValue;
import org.snugsheet.office.drawing.Curves;
import org.snugsheet.office.drawing.CurvesPage;
import org.snugsheet.office.drawing.DrawingForm;
import org.snugsheet.office.drawing.DrawingWords;
import org.snugsheet.office.drawing.SelectedBlock;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DocumentLanguage;
import org.snugsheet.office.words.DocumentRegion;
import org.snugsheet.office.words.Language;

/** The lines of the menu that add a page to the document. */
final class Pages {

    private final MenuInvocation choice;
    private final XSpreadsheetDocument document;
    private final Scale usual;
    private final Language written;

    private Pages(MenuInvocation choice) throws com.sun.star.uno.Exception {
        this.choice = choice;
        this.document = choice.document();
        this.usual = DocumentRegion.of(document).scale();
        this.written = DocumentLanguage.of(Uno.as(XPropertySet.class, document));
    }

    /** Draws the curves of what is selected. */
    static Outcome draw(MenuInvocation choice) throws com.sun.star.uno.Exception {
        Pages pages = new Pages(choice);
        SelectedBlock selected = SelectedBlock.in(
                pages.document,
                Uno.as(XSelectionSupplier.class, choice.window().getController())
                        .getSelection());
        DrawingForm.FormReader given = pages.answers(selected);
        Optional<Curves.Source> source = choice.isQuiet()
                ? Optional.of(given.of(selected))
                : DrawingForm.ask(
                        choice.office(),
                        choice.window(),
                        choice.language(),
                        given,
                        Windows.errorDisplay(choice),
                        selected);
        if (source.isEmpty()) {
            return Outcome.seen("");
        }
        CurvesPage drawn = CurvesPage.of(choice.office(), pages.document, source.get(), pages.written);
        pages.open(drawn.page());
        Language language = choice.language();
        return pages.added(
                drawn.without().isEmpty()
                        ? language.say(DrawingWords.DRAWN, drawn.page())
                        : language.say(DrawingWords.DRAWN_BUT, drawn.page(), String.join(", ", drawn.without())));
    }

    /** A person may reach for Undo next, and is told that it does not help here; a macro has no use for that. */
    private Outcome added(String sentence) {
        return Outcome.said(
                choice.isQuiet()
                        ? sentence
                        : sentence + "\n\n" + choice.language().words(MenuWords.STAYS_PUT));
    }

    private DrawingForm.FormReader answers(SelectedBlock selected) {
        Scale scale = text("Scale").map(Scale::parse).or(selected::scale).orElse(usual);
        String surroundings = text("Surroundings")
                .or(selected::surroundings)
                .orElseGet(() -> choice.language().words(DrawingWords.FIT));
        return new DrawingForm.FormReader(surroundings, mark(scale), scale);
    }

    private void open(String page) throws com.sun.star.uno.Exception {
        Uno.as(XSpreadsheetView.class, choice.window().getController())
                .setActiveSheet(Uno.as(
                        com.sun.star.sheet.XSpreadsheet.class,
                        document.getSheets().getByName(page)));
    }

    /**
     * As the name box does it: in a cell that is selected instead, Enter goes nowhere, and each reading overwrites the last. In a
     * window that is not shown nobody types, and the office would make its bars for that, which ends an office that has none.
     */
    static void goTo(MenuInvocation choice, String cell) throws com.sun.star.uno.Exception {
        if (!Uno.as(XWindow2.class, choice.window().getContainerWindow()).isVisible()) {
            return;
        }
        Uno.as(XDispatchHelper.class, Uno.service(choice.office(), "com.sun.star.frame.DispatchHelper"))
                .executeDispatch(
                        Uno.as(XDispatchProvider.class, choice.window()), ".uno:GoToCell", "", 0, new PropertyValue[] {
                            Uno.named("ToPoint", cell)
                        });
        // However low that cell is, the cautions at the top are read first; typing takes the view to the cell.
        XViewPane seen = Uno.as(XViewPane.class, choice.window().getController());
        seen.setFirstVisibleRow(0);
        seen.setFirstVisibleColumn(0);
    }

    private Optional<String> text(String name) {
        return choice.argument(name).map(String::valueOf);
    }

    private String mark(Scale scale) {
        return text("Mark").orElseGet(() -> TypedValue.usualMark(scale, choice.language()));
    }
}
