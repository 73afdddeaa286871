package org.snugsheet.office.drawing;

import com.sun.star.frame.XFrame;
import com.sun.star.uno.XComponentContext;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.office.dialog.ErrorDisplay;
import org.snugsheet.office.dialog.Form;
import org.snugsheet.office.dialog.MarkFollowsScale;
import org.snugsheet.office.dialog.TypedValue;
import org.snugsheet.office.words.Language;

/** The window that asks what a selected block does not tell. */
public final class DrawingForm {

    private static final List<Scale> SCALES = List.of(Scale.CELSIUS, Scale.FAHRENHEIT);

    private DrawingForm() {}

    /**
     * What a block does not tell.
     *
     * @param surroundings the temperature around the jars, as typed
     * @param mark degrees from one mark to the next, as typed; empty for the usual one
     * @param scale the scale
     */
    public record FormReader(String surroundings, String mark, Scale scale) {

        /**
         * Where the readings are, with these answers.
         *
         * @param selected the block
         * @return the source of the curves
         * @throws org.snugsheet.engine.InvalidInputException if the surroundings are neither a cell nor a temperature, or the mark is no number
         *     above zero
         */
        public Curves.Source of(SelectedBlock selected) {
            Graduation usual = Graduation.usual(scale);
            Graduation used = mark.isBlank() ? usual : Graduation.of(TypedValue.number(mark), scale);
            return new Curves.Source(
                    selected.times(),
                    selected.rows(),
                    selected.jars(),
                    selected.surroundings(surroundings, scale),
                    String.valueOf(used.graduation().in(scale)),
                    scale);
        }
    }

    /**
     * Asks until the answers can be used or the window is cancelled.
     *
     * @param office the office’s context
     * @param window the window behind it
     * @param language the language of the window
     * @param first the first content of the fields
     * @param errorDisplay tells why answers cannot be used
     * @param selected the block
     * @return the source of the curves; empty if cancelled
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static Optional<Curves.Source> ask(
            XComponentContext office,
            XFrame window,
            Language language,
            FormReader first,
            ErrorDisplay errorDisplay,
            SelectedBlock selected)
            throws com.sun.star.uno.Exception {
        try (Form form = new Form(office, language, DrawingWords.ASK)) {
            form.field("Surroundings", DrawingWords.SURROUNDINGS, first.surroundings())
                    .text(language.words(DrawingWords.EXPLAIN_SURROUNDINGS))
                    .choice(
                            "Scale",
                            DrawingWords.SCALE,
                            SCALES.stream().map(Scale::symbol).toList(),
                            SCALES.indexOf(first.scale()))
                    .field("Mark", DrawingWords.MARK, first.mark())
                    .ready();
            MarkFollowsScale.in(form, "Scale", "Mark", SCALES, language);
            return form.askUntil(
                    window,
                    errorDisplay,
                    () -> new FormReader(
                                    form.textOf("Surroundings"),
                                    form.textOf("Mark"),
                                    SCALES.get(form.choiceOf("Scale")))
                            .of(selected));
        }
    }
}
