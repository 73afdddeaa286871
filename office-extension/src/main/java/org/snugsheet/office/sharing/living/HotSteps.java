package org.snugsheet.office.sharing.living;

import java.text.DecimalFormatSymbols;
import java.util.Optional;
import java.util.OptionalDouble;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Location;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.office.words.Language;

/**
 * The steps that tell of a reading that can scald, typed since the copy was made, in the words of the checks: see {@code SafeStart} and
 * {@code WhatCanHurt} of the engine. Above 100 degrees it would be steam, which no thermometer in a jar reads.
 *
 * @param sentence a formula for all that is said
 * @param whatIsWrong one for its first part
 * @param whatToDo one for what to do about it
 */
record HotSteps(String sentence, String whatIsWrong, String whatToDo) {

    // Numbers that no sentence holds, in the places of those that a formula puts there.
    private static final int ROW = 71;
    private static final int MINUTE = 82;
    private static final double CELSIUS = 55;
    private static final double FAHRENHEIT = 66;
    private static final String WRITTEN_CELSIUS = "55";
    private static final String WRITTEN_FAHRENHEIT = "66";

    /** Ends with the values hot (1 if there is one) and hotLine. */
    static HotSteps write(Block block, CheckSteps.Jar jar, Language language) {
        String celsius = jar.fit().at("celsius");
        String steam = "COUNTIF(" + celsius + ";\">100\")";
        block.value(
                "hottest",
                language.words(LivingWords.HOTTEST),
                "=IFERROR(IF(COUNT(" + celsius + ")>" + steam + ";LARGE(" + celsius + ";" + steam + "+1);0);0)");
        block.value(
                "hot",
                language.words(LivingWords.HOT),
                "=IF(AND([hottest]>" + SafeStart.SCHOOL_LIMIT.celsius() + "+0.000000001;" + jar.changed() + ">0);1;0)");
        block.value("hotLine", language.words(LivingWords.ROW), "=IF([hot]=1;MATCH([hottest];" + celsius + ";0);\"\")");
        block.value(
                "hotMinute",
                language.words(LivingWords.MINUTES),
                "=IFERROR(INDEX(" + jar.fit().at("clock") + ";MATCH([hotLine];"
                        + jar.fit().at("row") + ";0));\"?\")");
        Location there = new Location(ROW, OptionalDouble.of(MINUTE), Optional.empty(), false);
        String sentence = language.say(
                Finding.atRow(ROW, Problem.ROW_TOO_HOT, CELSIUS, FAHRENHEIT).located(row -> there));
        return new HotSteps(
                filled(sentence, language),
                filled(Finding.whatIsWrong(sentence), language),
                filled(Finding.whatToDo(sentence), language));
    }

    private static String filled(String sentence, Language language) {
        String formula = Formulas.text(sentence);
        formula = formula.replace(String.valueOf(ROW), "\"&[hotLine]&\"")
                .replace(String.valueOf(MINUTE), "\"&[hotMinute]&\"")
                .replace(WRITTEN_CELSIUS, "\"&" + decimal("[hottest]", language) + "&\"");
        return formula.replace(WRITTEN_FAHRENHEIT, "\"&" + decimal("([hottest]*9/5+32)", language) + "&\"");
    }

    /** One decimal at most, with the decimal mark of the sentence: that of the program may be another. */
    private static String decimal(String number, Language language) {
        char mark = DecimalFormatSymbols.getInstance(language.locale()).getDecimalSeparator();
        String tenths = "ROUND(10*" + number + ";0)";
        return "INT(" + tenths + "/10)&IF(MOD(" + tenths + ";10)=0;\"\";\"" + mark + "\"&MOD(" + tenths + ";10))";
    }
}
