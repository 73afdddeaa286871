package org.snugsheet.office.functions;

import org.snugsheet.office.functions.cooling.Cool;
import org.snugsheet.office.functions.cooling.CoolCompare;
import org.snugsheet.office.functions.cooling.CoolCurves;
import org.snugsheet.office.functions.cooling.CoolHeat;

/** The COOL functions as a service of the office. */
public final class CoolFunctions extends FamilyService implements Cool, CoolCurves, CoolCompare, CoolHeat {}
