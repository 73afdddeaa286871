package org.snugsheet.office.explaining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.Families;
import org.snugsheet.office.words.Language;
import org.snugsheet.office.words.Rounded;

/**
 * Says in a sentence for a class what the number of a call means, rounded as far as it is known. The numbers beside it, such as
 * its error, are asked of Snugsheet’s own functions, with the same arguments.
 */
final class Meaning {

    /** What a class can read off where nobody says how well a number is known. */
    private static final int DIGITS = 2;

    private static final double HUNDRED = 100;
    private static final double HALF_AS_MUCH_AGAIN = 1.5;
    private static final double JOULES_OF_A_KILOJOULE = 1000;

    private final FunctionDeclaration function;
    private final List<ArgumentValue> givens;
    private final Language language;

    private Meaning(FunctionDeclaration function, List<ArgumentValue> givens, Language language) {
        this.function = function;
        this.givens = givens;
        this.language = language;
    }

    /**
     * What the answer of a call means.
     *
     * @param givens as many as the function has arguments
     * @param answer what it answered
     * @return a sentence or two; empty where the answer is plain by itself
     */
    static Optional<String> of(
            FunctionDeclaration function, List<ArgumentValue> givens, Object answer, Language language) {
        try {
            return new Meaning(function, givens, language).of(answer instanceof Double number ? number : Double.NaN);
        } catch (InvalidInputException noSuchOption) {
            // The call itself was answered, so its options need no comment here.
            return Optional.empty();
        }
    }

    private Optional<String> of(double number) {
        return switch (function.name()) {
            case "COOL.RATE", "COOL.RATE.ERROR" -> rate();
            case "COOL.HALFTIME", "COOL.HALFTIME.ERROR", "COOL.REPORT" -> words("COOL.SENTENCE");
            case "COOL.START", "COOL.START.ERROR" -> degrees("COOL.START", MeaningWords.STARTED_AT);
            case "COOL.SURROUNDINGS", "COOL.SURROUNDINGS.ERROR" -> surroundings();
            case "COOL.MISFIT" -> say(MeaningWords.OFF_THE_CURVE, Rounded.about(number, 1, language), symbol());
            case "COOL.SLOWER", "COOL.SLOWER.ERROR" -> words("COOL.VERDICT");
            case "COOL.HEAT" ->
                about(
                        number < 0 ? MeaningWords.TAKES_UP : MeaningWords.GIVES_OFF,
                        Math.abs(number) / JOULES_OF_A_KILOJOULE);
            case "COOL.POWER", "WRAP.FLOW" ->
                about(number < 0 ? MeaningWords.GAINS_WATTS : MeaningWords.LOSES_WATTS, Math.abs(number));
            case "COOL.TEMP" -> degrees(MeaningWords.AT_THAT_TIME, number);
            case "COOL.MIXED" -> degrees(MeaningWords.MEET_AT, number);
            case "WRAP.FACE" -> degrees(MeaningWords.FACE_AT, number);
            case "COLD.WINDCHILL" -> degrees(MeaningWords.FEELS_LIKE, number);
            case "PLAN.BATH" -> degrees(MeaningWords.TUB_ENDS_AT, number);
            case "WRAP.LAYER", "WRAP.FLAT", "WRAP.ROUND", "WRAP.VESSEL", "WRAP.SURFACE", "COLD.ANIMAL" ->
                about(MeaningWords.LETS_THROUGH, watts(number));
            case "WRAP.MEASURED", "WRAP.MEASURED.ERROR" -> measured("WRAP.MEASURED");
            case "WRAP.ONEJAR", "WRAP.ONEJAR.ERROR" -> measured("WRAP.ONEJAR");
            case "WRAP.CONDUCTIVITY" -> tables();
            case "WRAP.EXPECT" -> about(MeaningWords.SHOULD_LOSE, Math.log(2) / number);
            case "COLD.GARMENT", "COLD.OUTFIT", "COLD.NEEDED", "COLD.NEEDED.WORN" ->
                unit().equals("clo") ? say(MeaningWords.ONE_CLO) : Optional.empty();
            case "PLAN.ICE" -> say(MeaningWords.ICE_MELTS, digits(number), digits(HALF_AS_MUCH_AGAIN * number));
            case "PLAN.READINGS" -> whole(MeaningWords.SO_MANY_READINGS, number);
            case "PLAN.REPEATS" -> whole(MeaningWords.FILL_JARS, number);
            case "PLAN.CERTAINTY" -> about(MeaningWords.KNOWN_TO, HUNDRED * number);
            case "PLAN.POWER" -> whole(MeaningWords.OF_A_HUNDRED, HUNDRED * number);
            default -> plain(function.name()).flatMap(words -> about(words, number));
        };
    }

    /** Those that need the number and no more. */
    private static Optional<Phrase> plain(String name) {
        return Optional.ofNullable(
                switch (name) {
                    case "COOL.TIME" -> MeaningWords.AFTER_MINUTES;
                    case "WRAP.USUAL" -> MeaningWords.ONE_LAYER;
                    case "WRAP.THICKNESS" -> MeaningWords.THICK_ENOUGH;
                    case "WRAP.TURNING" -> MeaningWords.TURNS;
                    case "PLAN.MIX.HOT" -> MeaningWords.POUR_HOT;
                    case "PLAN.MIX.COLD" -> MeaningWords.POUR_COLD;
                    case "PLAN.TELLAPART" -> MeaningWords.APART_AFTER;
                    case "PLAN.LONGEST" -> MeaningWords.READ_UNTIL;
                    case "PLAN.INTERVAL" -> MeaningWords.READ_EVERY;
                    default -> null;
                });
    }

    /** The share that is really gone after a minute, 1 − e^(−k): a class can follow it with a calculator. */
    private Optional<String> rate() {
        double rate = asked("COOL.RATE").orElse(Double.NaN);
        double error = asked("COOL.RATE.ERROR").orElse(Double.NaN);
        CallReplay.Result half = ask("COOL.SENTENCE", List.of());
        if (half.answer().isEmpty()) {
            return half.refusal().map(refusal -> language.say(refusal.finding()));
        }
        Rounded share = new Rounded(-HUNDRED * Math.expm1(-rate), HUNDRED * Math.exp(-rate) * error);
        Phrase words = isCooling() ? MeaningWords.LOSES_EACH_MINUTE : MeaningWords.MAKES_UP_EACH_MINUTE;
        return say(words, share.number(language), share.giveOrTake(language))
                .map(sentence -> sentence + " " + half.answer().get());
    }

    private boolean isCooling() {
        double surroundings = asked("COOL.SURROUNDINGS").orElse(Double.NaN);
        // A start out of reach is that of a clock that began long before: such a jar was filled warm.
        return !(asked("COOL.START").orElse(Double.POSITIVE_INFINITY) < surroundings);
    }

    private Optional<String> surroundings() {
        double value = asked("COOL.SURROUNDINGS").orElse(Double.NaN);
        double error = asked("COOL.SURROUNDINGS.ERROR").orElse(Double.NaN);
        return error > 0
                ? degrees("COOL.SURROUNDINGS", MeaningWords.SURROUNDINGS_FITTED)
                : say(MeaningWords.SURROUNDINGS_GIVEN, Rounded.about(value, 4, language), symbol());
    }

    private Optional<String> measured(String name) {
        double value = asked(name).orElse(Double.NaN);
        String through = digits(watts(value));
        return asked(name + ".ERROR")
                .map(error -> new Rounded(value, error))
                .map(known -> language.say(
                        MeaningWords.R_KNOWN, known.number(language), known.giveOrTake(language), unitName(), through))
                .or(() -> say(MeaningWords.LETS_THROUGH, through));
    }

    private Optional<String> tables() {
        Optional<Double> low = asked("WRAP.CONDUCTIVITY", "which", "low");
        Optional<Double> high = asked("WRAP.CONDUCTIVITY", "which", "high");
        return low.isPresent() && high.isPresent() && unit().isEmpty()
                ? say(MeaningWords.BETWEEN_TABLES, digits(low.get()), digits(high.get()))
                : Optional.empty();
    }

    private Optional<String> degrees(String name, Phrase words) {
        return asked(name)
                .map(value -> new Rounded(value, asked(name + ".ERROR").orElse(Double.NaN)))
                .map(known -> language.say(words, known.number(language), known.giveOrTake(language), symbol()));
    }

    /** A whole degree is what a thermometer of a classroom shows. */
    private Optional<String> degrees(Phrase words, double value) {
        return say(words, new Rounded(value, 1).number(language), symbol());
    }

    private Optional<String> whole(Phrase words, double value) {
        return say(words, new Rounded(value, 1).number(language));
    }

    private Optional<String> about(Phrase words, double value) {
        return Double.isFinite(value) ? say(words, digits(value)) : Optional.empty();
    }

    private Optional<String> say(Phrase words, Object... values) {
        return Optional.of(language.say(words, values));
    }

    private String digits(double value) {
        return Rounded.about(value, DIGITS, language);
    }

    /** What gets through a square meter for each kelvin. */
    private double watts(double resistance) {
        Unit unit = unit().isEmpty() ? Unit.SQUARE_METER_KELVIN_PER_WATT : Unit.parse(unit());
        return 1 / ThermalResistance.of(resistance, unit).squareMeterKelvinsPerWatt();
    }

    private String symbol() {
        return option("scale").map(Scale::parse).orElse(Scale.CELSIUS).symbol();
    }

    private String unit() {
        return option("unit")
                .orElse(function.name().startsWith("COLD.") && !function.name().equals("COLD.ANIMAL") ? "clo" : "");
    }

    private String unitName() {
        String unit = unit().toUpperCase(Locale.ROOT);
        return unit.isEmpty() || unit.equals("SI") ? "m²·K/W" : unit.equals("US") ? "ft²·°F·h/Btu" : unit();
    }

    private Optional<String> option(String name) {
        List<FunctionDeclaration.ArgumentDeclaration> declared = function.arguments();
        for (int i = 0; i < declared.size(); i++) {
            if (declared.get(i).name().equals(name) && !givens.get(i).isLeftOut()) {
                return Optional.of(String.valueOf(givens.get(i).values().get(0)))
                        .filter(text -> !text.isBlank() && !text.equals("0.0"));
            }
        }
        return Optional.empty();
    }

    private Optional<String> words(String name) {
        return ask(name, List.of()).answer().map(String::valueOf);
    }

    private Optional<Double> asked(String name, String... option) {
        return ask(name, List.of(option)).answer().map(Double.class::cast);
    }

    /** Asks another function of the same arguments, with one option changed if its name and value are given. */
    private CallReplay.Result ask(String name, List<String> option) {
        FunctionDeclaration other = Families.functions().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
        List<ArgumentValue> theirs = new ArrayList<>();
        for (int i = 0; i < other.arguments().size(); i++) {
            boolean changed =
                    !option.isEmpty() && other.arguments().get(i).name().equals(option.get(0));
            theirs.add(
                    changed
                            ? ArgumentValue.of(option.get(1), new Object[][] {{option.get(1)}}, true, Optional.empty())
                            : i < givens.size() ? givens.get(i) : ArgumentValue.LEFT_OUT);
        }
        return CallReplay.of(other, theirs, language);
    }
}
