package org.snugsheet.office.harness;

/** The codes of failed cells that matter here, as listed in the LibreOffice help, "Error Codes in LibreOffice Calc". */
public final class ErrorCodes {
    /** Err:502, an argument that the function does not accept. */
    public static final int INVALID_ARGUMENT = 502;
    /** #NUM!, no finite number. */
    public static final int NUM = 503;
    /** Err:504, wrong number or kind of arguments, or a function that cannot be loaded. */
    public static final int PARAMETER_LIST = 504;
    /** Err:508, brackets that do not match. */
    public static final int PARENTHESES = 508;
    /** Err:511, an argument is missing. */
    public static final int MISSING_VARIABLE = 511;
    /** #VALUE!, text where a number is needed, or a function that broke off. */
    public static final int VALUE = 519;
    /** #NULL!, no result, though the function is known. */
    public static final int NO_RESULT = 521;
    /** Err:522, a cell that depends on itself. */
    public static final int CIRCULAR = 522;
    /** Err:523, a search that found no end. */
    public static final int NO_CONVERGENCE = 523;
    /** #REF!, a cell that is no more. */
    public static final int REF = 524;
    /** #NAME?, an unknown function or name. */
    public static final int NAME = 525;
    /** Number 530: a function of an extension that was switched off while the document was open. */
    public static final int NO_ADD_IN = 530;
    /** #DIV/0! */
    public static final int DIVISION_BY_ZERO = 532;
    /** #N/A, no value at hand. */
    public static final int NOT_AVAILABLE = 32767;

    private ErrorCodes() {}
}
