package org.snugsheet.office.functions.check;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.uno.XInterface;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.fairness.FairTest;
import org.snugsheet.engine.fairness.UnseenError;
import org.snugsheet.engine.jar.Lid;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.Block;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.UnoTypes;
import org.snugsheet.office.functions.shared.JarCells;
import org.snugsheet.office.functions.shared.LayerCells;
import org.snugsheet.office.functions.shared.Sources;
import org.snugsheet.office.functions.shared.Texts;
import org.snugsheet.office.words.DocumentLanguage;
import org.snugsheet.office.words.Language;

/** CHECK: words about readings. */
@Family(
        service = "snugsheet.Check",
        texts = {CheckTexts.class, Texts.class},
        title = "Words about readings")
public interface Check extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(Check.class);

    /** CHECK.READINGS. */
    @CellFunction(
            order = 0,
            name = "CHECK.READINGS",
            text =
                    "OK, or in plain words the first trouble with the readings: where it is and what to do. It is the first line of CHECK.ALL. Water that is too hot for pupils, above 43 °C (109 °F), comes first.",
            formula = "ν·ln(1 + t²/ν); t = rᵢ/(s₍ᵢ₎·√(1 − hᵢ))",
            source = Sources.OUTLIERS + "; " + Sources.LAWS + "; " + Sources.SCHOOL_LIMIT,
            example = "CHECK.READINGS({0;5;5};{38;32;26};3)",
            answer = "Row 3 (minute 5): the time 5 is not later than 5 before it. Type the times in rising order.")
    default String readings(
            XPropertySet document,
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale) {
        Language language = DocumentLanguage.of(document);
        return Answer.inWords(
                language,
                () -> JarCells.of(times, temps, surroundings, mark, scale).summary().findings().stream()
                        .findFirst()
                        .map(slip -> language.say(slip.finding()))
                        .orElse(Answer.OK));
    }

    /** CHECK.ALL. */
    @CellFunction(
            order = 1,
            name = "CHECK.ALL",
            text =
                    "A table of every trouble with the readings: its row, what is wrong, how sure that is, and what to do. Water that is too hot for pupils, above 43 °C (109 °F), comes first.",
            formula = "ν·ln(1 + t²/ν); t = rᵢ/(s₍ᵢ₎·√(1 − hᵢ))",
            source = Sources.OUTLIERS + "; " + Sources.LAWS + "; " + Sources.SCHOOL_LIMIT,
            example = "CHECK.ALL({0;5;10;15;20;25;30;35};{40;35;30;62;23;20;18;16};8)",
            answer = "Row")
    default Object[][] all(
            XPropertySet document,
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale) {
        Language language = DocumentLanguage.of(document);
        try {
            return ProblemTable.ofJar(
                    JarCells.of(times, temps, surroundings, mark, scale)
                            .summary()
                            .findings(),
                    language);
        } catch (InvalidInputException refusal) {
            return ProblemTable.refusedJar(refusal, language);
        }
    }

    /** CHECK.SHEET. */
    @CellFunction(
            order = 2,
            name = "CHECK.SHEET",
            text =
                    "A table of every trouble of every jar of a whole sheet: the jar, its row, what is wrong, how sure that is, and what to do. What all jars share is said once; a jar without readings is not listed. Water that is too hot for pupils, above 43 °C (109 °F), comes first.",
            formula = "ν·ln(1 + t²/ν); t = rᵢ/(s₍ᵢ₎·√(1 − hᵢ))",
            source = Sources.OUTLIERS + "; " + Sources.LAWS + "; " + Sources.SCHOOL_LIMIT,
            example = "CHECK.SHEET({\"min\";\"bare\"|0;40|5;35|10;31|15;27|20;24};8)",
            answer = "Jar")
    default Object[][] sheet(
            XPropertySet document,
            @Argument(Texts.SHEET) Object[][] block,
            @Argument(Texts.SURROUNDINGS_BOTH) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale) {
        Language language = DocumentLanguage.of(document);
        try {
            Cells.requireFew(block);
            Block sheet = Block.of(Cells.rows(block));
            return ProblemTable.ofSheet(JarCells.summaries(sheet, surroundings, mark, scale, language), language);
        } catch (InvalidInputException refusal) {
            return ProblemTable.refusedSheet(refusal, language);
        }
    }

    /** CHECK.FAIR. */
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
    default Object[][] fair(
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
            @Argument(Texts.SCALE) @Nullable Object scale) {
        try {
            JarCells firstJar = JarCells.of(times, temps, surroundings, mark, scale);
            CoolingFit first = firstJar.fit();
            CoolingFit second = JarCells.of(otherTimes, otherTemps, otherSurroundings, mark, scale)
                    .fit();
            List<Volume> volumes = Options.volumes(volume, otherVolume);
            List<Lid> lids = Options.lids(lid, otherLid);
            return FairTable.of(
                    FairTest.of(first, second, volumes, lids),
                    FairTest.percentIfOneStoodOpen(first, second, volumes),
                    lids,
                    UnseenError.of(
                            first, second, firstJar.mark(), first.readings().scale()),
                    first.readings().scale(),
                    DocumentLanguage.of(document));
        } catch (InvalidInputException refusal) {
            return FairTable.refused(refusal, DocumentLanguage.of(document));
        }
    }

    /** CHECK.WRAP. */
    @CellFunction(
            order = 4,
            name = "CHECK.WRAP",
            text =
                    "OK, or in plain words what is wrong with the layers of WRAP.FLAT: which layer it is and what to do.",
            formula = "R = Rᵢ + Σ dⱼ/λⱼ + Rₒ",
            source = Sources.FLAT,
            example = "CHECK.WRAP({3;10};{\"wool\";\"fleese\"})",
            answer = "Layer 2: “fleese” is not a material known here. Did you mean “fleece”?")
    default String wrap(
            XPropertySet document,
            @Argument(Texts.THICKNESSES) Object[][] thicknesses,
            @Argument(Texts.MATERIALS) Object[][] materials,
            @Argument(Texts.INSIDE) @Nullable Object inside,
            @Argument(Texts.OUTSIDE) @Nullable Object outside,
            @Argument(Texts.UNIT) @Nullable Object unit) {
        return Answer.inWords(DocumentLanguage.of(document), () -> {
            LayerCells.flat(thicknesses, materials, inside, outside, unit)
                    .resistance()
                    .in(Options.resistanceUnit(unit));
            return Answer.OK;
        });
    }

    /** CHECK.VERSION. */
    @CellFunction(
            order = 5,
            name = "CHECK.VERSION",
            text = "The version of Snugsheet that is installed.",
            example = "CHECK.VERSION()",
            answer = "0.1.0")
    default String version() {
        return Version.INSTALLED;
    }
}
