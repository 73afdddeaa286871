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
        words = {CheckWords.class, Words.class},
        title = "Words about readings")
public interface Check extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(Check.class);

    /**
     * CHECK.READINGS.
     *
     * @param times {@value Words#TIMES}
     * @param temps {@value Words#TEMPS}
     * @param surroundings {@value Words#SURROUNDINGS}
     * @param mark {@value Words#MARK}
     * @param scale {@value Words#SCALE}
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
            @Argument(Words.TIMES) Object[][] times,
            @Argument(Words.TEMPS) Object[][] temps,
            @Argument(Words.SURROUNDINGS) String[][] surroundings,
            @Argument(Words.MARK) @Nullable Object mark,
            @Argument(Words.SCALE) @Nullable Object scale);

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
            @Argument(Words.TIMES) Object[][] times,
            @Argument(Words.TEMPS) Object[][] temps,
            @Argument(Words.SURROUNDINGS) String[][] surroundings,
            @Argument(Words.MARK) @Nullable Object mark,
            @Argument(Words.SCALE) @Nullable Object scale);

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
            @Argument(CheckWords.SHEET) Object[][] block,
            @Argument(Words.SURROUNDINGS_BOTH) String[][] surroundings,
            @Argument(Words.MARK) @Nullable Object mark,
            @Argument(Words.SCALE) @Nullable Object scale);

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
            @Argument(Words.TIMES) Object[][] times,
            @Argument(Words.TEMPS) Object[][] temps,
            @Argument(Words.SURROUNDINGS) String[][] surroundings,
            @Argument(Words.OTHER_TIMES) Object[][] otherTimes,
            @Argument(Words.OTHER_TEMPS) Object[][] otherTemps,
            @Argument(CheckWords.OTHER_SURROUNDINGS) String[][] otherSurroundings,
            @Argument(CheckWords.FIRST_VOLUME) @Nullable Object volume,
            @Argument(CheckWords.OTHER_VOLUME) @Nullable Object otherVolume,
            @Argument(CheckWords.FIRST_LID) @Nullable Object lid,
            @Argument(CheckWords.OTHER_LID) @Nullable Object otherLid,
            @Argument(Words.MARK) @Nullable Object mark,
            @Argument(Words.SCALE) @Nullable Object scale);

    /**
     * CHECK.WRAP.
     *
     * @param thicknesses {@value Words#THICKNESSES}
     * @param materials {@value Words#MATERIALS}
     * @param inside {@value Words#INSIDE}
     * @param outside {@value Words#OUTSIDE}
     * @param unit {@value Words#UNIT}
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
            @Argument(Words.THICKNESSES) Object[][] thicknesses,
            @Argument(Words.MATERIALS) Object[][] materials,
            @Argument(Words.INSIDE) @Nullable Object inside,
            @Argument(Words.OUTSIDE) @Nullable Object outside,
            @Argument(Words.UNIT) @Nullable Object unit);

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
