package org.snugsheet.office.sharing.living;

import java.util.ArrayList;
import java.util.List;
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
    private int next;

    /**
     * An empty page.
     *
     * @param name its name
     * @param first the first row that may be used, from 0
     */
    public StepsPage(String name, int first) {
        this.name = name;
        this.next = first;
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

    void title(int row, String title) {
        titles.add(row);
        set(0, row, title);
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
