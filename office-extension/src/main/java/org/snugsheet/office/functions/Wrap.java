package org.snugsheet.office.functions;

import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
import org.jspecify.annotations.Nullable;
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.UnoTypes;

/** WRAP: layers and R-values. */
@Family(service = "snugsheet.Wrap", implementation = WrapFunctions.class, title = "Layers and R-values")
public interface Wrap extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(Wrap.class);

    /**
     * WRAP.LAYER.
     *
     * @param thickness {@value Words#THICKNESS}
     * @param material {@value Words#MATERIAL}
     * @param unit {@value Words#UNIT}
     * @return the answer described by the text below
     * @throws IllegalArgumentException if refused
     * @throws NoConvergenceException if no curve settles
     */
    @CellFunction(
            order = 0,
            name = "WRAP.LAYER",
            text = "The R-value of one flat layer: thickness divided by conductivity, in m²·K/W or the unit wanted.",
            example = "WRAP.LAYER(20;0.04)",
            answer = "0.5",
            refused = "WRAP.LAYER(-20;0.04)",
            because = "a thickness is more than zero")
    double layer(
            @Argument(Words.THICKNESS) String[][] thickness,
            @Argument(Words.MATERIAL) String[][] material,
            @Argument(Words.UNIT) @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException;

    /**
     * WRAP.FLAT.
     *
     * @param thicknesses {@value Words#THICKNESSES}
     * @param materials {@value Words#MATERIALS}
     * @param inside {@value Words#INSIDE}
     * @param outside {@value Words#OUTSIDE}
     * @param unit {@value Words#UNIT}
     * @return the answer described by the text below
     * @throws IllegalArgumentException if refused
     * @throws NoConvergenceException if no curve settles
     */
    @CellFunction(
            order = 1,
            name = "WRAP.FLAT",
            text =
                    "The R-value of flat layers one behind the other, with their surfaces if given, in m²·K/W or the unit wanted.",
            example = "WRAP.FLAT({20;10};{0.04;0.05};0.13;0.04)",
            answer = "0.87",
            refused = "WRAP.FLAT({20;10};{0.04})",
            because = "a layer without its material")
    double flat(
            @Argument(Words.THICKNESSES) Object[][] thicknesses,
            @Argument(Words.MATERIALS) Object[][] materials,
            @Argument(Words.INSIDE) @Nullable Object inside,
            @Argument(Words.OUTSIDE) @Nullable Object outside,
            @Argument(Words.UNIT) @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException;
}
