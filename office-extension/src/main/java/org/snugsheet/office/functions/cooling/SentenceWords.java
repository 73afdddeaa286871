package org.snugsheet.office.functions.cooling;

import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.cooling.CoolingLaw;
import org.snugsheet.engine.cooling.ModelFit;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.functions.shared.JarCells;
import org.snugsheet.office.functions.shared.Minutes;
import org.snugsheet.office.words.Language;
import org.snugsheet.office.words.Rounded;

/** What COOL.SENTENCE says: how fast a jar cools, and what a class must know so as not to be misled by it. */
enum SentenceWords implements Phrase {
    LOSES_HALF("The jar loses half its extra warmth every {0} minutes, give or take {1}."),
    MAKES_UP_HALF(
            "The jar makes up half of what it is colder than its surroundings every {0} minutes, give or take {1}."),
    NOT_STEADY("That is the middle of it: it goes faster at first and slower later."),
    ELSEWHERE("But the readings run towards {0} {2}, give or take {1}: look again at what the surroundings were."),
    NOT_READ("Nobody read the surroundings: from the readings they should be {0} {2}, give or take {1}.");

    private final String english;

    SentenceWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }

    /** The sentence, refused where the half-time is. */
    static String of(JarCells jar, Language language) {
        CoolingFit fit = jar.fit();
        Rounded half = new Rounded(Minutes.of(fit.halfTime()), Minutes.of(fit.halfTimeError()));
        double first = fit.readings().first().seconds();
        boolean warmer = fit.at(first).celsius() > fit.surroundings().celsius();
        String sentence =
                language.say(warmer ? LOSES_HALF : MAKES_UP_HALF, half.number(language), half.giveOrTake(language));
        String also = also(jar, fit, language);
        return also.isEmpty() ? sentence : sentence + " " + also;
    }

    private static String also(JarCells jar, CoolingFit fit, Language language) {
        if (fit.model().fitsSurroundings()) {
            // Within half a mark nobody could have read them better.
            double halfMark = jar.mark().graduation().kelvins() / 2;
            return fit.surroundingsError().kelvins() > halfMark ? level(NOT_READ, fit, jar, language) : "";
        }
        ModelFit supported = jar.law().chosen().fit();
        CoolingLaw law = supported.model().law();
        if (law == CoolingLaw.SURROUNDINGS_FITTED && supported instanceof CoolingFit other) {
            return level(ELSEWHERE, other, jar, language);
        }
        boolean steady = law == CoolingLaw.SURROUNDINGS_GIVEN || law == CoolingLaw.SURROUNDINGS_MEASURED;
        return steady ? "" : language.words(NOT_STEADY);
    }

    private static String level(SentenceWords words, CoolingFit fit, JarCells jar, Language language) {
        Scale scale = jar.readings().scale();
        Rounded level = new Rounded(
                fit.surroundings().in(scale), fit.surroundingsError().in(scale));
        return language.say(words, level.number(language), level.giveOrTake(language), scale.symbol());
    }
}
