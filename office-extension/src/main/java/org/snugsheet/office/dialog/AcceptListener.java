package org.snugsheet.office.dialog;

import com.sun.star.awt.ActionEvent;
import com.sun.star.awt.XActionListener;
import com.sun.star.awt.XControl;
import com.sun.star.awt.XDialog;
import com.sun.star.lang.EventObject;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;
import org.snugsheet.office.words.Language;

/**
 * Reads the answers when a window is accepted. The window closes once they go together; until then it stays, with the message
 * what is wrong in front of it.
 *
 * @param <T> what the answers are
 */
final class AcceptListener<T> implements XActionListener {

    private final Object dialog;
    private final Language language;
    private final ErrorDisplay errorDisplay;
    private final FormReader<T> answers;
    private @Nullable T given;
    private @Nullable Exception failed;

    AcceptListener(Object dialog, Language language, ErrorDisplay errorDisplay, FormReader<T> answers) {
        this.dialog = dialog;
        this.language = language;
        this.errorDisplay = errorDisplay;
        this.answers = answers;
    }

    @Override
    public void actionPerformed(ActionEvent pressed) {
        try {
            given = answers.read();
            end();
        } catch (DeclinedException declined) {
            tell(declined.sentence(language));
        } catch (InvalidInputException refusal) {
            tell(language.say(refusal.finding()));
        } catch (com.sun.star.uno.Exception | RuntimeException broken) {
            giveUp(broken);
        }
    }

    /** The answers; empty if the window was closed without any. */
    Optional<T> answered() throws com.sun.star.uno.Exception {
        if (failed instanceof com.sun.star.uno.Exception broken) {
            throw broken;
        }
        if (failed instanceof RuntimeException broken) {
            throw broken;
        }
        return Optional.ofNullable(given);
    }

    private void tell(String sentence) {
        try {
            errorDisplay.tell(Uno.as(XControl.class, dialog).getPeer(), sentence);
        } catch (com.sun.star.uno.Exception | RuntimeException broken) {
            giveUp(broken);
        }
    }

    /** The caller that opened the window gets the exception; the button is the office’s, which an exception would end. */
    private void giveUp(Exception broken) {
        failed = broken;
        end();
    }

    private void end() {
        Uno.as(XDialog.class, dialog).endExecute();
    }

    @Override
    public void disposing(EventObject source) {
        // Nothing is kept.
    }
}
