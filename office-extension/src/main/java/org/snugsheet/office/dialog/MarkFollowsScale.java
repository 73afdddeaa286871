package org.snugsheet.office.dialog;

import com.sun.star.awt.ItemEvent;
import com.sun.star.awt.XItemListener;
import com.sun.star.awt.XListBox;
import com.sun.star.lang.EventObject;
import java.util.List;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** Choosing another scale offers its usual graduation, which differs from scale to scale. */
public final class MarkFollowsScale implements XItemListener {

    private static final System.Logger LOG = System.getLogger(MarkFollowsScale.class.getName());

    private final Form form;
    private final String mark;
    private final List<Scale> scales;
    private final Language language;

    private MarkFollowsScale(Form form, String mark, List<Scale> scales, Language language) {
        this.form = form;
        this.mark = mark;
        this.scales = List.copyOf(scales);
        this.language = language;
    }

    /**
     * Joins two fields of a form that is ready.
     *
     * @param form the form
     * @param scale the name of the choice of scales
     * @param mark the name of the field with the mark
     * @param scales what can be chosen
     * @param language the language of the window
     */
    public static void in(Form form, String scale, String mark, List<Scale> scales, Language language) {
        Uno.as(XListBox.class, form.control(scale)).addItemListener(new MarkFollowsScale(form, mark, scales, language));
    }

    @Override
    public void itemStateChanged(ItemEvent chosen) {
        try {
            form.write(mark, TypedValue.usualMark(scales.get(chosen.Selected), language));
        } catch (com.sun.star.uno.Exception gone) {
            // The list is the office’s: nothing may be thrown into it, and the mark can still be typed.
            LOG.log(System.Logger.Level.WARNING, "The usual graduation was not offered", gone);
        }
    }

    @Override
    public void disposing(EventObject source) {
        // Nothing is kept.
    }
}
