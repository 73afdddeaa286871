package org.snugsheet.office.sheets.weatherdiary;

import static org.snugsheet.office.sheets.weatherdiary.WeatherDiary.FIRST_ROW;
import static org.snugsheet.office.sheets.weatherdiary.WeatherDiary.LAST_ROW;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.NamedRanges;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.words.Language;

/**
 * What the other pages read: the lists to choose from, and each day in numbers, in the row and the columns in which the diary has it, so
 * that a box can be compared with what was understood of it.
 */
final class BehindTheDiary {

    // The columns of a day; those of the temperatures and the wind are those of the diary.
    static final String DATE = "A";
    static final String SKY = "B";
    static final String NUMBER = "C";
    static final String MORNING = "D";
    static final String NOON = "E";
    static final String WIND = "F";
    static final String FEELS = "G";
    static final String COLDEST_FELT = "J";
    /** 1 for a morning, 2 for a noon, 3 for a wind that cannot be read, 0 for none. */
    static final String PROBLEM = "Q";

    /** What formulas call the columns. */
    private static final Map<String, String> NAMES = Map.of(
            DATE,
            "dates",
            SKY,
            "kinds",
            MORNING,
            "mornings",
            NOON,
            "noons",
            FEELS,
            "felt",
            COLDEST_FELT,
            "coldest",
            PROBLEM,
            "problems");

    private static final String HEADS_ROW = String.valueOf(FIRST_ROW - 1);

    // From here on an outdoor temperature is a slip: colder and hotter than any that was ever measured (-89.2 °C and
    // 56.7 °C,
    // World Meteorological Organization, from memory).
    private static final String COLDEST = "IF(UPPER(scale)=\"F\";-130;-90)";
    private static final String HOTTEST = "IF(UPPER(scale)=\"F\";136;58)";

    // Outside of these the index of wind chill has no meaning, and it feels as cold as it is (see COLD.WINDCHILL).
    private static final String TOO_WARM = "IF(UPPER(scale)=\"F\";50;10)";
    private static final String TOO_CALM = "IF(UPPER(scale)=\"F\";3.001;5)";

    private static final String KILOMETERS_PER_MILE = "1.609344";

    private final Page page;
    private final Page diary;
    private final Language language;

    BehindTheDiary(Page page, Page diary, Language language) {
        this.page = page;
        this.diary = diary;
        this.language = language;
    }

    /** Before the pages that offer them. */
    void writeLists(NamedRanges names) throws com.sun.star.uno.Exception {
        for (int i = 0; i < Kinds.SKIES.size(); i++) {
            page.text("K" + (1 + i), language.words(Kinds.SKIES.get(i).words()));
            page.text("L" + (1 + i), Kinds.SKIES.get(i).picture());
        }
        for (int i = 0; i < Kinds.WINDS.size(); i++) {
            page.text("M" + (1 + i), language.words(Kinds.WINDS.get(i).words()));
            page.number("N" + (1 + i), Kinds.WINDS.get(i).kilometersPerHour());
        }
        for (int i = 0; i < Kinds.CLOTHES.size(); i++) {
            page.text("O" + (1 + i), language.words(Kinds.CLOTHES.get(i)));
        }
        page.text("P1", "C").text("P2", "F");
        NAMES.forEach((column, name) -> names.fixed(name, page, column + FIRST_ROW + ":" + column + LAST_ROW));
        names.fixed("skies", page, "K1:K" + Kinds.SKIES.size())
                .fixed("pictures", page, "L1:L" + Kinds.SKIES.size())
                .fixed("winds", page, "M1:M" + Kinds.WINDS.size())
                .fixed("speeds", page, "N1:N" + Kinds.WINDS.size())
                .fixed("clothes", page, "O1:O" + Kinds.CLOTHES.size())
                .fixed("scales", page, "P1:P2")
                .fixed("scale", diary, DiaryPage.SCALE)
                .fixed("first_day", diary, DiaryPage.FIRST_DAY)
                .fixed("typed_mornings", diary, "D" + FIRST_ROW + ":D" + LAST_ROW)
                .fixed("typed_noons", diary, "E" + FIRST_ROW + ":E" + LAST_ROW);
    }

    void writeDays() throws com.sun.star.uno.Exception {
        String month = "CHOOSE(MONTH(%1$s);"
                + Arrays.stream(language.words(DiaryWords.MONTHS).split(" "))
                        .map(FormulaText::quoted)
                        .collect(Collectors.joining(";"))
                + ")";
        page.text(MORNING + HEADS_ROW, language.words(DiaryWords.MORNING));
        page.text(NOON + HEADS_ROW, language.words(DiaryWords.NOON));
        for (int row = FIRST_ROW; row <= LAST_ROW; row++) {
            String date = in(diary, DATE + row);
            page.formula(
                    DATE + row,
                    "=IF(ISNUMBER(" + date + ");"
                            + FormulaText.sentence(
                                    language, DiaryWords.DATE, "DAY(" + date + ")", String.format(month, date))
                            + ";" + date + ")");
            page.formula(SKY + row, "=IFERROR(MATCH(" + in(diary, "B" + row) + ";skies;0);0)");
            page.number(NUMBER + row, row - FIRST_ROW + 1);
            page.formula(MORNING + row, temperature(in(diary, "D" + row)));
            page.formula(NOON + row, temperature(in(diary, "E" + row)));
            page.formula(WIND + row, wind(in(diary, "F" + row)));
            page.formula(FEELS + row, feels(NOON + row, WIND + row));
            page.formula(
                    COLDEST_FELT + row,
                    "=IF(COUNT(" + MORNING + row + ":" + NOON + row + ")=0;\"\";MIN(" + MORNING + row + ":" + NOON + row
                            + ";" + FEELS + row + "))");
            page.formula(PROBLEM + row, "=" + problem(row));
        }
    }

    private static String temperature(String typed) {
        String read = "TEMP.READ(" + typed + ";scale)";
        return "=IF(" + typed + "=\"\";\"\";IFERROR(IF(AND(" + read + ">" + COLDEST + ";" + read + "<" + HOTTEST + ");"
                + read + ";\"\");\"\"))";
    }

    private static String wind(String typed) {
        return "=IF(" + typed + "=\"\";\"\";IF(ISNUMBER(" + typed + ");IF(" + typed + ">=0;" + typed
                + ";\"\");IFERROR(INDEX(speeds;MATCH(" + typed + ";winds;0))/IF(UPPER(scale)=\"F\";"
                + KILOMETERS_PER_MILE + ";1);\"\")))";
    }

    /** Charts of wind chill give whole degrees. */
    private static String feels(String noon, String wind) {
        return "=IF(OR(" + noon + "=\"\";" + wind + "=\"\");\"\";IF(OR(" + noon + ">" + TOO_WARM + ";" + wind + "<"
                + TOO_CALM + ");" + noon + ";IFERROR(ROUND(COLD.WINDCHILL(" + noon + ";" + wind + ";scale);0);\"\")))";
    }

    private String problem(int row) {
        return "IF(" + notUnderstood(MORNING + row) + ";1;IF(" + notUnderstood(NOON + row) + ";2;IF("
                + notUnderstood(WIND + row) + ";3;0)))";
    }

    private String notUnderstood(String cell) {
        return "AND(" + in(diary, cell) + "<>\"\";" + cell + "=\"\")";
    }

    void finish() throws com.sun.star.uno.Exception {
        page.look(MORNING + HEADS_ROW + ":" + NOON + HEADS_ROW, CellStyleName.HEAD);
        new PrintSetup(PrintSetup.Way.LANDSCAPE, language.words(DiaryWords.TITLE)).applyUnprinted(page);
        page.protect();
    }

    /** A column of all days, seen from any page. */
    String days(String column) {
        return Optional.ofNullable(NAMES.get(column)).orElseThrow();
    }

    /** On how many days something was written down. */
    String daysWritten() {
        return "SUMPRODUCT(((" + days(SKY) + ">0)+ISNUMBER(" + days(MORNING) + ")+ISNUMBER(" + days(NOON) + "))>0)";
    }

    String cell(String address) {
        return in(page, address);
    }

    Page page() {
        return page;
    }

    private static String in(Page page, String address) {
        return "$'" + page.name() + "'." + address;
    }
}
