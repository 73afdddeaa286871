package org.snugsheet.office.sharing.living;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.snugsheet.office.uno.CellName;

/** The cells of the page on which a copy works things out: numbers, texts, and formulas that begin with an equals sign. */
public final class StepsPage {

    private static final int GAP = 2;

    private final String name;
    private final NavigableMap<Integer, NavigableMap<Integer, Object>> rows = new TreeMap<>();
    private final List<Integer> titles = new ArrayList<>();
    private final NavigableMap<Integer, Integer> heads = new TreeMap<>();
    private final Map<String, String> subjects = new HashMap<>();
    private final List<Begun> begun = new ArrayList<>();
    private final List<Integer> planned;
    private final int first;
    private int next;

    /** A block: what it is about and where it begins. */
    private record Begun(String subject, int top) {}

    /**
     * An empty page.
     *
     * @param name its name
     * @param first the first row that may be used, from 0
     */
    public StepsPage(String name, int first) {
        this(name, first, first, List.of());
    }

    private StepsPage(String name, int first, int next, List<Integer> planned) {
        this.name = name;
        this.first = first;
        this.next = next;
        this.planned = planned;
    }

    /**
     * An empty page on which the same blocks, made once more, are in order: all that is about one jar stands together. So each jar’s formulas
     * are as far from each other as the next one’s, and can be shared ones.
     *
     * @return the page
     */
    public StepsPage inOrder() {
        int end = below();
        Map<String, List<Integer>> bySubject = new LinkedHashMap<>();
        for (int i = 0; i < begun.size(); i++) {
            bySubject
                    .computeIfAbsent(begun.get(i).subject(), one -> new ArrayList<>())
                    .add(i);
        }
        Integer[] tops = new Integer[begun.size()];
        int top = first;
        for (List<Integer> blocks : bySubject.values()) {
            for (int i : blocks) {
                tops[i] = top;
                top += (i + 1 < tops.length ? begun.get(i + 1).top() : end)
                        - begun.get(i).top();
            }
        }
        return new StepsPage(name, first, Math.max(end, top), List.of(tops));
    }

    /**
     * Its name.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * All of its cells.
     *
     * @return the contents by row, then by column, both from 0
     */
    public NavigableMap<Integer, NavigableMap<Integer, Object>> rows() {
        return rows;
    }

    /**
     * The rows with the titles of the blocks, in their first column.
     *
     * @return the rows, from 0
     */
    public List<Integer> titles() {
        return List.copyOf(titles);
    }

    /**
     * The rows with the heads of tables.
     *
     * @return the last column with a head of each such row, both from 0
     */
    public NavigableMap<Integer, Integer> heads() {
        return heads;
    }

    /** Says what the blocks of a title are about. */
    void about(String title, String subject) {
        subjects.put(title, subject);
    }

    /** Begins a block, and says in which row: its title is there. */
    int begin(String title) {
        int row = begun.size() < planned.size() ? planned.get(begun.size()) : below();
        begun.add(new Begun(subjects.getOrDefault(title, title), row));
        titles.add(row);
        set(0, row, title);
        return row;
    }

    void head(int column, int row, String said) {
        heads.merge(row, column, Math::max);
        set(column, row, said);
    }

    /** The first row below everything so far, with a gap. */
    int below() {
        return rows.isEmpty() ? next : Math.max(next, rows.lastKey() + 1 + GAP);
    }

    /** Keeps rows for what is yet to be written. */
    void reserve(int row) {
        next = Math.max(next, row);
    }

    String set(int column, int row, Object content) {
        rows.computeIfAbsent(row, first -> new TreeMap<>()).put(column, content);
        return address(column, row);
    }

    static String address(int column, int row) {
        return "$" + CellName.column(column) + "$" + (row + 1);
    }

    static String range(int column, int row, int rows) {
        return address(column, row) + ":" + address(column, row + rows - 1);
    }

    /** A cell or a range of this page as formulas on other pages call it. */
    String fromElsewhere(String address) {
        return "$'" + name.replace("'", "''") + "'." + address;
    }
}
