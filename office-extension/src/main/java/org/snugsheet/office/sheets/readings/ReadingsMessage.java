package org.snugsheet.office.sheets.readings;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Page;

/** What a sheet with several jars says of its readings, by the names that {@link AsRead} gives: below the grid, and on its cells. */
public final class ReadingsMessage {

    /** Where the message speaks of what can hurt. */
    public static final String IS_HOT = "hot<>\"\"";

    /** Where the message speaks of a finding, not of what comes next. */
    public static final String HAS_FINDING = "AND(COUNTA(typed_readings)>0;COUNTIF(checks;\"OK\")+COUNTIF(checks;\"\")"
            + "+COUNTIF(checks;\"" + AsRead.WAITING + "\")<COLUMNS(checks))";

    /** What is said where some times are those of a clock and others minutes, as while somebody types over them. */
    public static final String MIXED_TIMES =
            "Some times are clock times, others are minutes: type all of them the same way.";

    private ReadingsMessage() {}

    /**
     * Colors what a finding speaks of, where it was typed.
     *
     * @param typed the page that is typed on
     * @param grid where
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void mark(Page typed, Grid grid) throws com.sun.star.uno.Exception {
        String here = "*(found_row=(ROW()-" + grid.head() + ")&\"\")*(found<>\"OK\"))>0";
        for (int jar = 0; jar < grid.jars(); jar++) {
            String own = "SUMPRODUCT((found_jar=INDEX(names_read;1;" + (jar + 1) + "))*(LEN(found_jar)>0)" + here;
            Highlight.when(typed, grid.readings(grid.column(jar)), own, CellStyleName.FOUND);
        }
        // What is said of all jars at once is said of the times.
        Highlight.when(typed, grid.minutes(), "SUMPRODUCT((found_jar=\"all jars\")" + here, CellStyleName.FOUND);
    }

    /**
     * The message below the grid: what to do next, or the first finding; before both, what can hurt.
     *
     * @param grid where the readings are typed
     * @param well what to say if all readings can be used
     * @return the formula
     */
    public static String message(Grid grid, String well) {
        StringBuilder words = new StringBuilder(
                "=IF(hot=\"\";\"\";hot&\" \")&IF(COUNTA(typed_readings)=0;\"Type what the thermometers read.\";"
                        + "IF(LEN(surroundings)=0;\"How warm is it around the jars? Type it into its box.\";IF("
                        + "mixed_times;\"" + MIXED_TIMES + "\";");
        for (int jar = 0; jar < grid.jars(); jar++) {
            String check = "INDEX(checks;1;" + (jar + 1) + ")";
            String name = "INDEX(names_read;1;" + (jar + 1) + ")";
            words.append("IF(AND(" + check + "<>\"OK\";" + check + "<>\"\";" + check + "<>\"" + AsRead.WAITING + "\");"
                    + "IF(LEFT(" + check + ";LEN(" + name + "))=" + name + ";\"\";" + name + "&\": \")&" + check + ";");
        }
        return words + "IF(hot=\"\";\"" + well + "\";\"The readings can be used.\")" + ")".repeat(grid.jars() + 3);
    }

    /**
     * What a check of one jar says, with the place as it is seen on the page: its minute, for the number of its row among the
     * readings is nowhere to be read.
     */
    public static String asSeen(String check) {
        String from = "FIND(\"(minute \";" + check + ")";
        String to = "FIND(\")\";" + check + ")";
        return "IF(mixed_times;\"" + MIXED_TIMES + "\";IFERROR(IF(LEFT(" + check
                + ";4)=\"Row \";PROPER(MID(" + check + ";" + from + "+1;1))&MID(" + check + ";" + from + "+2;" + to
                + "-" + from
                + "-2)&MID(" + check + ";" + to + "+1;999);" + check + ");" + check + "))";
    }

    /** Whether the check of a jar holds it back, of which nothing is said before it has a reading. */
    public static String heldBack(String check) {
        return "AND(" + check + "<>\"OK\";" + check + "<>\"\";" + check + "<>\"" + AsRead.WAITING + "\")";
    }
}
