package org.snugsheet.office.sharing.living;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Functions that are one formula, which stands in for their call where it is. */
final class InlineSteps {

    /** The functions that are. */
    static final Set<String> NAMES =
            Set.of("TEMP.CONVERT", "TEMP.CHANGE", "TEMP.ROUND", "COOL.TEMP", "COOL.TIME", "COLD.WINDCHILL");

    private InlineSteps() {}

    /** The formula for a call; empty for other functions, and if an argument is missing. */
    static Optional<String> of(String name, List<String> given) {
        List<String> arguments = given.stream().map(one -> "(" + one + ")").toList();
        if (given.stream().limit(3).anyMatch(String::isEmpty)) {
            return Optional.empty();
        }
        return switch (name) {
            case "TEMP.CONVERT" -> three(arguments).map(InlineSteps::convert);
            case "TEMP.CHANGE" -> three(arguments).map(InlineSteps::change);
            case "TEMP.ROUND" -> twoAndAScale(arguments).map(InlineSteps::round);
            case "COLD.WINDCHILL" -> twoAndAScale(arguments).map(InlineSteps::windChill);
            case "COOL.TEMP" -> arguments.size() < 4 ? Optional.empty() : Optional.of(temperature(arguments));
            case "COOL.TIME" -> arguments.size() < 4 ? Optional.empty() : Optional.of(time(arguments));
            default -> Optional.empty();
        };
    }

    private static Optional<List<String>> three(List<String> arguments) {
        return arguments.size() == 3 ? Optional.of(arguments) : Optional.empty();
    }

    /** Two arguments and a scale, which is Celsius where it is left out or blank. */
    private static Optional<List<String>> twoAndAScale(List<String> a) {
        return switch (a.size()) {
            case 2 -> Optional.of(List.of(a.get(0), a.get(1), "\"C\""));
            case 3 -> Optional.of(List.of(a.get(0), a.get(1), "IF(LEN(" + a.get(2) + ")=0;\"C\";" + a.get(2) + ")"));
            default -> Optional.empty();
        };
    }

    /** One after the other, for a condition with AND looks at all cells of a range together. */
    private static String round(List<String> a) {
        String value = a.get(0);
        String mark = a.get(1);
        String coldest = "IF(" + a.get(2) + "=\"C\";-273.15;IF(" + a.get(2) + "=\"F\";-459.67;IF(" + a.get(2)
                + "=\"K\";0;NA())))";
        // In decimals: 0.15 lies halfway between two marks of 0.1, and 102 marks of 0.2 are 20.4.
        return "IF(LEN(" + value + ")=0;\"\";IF(ISNUMBER(" + value + ");IF(" + value + "<" + coldest
                + ";NA();IF(ISNUMBER("
                + mark + ");IF(" + mark + ">0;ROUND(ROUND(ROUND(" + value + "/" + mark + ";9);0)*" + mark
                + ";10);NA());NA()));NA()))";
    }

    /** The index of 2001 by its own formula for each scale, where it is defined: see {@code WindChill} of the engine. */
    private static String windChill(List<String> a) {
        String air = a.get(0);
        String wind = a.get(1);
        String scale = a.get(2);
        String celsius = "IF(" + scale + "=\"K\";" + air + "-273.15;" + air + ")";
        String power = wind + "^0.16";
        return "IF(AND(ISNUMBER(" + air + ");ISNUMBER(" + wind + "));IF(" + scale + "=\"F\";IF(AND(" + air + "<=50;"
                + air
                + ">-58.000000001;" + wind + ">3.000000001;" + wind + "<60.000000001);35.74+0.6215*" + air + "-35.75*"
                + power + "+0.4275*" + air + "*" + power + ";NA());IF(AND(OR(" + scale + "=\"C\";" + scale + "=\"K\");"
                + celsius + "<=10;" + celsius + ">-50.000000001;" + wind + ">4.999999999;" + wind
                + "<60.000000001*1.609344);13.12+0.6215*" + celsius + "-11.37*" + power + "+0.3965*" + celsius + "*"
                + power + "+IF(" + scale + "=\"K\";273.15;0);NA()));NA())";
    }

    /** A blank stays blank; what is colder than anything can be is refused. */
    private static String convert(List<String> a) {
        String value = a.get(0);
        String from = a.get(1);
        String to = a.get(2);
        return "IF(LEN(" + value + ")=0;\"\";IF(" + value + "<IF(" + from + "=\"F\";-459.67;-273.15);NA();IF(AND("
                + from + "=\"C\";"
                + to + "=\"F\");" + value + "*9/5+32;IF(AND(" + from + "=\"F\";" + to + "=\"C\");(" + value
                + "-32)*5/9;IF(AND("
                + from + "=" + to + ";OR(" + from + "=\"C\";" + from + "=\"F\"));" + value + "+0;NA())))))";
    }

    private static String change(List<String> a) {
        String value = a.get(0);
        String from = a.get(1);
        String to = a.get(2);
        return "IF(LEN(" + value + ")=0;\"\";IF(AND(OR(" + from + "=\"C\";" + from + "=\"K\");" + to + "=\"F\");"
                + value
                + "*9/5;IF(AND(" + from + "=\"F\";OR(" + to + "=\"C\";" + to + "=\"K\"));" + value + "*5/9;IF(OR(AND("
                + from
                + "=\"F\";" + to + "=\"F\");AND(OR(" + from + "=\"C\";" + from + "=\"K\");OR(" + to + "=\"C\";" + to
                + "=\"K\")));"
                + value + "+0;NA()))))";
    }

    private static String numbers(List<String> a) {
        return "AND(ISNUMBER(" + a.get(0) + ");ISNUMBER(" + a.get(1) + ");ISNUMBER(" + a.get(2) + ");ISNUMBER("
                + a.get(3) + "))";
    }

    private static String temperature(List<String> a) {
        return "IF(" + numbers(a) + ";IF(" + a.get(3) + "<0;NA();" + a.get(2) + "+(" + a.get(1) + "-" + a.get(2)
                + ")*EXP(-" + a.get(3) + "*" + a.get(0) + "));NA())";
    }

    /** The target lies between the start and the surroundings, and something cools. */
    private static String time(List<String> a) {
        String whole = "(" + a.get(1) + "-" + a.get(2) + ")";
        String left = "(" + a.get(0) + "-" + a.get(2) + ")";
        return "IF(" + numbers(a) + ";IF(AND(" + whole + "*" + left + ">0;ABS(" + whole + ")>=ABS(" + left + ");"
                + a.get(3) + ">0);LN(" + whole + "/" + left + ")/" + a.get(3) + ";NA());NA())";
    }
}
