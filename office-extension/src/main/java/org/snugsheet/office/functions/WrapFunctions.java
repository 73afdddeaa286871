package org.snugsheet.office.functions;

import org.snugsheet.office.functions.wrap.Wrap;
import org.snugsheet.office.functions.wrap.WrapJar;
import org.snugsheet.office.functions.wrap.WrapMeasured;

/** The WRAP functions as a service of the office. */
public final class WrapFunctions extends FamilyService implements Wrap, WrapJar, WrapMeasured {}
