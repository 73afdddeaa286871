package org.snugsheet.office.harness;

/** The office could not be started, has died, took too long, or refused a request; the message says which. */
public final class OfficeFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    OfficeFailure(String message) {
        super(message);
    }

    OfficeFailure(String message, Throwable cause) {
        super(message + ": " + cause, cause);
    }

    /** Always there. */
    @Override
    public String getMessage() {
        return String.valueOf(super.getMessage());
    }
}
