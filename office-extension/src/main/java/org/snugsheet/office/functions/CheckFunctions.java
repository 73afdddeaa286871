package org.snugsheet.office.functions;

import org.snugsheet.office.functions.check.Check;

/** The CHECK functions as a service of the office. */
public final class CheckFunctions extends FamilyService implements Check {}
