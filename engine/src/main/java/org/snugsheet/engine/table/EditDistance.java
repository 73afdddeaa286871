package org.snugsheet.engine.table;

/**
 * The number of typing errors between two words: letters left out, added or replaced, and neighbors swapped.
 *
 * <p>Source: V. I. Levenshtein, Soviet Physics Doklady 10 (1966), 707; swapped neighbors after F. J. Damerau, Comm. ACM 7
 * (1964), 171, in the restricted form where no letter is touched twice.
 */
final class EditDistance {

    private EditDistance() {}

    static int between(String a, String b) {
        int[][] slips = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                slips[i][j] = Math.min(i, j) == 0 ? Math.max(i, j) : least(slips, a, b, i, j);
            }
        }
        return slips[a.length()][b.length()];
    }

    private static int least(int[][] slips, String a, String b, int i, int j) {
        int exchange = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(slips[i - 1][j - 1] + exchange, Math.min(slips[i - 1][j], slips[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, slips[i - 2][j - 2] + 1) : least;
    }
}
