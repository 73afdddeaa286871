package org.snugsheet.office.functions.cooling;

import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.HeatLoss;
import org.snugsheet.engine.heat.Mixing;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.UnoTypes;
import org.snugsheet.office.functions.shared.Sources;
import org.snugsheet.office.functions.shared.Texts;

/** COOL: the heat that water gives off. */
@Family(
        service = "snugsheet.Cool",
        texts = {Texts.class},
        title = "Heat")
public interface CoolHeat extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(CoolHeat.class);

    /** COOL.HEAT. */
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
    default double heat(
            @Argument(Texts.VOLUME) String[][] volume,
            @Argument(Texts.FROM) String[][] from,
            @Argument(Texts.TO) String[][] to,
            @Argument(Texts.VESSEL) @Nullable Object vessel,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            return water(volume, from, vessel, s).heatGivenOff(Cells.temperature(to, s));
        });
    }

    /** COOL.POWER. */
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
    default double power(
            @Argument(Texts.VOLUME) String[][] volume,
            @Argument(Texts.RATE) String[][] rate,
            @Argument(Texts.TEMP) String[][] temp,
            @Argument(Texts.SURROUNDINGS_NOW) String[][] surroundings,
            @Argument(Texts.VESSEL) @Nullable Object vessel,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            CoolingConstant constant = CoolingConstant.ofPerMinute(Cells.number(rate));
            return HeatLoss.watts(water(volume, temp, vessel, s), constant, Cells.temperature(surroundings, s));
        });
    }

    /** COOL.MIXED. */
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
    default double mixed(
            @Argument(Texts.VOLUME) String[][] volume,
            @Argument(Texts.TEMP) String[][] temp,
            @Argument(Texts.BATH_AMOUNT) String[][] bathVolume,
            @Argument(Texts.BATH_TEMP) String[][] bathTemp,
            @Argument(Texts.VESSEL) @Nullable Object vessel,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            WaterBody bath = WaterBody.of(milliliters(bathVolume), Cells.temperature(bathTemp, s));
            return Mixing.endTemperature(water(volume, temp, vessel, s), bath).in(s);
        });
    }

    private static WaterBody water(String[][] volume, String[][] temp, @Nullable Object vessel, Scale scale) {
        return WaterBody.of(milliliters(volume), Cells.temperature(temp, scale))
                .withVessel(Options.heatCapacity(vessel));
    }

    private static Volume milliliters(String[][] volume) {
        return Volume.of(Cells.number(volume), Unit.MILLILITER);
    }
}
