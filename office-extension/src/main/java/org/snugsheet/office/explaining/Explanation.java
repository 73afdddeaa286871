package org.snugsheet.office.explaining;

import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.FormulaToken;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.text.XText;
import com.sun.star.uno.XComponentContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.declare.FunctionDeclaration.ArgumentDeclaration;
import org.snugsheet.office.explaining.FormulaCalls.Call;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;
import org.snugsheet.office.words.Language;

/** The explanation of one cell. */
public final class Explanation {

    /** The office’s error of a name that it does not know. */
    private static final int NO_NAME = 525;

    private final XSpreadsheetDocument document;
    private final Language language;
    private final XCell cell;
    private final CellAddress at;
    private final String name;
    private final String separator;

    private Explanation(
            XSpreadsheetDocument document, Language language, XCell cell, CellAddress at, String separator) {
        this.document = document;
        this.language = language;
        this.cell = cell;
        this.at = at;
        this.name = CellName.of(at.Column, at.Row);
        this.separator = separator;
    }

    /**
     * Explains a cell.
     *
     * @param office the office’s context
     * @param document the document
     * @param at the cell
     * @param language the language to say it in
     * @return a few paragraphs
     * @throws DeclinedException if the cell has none of these functions
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static String of(XComponentContext office, XSpreadsheetDocument document, CellAddress at, Language language)
            throws com.sun.star.uno.Exception {
        XCell cell = Uno.sheets(document).get(at.Sheet).getCellByPosition(at.Column, at.Row);
        String name = CellName.of(at.Column, at.Row);
        FormulaCalls formula = FormulaCalls.in(document, at);
        List<Call> calls = formula.of(cell.getFormula());
        if (calls.isEmpty()) {
            throw new DeclinedException(
                    cell.getError() == NO_NAME ? ExplainingWords.UNKNOWN_NAME : ExplainingWords.NO_FUNCTION_OF_OURS,
                    name);
        }
        try (HiddenCopy copy = new HiddenCopy(office, document)) {
            return new Explanation(document, language, cell, at, formula.separator())
                    .of(calls, new ArgumentValues(document, at, formula, copy));
        }
    }

    private String of(List<Call> calls, ArgumentValues givens) throws com.sun.star.uno.Exception {
        // The first that cannot answer is the one to fix; otherwise the outermost is the one asked about.
        List<CallExplanation> all = new ArrayList<>();
        for (Call call : calls) {
            all.add(told(call, givens));
            if (all.get(all.size() - 1).problem().isPresent()) {
                break;
            }
        }
        CallExplanation told = all.remove(all.size() - 1);
        FunctionDeclaration function = told.call().function();
        List<String> paragraphs = new ArrayList<>();
        paragraphs.add(language.say(ExplainingWords.HEAD, name, withSeparator(function.signature(language)))
                + "\n"
                + language.say(ExplainingWords.FORMULA, Uno.property(cell, "FormulaLocal")));
        // First what was asked for: a window shows no more than the first half of a long explanation.
        paragraphs.add(told.problem().isPresent() ? told.problem().get() : answer(told));
        WhatCanHurt.in(function, told.givens(), language)
                .filter(caution -> !paragraphs.get(1).contains(caution))
                .ifPresent(paragraphs::add);
        paragraphs.add(function.text(language));
        if (!told.lines().isEmpty()) {
            paragraphs.add(language.words(ExplainingWords.GIVEN) + "\n" + String.join("\n", told.lines()));
        }
        List<String> others = new ArrayList<>();
        all.forEach(other -> others.add(inShort(other)));
        calls.subList(all.size() + 1, calls.size())
                .forEach(unasked -> others.add(language.say(
                        ExplainingWords.ALSO_ASKED, unasked.function().name())));
        if (!others.isEmpty()) {
            paragraphs.add(language.words(ExplainingWords.ALSO) + "\n"
                    + others.stream().distinct().collect(Collectors.joining("\n")));
        }
        return String.join("\n\n", paragraphs);
    }

    /** Explains one call: its arguments line by line, and its answer or why there is none. */
    private record CallExplanation(
            Call call,
            List<ArgumentValue> givens,
            List<String> lines,
            Optional<Object> answer,
            Optional<String> problem) {}

    private CallExplanation told(Call call, ArgumentValues lookUp) throws com.sun.star.uno.Exception {
        List<ArgumentValue> givens = new ArrayList<>();
        for (List<FormulaToken> argument : call.arguments()) {
            givens.add(lookUp.of(argument));
        }
        List<ArgumentDeclaration> declared = call.function().arguments();
        List<ArgumentValue> all = new ArrayList<>(givens);
        while (all.size() < declared.size()) {
            all.add(ArgumentValue.LEFT_OUT);
        }
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < declared.size(); i++) {
            lines.add(new GivenWords(language).line(declared.get(i), all.get(i)));
        }
        Optional<String> problem = faults(call.function(), givens);
        if (problem.isPresent() || !all.stream().allMatch(ArgumentValue::isKnown)) {
            return new CallExplanation(call, all, lines, Optional.empty(), problem);
        }
        CallReplay.Result result = CallReplay.of(call.function(), all, language);
        return new CallExplanation(
                call,
                all,
                lines,
                result.answer(),
                result.refusal().map(refusal -> language.say(ExplainingWords.REFUSED, reason(refusal, all))));
    }

    /** What is wrong before any value is looked at. */
    private Optional<String> faults(FunctionDeclaration function, List<ArgumentValue> givens) {
        int most = function.arguments().size();
        long needed = function.arguments().stream()
                .filter(argument -> !argument.optional())
                .count();
        if (givens.size() > most) {
            return Optional.of(language.say(ExplainingWords.TOO_MANY, givens.size(), most, separator));
        }
        if (givens.size() < needed || givens.stream().limit(needed).anyMatch(ArgumentValue::isLeftOut)) {
            long given = givens.stream()
                    .limit(needed)
                    .filter(one -> !one.isLeftOut())
                    .count();
            return Optional.of(language.say(ExplainingWords.TOO_FEW, given, needed, separator));
        }
        Optional<ArgumentValue.Fault> fault =
                givens.stream().flatMap(one -> one.fault().stream()).findFirst();
        if (fault.isPresent()) {
            return Optional.of(language.say(
                    ExplainingWords.REFUSED,
                    language.say(fault.get().words(), fault.get().what())));
        }
        return givens.stream()
                .flatMap(one -> one.error().stream())
                .findFirst()
                .map(error -> language.say(ExplainingWords.ERROR_GIVEN, error));
    }

    private String reason(InvalidInputException refusal, List<ArgumentValue> givens) {
        String sentence = language.say(refusal.finding());
        return Headings.blamed(refusal, givens)
                // To type a number over a heading is not the way out.
                .map(headings -> Finding.whatIsWrong(sentence) + " " + headings.words(language))
                .orElse(sentence);
    }

    private String answer(CallExplanation told) throws com.sun.star.uno.Exception {
        String inCell = Uno.as(XText.class, cell).getString();
        if (cell.getError() != 0) {
            return told.givens().stream()
                    .filter(given -> given.manyAtOnce() && !cell.getFormula().startsWith("{"))
                    .findFirst()
                    .map(given -> language.say(ExplainingWords.ARRAY_NEEDED, given.written(), inCell))
                    .orElseGet(() -> language.say(ExplainingWords.ANOTHER_PART, inCell));
        }
        boolean number = Uno.property(cell, "FormulaResultType2").equals(FormulaResult.VALUE);
        String shown = number ? new GivenWords(language).value(cell.getValue()) : inCell;
        List<String> parts = new ArrayList<>();
        boolean whole = told.call().isWhole();
        Optional<String> meaning = meaning(told);
        if (whole && told.answer().orElse("") instanceof Object[][] table && isInOneCell()) {
            parts.add(language.say(ExplainingWords.FIRST_HEAD, table.length, table[0].length));
        } else if (cell.getFormula().startsWith("{")) {
            parts.add(language.say(ExplainingWords.ANSWERS_TABLE, shown));
        } else if (whole && meaning.isEmpty()) {
            parts.add(language.say(ExplainingWords.ANSWERS, shown));
        }
        meaning.ifPresent(sentence -> parts.add(language.say(ExplainingWords.IN_WORDS, sentence)));
        if (!whole) {
            if (meaning.isEmpty()) {
                value(told).ifPresent(value -> parts.add(language.say(ExplainingWords.ANSWERS, value)));
            }
            parts.add(language.say(ExplainingWords.WHOLE_FORMULA, shown));
        }
        // What a check says of a heading, its cell shows without knowing that it is one.
        if (told.call().function().name().startsWith("CHECK.")) {
            Headings.anywhere(told.givens(), shown).ifPresent(headings -> parts.add(headings.words(language)));
        }
        return String.join("\n\n", parts);
    }

    /** Entered with Enter, or into one cell alone. */
    private boolean isInOneCell() throws com.sun.star.uno.Exception {
        CellRangeAddress area = WholeTable.area(document, at);
        return area.StartColumn == area.EndColumn && area.StartRow == area.EndRow;
    }

    private String inShort(CallExplanation other) {
        String asked = withSeparator(other.call().function().name()
                + other.givens().stream()
                        .map(ArgumentValue::written)
                        .collect(Collectors.joining("; ", "(", ")"))
                        .replaceFirst("(; )+\\)$", ")"));
        return meaning(other)
                .or(() -> value(other))
                .map(answer -> language.say(ExplainingWords.ALSO_ANSWERED, asked, answer))
                .orElseGet(() -> language.say(ExplainingWords.ALSO_ASKED, asked));
    }

    private Optional<String> meaning(CallExplanation told) {
        return told.answer().flatMap(answer -> Meaning.of(told.call().function(), told.givens(), answer, language));
    }

    private Optional<String> value(CallExplanation told) {
        return told.answer()
                .filter(answer -> answer instanceof Double || answer instanceof String)
                .map(answer -> new GivenWords(language).value(answer));
    }

    /** As the formula bar separates arguments. */
    private String withSeparator(String typed) {
        return typed.replace("; ", separator.strip() + " ");
    }
}
