package org.snugsheet.office.sheets.readings;

import org.snugsheet.office.functions.check.ProblemWords;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.words.Language;

/** What a sheet says of its readings, with places as a person sees them. */
public final class ReadingsMessage {

    private ReadingsMessage() {}

    /**
     * What a check of one jar says, with the place as it is seen on the page: its minute, for the number of its row among the
     * readings is nowhere to be read. Such a sentence begins with the row, and the minute is in brackets before its first colon, in every
     * language.
     *
     * @param language the language of the functions
     * @param check the name of a cell with such a sentence
     * @return a formula, without the equals sign
     */
    public static String asSeen(Language language, String check) {
        String row = language.words(ProblemWords.ROW) + " ";
        String from = "FIND(\"(\";" + check + ")";
        String to = "FIND(\")\";" + check + ")";
        return "IF(mixed_times;" + FormulaText.quoted(language, ReadWords.MIXED_TIMES) + ";IFERROR(IF(AND(LEFT(" + check
                + ";" + row.length() + ")=" + FormulaText.quoted(row) + ";" + to + "<FIND(\":\";" + check
                + "));UPPER(MID(" + check + ";" + from + "+1;1))&MID(" + check + ";" + from + "+2;" + to + "-" + from
                + "-2)&MID(" + check + ";" + to + "+1;999);" + check + ");" + check + "))";
    }
}
