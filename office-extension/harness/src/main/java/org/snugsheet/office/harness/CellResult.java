package org.snugsheet.office.harness;

/** What one cell holds after calculation. */
public sealed interface CellResult {
    /** What a person sees in the cell, such as {@code 21.5} or {@code #VALUE!}. */
    String shown();

    /** The number at full precision; TRUE is 1, and a date the number of its day. */
    default double number() {
        throw new AssertionError("The cell should hold a number, but holds " + this);
    }

    /** The text, as a formula gave it or as typed in. */
    default String text() {
        throw new AssertionError("The cell should hold a text, but holds " + this);
    }

    /** The code of the error, see {@link ErrorCodes}; 0 when there is none. */
    default int error() {
        return 0;
    }

    /** A number, typed in or calculated. */
    record OfNumber(double number, String shown) implements CellResult {}

    /** A text, typed in or calculated; an empty text that a formula gave is one too. */
    record OfText(String text) implements CellResult {
        @Override
        public String shown() {
            return text;
        }
    }

    /** The formula failed. */
    record OfError(int error, String shown) implements CellResult {}

    /** Nothing was ever typed in. */
    record Blank() implements CellResult {
        @Override
        public String shown() {
            return "";
        }
    }
}
