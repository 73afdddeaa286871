package org.snugsheet.office.functions;

import org.snugsheet.office.functions.cold.Cold;

/** The COLD functions as a service of the office. */
public final class ColdFunctions extends FamilyService implements Cold {}
