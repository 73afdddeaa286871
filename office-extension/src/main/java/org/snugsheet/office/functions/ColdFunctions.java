package org.snugsheet.office.functions;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.sheet.NoConvergenceException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.clothing.Activity;
import org.snugsheet.engine.clothing.Covering;
import org.snugsheet.engine.clothing.Garment;
import org.snugsheet.engine.clothing.Garments;
import org.snugsheet.engine.clothing.Outdoors;
import org.snugsheet.engine.clothing.Outfit;
import org.snugsheet.engine.clothing.RequiredClothing;
import org.snugsheet.engine.insulation.Figure;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Speed;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.winter.WindChill;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.words.DocumentLanguage;
import org.snugsheet.office.words.Language;

/** The COLD functions. */
public final class ColdFunctions extends FamilyService implements Cold {

    /** For the office, which makes one for a session. */
    public ColdFunctions() {
        super(Cold.class);
    }

    @Override
    public double windChill(String[][] temp, String[][] wind, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            return WindChill.of(Cells.temperature(temp, s), speed(Cells.number(wind), s), s);
        });
    }

    @Override
    public String frostbite(XPropertySet document, String[][] temp, String[][] wind, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            return FrostbiteWords.of(
                    Cells.temperature(temp, s), speed(Cells.number(wind), s), s, DocumentLanguage.of(document));
        });
    }

    @Override
    public double garment(String[][] name, @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> Garments.find(Cells.text(name)).insulation().in(clothingUnit(unit)));
    }

    @Override
    public Object[][] garments(XPropertySet document) {
        Language language = DocumentLanguage.of(document);
        List<Object[]> rows = new ArrayList<>();
        rows.add(new Object[] {
            language.words(TableWords.GARMENT),
            "clo",
            language.words(TableWords.FIGURES),
            language.words(TableWords.SOURCE)
        });
        for (Garment garment : Garments.all()) {
            rows.add(new Object[] {
                Garments.nameIn(garment, language.locale()),
                garment.insulation().in(Unit.CLO),
                language.words(garment.provenance()),
                garment.source()
            });
        }
        return rows.toArray(Object[][]::new);
    }

    @Override
    public double outfit(Object[][] names, @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            List<Garment> worn = new ArrayList<>();
            List<Entry> cells = Cells.line(names);
            for (int i = 0; i < cells.size(); i++) {
                if (!(cells.get(i) instanceof Entry.Missing)) {
                    worn.add(Garments.find(cells.get(i).written(), i + 1));
                }
            }
            return new Outfit(worn).insulation().in(clothingUnit(unit));
        });
    }

    @Override
    public double needed(String[][] temp, String[][] activity, @Nullable Object wind, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(
                () -> required(temp, activity, wind, scale).wearableOutfit().in(Unit.CLO));
    }

    @Override
    public double neededWorn(String[][] temp, String[][] activity, @Nullable Object wind, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> required(temp, activity, wind, scale).worn().in(Unit.CLO));
    }

    private static RequiredClothing required(
            String[][] temp, String[][] activity, @Nullable Object wind, @Nullable Object scale) {
        Scale s = Options.scale(scale);
        Entry does = Cells.single(activity);
        Activity effort = does instanceof Entry.Text text ? Activity.parse(text.text()) : Activity.of(does.asNumber(1));
        Speed moving = speed(Options.number(wind).orElse(0.0), s);
        return RequiredClothing.of(Outdoors.of(Cells.temperature(temp, s), moving), effort);
    }

    @Override
    public double animal(String[][] covering, String[][] thickness, @Nullable Object which, @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Covering found = Covering.find(Cells.text(covering));
            Length thick = Length.of(Cells.number(thickness), Unit.MILLIMETRE);
            Figure figure = Options.words(which).map(Figure::parse).orElse(Figure.TYPICAL);
            return found.resistance(thick, figure).in(Options.resistanceUnit(unit));
        });
    }

    @Override
    public Object[][] coverings(XPropertySet document) {
        Language language = DocumentLanguage.of(document);
        List<Object[]> rows = new ArrayList<>();
        rows.add(language.row(
                TableWords.COVERING,
                TableWords.LOW,
                TableWords.TYPICAL,
                TableWords.HIGH,
                TableWords.FIGURES,
                TableWords.SOURCE));
        for (Covering covering : Covering.all()) {
            rows.add(new Object[] {
                Materials.nameIn(covering.material(), language.locale()),
                covering.material().low().wattsPerMetreKelvin(),
                covering.material().typical().wattsPerMetreKelvin(),
                covering.material().high().wattsPerMetreKelvin(),
                language.words(covering.material().provenance()),
                covering.material().source()
            });
        }
        return rows.toArray(Object[][]::new);
    }

    private static Speed speed(double value, Scale scale) {
        return Speed.of(value, scale == Scale.FAHRENHEIT ? Unit.MILE_PER_HOUR : Unit.KILOMETRE_PER_HOUR);
    }

    private static Unit clothingUnit(@Nullable Object unit) {
        return Options.words(unit).isPresent() ? Options.resistanceUnit(unit) : Unit.CLO;
    }
}
