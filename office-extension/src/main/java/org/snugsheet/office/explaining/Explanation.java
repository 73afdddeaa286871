package org.snugsheet.office.explaining;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.FormulaToken;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import com.sun.star.table.XCell;
import com.sun.star.text.XText;
import com.sun.star.uno.XComponentContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snugsheet.engine.Refusal;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.declare.FunctionDeclaration.ArgumentDeclaration;
import org.snugsheet.office.explaining.FormulaCalls.Call;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Declined;
import org.snugsheet.office.words.Language;

/** What is to be said of one cell. */
public final class Explanation {

    /** The office’s error of a name that it does not know. */
    private static final int NO_NAME = 525;

    private final XSpreadsheetDocument document;
    private final Language language;
    private final XCell cell;
    private final String name;

    private Explanation(XSpreadsheetDocument document, Language language, XCell cell, String name) {
        this.document = document;
        this.language = language;
        this.cell = cell;
        this.name = name;
    }

    /**
     * Explains a cell.
     *
     * @param office the office’s context
     * @param document the document
     * @param at the cell
     * @param language the language to say it in
     * @return a few paragraphs
     * @throws Declined if there is nothing of ours in the cell
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static String of(XComponentContext office, XSpreadsheetDocument document, CellAddress at, Language language)
            throws com.sun.star.uno.Exception {
        XCell cell = Uno.sheets(document).get(at.Sheet).getCellByPosition(at.Column, at.Row);
        String name = CellName.of(at.Column, at.Row);
        FormulaCalls formula = FormulaCalls.in(document, at);
        List<Call> calls = formula.of(cell.getFormula());
        if (calls.isEmpty()) {
            throw new Declined(
                    cell.getError() == NO_NAME ? ExplainingWords.UNKNOWN_NAME : ExplainingWords.NO_FUNCTION_OF_OURS,
                    name);
        }
        try (HiddenCopy copy = new HiddenCopy(office, document)) {
            return new Explanation(document, language, cell, name).of(calls, new Givens(document, at, formula, copy));
        }
    }

    private String of(List<Call> calls, Givens givens) throws com.sun.star.uno.Exception {
        // The first that cannot answer is the one to mend; else the outermost is the one asked about.
        Told told = null;
        for (Call call : calls) {
            told = told(call, givens);
            if (told.trouble().isPresent()) {
                break;
            }
        }
        if (told == null) {
            throw new IllegalStateException("no call");
        }
        FunctionDeclaration function = told.function();
        List<String> paragraphs = new ArrayList<>();
        paragraphs.add(language.say(ExplainingWords.HEAD, name, function.signature(language)));
        paragraphs.add(function.text(language));
        if (!told.arguments().isEmpty()) {
            paragraphs.add(language.words(ExplainingWords.GIVEN) + "\n" + String.join("\n", told.arguments()));
        }
        paragraphs.add(told.trouble().isPresent() ? told.trouble().get() : answer());
        String others = calls.stream()
                .map(Call::function)
                .filter(other -> !other.equals(function))
                .map(FunctionDeclaration::name)
                .distinct()
                .collect(Collectors.joining(", "));
        if (!others.isEmpty()) {
            paragraphs.add(language.say(ExplainingWords.ALSO, others));
        }
        return String.join("\n\n", paragraphs);
    }

    /** What is to be said of one call: its arguments line by line, and why it cannot answer, if it cannot. */
    private record Told(FunctionDeclaration function, List<String> arguments, Optional<String> trouble) {}

    private Told told(Call call, Givens lookUp) throws com.sun.star.uno.Exception {
        List<Given> givens = new ArrayList<>();
        for (List<FormulaToken> argument : call.arguments()) {
            givens.add(lookUp.of(argument));
        }
        List<ArgumentDeclaration> declared = call.function().arguments();
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < declared.size(); i++) {
            lines.add(
                    new GivenWords(language).line(declared.get(i), i < givens.size() ? givens.get(i) : Given.LEFT_OUT));
        }
        return new Told(call.function(), lines, trouble(call.function(), givens));
    }

    private Optional<String> trouble(FunctionDeclaration function, List<Given> givens) {
        List<ArgumentDeclaration> declared = function.arguments();
        long needed = declared.stream().filter(argument -> !argument.optional()).count();
        if (givens.size() > declared.size()) {
            return Optional.of(language.say(ExplainingWords.TOO_MANY, givens.size(), declared.size()));
        }
        if (givens.size() < needed || givens.stream().limit(needed).anyMatch(Given::isLeftOut)) {
            long given = givens.stream()
                    .limit(needed)
                    .filter(one -> !one.isLeftOut())
                    .count();
            return Optional.of(language.say(ExplainingWords.TOO_FEW, given, needed));
        }
        Optional<String> error =
                givens.stream().flatMap(one -> one.error().stream()).findFirst();
        if (error.isPresent()) {
            return Optional.of(language.say(ExplainingWords.ERROR_GIVEN, error.get()));
        }
        if (!givens.stream().allMatch(Given::isKnown)) {
            return Optional.empty();
        }
        List<Given> all = new ArrayList<>(givens);
        while (all.size() < declared.size()) {
            all.add(Given.LEFT_OUT);
        }
        return Rerun.refusal(function, all, Uno.as(XPropertySet.class, document))
                .map(Refusal::finding)
                .map(language::say)
                .map(sentence -> language.say(ExplainingWords.REFUSED, sentence));
    }

    private String answer() throws com.sun.star.uno.Exception {
        String shown = Uno.as(XText.class, cell).getString();
        if (cell.getError() != 0) {
            return language.say(ExplainingWords.ANOTHER_PART, shown);
        }
        if (Uno.property(cell, "FormulaResultType2").equals(FormulaResult.VALUE)) {
            shown = new GivenWords(language).value(cell.getValue());
        }
        boolean table = cell.getFormula().startsWith("{");
        return language.say(table ? ExplainingWords.ANSWERS_TABLE : ExplainingWords.ANSWERS, shown);
    }
}
