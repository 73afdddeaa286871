package org.snugsheet.office.functions.wrap;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.jar.ExpectedCooling;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.UnoTypes;
import org.snugsheet.office.functions.shared.Sources;
import org.snugsheet.office.functions.shared.Texts;
import org.snugsheet.office.words.DocumentLanguage;

/** WRAP: a whole jar, from its layers and the place it stands in. */
@Family(
        service = "snugsheet.Wrap",
        texts = {Texts.class, WrapTexts.class},
        title = "A whole wrapped jar")
public interface WrapJar extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(WrapJar.class);

    /** WRAP.VESSEL. */
    @CellFunction(
            order = 0,
            name = "WRAP.VESSEL",
            text =
                    "The R-value of a whole jar, side, lid and base together with the films on them, for each square meter of the water’s surface.",
            formula = "A/R = Σ Aᵢ/Rᵢ",
            source = "ISO 6946:2017, 6.7.2" + "; " + Sources.ROUND + "; " + Sources.SURFACE,
            example = "WRAP.VESSEL(250;35;{3;10};{\"glass\";\"wool\"};40;5)",
            answer = "0.14789923",
            refused = "WRAP.VESSEL(250;35;{3;10};{\"glass\";\"wool\"};40;40)",
            because = "no heat flows between equal temperatures")
    default double vessel(
            @Argument(WrapTexts.VOLUME_HELD) String[][] volume,
            @Argument(WrapTexts.JAR_RADIUS) String[][] radius,
            @Argument(WrapTexts.LIST_THICKNESSES) String[][] thicknesses,
            @Argument(WrapTexts.LIST_MATERIALS) String[][] materials,
            @Argument(WrapTexts.WARM) String[][] warm,
            @Argument(WrapTexts.COLD) String[][] cold,
            @Argument(WrapTexts.WHERE) @Nullable Object where,
            @Argument(WrapTexts.LID) @Nullable Object lid,
            @Argument(WrapTexts.BASE) @Nullable Object base,
            @Argument(WrapTexts.ROOM) @Nullable Object room,
            @Argument(Texts.UNIT) @Nullable Object unit,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> DesignCells.of(
                        volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, null, scale)
                .flow()
                .resistance()
                .in(Options.resistanceUnit(unit)));
    }

    /** WRAP.FLOW. */
    @CellFunction(
            order = 1,
            name = "WRAP.FLOW",
            text = "The heat in watts that a wrapped jar loses through side, lid and base at these temperatures.",
            formula = "P = Σ Aᵢ·(T − Tₛ)/Rᵢ",
            source = "ISO 6946:2017, 6.7.2" + "; " + Sources.ROUND + "; " + Sources.SURFACE,
            example = "WRAP.FLOW(250;35;{3;10};{\"glass\";\"wool\"};40;5)",
            answer = "5.202134",
            refused = "WRAP.FLOW(250;35;{3;10};{\"glass\";\"wool\"};40;40)",
            because = "no heat flows between equal temperatures")
    default double flow(
            @Argument(WrapTexts.VOLUME_HELD) String[][] volume,
            @Argument(WrapTexts.JAR_RADIUS) String[][] radius,
            @Argument(WrapTexts.LIST_THICKNESSES) String[][] thicknesses,
            @Argument(WrapTexts.LIST_MATERIALS) String[][] materials,
            @Argument(WrapTexts.WARM) String[][] warm,
            @Argument(WrapTexts.COLD) String[][] cold,
            @Argument(WrapTexts.WHERE) @Nullable Object where,
            @Argument(WrapTexts.LID) @Nullable Object lid,
            @Argument(WrapTexts.BASE) @Nullable Object base,
            @Argument(WrapTexts.ROOM) @Nullable Object room,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> DesignCells.of(
                        volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, null, scale)
                .flow()
                .watts());
    }

    /** WRAP.BETWEEN. */
    @CellFunction(
            order = 2,
            name = "WRAP.BETWEEN",
            text =
                    "A table of the way out through the side: each film and layer with its R-value and the temperatures on its inside and outside.",
            formula = "q = (T − Tₛ)/Σ Rⱼ; Tⱼ₊₁ = Tⱼ − q·Rⱼ",
            source = "ISO 7345:2018" + "; " + Sources.ROUND + "; " + Sources.SURFACE,
            example = "WRAP.BETWEEN(250;35;{3;10};{\"glass\";\"wool\"};40;5)",
            answer = "from inside to outside",
            refused = "WRAP.BETWEEN(250;35;{3;10};{\"glass\";\"wool\"};40;40)",
            because = "no heat flows between equal temperatures")
    default Object[][] between(
            XPropertySet document,
            @Argument(WrapTexts.VOLUME_HELD) String[][] volume,
            @Argument(WrapTexts.JAR_RADIUS) String[][] radius,
            @Argument(WrapTexts.LIST_THICKNESSES) String[][] thicknesses,
            @Argument(WrapTexts.LIST_MATERIALS) String[][] materials,
            @Argument(WrapTexts.WARM) String[][] warm,
            @Argument(WrapTexts.COLD) String[][] cold,
            @Argument(WrapTexts.WHERE) @Nullable Object where,
            @Argument(WrapTexts.LID) @Nullable Object lid,
            @Argument(WrapTexts.BASE) @Nullable Object base,
            @Argument(WrapTexts.ROOM) @Nullable Object room,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> BetweenTable.of(
                DesignCells.of(volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, null, scale),
                DocumentLanguage.of(document)));
    }

    /** WRAP.FACE. */
    @CellFunction(
            order = 3,
            name = "WRAP.FACE",
            text = "The temperature on the outside of one layer of a wrapped jar; layer 0 is the jar’s inside.",
            formula = "Tⱼ₊₁ = Tⱼ − q·Rⱼ; q = (T − Tₛ)/Σ Rⱼ",
            source = "ISO 7345:2018" + "; " + Sources.ROUND + "; " + Sources.SURFACE,
            example = "WRAP.FACE(2;250;35;{3;10};{\"glass\";\"wool\"};40;5)",
            answer = "16.135104",
            refused = "WRAP.FACE(3;250;35;{3;10};{\"glass\";\"wool\"};40;5)",
            because = "there is no third layer")
    default double face(
            @Argument(WrapTexts.NUMBER) String[][] number,
            @Argument(WrapTexts.VOLUME_HELD) String[][] volume,
            @Argument(WrapTexts.JAR_RADIUS) String[][] radius,
            @Argument(WrapTexts.LIST_THICKNESSES) String[][] thicknesses,
            @Argument(WrapTexts.LIST_MATERIALS) String[][] materials,
            @Argument(WrapTexts.WARM) String[][] warm,
            @Argument(WrapTexts.COLD) String[][] cold,
            @Argument(WrapTexts.WHERE) @Nullable Object where,
            @Argument(WrapTexts.LID) @Nullable Object lid,
            @Argument(WrapTexts.BASE) @Nullable Object base,
            @Argument(WrapTexts.ROOM) @Nullable Object room,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            DesignCells cells = DesignCells.of(
                    volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, null, scale);
            // The first of the faces is the water itself, the last the place.
            List<Temperature> faces = cells.flow().side().faces();
            double wanted = Cells.number(number);
            int layers = faces.size() - 3;
            if (wanted != Math.rint(wanted) || wanted < 0 || wanted > layers) {
                throw InvalidInputException.of(Problem.NO_SUCH_LAYER, wanted, layers);
            }
            return faces.get((int) wanted + 1).in(cells.scale());
        });
    }

    /** WRAP.EXPECT. */
    @CellFunction(
            order = 4,
            name = "WRAP.EXPECT",
            text =
                    "The cooling constant per minute that a wrapped jar should have on its way to WRAP.END. Ask at the mean temperature of the lesson.",
            formula = "k = G/C; G = Σ Aᵢ/Rᵢ",
            source = Sources.LUMPED + "; " + "ISO 6946:2017, 6.7.2",
            example = "WRAP.EXPECT(250;35;{3;10};{\"glass\";\"wool\"};40;5)",
            answer = "0.00860219",
            refused = "WRAP.EXPECT(250;35;{3;10};{\"glass\";\"wool\"};40;40)",
            because = "no heat flows between equal temperatures")
    default double expect(
            @Argument(WrapTexts.VOLUME_HELD) String[][] volume,
            @Argument(WrapTexts.JAR_RADIUS) String[][] radius,
            @Argument(WrapTexts.LIST_THICKNESSES) String[][] thicknesses,
            @Argument(WrapTexts.LIST_MATERIALS) String[][] materials,
            @Argument(WrapTexts.WARM) String[][] warm,
            @Argument(WrapTexts.COLD) String[][] cold,
            @Argument(WrapTexts.WHERE) @Nullable Object where,
            @Argument(WrapTexts.LID) @Nullable Object lid,
            @Argument(WrapTexts.BASE) @Nullable Object base,
            @Argument(WrapTexts.ROOM) @Nullable Object room,
            @Argument(Texts.VESSEL) @Nullable Object vessel,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            DesignCells cells = DesignCells.of(
                    volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, vessel, scale);
            return ExpectedCooling.of(cells.design(), cells.water(), cells.surroundings())
                    .perMinute();
        });
    }

    /** WRAP.END. */
    @CellFunction(
            order = 5,
            name = "WRAP.END",
            text =
                    "The temperature that a wrapped jar cools toward: that of the place it stands in; in a tub a warmer one, for its lid is in the air of the room. Give it to COOL.RATE as the surroundings.",
            formula = "Tₑ = Σ Gᵢ·Tᵢ/Σ Gᵢ; Gᵢ = Aᵢ/Rᵢ",
            source = Sources.SIDE_BY_SIDE + "; " + "ISO 6946:2017, 6.7.2",
            example = "WRAP.END(250;35;{3;10};{\"glass\";\"wool\"};40;5;\"stirred water\")",
            answer = "5.9836148",
            refused = "WRAP.END(250;35;{3;10};{\"glass\";\"wool\"};40;40)",
            because = "no heat flows between equal temperatures")
    default double end(
            @Argument(WrapTexts.VOLUME_HELD) String[][] volume,
            @Argument(WrapTexts.JAR_RADIUS) String[][] radius,
            @Argument(WrapTexts.LIST_THICKNESSES) String[][] thicknesses,
            @Argument(WrapTexts.LIST_MATERIALS) String[][] materials,
            @Argument(WrapTexts.WARM) String[][] warm,
            @Argument(WrapTexts.COLD) String[][] cold,
            @Argument(WrapTexts.WHERE) @Nullable Object where,
            @Argument(WrapTexts.LID) @Nullable Object lid,
            @Argument(WrapTexts.BASE) @Nullable Object base,
            @Argument(WrapTexts.ROOM) @Nullable Object room,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            DesignCells cells = DesignCells.of(
                    volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, null, scale);
            return cells.flow().end().in(cells.scale());
        });
    }

    /** WRAP.LEAK. */
    @CellFunction(
            order = 6,
            name = "WRAP.LEAK",
            text =
                    "What goes past a wrap round the side: the heat that lid and base let through for each degree, in W/K.",
            formula = "L = A₂/R₂ + A₃/R₃",
            source = "ISO 6946:2017, 6.7.2" + "; " + Sources.SURFACE + "; " + Sources.DISC,
            example = "WRAP.LEAK(250;35;{3;10};{\"glass\";\"wool\"};40;5;\"stirred water\")",
            answer = "0.06614456",
            refused = "WRAP.LEAK(250;35;{3;10};{\"glass\";\"wool\"};40;40)",
            because = "no heat flows between equal temperatures")
    default double leak(
            @Argument(WrapTexts.VOLUME_HELD) String[][] volume,
            @Argument(WrapTexts.JAR_RADIUS) String[][] radius,
            @Argument(WrapTexts.LIST_THICKNESSES) String[][] thicknesses,
            @Argument(WrapTexts.LIST_MATERIALS) String[][] materials,
            @Argument(WrapTexts.WARM) String[][] warm,
            @Argument(WrapTexts.COLD) String[][] cold,
            @Argument(WrapTexts.WHERE) @Nullable Object where,
            @Argument(WrapTexts.LID) @Nullable Object lid,
            @Argument(WrapTexts.BASE) @Nullable Object base,
            @Argument(WrapTexts.ROOM) @Nullable Object room,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> DesignCells.of(
                        volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, null, scale)
                .flow()
                .ofEnds());
    }
}
