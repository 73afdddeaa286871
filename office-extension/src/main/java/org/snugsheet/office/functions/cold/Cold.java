package org.snugsheet.office.functions.cold;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.clothing.Activity;
import org.snugsheet.engine.clothing.Covering;
import org.snugsheet.engine.clothing.Garments;
import org.snugsheet.engine.clothing.Outdoors;
import org.snugsheet.engine.clothing.RequiredClothing;
import org.snugsheet.engine.insulation.Figure;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Speed;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.winter.WindChill;
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

/** COLD: winter weather, clothing and animal coverings. */
@Family(
        service = "snugsheet.Cold",
        texts = {ColdTexts.class, Texts.class},
        title = "Winter weather, clothing and animal coverings")
public interface Cold extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(Cold.class);

    /** COLD.WINDCHILL. */
    @CellFunction(
            order = 0,
            name = "COLD.WINDCHILL",
            text =
                    "The wind chill: how cold the wind makes it feel on an adult’s bare face, by the North American index of 2001. Children cool faster: see COLD.FROSTBITE.",
            formula =
                    "13.12 + 0.6215·T − 11.37·V^0.16 + 0.3965·T·V^0.16 (°C, km/h); 35.74 + 0.6215·T − 35.75·V^0.16 + 0.4275·T·V^0.16 (°F, mph)",
            source = "US National Weather Service & Environment Canada, 2001",
            example = "COLD.WINDCHILL(-10;30)",
            answer = "-19.52",
            refused = "COLD.WINDCHILL(15;30)",
            because = "the index is for air up to 10 °C")
    default double windChill(
            @Argument(ColdTexts.TEMP) String[][] temp,
            @Argument(ColdTexts.WIND) String[][] wind,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            return WindChill.of(Cells.temperature(temp, s), speed(Cells.number(wind), s), s);
        });
    }

    /** COLD.FROSTBITE. */
    @CellFunction(
            order = 1,
            name = "COLD.FROSTBITE",
            text =
                    "What the cold means for children at school, in words: 15 °F (-9 °C) of wind chill and colder is very cold, from 0 °F (-18 °C) on there is a risk of frostbite, from -27 °C (-16 °F) on they stay indoors; and in how many minutes bare skin can freeze.",
            formula = "13.12 + 0.6215·T − 11.37·V^0.16 + 0.3965·T·V^0.16 (°C, km/h)",
            source =
                    "Child Care Weather Watch (Healthy Child Care Iowa): hdfs.missouri.edu/cdl/child-care-weather-watch"
                            + "; " + "Canadian Paediatric Society: caringforkids.cps.ca" + "; "
                            + "Environment Canada, 2001: almanac.com/content/windchill-chart-canada",
            example = "COLD.FROSTBITE(-20;30)",
            answer =
                    "Too cold for children: it feels like -33 °C. Stay indoors: from -27 °C (-16 °F) on bare skin begins to freeze. Bare skin can freeze in 10 to 30 minutes, a child’s sooner. Your school’s rules for outdoor play come first.",
            refused = "COLD.FROSTBITE(\"cold\";30)",
            because = "that is not a temperature")
    default String frostbite(
            XPropertySet document,
            @Argument(ColdTexts.TEMP) String[][] temp,
            @Argument(ColdTexts.WIND) String[][] wind,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            return FrostbiteWords.of(
                    Cells.temperature(temp, s), speed(Cells.number(wind), s), s, DocumentLanguage.of(document));
        });
    }

    /** COLD.GARMENT. */
    @CellFunction(
            order = 2,
            name = "COLD.GARMENT",
            text = "What a garment adds to the clothing of an adult, in clo, as published tables give it.",
            source = "see COLD.GARMENTS",
            example = "COLD.GARMENT(\"T-shirt\")",
            answer = "0.08",
            refused = "COLD.GARMENT(\"cape of leaves\")",
            because = "no such garment is known")
    default double garment(
            @Argument(ColdTexts.GARMENT) String[][] name, @Argument(ColdTexts.UNIT) @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> Garments.find(Cells.text(name)).insulation().in(clothingUnit(unit)));
    }

    /** COLD.GARMENTS. */
    @CellFunction(
            order = 3,
            name = "COLD.GARMENTS",
            text = "A table of all garments known here, with their clo and the source.",
            example = "COLD.GARMENTS()",
            answer = "garment")
    default Object[][] garments(XPropertySet document) {
        return GarmentsTable.all(DocumentLanguage.of(document));
    }

    /** COLD.OUTFIT. */
    @CellFunction(
            order = 4,
            name = "COLD.OUTFIT",
            text =
                    "What a whole outfit keeps in, in clo: its garments added up, as ASHRAE Standard 55 does. It is for adults: children lose heat faster.",
            formula = "Icl = ΣIclu",
            source = Sources.OUTFIT,
            example = "COLD.OUTFIT({\"T-shirt\";\"thick trousers\";\"boots\"})",
            answer = "0.42",
            refused = "COLD.OUTFIT({\"T-shirt\";\"cape of leaves\"})",
            because = "no garment of the second name is known")
    default double outfit(
            @Argument(ColdTexts.GARMENTS) Object[][] names, @Argument(ColdTexts.UNIT) @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> OutfitCells.of(names).insulation().in(clothingUnit(unit)));
    }

    /** COLD.NEEDED. */
    @CellFunction(
            order = 5,
            name = "COLD.NEEDED",
            text =
                    "The clothing an adult needs to stay warm, in clo as COLD.OUTFIT counts it in still air, by the heat balance of ISO 11079, for air from -50 °C to 10 °C and winds up to 64 km/h (40 mph). Above 5 clo, more than clothing can give, there is no answer. Children lose heat faster: dress them warmer and go in sooner.",
            formula = "I = (T_sk − T_cl)/(M − C_r − E_r − E)",
            source = Sources.CLOTHING_NEEDED,
            example = "COLD.NEEDED(-5;\"walking\")",
            answer = "1.76848428",
            refused = "COLD.NEEDED(25;\"walking\")",
            because = "it is for air up to 10 °C")
    default double needed(
            @Argument(ColdTexts.TEMP) String[][] temp,
            @Argument(ColdTexts.ACTIVITY) String[][] activity,
            @Argument(ColdTexts.WIND_OPTION) @Nullable Object wind,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(
                () -> required(temp, activity, wind, scale).wearableOutfit().in(Unit.CLO));
    }

    /** COLD.NEEDED.WORN. */
    @CellFunction(
            order = 6,
            name = "COLD.NEEDED.WORN",
            text =
                    "The insulation that an adult’s clothing must have while worn, in clo: IREQ, neutral, of ISO 11079. COLD.NEEDED counts in what wind and walking take from an outfit. Children lose heat faster.",
            formula = "I = (T_sk − T_cl)/(M − C_r − E_r − E)",
            source = Sources.CLOTHING_NEEDED,
            example = "COLD.NEEDED.WORN(-20;115;7.2)",
            answer = "3.3563",
            refused = "COLD.NEEDED.WORN(25;\"walking\")",
            because = "it is for air up to 10 °C")
    default double neededWorn(
            @Argument(ColdTexts.TEMP) String[][] temp,
            @Argument(ColdTexts.ACTIVITY) String[][] activity,
            @Argument(ColdTexts.WIND_OPTION) @Nullable Object wind,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> required(temp, activity, wind, scale).worn().in(Unit.CLO));
    }

    /** COLD.ANIMAL. */
    @CellFunction(
            order = 7,
            name = "COLD.ANIMAL",
            text =
                    "The R-value of an animal’s fur, wool, down, feathers or blubber: its thickness divided by its conductivity.",
            formula = "R = d/λ",
            source = Sources.FLAT + "; " + "see COLD.COVERINGS",
            example = "COLD.ANIMAL(\"fur\";50)",
            answer = "1.28205128",
            refused = "COLD.ANIMAL(\"scales\";50)",
            because = "scales keep no animal warm")
    default double animal(
            @Argument(ColdTexts.COVERING) String[][] covering,
            @Argument(ColdTexts.THICKNESS) String[][] thickness,
            @Argument(ColdTexts.WHICH) @Nullable Object which,
            @Argument(Texts.UNIT) @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Covering found = Covering.find(Cells.text(covering));
            Length thick = Length.of(Cells.number(thickness), Unit.MILLIMETER);
            Figure figure = Options.words(which).map(Figure::parse).orElse(Figure.TYPICAL);
            return found.resistance(thick, figure).in(Options.resistanceUnit(unit));
        });
    }

    /** COLD.COVERINGS. */
    @CellFunction(
            order = 8,
            name = "COLD.COVERINGS",
            text =
                    "A table of animal coverings with lowest, typical and highest conductivity in W/(m·K), and the source.",
            formula = "min λᵢ ≤ median λᵢ ≤ max λᵢ",
            example = "COLD.COVERINGS()",
            answer = "covering")
    default Object[][] coverings(XPropertySet document) {
        return CoveringsTable.all(DocumentLanguage.of(document));
    }

    private static RequiredClothing required(
            String[][] temp, String[][] activity, @Nullable Object wind, @Nullable Object scale) {
        Scale s = Options.scale(scale);
        Entry does = Cells.single(activity);
        Activity effort = does instanceof Entry.Text text ? Activity.parse(text.text()) : Activity.of(does.asNumber(1));
        Speed moving = speed(Options.number(wind).orElse(0.0), s);
        return RequiredClothing.of(Outdoors.of(Cells.temperature(temp, s), moving), effort);
    }

    private static Speed speed(double value, Scale scale) {
        return Speed.of(value, scale == Scale.FAHRENHEIT ? Unit.MILE_PER_HOUR : Unit.KILOMETER_PER_HOUR);
    }

    private static Unit clothingUnit(@Nullable Object unit) {
        return Options.words(unit).isPresent() ? Options.resistanceUnit(unit) : Unit.CLO;
    }
}
