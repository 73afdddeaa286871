package org.snugsheet.office.sharing.living;

/** A formula of which nothing can be translated. */
final class UntranslatableException extends Exception {

    private static final long serialVersionUID = 1L;
}
