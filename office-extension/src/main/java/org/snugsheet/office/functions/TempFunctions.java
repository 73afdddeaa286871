package org.snugsheet.office.functions;

import org.snugsheet.office.functions.temperature.Temp;

/** The TEMP functions as a service of the office. */
public final class TempFunctions extends FamilyService implements Temp {}
