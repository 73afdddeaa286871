package org.snugsheet.office.benchmark;

import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.MethodTypeInfo;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
import org.jspecify.annotations.Nullable;
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;

/** A function with the arguments of COOL.RATE that looks at none of them: what a call costs whatever is done in it. */
@Family(service = Idle.SERVICE, texts = Idle.Texts.class, title = "Doing nothing")
public interface Idle extends XInterface {

    /** The texts of its arguments. */
    final class Texts {
        static final String COLUMN = "Any column.";
        static final String CELLS = "Any cells.";
        static final String ANYTHING = "Anything. Left out: nothing.";

        private Texts() {}
    }

    /** The name that files store. */
    String SERVICE = "snugsheet.benchmark.Idle";

    /**
     * For the office’s bridge. Written by hand, so that this extension needs none of our classes: the office looks for those of all extensions
     * in each of them, and would take what is packed here for ours.
     */
    @SuppressWarnings("MutablePublicArray") // where and as which the bridge looks for it
    TypeInfo[] UNOTYPEINFO = {new MethodTypeInfo("rate", 0, 0)};

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
