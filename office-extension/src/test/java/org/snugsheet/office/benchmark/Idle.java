package org.snugsheet.office.benchmark;

import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
import org.jspecify.annotations.Nullable;
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.UnoTypes;

/** A function with the arguments of COOL.RATE that looks at none of them: what a call costs whatever is done in it. */
@Family(service = "snugsheet.benchmark.Idle", texts = Idle.Texts.class, title = "Doing nothing")
public interface Idle extends XInterface {

    /** The texts of its arguments. */
    final class Texts {
        static final String COLUMN = "Any column.";
        static final String CELLS = "Any cells.";
        static final String ANYTHING = "Anything. Left out: nothing.";

        private Texts() {}
    }

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(Idle.class);

    /** IDLE.RATE. */
    @CellFunction(
            order = 0,
            name = "IDLE.RATE",
            text = "Always 0, whatever is given.",
            example = "IDLE.RATE({0;5;10};{40;34;30};10)",
            answer = "0")
    default double rate(
            @Argument(Texts.COLUMN) Object[][] times,
            @Argument(Texts.COLUMN) Object[][] temps,
            @Argument(Texts.CELLS) String[][] surroundings,
            @Argument(Texts.ANYTHING) @Nullable Object mark,
            @Argument(Texts.ANYTHING) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return 0;
    }
}
