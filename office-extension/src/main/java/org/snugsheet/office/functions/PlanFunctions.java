package org.snugsheet.office.functions;

import org.snugsheet.office.functions.plan.PlanReadings;
import org.snugsheet.office.functions.plan.PlanWater;

/** The PLAN functions as a service of the office. */
public final class PlanFunctions extends FamilyService implements PlanWater, PlanReadings {}
