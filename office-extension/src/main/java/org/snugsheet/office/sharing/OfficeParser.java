package org.snugsheet.office.sharing;

import com.sun.star.sheet.FormulaLanguage;
import com.sun.star.sheet.FormulaMapGroup;
import com.sun.star.sheet.FormulaMapGroupSpecialOffset;
import com.sun.star.sheet.FormulaOpCodeMapEntry;
import com.sun.star.sheet.FormulaToken;
import com.sun.star.sheet.XFormulaOpCodeMapper;
import com.sun.star.sheet.XFormulaParser;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.snugsheet.office.uno.Uno;

/**
 * The office’s own parser of formulas. It reads them as the office’s interfaces give them, and its parts are what is written into
 * a cell, so that nothing is read in one way when it is judged and in another when it is written.
 */
final class OfficeParser {

    private final XFormulaParser parser;
    private final Map<Integer, String> functions = new HashMap<>();
    private final Set<Integer> signs = new HashSet<>();
    private final int value;
    private final int addIn;
    private final int name;
    private final int unknown;

    OfficeParser(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        Object made = Uno.make(document, "com.sun.star.sheet.FormulaParser");
        XFormulaOpCodeMapper codes =
                Uno.as(XFormulaOpCodeMapper.class, Uno.make(document, "com.sun.star.sheet.FormulaOpCodeMapper"));
        // Before the words, which take over how numbers are written: else 0.5 is unknown where people write 0,5.
        Uno.set(made, "CompileEnglish", true);
        // What XCell.getFormula writes, and what no other words for the same functions are.
        Uno.set(made, "OpCodeMap", codes.getAvailableMappings(FormulaLanguage.ODF_11, Integer.MAX_VALUE));
        parser = Uno.as(XFormulaParser.class, made);
        for (FormulaOpCodeMapEntry entry :
                codes.getAvailableMappings(FormulaLanguage.ENGLISH, FormulaMapGroup.FUNCTIONS)) {
            functions.put(entry.Token.OpCode, entry.Name);
        }
        int[] groups = {
            FormulaMapGroup.SEPARATORS,
            FormulaMapGroup.ARRAY_SEPARATORS,
            FormulaMapGroup.UNARY_OPERATORS,
            FormulaMapGroup.BINARY_OPERATORS
        };
        for (int group : groups) {
            for (FormulaOpCodeMapEntry entry : codes.getAvailableMappings(FormulaLanguage.ENGLISH, group)) {
                signs.add(entry.Token.OpCode);
            }
        }
        FormulaOpCodeMapEntry[] special = codes.getAvailableMappings(FormulaLanguage.ENGLISH, FormulaMapGroup.SPECIAL);
        value = special[FormulaMapGroupSpecialOffset.PUSH].Token.OpCode;
        addIn = special[FormulaMapGroupSpecialOffset.EXTERNAL].Token.OpCode;
        name = special[FormulaMapGroupSpecialOffset.NAME].Token.OpCode;
        unknown = special[FormulaMapGroupSpecialOffset.BAD].Token.OpCode;
        signs.add(special[FormulaMapGroupSpecialOffset.MISSING].Token.OpCode);
        signs.add(special[FormulaMapGroupSpecialOffset.SPACES].Token.OpCode);
    }

    /**
     * The parts of a formula.
     *
     * @param formula with its equals sign
     * @param at the cell it is in
     */
    FormulaToken[] parts(String formula, CellAddress at) {
        return parser.parseFormula(formula.startsWith("=") ? formula.substring(1) : formula, at);
    }

    /** The formula that parts make up. */
    String written(FormulaToken[] parts, CellAddress at) {
        return "=" + parser.printFormula(parts, at);
    }

    boolean isValue(FormulaToken part) {
        return part.OpCode == value;
    }

    boolean isAddIn(FormulaToken part) {
        return part.OpCode == addIn;
    }

    boolean isName(FormulaToken part) {
        return part.OpCode == name;
    }

    boolean isUnknown(FormulaToken part) {
        return part.OpCode == unknown;
    }

    /** Brackets, separators, operators, spaces and arguments left out. */
    boolean isSign(FormulaToken part) {
        return signs.contains(part.OpCode);
    }

    /** The English name of one of the office’s own functions. */
    Optional<String> function(FormulaToken part) {
        return Optional.ofNullable(functions.get(part.OpCode)).filter(found -> !found.isBlank());
    }
}
