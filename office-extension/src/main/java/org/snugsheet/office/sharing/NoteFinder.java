package org.snugsheet.office.sharing;

import com.sun.star.sheet.XSpreadsheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.snugsheet.office.functions.FunctionIndex;

/** Finds the notes of kept formulas in a copy, in which cells may have been sorted. Each sheet is read once. */
final class NoteFinder {

    private final List<XSpreadsheet> sheets;
    private final Map<Integer, Map<Notes.CellKey, String>> notes = new HashMap<>();
    private final Map<Integer, Map<String, List<Notes.CellKey>>> byText = new HashMap<>();
    private final Set<Area> claimed = new HashSet<>();

    NoteFinder(List<XSpreadsheet> sheets) {
        this.sheets = sheets;
    }

    /** The whole note on a cell; empty if there is none. */
    String at(int sheet, Notes.CellKey cell) throws com.sun.star.uno.Exception {
        return notesOf(sheet).getOrDefault(cell, "");
    }

    /**
     * The cell that carries the note of a formula now: where it is expected, or wherever it was sorted to. No cell is found twice.
     *
     * @param kept what the copy keeps of the formula
     * @param was its cells, as expected
     * @param isFollowed whether the copy follows these cells by a formula of its own
     */
    Optional<Notes.CellKey> cell(KeptFormula kept, Area was, boolean isFollowed) throws com.sun.star.uno.Exception {
        Map<Notes.CellKey, String> here = notesOf(was.sheet());
        String text = FunctionIndex.asTyped(kept.formula());
        Notes.CellKey first = new Notes.CellKey(was.left(), was.top());
        if (Notes.keeps(here.getOrDefault(first, ""), text) && !isClaimed(was.sheet(), first)) {
            return claim(was.sheet(), first);
        }
        for (Notes.CellKey key : byText.getOrDefault(was.sheet(), Map.of()).getOrDefault(text, List.of())) {
            if (!isClaimed(was.sheet(), key)) {
                return claim(was.sheet(), key);
            }
        }
        for (Map.Entry<Notes.CellKey, String> note : here.entrySet()) {
            if (Notes.keeps(note.getValue(), text) && !isClaimed(was.sheet(), note.getKey())) {
                return claim(was.sheet(), note.getKey());
            }
        }
        // Some offices lose notes. Where the cell is followed and its answer is known, that is enough.
        return kept.answers().isPresent() && isFollowed && !isClaimed(was.sheet(), first)
                ? claim(was.sheet(), first)
                : Optional.empty();
    }

    private Map<Notes.CellKey, String> notesOf(int sheet) throws com.sun.star.uno.Exception {
        Map<Notes.CellKey, String> known = notes.get(sheet);
        if (known != null) {
            return known;
        }
        Map<Notes.CellKey, String> here = Notes.of(sheets.get(sheet));
        notes.put(sheet, here);
        Map<String, List<Notes.CellKey>> texts = new HashMap<>();
        here.forEach((key, text) ->
                texts.computeIfAbsent(text, first -> new ArrayList<>()).add(key));
        byText.put(sheet, texts);
        return here;
    }

    private boolean isClaimed(int sheet, Notes.CellKey key) {
        return claimed.contains(new Area(sheet, key.column(), key.row(), key.column(), key.row()));
    }

    private Optional<Notes.CellKey> claim(int sheet, Notes.CellKey key) {
        claimed.add(new Area(sheet, key.column(), key.row(), key.column(), key.row()));
        return Optional.of(key);
    }
}
