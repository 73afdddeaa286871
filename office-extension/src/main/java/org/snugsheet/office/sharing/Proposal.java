package org.snugsheet.office.sharing;

import com.sun.star.container.XNamed;
import com.sun.star.sheet.FormulaToken;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.snugsheet.office.functions.FunctionIndex;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;
import org.snugsheet.office.words.Language;

/**
 * What would be brought back into a copy, and what not and why. Copies come from strangers: a formula counts only as long as its answer
 * is still in the cell that carries its note, and only if it is {@link Harmless}.
 */
final class Proposal {

    /**
     * A formula to write.
     *
     * @param kept what the copy keeps of it
     * @param area its cells now
     * @param note the whole note on its first cell
     * @param parts what is written, judged as it is
     * @param shown the formula as a person types it
     */
    record Write(KeptFormula kept, Area area, String note, List<FormulaToken> parts, String shown) {

        /** The formula as its note shows it. */
        String keptText() {
            return FunctionIndex.asTyped(kept.formula());
        }
    }

    /**
     * A formula that stays out.
     *
     * @param where its sheet and cells
     * @param formula the formula
     * @param reason why
     */
    record Refused(String where, String formula, RefusalReason reason) {}

    private final List<XSpreadsheet> sheets;
    private final List<String> names = new ArrayList<>();
    private final OfficeParser parser;
    private final Harmless harmless;
    private final Map<Integer, Optional<Area>> followed;
    private final Map<Integer, SheetBlocks> cells = new HashMap<>();
    private final NoteFinder notes;
    private final List<Write> writes = new ArrayList<>();
    private final List<Refused> refused = new ArrayList<>();

    private Proposal(XSpreadsheetDocument copy) throws com.sun.star.uno.Exception {
        sheets = Uno.sheets(copy);
        for (XSpreadsheet sheet : sheets) {
            names.add(Uno.as(XNamed.class, sheet).getName());
        }
        notes = new NoteFinder(sheets);
        parser = new OfficeParser(copy);
        harmless = new Harmless(parser, copy);
        followed = FollowedCells.read(copy, parser);
    }

    static Proposal of(XSpreadsheetDocument copy) throws com.sun.star.uno.Exception {
        List<KeptFormula> formulas = KeptFormulas.read(copy);
        if (formulas.isEmpty()) {
            throw new DeclinedException(SharingWords.IS_NO_COPY);
        }
        Proposal proposal = new Proposal(copy);
        for (KeptFormula formula : formulas) {
            proposal.judge(formula);
        }
        return proposal;
    }

    List<Write> writes() {
        return writes;
    }

    Map<Integer, Optional<Area>> followed() {
        return followed;
    }

    Map<Integer, List<Write>> bySheet() {
        return writes.stream()
                .collect(Collectors.groupingBy(one -> one.area().sheet(), TreeMap::new, Collectors.toList()));
    }

    String told(Language language) {
        String all = writes.stream()
                .map(one -> names.get(one.area().sheet()) + "." + one.area().cellNames() + ":  " + one.shown())
                .collect(Collectors.joining("\n"));
        String first = writes.isEmpty()
                ? language.words(SharingWords.NONE_TO_WRITE)
                : language.say(SharingWords.TO_WRITE, writes.size()) + "\n" + all;
        String rest = refusals(language);
        return rest.isEmpty() ? first : first + "\n\n" + rest;
    }

    /** What stays out, with its reasons; empty if nothing does. */
    String refusals(Language language) {
        return refused.isEmpty()
                ? ""
                : language.say(SharingWords.STAY_OUT, refused.size()) + "\n"
                        + refused.stream()
                                .map(one -> one.where() + ":  " + one.reason().in(language) + "  " + one.formula())
                                .collect(Collectors.joining("\n"));
    }

    private void judge(KeptFormula kept) throws com.sun.star.uno.Exception {
        Optional<RefusalReason> unread = Harmless.beforeParsing(kept.formula());
        if (unread.isPresent()) {
            refuse(kept, unread.get());
            return;
        }
        Optional<Area> expected = expected(kept);
        if (expected.isEmpty()) {
            refuse(
                    kept,
                    isFollowed(kept)
                            ? new RefusalReason(RefusalWords.PLACE_GONE)
                            : new RefusalReason(RefusalWords.SHEET_GONE, kept.sheet()));
            return;
        }
        Area was = expected.get();
        Optional<Notes.CellKey> cell = notes.cell(kept, was, isFollowed(kept));
        if (cell.isEmpty()) {
            refuse(kept, new RefusalReason(RefusalWords.NO_NOTE));
            return;
        }
        Area is = new Area(
                was.sheet(),
                cell.get().column(),
                cell.get().row(),
                cell.get().column() + was.columns() - 1,
                cell.get().row() + was.rows() - 1);
        if (!isOnSheet(is)) {
            refuse(kept, new RefusalReason(RefusalWords.PLACE_GONE));
            return;
        }
        place(kept, was, is);
    }

    /** A crafted copy may name any cells. */
    private boolean isOnSheet(Area area) {
        CellRangeAddress all =
                Uno.as(XCellRangeAddressable.class, sheets.get(area.sheet())).getRangeAddress();
        return area.right() <= all.EndColumn && area.bottom() <= all.EndRow;
    }

    /** Where its cells should be, by the page that follows them or as the copy was made. */
    private Optional<Area> expected(KeptFormula kept) throws com.sun.star.uno.Exception {
        if (isFollowed(kept)) {
            Optional<Area> place = whereNow(kept.places().get(0));
            // One that grew or shrank is no longer the block of answers.
            return place.filter(area -> area.sheet() < sheets.size());
        }
        int sheet = names.indexOf(kept.sheet());
        return sheet < 0 ? Optional.empty() : Area.read(sheet, kept.cells());
    }

    private Optional<Area> whereNow(int place) {
        return followed.getOrDefault(place, Optional.empty());
    }

    private boolean isFollowed(KeptFormula kept) {
        return !kept.places().isEmpty() && followed.containsKey(kept.places().get(0));
    }

    private void place(KeptFormula kept, Area was, Area is) throws com.sun.star.uno.Exception {
        if (kept.answers().isEmpty() && !is.equals(was)) {
            refuse(kept, new RefusalReason(RefusalWords.MOVED));
            return;
        }
        boolean stands = kept.living()
                ? areFormulas(is)
                : kept.answers().isPresent()
                        ? fits(kept.answers().get(), is) && kept.answers().get().standIn(cells(is.sheet()), is)
                        : ShownValues.areValues(cells(is.sheet()), is);
        if (!stands) {
            refuse(kept, new RefusalReason(RefusalWords.TYPED_OVER));
            return;
        }
        CellAddress at = is.first();
        FormulaToken[] parts = parser.parts(kept.formula(), at(kept, was));
        Optional<RefusalReason> harm = harmless.ours(parts);
        if (harm.isEmpty() && !pointToNow(kept, parts, was, is)) {
            harm = Optional.of(new RefusalReason(RefusalWords.READINGS_GONE));
        }
        // Once more, as it will be written.
        harm = harm.isPresent() ? harm : harmless.ours(parts);
        if (harm.isPresent()) {
            refuse(kept, harm.get());
            return;
        }
        String note = notes.at(is.sheet(), new Notes.CellKey(is.left(), is.top()));
        writes.add(new Write(kept, is, note, List.of(parts), FunctionIndex.asTyped(parser.written(parts, at))));
    }

    /** In a copy that goes on working other formulas stand there, whose answers change; whoever typed something wrote over them. */
    private boolean areFormulas(Area is) throws com.sun.star.uno.Exception {
        SheetBlocks sheet = cells(is.sheet());
        for (int row = is.top(); row <= is.bottom(); row++) {
            for (int column = is.left(); column <= is.right(); column++) {
                String formula = sheet.formula(column, row);
                if (!formula.startsWith("=") && !formula.startsWith("{=")) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean fits(ShownValues answers, Area is) {
        return answers.rows().size() == is.rows()
                && answers.rows().stream().allMatch(row -> row.size() == is.columns());
    }

    /** The cell the formula was kept for: its references are read from there. */
    private static CellAddress at(KeptFormula kept, Area was) {
        return Area.read(was.sheet(), kept.cells()).orElse(was).first();
    }

    private SheetBlocks cells(int sheet) throws com.sun.star.uno.Exception {
        SheetBlocks known = cells.get(sheet);
        if (known == null) {
            known = new SheetBlocks(sheets.get(sheet));
            cells.put(sheet, known);
        }
        return known;
    }

    /** Turns each reference to where its cells are now; false if some were deleted. */
    private boolean pointToNow(KeptFormula kept, FormulaToken[] parts, Area was, Area is)
            throws com.sun.star.uno.Exception {
        CellAddress then = at(kept, was);
        int place = 1;
        for (FormulaToken part : parts) {
            Optional<Area> named = Area.named(part.Data, then);
            if (named.isEmpty()) {
                continue;
            }
            Optional<Area> now = kept.places().isEmpty() ? named : now(kept, place, named.get());
            place++;
            if (now.isEmpty()) {
                return false;
            }
            part.Data = sorted(now.get(), was, is).as(part.Data, is.first());
        }
        return true;
    }

    private Optional<Area> now(KeptFormula kept, int place, Area named) {
        if (place >= kept.places().size() || !followed.containsKey(kept.places().get(place))) {
            return Optional.of(named);
        }
        return whereNow(kept.places().get(place));
    }

    /** A formula that was sorted to another row takes what it reads in its own row along. */
    private static Area sorted(Area area, Area was, Area is) {
        boolean isOwnRow = area.sheet() == was.sheet() && area.top() == was.top() && area.bottom() == was.top();
        return isOwnRow && was.left() == is.left() ? area.down(is.top() - was.top()) : area;
    }

    private void refuse(KeptFormula kept, RefusalReason reason) {
        refused.add(new Refused(kept.sheet() + "." + kept.cells(), FunctionIndex.asTyped(kept.formula()), reason));
    }
}
