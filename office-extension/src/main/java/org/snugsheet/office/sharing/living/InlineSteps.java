package org.snugsheet.office.sharing.living;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Functions that are one formula, which stands in for their call where it is. */
final class InlineSteps {

    /** The functions that are. */
    static final Set<String> NAMES = Set.of("TEMP.CONVERT", "TEMP.CHANGE", "COOL.TEMP", "COOL.TIME");

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
            case "COOL.TEMP" -> arguments.size() < 4 ? Optional.empty() : Optional.of(temperature(arguments));
            case "COOL.TIME" -> arguments.size() < 4 ? Optional.empty() : Optional.of(time(arguments));
            default -> Optional.empty();
        };
    }

    private static Optional<List<String>> three(List<String> arguments) {
        return arguments.size() == 3 ? Optional.of(arguments) : Optional.empty();
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
