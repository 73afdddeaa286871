package org.snugsheet.office.sharing.living;

import java.util.List;
import java.util.function.IntFunction;
import org.snugsheet.office.words.Language;

/**
 * Steps that read what was typed, as {@code org.snugsheet.engine.reading.Entry} does: numbers, and texts such as {@code 41,5 °F}. They use no
 * function that reads a decimal mark, since each language has its own.
 */
final class TypedSteps {

    /** What a cell that cannot be read becomes; a number may be expected there, so it is a text. */
    static final String UNREADABLE = "\"x\"";

    private static final List<String> GAPS = List.of("", "-", "–", "—");

    private TypedSteps() {}

    /** Columns that end with one of numbers, gaps as empty texts; {@code name}Unit holds the letter of a scale typed behind it. */
    static void column(
            Block block,
            String name,
            LivingWords typed,
            LivingWords read,
            IntFunction<String> source,
            Language language) {
        block.column(name + "Raw", language.words(typed), line -> kept(source.apply(line)));
        block.column(name + "Text", language.words(LivingWords.AS_TEXT), cleaned("[" + name + "Raw.]"));
        block.column(name + "Unit", language.words(LivingWords.UNIT), unit("[" + name + "Text.]"));
        block.column(
                name + "Digits",
                language.words(LivingWords.DIGITS),
                unsigned("[" + name + "Text.]", "[" + name + "Unit.]"));
        block.column(
                name,
                language.words(read),
                number("[" + name + "Raw.]", "[" + name + "Text.]", "[" + name + "Digits.]"));
    }

    /** The same for one line of columns that are open. */
    static void line(Block block, String name, int line, String source) {
        block.in(name + "Raw", line, kept(source));
        block.in(name + "Text", line, cleaned("[" + name + "Raw.]"));
        block.in(name + "Unit", line, unit("[" + name + "Text.]"));
        block.in(name + "Digits", line, unsigned("[" + name + "Text.]", "[" + name + "Unit.]"));
        block.in(name, line, number("[" + name + "Raw.]", "[" + name + "Text.]", "[" + name + "Digits.]"));
    }

    /** The same for one value. */
    static void value(Block block, String name, LivingWords typed, LivingWords read, String source, Language language) {
        block.value(name + "Raw", language.words(typed), kept(source));
        block.value(name + "Text", language.words(LivingWords.AS_TEXT), cleaned("[" + name + "Raw]"));
        block.value(name + "Unit", language.words(LivingWords.UNIT), unit("[" + name + "Text]"));
        block.value(
                name + "Digits",
                language.words(LivingWords.DIGITS),
                unsigned("[" + name + "Text]", "[" + name + "Unit]"));
        block.value(
                name, language.words(read), number("[" + name + "Raw]", "[" + name + "Text]", "[" + name + "Digits]"));
    }

    /** A number with the letter of its scale, or that of the sheet, in degrees Celsius. */
    static String celsius(String number, String unit, String scale) {
        String letter = "IF(" + unit + "=\"\";" + scale + ";" + unit + ")";
        return "IF(ISNUMBER(" + number + ");IF(" + letter + "=\"F\";(" + number + "-32)*5/9;IF(" + letter + "=\"K\";"
                + number + "-273.15;" + number + "));" + number + ")";
    }

    static String fromCelsius(String celsius, String scale) {
        return "IF(" + scale + "=\"F\";" + celsius + "*9/5+32;IF(" + scale + "=\"K\";" + celsius + "+273.15;" + celsius
                + "))";
    }

    static String fromKelvins(String kelvins, String scale) {
        return "IF(" + scale + "=\"F\";" + kelvins + "*9/5;" + kelvins + ")";
    }

    static String kelvins(String degrees, String scale) {
        return "IF(" + scale + "=\"F\";" + degrees + "*5/9;" + degrees + ")";
    }

    /** The letter of a scale from what was given for it; a text that names none becomes an x. */
    static String scale(String given) {
        String plain = cleanedText(given);
        return "=IF(LEN(" + given + ")=0;\"C\";IF(ISNUMBER(FIND(\"|\"&" + plain + "&\"|\";\"|C|F|K|\"));" + plain
                + ";\"x\"))";
    }

    /** Whether a list of capitals holds a text; a star or a question mark in it stands for nothing else, as it does in a search. */
    static String isListed(String text, String list) {
        return "IF(ISNUMBER(MATCH(" + text + ";" + list + ";0));INDEX(" + list + ";MATCH(" + text + ";" + list + ";0))="
                + text + ";1=0)";
    }

    /** What a cell holds; a blank one is an empty text. */
    static String kept(String source) {
        return "=IF(LEN(" + source + ")=0;\"\";" + source + ")";
    }

    private static String cleaned(String raw) {
        return "=IF(ISNUMBER(" + raw + ");\"\";" + cleanedText(raw) + ")";
    }

    private static String cleanedText(String raw) {
        String text = "UPPER(" + raw + "&\"\")";
        String[][] changes = {
            {"\u00a0", " "},
            {"\u202f", " "},
            {"°", ""},
            {"º", ""},
            {"−", "-"},
            {",", "."},
            {"CELSIUS", "C"},
            {"FAHRENHEIT", "F"},
            {"KELVIN", "K"},
            {"DEGC", "C"},
            {"DEGF", "F"}
        };
        for (String[] change : changes) {
            text = "SUBSTITUTE(" + text + ";\"" + change[0] + "\";\"" + change[1] + "\")";
        }
        return "TRIM(" + text + ")";
    }

    private static String unit(String text) {
        return "=IF(AND(LEN(" + text + ")>1;ISNUMBER(FIND(RIGHT(" + text + ";1);\"CFK\")));RIGHT(" + text + ";1);\"\")";
    }

    private static String unsigned(String text, String unit) {
        return "=TRIM(MID(" + text + ";IF(ISNUMBER(FIND(LEFT(" + text + "&\" \";1);\"+-\"));2;1);LEN(" + text + ")-LEN("
                + unit + ")-IF(ISNUMBER(FIND(LEFT(" + text + "&\" \";1);\"+-\"));1;0)))";
    }

    private static String number(String raw, String text, String digits) {
        String rest = digits;
        for (int digit = 0; digit < 10; digit++) {
            rest = "SUBSTITUTE(" + rest + ";\"" + digit + "\";\"\")";
        }
        StringBuilder gap = new StringBuilder();
        for (String one : GAPS) {
            gap.append(gap.length() == 0 ? "" : ";")
                    .append(text)
                    .append("=\"")
                    .append(one)
                    .append('"');
        }
        String whole = "VALUE(SUBSTITUTE(" + digits + ";\".\";\"\"))";
        String decimals = "IF(ISNUMBER(FIND(\".\";" + digits + "));LEN(" + digits + ")-FIND(\".\";" + digits + ");0)";
        return "=IF(ISNUMBER(" + raw + ");" + raw + ";IF(OR(" + gap + ");\"\";IF(AND(LEN(" + rest
                + ")<2;LEN(SUBSTITUTE(" + rest
                + ";\".\";\"\"))=0;LEN(SUBSTITUTE(" + digits + ";\".\";\"\"))>0);IF(LEFT(" + text + ";1)=\"-\";-1;1)*"
                + whole
                + "/10^" + decimals + ";" + UNREADABLE + ")))";
    }
}
