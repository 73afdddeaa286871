package org.snugsheet.office.explaining;

import com.sun.star.sheet.FormulaLanguage;
import com.sun.star.sheet.FormulaMapGroup;
import com.sun.star.sheet.FormulaMapGroupSpecialOffset;
import com.sun.star.sheet.FormulaOpCodeMapEntry;
import com.sun.star.sheet.FormulaToken;
import com.sun.star.sheet.XFormulaOpCodeMapper;
import com.sun.star.sheet.XFormulaParser;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.FunctionIndex;
import org.snugsheet.office.uno.Uno;

/** Takes the formula of a cell apart, with the office’s own parser, into the calls of Snugsheet functions. */
final class FormulaCalls {

    /**
     * One call.
     *
     * @param function the function
     * @param arguments the tokens of each argument; none where it is left out between separators
     * @param isWhole whether this call is the whole formula
     */
    record Call(FunctionDeclaration function, List<List<FormulaToken>> arguments, boolean isWhole) {}

    private final XFormulaParser parser;
    private final XFormulaParser printer;
    private final CellAddress cell;
    private final String shownSeparator;
    private final int value;
    private final int open;
    private final int close;
    private final int separator;

    private FormulaCalls(XFormulaParser parser, XFormulaParser printer, CellAddress cell, XFormulaOpCodeMapper codes)
            throws com.sun.star.uno.Exception {
        FormulaOpCodeMapEntry[] signs = codes.getAvailableMappings(FormulaLanguage.ENGLISH, FormulaMapGroup.SEPARATORS);
        this.parser = parser;
        this.printer = printer;
        this.cell = cell;
        this.value = codes.getAvailableMappings(FormulaLanguage.ENGLISH, FormulaMapGroup.SPECIAL)[
                FormulaMapGroupSpecialOffset.PUSH]
                .Token
                .OpCode;
        this.open = code(signs, "(");
        this.close = code(signs, ")");
        this.separator = code(signs, ";");
        this.shownSeparator = Arrays.stream(
                        codes.getAvailableMappings(FormulaLanguage.NATIVE, FormulaMapGroup.SEPARATORS))
                .filter(entry -> entry.Token.OpCode == separator)
                .map(entry -> entry.Name)
                .findFirst()
                .orElse(";");
    }

    static FormulaCalls in(XSpreadsheetDocument document, CellAddress cell) throws com.sun.star.uno.Exception {
        Object parser = Uno.make(document, "com.sun.star.sheet.FormulaParser");
        Uno.set(parser, "CompileEnglish", true);
        // Left alone, it writes as the formula bar does: with the user’s own separators and names.
        Object printer = Uno.make(document, "com.sun.star.sheet.FormulaParser");
        XFormulaOpCodeMapper codes =
                Uno.as(XFormulaOpCodeMapper.class, Uno.make(document, "com.sun.star.sheet.FormulaOpCodeMapper"));
        return new FormulaCalls(
                Uno.as(XFormulaParser.class, parser), Uno.as(XFormulaParser.class, printer), cell, codes);
    }

    /** The calls of a formula such as {@code =2*COOL.RATE(A1:A5;B1:B5;C1)}; those within another come before it. */
    List<Call> of(String formula) {
        String bare = formula.replaceFirst("^\\{?=", "").replaceFirst(formula.startsWith("{") ? "}$" : "$", "");
        List<Call> calls = new ArrayList<>();
        collect(List.of(parser.parseFormula(bare, cell)), calls, true);
        return calls;
    }

    /** The separator between two arguments in the formula bar. */
    String separator() {
        return shownSeparator;
    }

    /** A formula as the formula bar has it, without what makes it a formula. */
    String shown(List<FormulaToken> tokens) {
        return FunctionIndex.asTyped(printer.printFormula(tokens.toArray(FormulaToken[]::new), cell));
    }

    /** A word that the office knows neither as a name nor as cells, if there is one among these tokens. */
    Optional<String> unknownWord(List<FormulaToken> tokens) {
        return tokens.stream()
                .filter(token -> token.OpCode != value)
                .filter(token -> token.Data instanceof String name
                        && FunctionIndex.stored(name).isEmpty())
                .map(token -> String.valueOf(token.Data))
                .filter(word -> !word.isBlank())
                .findFirst();
    }

    /** Tokens as they are typed, in English with semicolons. */
    String written(List<FormulaToken> tokens) {
        return FunctionIndex.asTyped(parser.printFormula(tokens.toArray(FormulaToken[]::new), cell));
    }

    private void collect(List<FormulaToken> tokens, List<Call> calls, boolean isWhole) {
        for (int i = 0; i + 1 < tokens.size(); i++) {
            Optional<FunctionDeclaration> function =
                    tokens.get(i).Data instanceof String name ? FunctionIndex.stored(name) : Optional.empty();
            if (function.isPresent() && tokens.get(i + 1).OpCode == open) {
                List<List<FormulaToken>> arguments = arguments(tokens, i + 2);
                arguments.forEach(argument -> collect(argument, calls, false));
                int end = i + 1 + arguments.stream().mapToInt(List::size).sum() + Math.max(1, arguments.size());
                calls.add(new Call(function.get(), arguments, isWhole && i == 0 && end == tokens.size() - 1));
                i = end;
            }
        }
    }

    private List<List<FormulaToken>> arguments(List<FormulaToken> tokens, int from) {
        List<List<FormulaToken>> arguments = new ArrayList<>();
        List<FormulaToken> argument = new ArrayList<>();
        int depth = 0;
        for (int i = from; i < tokens.size(); i++) {
            FormulaToken token = tokens.get(i);
            if (depth == 0 && (token.OpCode == separator || token.OpCode == close)) {
                arguments.add(List.copyOf(argument));
                argument.clear();
                if (token.OpCode == close) {
                    break;
                }
            } else {
                depth += token.OpCode == open ? 1 : token.OpCode == close ? -1 : 0;
                argument.add(token);
            }
        }
        // Empty brackets hold no argument at all.
        boolean none = arguments.size() == 1 && arguments.get(0).isEmpty();
        return none ? List.of() : arguments;
    }

    private static int code(FormulaOpCodeMapEntry[] signs, String sign) {
        return Arrays.stream(signs)
                .filter(entry -> entry.Name.equals(sign))
                .mapToInt(entry -> entry.Token.OpCode)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("The office’s parser knows no " + sign));
    }
}
