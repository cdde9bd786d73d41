import { type Finding } from "#domain/foundation/finding";
import { OF_CLEAN_OUTS_OF_DAY } from "#domain/mixing/mix-change";
import { LOOK_FORM, OF_FLOWERS } from "#domain/mixing/site-checks";

/** What the addresses of a visit's findings hang on. */
export interface PlacesOfVisit {
  readonly visitId: string;
  readonly propertyId: string;
  /** The day of the visit, or null where it is on none. */
  readonly date: string | null;
  /** The first day on which it could go: Today lists it there for the trucks. */
  readonly dayToPlan: string;
  readonly productIdOf: ReadonlyMap<string, string>;
}

export interface ActOfFinding {
  readonly href: string;
  readonly words: string;
}

const OF_THE_FORECAST: ReadonlySet<string> = new Set(["forecast-not-entered", "forecast-after-not-entered", "heat-not-judged", "coming-heat-not-judged"]);
const OF_THE_GEAR = /^(?:calibration|no-gear|no-measuring-tool|hopper|hold-up|tank|spreader|sprayer|setting|below-first-mark|gear-does-not-fit|tip-droplets)/u;
/** Where a clean-out is recorded. */
export const RECORD_CLEAN_OUT = "/fills/record-clean-out";
/** Where somebody writes down what a tank holds. */
export const RECORD_TANK_READING = "/fills/record-tank-reading";
/** What goes away when stops or bags are moved. */
const OF_THE_TRUCK: ReadonlySet<string> = new Set(["above-payload", "no-room-for-spray"]);
const OF_THE_CREW: ReadonlySet<string> = new Set(["license-missing", "technician-under-supervision"]);
const OF_THE_STOCK: ReadonlySet<string> = new Set(["stock-short", "stock-by-another-measure", "count-it"]);
const OF_THE_GROUND =
  /^(?:area-assumed|grass|water-not-(?:measured|looked-at)|distance-to-water$|phosphorus|place-for-sunset|watering-hours|station-minutes|last-mowing|mowing-day-missing|nothing-left-to-treat)/u;

/**
 * Where a finding is dealt with: the label in the Shed, the measure and the water on the property, forecast and day on
 * Today, gear and licenses under Crew, what blooms and what was watered in on a form of the visit. Undefined for what only another plan changes.
 */
export function actOfFinding({ rule, source, about }: Finding, { visitId, propertyId, date, dayToPlan, productIdOf }: PlacesOfVisit): ActOfFinding | undefined {
  if (rule === "on-no-day") return { href: `/today?date=${dayToPlan}`, words: "Put it on a day" };
  if (OF_THE_FORECAST.has(rule)) return date === null ? undefined : { href: `/today?date=${date}`, words: "Enter the forecast" };
  if (OF_CLEAN_OUTS_OF_DAY.has(rule)) return { href: RECORD_CLEAN_OUT, words: "Record a clean-out" };
  if (OF_THE_TRUCK.has(rule)) return date === null ? undefined : { href: `/today?date=${date}`, words: "The truck’s day" };
  if (rule === "last-mix-left" || rule === "two-mixes-in-the-tank") return { href: RECORD_TANK_READING, words: "Measure the tank" };
  if (rule === "water-at-stop-not-known") return { href: `/properties/${propertyId}/change-property`, words: "Say whether there is water" };
  if (OF_FLOWERS.has(rule) || rule === "watering-in-overdue") return { href: `/visits/${visitId}/look-at-lawns`, words: LOOK_FORM };
  if (OF_THE_GEAR.test(rule)) return { href: "/crew/gear", words: "Trucks and gear" };
  if (OF_THE_CREW.has(rule)) return { href: "/crew", words: "Crew and licenses" };
  if (OF_THE_STOCK.has(rule)) return { href: "/shed", words: "Stock in the Shed" };
  if (OF_THE_GROUND.test(rule)) return { href: `/properties/${propertyId}#ground`, words: "Lawns and water of this property" };
  const product = about.find((name) => productIdOf.has(name));
  if (product === undefined || (source !== "label" && !/label|analysis|nutrients|aftercare|heat-limit|hard-surfaces/u.test(rule))) return undefined;
  return { href: `/shed/${productIdOf.get(product) ?? ""}`, words: `Label of ${product}` };
}
