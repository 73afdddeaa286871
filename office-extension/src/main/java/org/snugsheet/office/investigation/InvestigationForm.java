package org.snugsheet.office.investigation;

import com.sun.star.awt.TextEvent;
import com.sun.star.awt.XTextComponent;
import com.sun.star.awt.XTextListener;
import com.sun.star.frame.XFrame;
import com.sun.star.lang.EventObject;
import com.sun.star.uno.XComponentContext;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.dialog.ErrorDisplay;
import org.snugsheet.office.dialog.Form;
import org.snugsheet.office.dialog.MarkFollowsScale;
import org.snugsheet.office.dialog.TypedValue;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;
import org.snugsheet.office.words.Language;

/** The window that asks what is planned. */
public final class InvestigationForm {

    private static final System.Logger LOG = System.getLogger(InvestigationForm.class.getName());

    private static final List<Scale> SCALES = List.of(Scale.CELSIUS, Scale.FAHRENHEIT);

    private InvestigationForm() {}

    /**
     * Asks until the answers can be laid out or the window is cancelled.
     *
     * @param office the office’s context
     * @param window the window behind it
     * @param language the language of the window
     * @param usual the scale that is usual where the document is from
     * @param errorDisplay tells why answers cannot be laid out
     * @return the plan; empty if cancelled
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static Optional<Investigation> ask(
            XComponentContext office, XFrame window, Language language, Scale usual, ErrorDisplay errorDisplay)
            throws com.sun.star.uno.Exception {
        String wraps = language.words(InvestigationWords.SOME_MATERIALS);
        try (Form form = new Form(office, language, InvestigationWords.ASK)) {
            form.field(
                            "Jars",
                            InvestigationWords.JARS,
                            String.valueOf(wraps.lines().count()))
                    .field("Materials", InvestigationWords.MATERIALS, wraps)
                    .field("Minutes", InvestigationWords.MINUTES, String.valueOf(Investigation.USUAL_MINUTES))
                    .field("Interval", InvestigationWords.INTERVAL, usualInterval(Investigation.USUAL_MINUTES))
                    .choice(
                            "Scale",
                            InvestigationWords.SCALE,
                            SCALES.stream().map(Scale::symbol).toList(),
                            SCALES.indexOf(usual))
                    .field("Mark", InvestigationWords.MARK, TypedValue.usualMark(usual, language))
                    .field("Surroundings", InvestigationWords.SURROUNDINGS, "")
                    .text(language.words(InvestigationWords.HELP))
                    .ready();
            MarkFollowsScale.in(form, "Scale", "Mark", SCALES, language);
            Uno.as(XTextComponent.class, form.control("Minutes")).addTextListener(new IntervalFollowsMinutes(form));
            return form.askUntil(window, errorDisplay, () -> answers(form));
        }
    }

    private static Investigation answers(Form form) throws com.sun.star.uno.Exception {
        return new Investigation(
                TypedValue.whole(form.textOf("Jars")),
                Investigation.materials(form.textOf("Materials")),
                TypedValue.whole(form.textOf("Minutes")),
                Optional.of(TypedValue.whole(form.textOf("Interval"))),
                SCALES.get(form.choiceOf("Scale")),
                TypedValue.number(form.textOf("Mark")),
                form.textOf("Surroundings").strip());
    }

    private static String usualInterval(int minutes) {
        return String.valueOf(Investigation.usualInterval(minutes));
    }

    /** A change of the time to read offers another interval, unless one was typed. */
    private static final class IntervalFollowsMinutes implements XTextListener {

        private final Form form;
        private String offered = usualInterval(Investigation.USUAL_MINUTES);

        IntervalFollowsMinutes(Form form) {
            this.form = form;
        }

        @Override
        public void textChanged(TextEvent typed) {
            try {
                if (form.textOf("Interval").equals(offered)) {
                    offered = usualInterval(TypedValue.whole(form.textOf("Minutes")));
                    form.write("Interval", offered);
                }
            } catch (DeclinedException unfinished) {
                // Half a number is no time yet.
            } catch (com.sun.star.uno.Exception gone) {
                // The field is the office’s: nothing may be thrown into it, and the interval can still be typed.
                LOG.log(System.Logger.Level.WARNING, "The usual interval was not offered", gone);
            }
        }

        @Override
        public void disposing(EventObject source) {
            // Nothing is kept.
        }
    }
}
