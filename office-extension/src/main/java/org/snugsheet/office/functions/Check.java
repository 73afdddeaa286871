package org.snugsheet.office.functions;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.uno.XInterface;
import org.jspecify.annotations.Nullable;
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.UnoTypes;

/** CHECK: words about readings. */
@Family(
        service = "snugsheet.Check",
        implementation = CheckFunctions.class,
        texts = {CheckTexts.class, Texts.class},
        title = "Words about readings")
public interface Check extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(Check.class);

    /**
     * CHECK.READINGS.
     *
     * @param times {@value Texts#TIMES}
     * @param temps {@value Texts#TEMPS}
     * @param surroundings {@value Texts#SURROUNDINGS}
     * @param mark {@value Texts#MARK}
     * @param scale {@value Texts#SCALE}
     * @return the answer described by the text below
     */
    @CellFunction(
            order = 0,
            name = "CHECK.READINGS",
            text =
                    "OK, or in plain words the first trouble with the readings: where it is and what to do. It is the first line of CHECK.ALL. Water that is too hot for pupils, above 43 °C (109 °F), comes first.",
            formula = "ν·ln(1 + t²/ν); t = rᵢ/(s₍ᵢ₎·√(1 − hᵢ))",
            source = Sources.OUTLIERS + "; " + Sources.LAWS + "; " + Sources.SCHOOL_LIMIT,
            example = "CHECK.READINGS({0;5;5};{38;32;26};3)",
            answer = "Row 3 (minute 5): the time 5 is not later than 5 before it. Type the times in rising order.")
    String readings(
            XPropertySet document,
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale);

    /** CHECK.ALL: see its declaration. */
    @CellFunction(
            order = 1,
            name = "CHECK.ALL",
            text =
                    "A table of every trouble with the readings: its row, what is wrong, how sure that is, and what to do. Water that is too hot for pupils, above 43 °C (109 °F), comes first.",
            formula = "ν·ln(1 + t²/ν); t = rᵢ/(s₍ᵢ₎·√(1 − hᵢ))",
            source = Sources.OUTLIERS + "; " + Sources.LAWS + "; " + Sources.SCHOOL_LIMIT,
            example = "CHECK.ALL({0;5;10;15;20;25;30;35};{40;35;30;62;23;20;18;16};8)",
            answer = "Row")
    Object[][] all(
            XPropertySet document,
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale);

    /** CHECK.SHEET: see its declaration. */
    @CellFunction(
            order = 2,
            name = "CHECK.SHEET",
            text =
                    "A table of every trouble of every jar of a whole sheet: the jar, its row, what is wrong, how sure that is, and what to do. What all jars share is said once; a jar without readings is not listed. Water that is too hot for pupils, above 43 °C (109 °F), comes first.",
            formula = "ν·ln(1 + t²/ν); t = rᵢ/(s₍ᵢ₎·√(1 − hᵢ))",
            source = Sources.OUTLIERS + "; " + Sources.LAWS + "; " + Sources.SCHOOL_LIMIT,
            example = "CHECK.SHEET({\"min\";\"bare\"|0;40|5;35|10;31|15;27|20;24};8)",
            answer = "Jar")
    Object[][] sheet(
            XPropertySet document,
            @Argument(CheckTexts.SHEET) Object[][] block,
            @Argument(Texts.SURROUNDINGS_BOTH) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale);

    /** CHECK.FAIR: see its declaration. */
    @CellFunction(
            order = 3,
            name = "CHECK.FAIR",
            text =
                    "A table of what differs between two jars besides their wraps, and by how many per cent each biases the ratio of their rates. Below it, what errors that no reading shows would do to each rate: ± does not contain them.",
            formula =
                    "θ = A·(1 + k·t/4)^(−4); k ∝ A^(1/4); k ∝ V^(−1/3); (Q + P₁)/(Q + P₂); Δk = k(T₁ + ΔT₁ … Tₙ + ΔTₙ) − k(T₁ … Tₙ)",
            source = Sources.LUMPED + "; " + "Lorenz, Ann. Phys. 249 (1881) 582" + "; "
                    + "Chilton & Colburn, Ind. Eng. Chem. 26 (1934) 1183; JCGM 100:2008, 5.1.3",
            example =
                    "CHECK.FAIR({0;5;10;15;20};{38;32;26;22;19};3;{0;5;10;15;20};{38;35;32;29;27};3;200;250;\"open\";\"bare\")",
            answer = "What")
    Object[][] fair(
            XPropertySet document,
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.OTHER_TIMES) Object[][] otherTimes,
            @Argument(Texts.OTHER_TEMPS) Object[][] otherTemps,
            @Argument(CheckTexts.OTHER_SURROUNDINGS) String[][] otherSurroundings,
            @Argument(CheckTexts.FIRST_VOLUME) @Nullable Object volume,
            @Argument(CheckTexts.OTHER_VOLUME) @Nullable Object otherVolume,
            @Argument(CheckTexts.FIRST_LID) @Nullable Object lid,
            @Argument(CheckTexts.OTHER_LID) @Nullable Object otherLid,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale);

    /**
     * CHECK.WRAP.
     *
     * @param thicknesses {@value Texts#THICKNESSES}
     * @param materials {@value Texts#MATERIALS}
     * @param inside {@value Texts#INSIDE}
     * @param outside {@value Texts#OUTSIDE}
     * @param unit {@value Texts#UNIT}
     * @return the answer described by the text below
     */
    @CellFunction(
            order = 4,
            name = "CHECK.WRAP",
            text =
                    "OK, or in plain words what is wrong with the layers of WRAP.FLAT: which layer it is and what to do.",
            formula = "R = Rᵢ + Σ dⱼ/λⱼ + Rₒ",
            source = Sources.FLAT,
            example = "CHECK.WRAP({3;10};{\"wool\";\"fleese\"})",
            answer = "Layer 2: “fleese” is not a material known here. Did you mean “fleece”?")
    String wrap(
            XPropertySet document,
            @Argument(Texts.THICKNESSES) Object[][] thicknesses,
            @Argument(Texts.MATERIALS) Object[][] materials,
            @Argument(Texts.INSIDE) @Nullable Object inside,
            @Argument(Texts.OUTSIDE) @Nullable Object outside,
            @Argument(Texts.UNIT) @Nullable Object unit);

    /**
     * CHECK.VERSION.
     *
     * @return the answer described by the text below
     */
    @CellFunction(
            order = 5,
            name = "CHECK.VERSION",
            text = "The version of Snugsheet that is installed.",
            example = "CHECK.VERSION()",
            answer = "0.1.0")
    String version();
}
