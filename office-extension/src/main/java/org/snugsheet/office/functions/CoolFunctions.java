package org.snugsheet.office.functions;

import org.snugsheet.office.functions.cooling.Cool;
import org.snugsheet.office.functions.cooling.CoolCurves;
import org.snugsheet.office.functions.cooling.CoolHeat;
import org.snugsheet.office.functions.cooling.CoolVerdict;

/** The COOL functions as a service of the office. */
public final class CoolFunctions extends FamilyService implements Cool, CoolCurves, CoolVerdict, CoolHeat {}
