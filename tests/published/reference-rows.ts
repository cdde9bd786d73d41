// The published rows that this project knows, and all checks that name them.
import { type PublishedEntry } from "../support/published-check";
import { ACTIVE_INGREDIENT_CHECKS } from "./checks/active-ingredient-checks";
import { AFTERCARE_CHECKS } from "./checks/aftercare-checks";
import { AREA_CHECKS } from "./checks/area-checks";
import { CARE_CHECKS } from "./checks/care-checks";
import { DEGREE_DAY_CHECKS } from "./checks/degree-day-checks";
import { DISEASE_CHECKS } from "./checks/disease-checks";
import { EVAPOTRANSPIRATION_CHECKS } from "./checks/evapotranspiration-checks";
import { FERTILIZER_CHECKS } from "./checks/fertilizer-checks";
import { GROWTH_CHECKS } from "./checks/growth-checks";
import { IRRIGATION_CHECKS } from "./checks/irrigation-checks";
import { LABEL_LIMIT_CHECKS } from "./checks/label-limit-checks";
import { LIME_CHECKS } from "./checks/lime-checks";
import { MISPRINT_CHECKS } from "./checks/misprint-checks";
import { MIX_TICKET_CHECKS } from "./checks/mix-ticket-checks";
import { NITROGEN_CAP_CHECKS } from "./checks/nitrogen-cap-checks";
import { NITROGEN_CHECKS } from "./checks/nitrogen-checks";
import { NOZZLE_CHECKS } from "./checks/nozzle-checks";
import { PLANNED_NITROGEN_CHECKS } from "./checks/planned-nitrogen-checks";
import { ROUTE_CHECKS } from "./checks/route-checks";
import { SPRAY_WEATHER_CHECKS } from "./checks/spray-weather-checks";
import { SPRAYER_CHECKS } from "./checks/sprayer-checks";
import { SPREADER_CHECKS } from "./checks/spreader-checks";
import { TANK_PLAN_CHECKS } from "./checks/tank-plan-checks";
import { UNIT_CHECKS } from "./checks/unit-checks";
import { WORKSHEET_CHECKS } from "./checks/worksheet-checks";
import { type ReferenceRow } from "./reference-row";
import { ROWS_OF_CARE } from "./rows/care-rows";
import { ROWS_OF_ELSEWHERE } from "./rows/elsewhere-rows";
import { ROWS_OF_EQUIPMENT } from "./rows/equipment-rows";
import { ROWS_OF_MISPRINTS } from "./rows/misprints-rows";
import { ROWS_OF_MIXING } from "./rows/mixing-rows";
import { ROWS_OF_NOT_FOUND } from "./rows/not-found-rows";
import { ROWS_OF_NUTRIENT } from "./rows/nutrient-rows";
import { ROWS_OF_TURF } from "./rows/turf-rows";
import { ROWS_OF_UNITS } from "./rows/units-rows";
import { ROWS_OF_WEATHER } from "./rows/weather-rows";

export const REFERENCE_ROWS: readonly ReferenceRow[] = [
  ...ROWS_OF_NUTRIENT, ...ROWS_OF_EQUIPMENT, ...ROWS_OF_MIXING, ...ROWS_OF_UNITS, ...ROWS_OF_TURF, ...ROWS_OF_WEATHER,
  ...ROWS_OF_CARE, ...ROWS_OF_MISPRINTS, ...ROWS_OF_NOT_FOUND, ...ROWS_OF_ELSEWHERE,
];

/** The checks of each table; all of them name their rows. */
export const CHECK_TABLES: Readonly<Record<string, readonly PublishedEntry[]>> = {
  ACTIVE_INGREDIENT_CHECKS, AFTERCARE_CHECKS, AREA_CHECKS, CARE_CHECKS, DEGREE_DAY_CHECKS, DISEASE_CHECKS, EVAPOTRANSPIRATION_CHECKS,
  FERTILIZER_CHECKS, GROWTH_CHECKS, IRRIGATION_CHECKS, LABEL_LIMIT_CHECKS, LIME_CHECKS, MISPRINT_CHECKS, MIX_TICKET_CHECKS,
  NITROGEN_CAP_CHECKS, NITROGEN_CHECKS, NOZZLE_CHECKS,
  PLANNED_NITROGEN_CHECKS, ROUTE_CHECKS, SPRAY_WEATHER_CHECKS, SPRAYER_CHECKS, SPREADER_CHECKS, TANK_PLAN_CHECKS, UNIT_CHECKS, WORKSHEET_CHECKS,
};
