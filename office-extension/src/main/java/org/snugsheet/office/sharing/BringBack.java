package org.snugsheet.office.sharing;

import com.sun.star.container.XNamed;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.sheet.FormulaToken;
import com.sun.star.sheet.XArrayFormulaTokens;
import com.sun.star.sheet.XFormulaTokens;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import com.sun.star.table.XCellRange;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;
import org.snugsheet.office.words.Language;

/** Brings the formulas back into a copy that {@link ShareCopy} made: first it says what it would do, then it does it. */
public final class BringBack {

    private final XSpreadsheetDocument copy;
    private final Proposal proposal;

    private BringBack(XSpreadsheetDocument copy) throws com.sun.star.uno.Exception {
        this.copy = copy;
        this.proposal = Proposal.of(copy);
    }

    /**
     * Looks at what a copy keeps; nothing is changed.
     *
     * @param copy the document
     * @return what can be brought back, and what not
     * @throws DeclinedException if it is no such copy
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static BringBack proposed(XSpreadsheetDocument copy) throws com.sun.star.uno.Exception {
        return new BringBack(copy);
    }

    /**
     * Brings back at once all that is safe.
     *
     * @param copy the document
     * @return how many formulas came back
     * @throws DeclinedException if it is no such copy, or a sheet has a password
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static int into(XSpreadsheetDocument copy) throws com.sun.star.uno.Exception {
        BringBack back = proposed(copy);
        back.carryOut(Progress.UNSEEN, Language.ENGLISH);
        return back.count();
    }

    /**
     * How many formulas will be written.
     *
     * @return their number
     */
    public int count() {
        return proposal.writes().size();
    }

    /**
     * What will be written and what not, with the reason for each, to be read before anything is done.
     *
     * @param language the language to tell it in
     * @return some lines of text
     */
    public String told(Language language) {
        return proposal.told(language);
    }

    /**
     * Writes them, as one step that can be undone.
     *
     * @param progress is told how far it is
     * @param language the language to tell it in
     * @return what is said afterwards
     * @throws DeclinedException if a sheet or the document’s structure has a password; then nothing is changed
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public String carryOut(Progress progress, Language language) throws com.sun.star.uno.Exception {
        XUndoManager undo = Uno.as(XUndoManagerSupplier.class, copy).getUndoManager();
        if (proposal.writes().isEmpty()) {
            return told(language);
        }
        checkLocks(undo);
        // It stays, so that undo finds the formulas of the copy what they were.
        Optional<String> steps = Optional.of(KeptFormulas.steps(copy)).filter(copy.getSheets()::hasByName);
        undo.enterUndoContext(language.words(SharingWords.UNDO));
        Optional<String> stays = Optional.empty();
        try {
            Map<CellAddress, String> notes = new LinkedHashMap<>();
            BatchedChanges.change(copy, () -> write(progress, notes));
            Warning.remove(copy, KeptFormulas.warningLines(copy), proposal.followed(), new OfficeParser(copy));
            String fingerprint = KeptFormulas.page(copy);
            Optional<XSpreadsheet> page = WorkedOutPage.of(copy, fingerprint);
            Optional<PageRemovalStep> gone = Optional.empty();
            if (page.isPresent() && WorkedOutPage.isSomebodys(copy, page.get(), fingerprint)) {
                stays = Optional.of(Uno.as(XNamed.class, page.get()).getName());
            } else if (page.isPresent()) {
                gone = Optional.of(new PageRemovalStep(copy, page.get()));
            }
            BringBackUndo kept = new BringBackUndo(
                    copy,
                    language.words(SharingWords.UNDO),
                    KeptFormulas.forget(copy),
                    notes,
                    proposal.writes().stream().filter(one -> one.kept().array()).toList(),
                    gone);
            undo.lock();
            try {
                kept.takePageAway();
            } finally {
                undo.unlock();
            }
            undo.addUndoAction(kept);
        } finally {
            undo.leaveUndoContext();
        }
        String said = language.say(SharingWords.BROUGHT_BACK, count());
        String refused = proposal.refusals(language);
        return said
                + stays.map(name -> "\n" + language.say(SharingWords.PAGE_STAYS, name))
                        .orElse("")
                + steps.map(name -> "\n" + language.say(SharingWords.STEPS_STAY, name))
                        .orElse("")
                + (refused.isEmpty() ? "" : "\n" + refused);
    }

    /** Before the first change, and without a step that could be undone. */
    private void checkLocks(XUndoManager undo) throws com.sun.star.uno.Exception {
        undo.lock();
        try {
            SheetProtection.check(copy, proposal.bySheet().keySet());
            SheetProtection.structure(copy, () -> {});
        } finally {
            undo.unlock();
        }
    }

    private void write(Progress progress, Map<CellAddress, String> notes) throws com.sun.star.uno.Exception {
        List<XSpreadsheet> sheets = Uno.sheets(copy);
        Map<Integer, List<Proposal.Write>> bySheet = proposal.bySheet();
        int done = 0;
        for (Map.Entry<Integer, List<Proposal.Write>> page : bySheet.entrySet()) {
            XSpreadsheet sheet = sheets.get(page.getKey());
            int before = done;
            SheetProtection.change(copy, sheet, () -> {
                // Before the formulas: a note on an array formula cannot be taken away alone.
                takeNotes(sheet, page.getValue(), notes);
                int count = before;
                for (Proposal.Write one : page.getValue()) {
                    enter(sheet, one);
                    progress.at(++count, count());
                }
            });
            done += page.getValue().size();
        }
    }

    private void takeNotes(XSpreadsheet sheet, List<Proposal.Write> writes, Map<CellAddress, String> notes)
            throws com.sun.star.uno.Exception {
        List<CellAddress> empty = new ArrayList<>();
        for (Proposal.Write one : writes) {
            CellAddress at = one.area().first();
            boolean isNoted = Notes.keeps(one.note(), one.keptText());
            String rest = isNoted ? Notes.without(one.note(), one.keptText()) : one.note();
            if (isNoted && rest.isEmpty()) {
                empty.add(at);
            } else if (isNoted) {
                notes.put(at, one.note());
                Notes.set(sheet, at, rest);
            } else if (one.note().isEmpty() && one.kept().noteBefore().isPresent()) {
                Notes.add(sheet, at, one.kept().noteBefore().get());
            }
        }
        Notes.remove(copy, empty);
    }

    /** Writes the formula itself. */
    static void enter(XSpreadsheet sheet, Proposal.Write one) throws com.sun.star.uno.Exception {
        Area area = one.area();
        XCellRange range = sheet.getCellRangeByPosition(area.left(), area.top(), area.right(), area.bottom());
        FormulaToken[] parts = one.parts().toArray(FormulaToken[]::new);
        if (one.kept().array()) {
            Uno.as(XArrayFormulaTokens.class, range).setArrayTokens(parts);
        } else {
            Uno.as(XFormulaTokens.class, range.getCellByPosition(0, 0)).setTokens(parts);
        }
    }
}
