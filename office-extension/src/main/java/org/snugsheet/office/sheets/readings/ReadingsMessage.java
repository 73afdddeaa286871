package org.snugsheet.office.sheets.readings;

/** What a sheet says of its readings, with places as a person sees them. */
public final class ReadingsMessage {

    /** What is said where some times are those of a clock and others minutes, as while somebody types over them. */
    public static final String MIXED_TIMES =
            "Some times are clock times, others are minutes: type all of them the same way.";

    private ReadingsMessage() {}

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
}
