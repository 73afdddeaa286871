package org.snugsheet.office.sheets.designawrap;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.sheets.shared.OrDash;
import org.snugsheet.office.words.Language;

/**
 * What the layers of {@link DesignAWrap} should give, and beside it what the class’s readings show, each with its standard
 * error; below, in words, whether the two agree.
 *
 * <p>All R-values are those of the whole jar, for each square meter of the water’s surface, so that those of one row can be
 * compared: side, lid and base are ways out side by side, and readings cannot tell them apart.
 */
final class ExpectedAndMeasured {

    private ExpectedAndMeasured() {}

    static void write(Page page, Language language) throws com.sun.star.uno.Exception {
        page.look("J31:N31", CellStyleName.SECTION).text("J31", language.words(DesignWords.RESULTS));
        page.look("J32:N32", CellStyleName.HEAD).wrapped("J32:N32");
        page.text("K32", language.words(DesignWords.BARE_EXPECTED))
                .text("L32", language.words(DesignWords.BARE_MEASURED));
        page.text("M32", language.words(DesignWords.WRAPPED_EXPECTED))
                .text("N32", language.words(DesignWords.WRAPPED_MEASURED));

        label(page, 33, language.words(DesignWords.RATE), "0.0000");
        page.formula("K33", OrDash.of("WRAP.EXPECT(" + DesignAWrap.BARE + ";vessel;scale)"));
        page.formula("M33", OrDash.of("WRAP.EXPECT(" + DesignAWrap.WRAPPED + ";vessel;scale)"));
        read(page, 33, "COOL.RATE");
        error(page, language, 34, "0.0000");
        read(page, 34, "COOL.RATE.ERROR");

        label(page, 35, language.words(DesignWords.HALF_TIME), "0.0");
        page.formula("K35", OrDash.of("LN(2)/K33")).formula("M35", OrDash.of("LN(2)/M33"));
        read(page, 35, "COOL.HALFTIME");
        error(page, language, 36, "0.0");
        read(page, 36, "COOL.HALFTIME.ERROR");

        label(page, 37, language.words(DesignWords.WHOLE_R), "0.000");
        page.formula("K37", OrDash.of("WRAP.VESSEL(" + DesignAWrap.BARE + ";\"SI\";scale)"));
        page.formula("M37", OrDash.of("WRAP.VESSEL(" + DesignAWrap.WRAPPED + ";\"SI\";scale)"));
        error(page, language, 38, "0.000");
        for (String column : new String[] {"L", "N"}) {
            String mean = column.equals("L") ? "halfway_bare" : "halfway";
            String ofOneJar = "(" + column + "33;volume;area;0;" + column + "34;vessel;0;\"SI\";" + mean + ";scale)";
            page.formula(column + "37", OrDash.of("WRAP.ONEJAR" + ofOneJar));
            page.formula(column + "38", OrDash.of("WRAP.ONEJAR.ERROR" + ofOneJar));
        }

        label(page, 39, language.words(DesignWords.WRAP_ADDS), "0.000");
        page.formula("M39", OrDash.of("M37-K37"));
        error(page, language, 40, "0.000");
        String ofBoth = "(L33;N33;volume;area;L34;N34;vessel;0;\"SI\";halfway;scale)";
        page.formula("N39", OrDash.of("WRAP.MEASURED" + ofBoth));
        page.formula("N40", OrDash.of("WRAP.MEASURED.ERROR" + ofBoth));

        label(page, 41, language.words(DesignWords.WATTS), "0.0");
        page.formula("K41", OrDash.of("WRAP.FLOW(" + DesignAWrap.BARE + ";scale)"));
        page.formula("M41", OrDash.of("WRAP.FLOW(" + DesignAWrap.WRAPPED + ";scale)"));
        writeVerdict(page, language);
    }

    private static void label(Page page, int row, String label, String numbers) throws com.sun.star.uno.Exception {
        page.text("J" + row, label).look("J" + row, CellStyleName.LABEL);
        cells(page, row, CellStyleName.RESULT, numbers);
    }

    private static void error(Page page, Language language, int row, String numbers) throws com.sun.star.uno.Exception {
        page.text("J" + row, language.words(DesignWords.STANDARD_ERROR)).look("J" + row, CellStyleName.SUBLABEL);
        cells(page, row, CellStyleName.UNCERTAINTY, "\"± \"" + numbers);
    }

    private static void cells(Page page, int row, CellStyleName look, String numbers)
            throws com.sun.star.uno.Exception {
        String cells = "K" + row + ":N" + row;
        page.look(cells, look).numbers(cells, numbers);
    }

    private static void read(Page page, int row, String function) throws com.sun.star.uno.Exception {
        page.formula("L" + row, ofReadings(function, "bare")).formula("N" + row, ofReadings(function, "wrapped"));
    }

    private static String ofReadings(String function, String jar) {
        String toward = jar.equals("bare") ? "toward_bare" : "toward";
        return OrDash.of("IF(check_" + jar + "=\"OK\";" + function + "(times;" + jar + ";" + toward + ";mark;scale);"
                + OrDash.DASH + ")");
    }

    private static void writeVerdict(Page page, Language language) throws com.sun.star.uno.Exception {
        page.look("A39:E39", CellStyleName.SECTION).text("A39", language.words(DesignWords.AGREE));
        page.merge("A40:E41").look("A40:E41", CellStyleName.NOTE);
        page.formula(
                "A40",
                "=IF(SUMPRODUCT(--(LEN(wrapped)>0))=0;" + FormulaText.quoted(language, DesignWords.ANSWER_COMES)
                        + ";IFERROR(WRAP.VERDICT(N33;N34;" + DesignAWrap.WRAPPED + ";vessel;scale);"
                        + FormulaText.quoted(language, DesignWords.NO_ANSWER) + "))");
    }
}
