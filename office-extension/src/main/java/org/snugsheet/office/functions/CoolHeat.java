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

/** COOL: the heat that water gives off. */
@Family(
        service = "snugsheet.Cool",
        implementation = CoolFunctions.class,
        texts = {Texts.class},
        title = "Heat")
public interface CoolHeat extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(CoolHeat.class);

    /** COOL.HEAT: see its declaration. */
    @CellFunction(
            order = 0,
            name = "COOL.HEAT",
            text = "The heat in joules that warm water gives off while it cools from one temperature to another.",
            formula = "Q = m·(h(T₁) − h(T₂)) + C·(T₁ − T₂)",
            source = Sources.HEAT,
            example = "COOL.HEAT(200;40;20)",
            answer = "16591.9",
            refused = "COOL.HEAT(200;-5;20)",
            because = "water of -5 °C is ice")
    double heat(
            @Argument(Texts.VOLUME) String[][] volume,
            @Argument(Texts.FROM) String[][] from,
            @Argument(Texts.TO) String[][] to,
            @Argument(Texts.VESSEL) @Nullable Object vessel,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;

    /** COOL.POWER: see its declaration. */
    @CellFunction(
            order = 1,
            name = "COOL.POWER",
            text = "The heat in watts that a jar loses at one moment, from its cooling constant.",
            formula = "P = C·k·(T − Tₛ)",
            source = Sources.LUMPED + "; " + Sources.HEAT,
            example = "COOL.POWER(200;0.02;40;5)",
            answer = "9.676",
            refused = "COOL.POWER(0;0.02;40;5)",
            because = "there is no water")
    double power(
            @Argument(Texts.VOLUME) String[][] volume,
            @Argument(Texts.RATE) String[][] rate,
            @Argument(Texts.TEMP) String[][] temp,
            @Argument(Texts.SURROUNDINGS_NOW) String[][] surroundings,
            @Argument(Texts.VESSEL) @Nullable Object vessel,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;

    /** COOL.MIXED: see its declaration. */
    @CellFunction(
            order = 2,
            name = "COOL.MIXED",
            text = "The temperature at which a jar and its bath end, if no heat is lost to anything else.",
            formula = "Σ Qᵢ(T) = 0",
            source = Sources.MIXING + "; " + Sources.HEAT,
            example = "COOL.MIXED(200;40;800;5)",
            answer = "11.936",
            refused = "COOL.MIXED(200;40;800;-5)",
            because = "a bath of -5 °C is ice")
    double mixed(
            @Argument(Texts.VOLUME) String[][] volume,
            @Argument(Texts.TEMP) String[][] temp,
            @Argument(Texts.BATH_AMOUNT) String[][] bathVolume,
            @Argument(Texts.BATH_TEMP) String[][] bathTemp,
            @Argument(Texts.VESSEL) @Nullable Object vessel,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;
}
