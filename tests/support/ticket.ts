// A visit as the mix ticket takes it, with invented products: tests say only what differs.
import { takeCare, note } from "#domain/foundation/finding";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { accept } from "#domain/foundation/outcome";
import { NO_NUTRIENT_RATES } from "#domain/mixing/delivered";
import { areOverArea, type LabelFacts, type LabelUse } from "#domain/label/label-facts";
import { densityOf } from "#domain/quantities/density";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { percentByWeight } from "#domain/quantities/active-ingredient";
import { gradeOf } from "#domain/turf/nutrients";
import { decimal } from "#domain/quantities/rational";
import { type GranularMix } from "#domain/mixing/granular-mix";
import { makeMixTicket, type MixTicket } from "#domain/mixing/mix-ticket";
import { type SprayMix } from "#domain/mixing/spray-mix";
import { type PastApplication, type TicketLawn, type TicketQuestion, type TicketSpreader, type TicketSprayer, type TicketTreatment, type TicketUse } from "#domain/mixing/ticket-question";
import { labelOf } from "./aftercare-builders";
import { FREE_OF_LIMITS } from "./spray-builders";

function use(productName: string, more: Partial<LabelUse> & Pick<LabelUse, "rates">): LabelUse {
  return {
    useName: "Lawns",
    serviceType: "fertilizer",
    targets: [],
    grasses: ["tall fescue", "Kentucky bluegrass"],
    carrier: "none",
    leastDaysBetween: "none",
    mostApplications: "none",
    seasonLimits: "none",
    weather: { ...FREE_OF_LIMITS, productName },
    aftercare: labelOf(productName),
    bloomAndBees: "none",
    keptApart: "none",
    droplets: "none",
    distanceToWater: "none",
    stainsHardSurfaces: false,
    ...more,
  };
}

function label(productName: string, more: Partial<LabelFacts> & Pick<LabelFacts, "form" | "formulation" | "uses">): LabelFacts {
  return {
    productName,
    epaRegistrationNumber: "none",
    isRestrictedUse: false,
    signalWord: "none",
    analysis: "none",
    density: "unknown",
    activeIngredients: [],
    ...more,
  };
}

/** Half of its 32 % nitrogen quick, no phosphate, 2 to 3 lb per 1,000 sq ft. */
export const FEED_LABEL = label("Harrowgate 32", {
  form: "granular",
  formulation: "dry granule",
  analysis: { grade: gradeOf("32", "0", "0"), release: { kind: "slow-percent-of-product", percent: decimal("16") } },
  uses: [
    use("Harrowgate 32", {
      rates: {
        basis: "product-mass-per-area",
        low: rateOf("product-mass-per-area", "2", "lb per 1,000 sq ft"),
        high: rateOf("product-mass-per-area", "3", "lb per 1,000 sq ft"),
      },
    }),
  ],
});

/** 1 to 2 fl oz per 1,000 sq ft in 1 to 2 gal, not at 80 °F and above, stains. */
export const IRON_LABEL = label("Rustwater Iron", {
  form: "liquid",
  formulation: "soluble liquid",
  analysis: { grade: gradeOf("6", "0", "0", "10"), release: { kind: "slow-percent-of-product", percent: decimal("0") } },
  density: densityOf("11", "lb per gal"),
  uses: [
    use("Rustwater Iron", {
      rates: {
        basis: "product-volume-per-area",
        low: rateOf("product-volume-per-area", "1", "fl oz per 1,000 sq ft"),
        high: rateOf("product-volume-per-area", "2", "fl oz per 1,000 sq ft"),
      },
      carrier: {
        low: rateOf("carrier-volume-per-area", "1", "gal per 1,000 sq ft"),
        high: rateOf("carrier-volume-per-area", "2", "gal per 1,000 sq ft"),
        basis: "label",
        source: "label of Rustwater Iron",
      },
      weather: {
        ...FREE_OF_LIMITS,
        productName: "Rustwater Iron",
        highestTemperature: { limitF: 80, reaching: "forbidden", basis: "label", source: "label of Rustwater Iron" },
      },
      stainsHardSurfaces: true,
    }),
  ],
});

/** A feed with 0.37 % of an active ingredient, 2.5 to 4 lb per 1,000 sq ft, at most 1.5 lb of it per acre and calendar year. */
export const BARRIER_LABEL = label("Barrier Nine", {
  form: "granular",
  formulation: "dry granule",
  epaRegistrationNumber: { number: "DEMO-0000-9" },
  signalWord: "CAUTION",
  analysis: { grade: gradeOf("19", "0", "7"), release: { kind: "not-stated" } },
  activeIngredients: [{ name: "velodiamine", concentration: percentByWeight("0.37"), modeOfAction: { group: "Group 3" } }],
  uses: [
    use("Barrier Nine", {
      serviceType: "grassy weed control",
      targets: ["crabgrass"],
      rates: {
        basis: "product-mass-per-area",
        low: rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft"),
        high: rateOf("product-mass-per-area", "4", "lb per 1,000 sq ft"),
      },
      leastDaysBetween: { days: 60, basis: "label", source: "label of Barrier Nine" },
      seasonLimits: {
        limits: [
          { activeIngredient: "velodiamine", most: rateOf("active-ingredient-mass-per-area", "1.5", "lb per acre"), period: "calendar-year" },
        ],
        basis: "label",
        source: "label of Barrier Nine",
      },
    }),
  ],
});

export const LAWN: TicketLawn = {
  zoneId: "front",
  letter: "A",
  name: "Front",
  area: of("sq ft", 2000n),
  areaOrigin: "measured",
  grasses: ["tall fescue"],
  grassesAssumed: false,
  waterBeside: "none",
  waterEdges: [],
  soilTests: [],
  seedings: [],
  inBloom: "unknown",
  bloomSeen: null,
  history: [],
};

/** Another product on an earlier day, which brought nothing that is counted. */
export const PAST: PastApplication = {
  on: "2026-03-01" as CalendarDate,
  visitId: "earlier",
  productId: "another",
  productName: "Otherwise 5",
  serviceType: "other",
  activeIngredients: [],
  nutrients: accept(NO_NUTRIENT_RATES),
  label: { form: "granular", formulation: "dry granule", epaRegistrationNumber: "none", analysis: "none", serviceTypes: ["other"] },
  putDownAs: [{ useName: "Lawns", keptApart: "none" }],
};

export const SPREADER: TicketSpreader = {
  equipmentId: "spreader",
  name: "Spreader",
  pace: { kind: "not-on-file" },
  kind: "broadcast-spreader",
  capacity: of("lb", 50n),
  deflector: "yes",
  // Two passes at half rate put down 2.5 lb per 1,000 sq ft.
  setting: { setting: "14", rate: rateOf("product-mass-per-area", "1.25", "lb per 1,000 sq ft"), words: "calibrated by Rowan Ash", basis: "calibration" },
};

export const SPRAYER: TicketSprayer = {
  equipmentId: "sprayer",
  name: "Sprayer",
  pace: { kind: "not-on-file" },
  kind: "hose-and-gun",
  tip: { tip: "Gold", pressurePsi: 40, dropletClass: "unknown" },
  capacity: of("gal", 100n),
  holdUp: of("gal", 3n),
  carrier: { rate: rateOf("carrier-volume-per-area", "1.5", "gal per 1,000 sq ft"), basis: "calibration", words: "calibrated by Rowan Ash" },
};

const CALIBRATED = note({ rule: "calibration-current", source: "house", what: "Calibrated.", about: [] });
export const UNCALIBRATED = takeCare({ rule: "calibration-none", source: "house", what: "Not calibrated.", about: [] });

const firstUse = (facts: LabelFacts): TicketUse => {
  const [only] = facts.uses;
  if (only === undefined || !areOverArea(only.rates)) throw new Error("The label of a test has a use with rates over area.");
  return { ...only, rates: only.rates };
};

export const SCALE = { name: "quarter-pound scale", mark: exactly("lb", "0.25") } as const;
export const CUP = { name: "half-ounce cup", mark: exactly("fl oz", "0.5") } as const;

export const FEED: TicketTreatment = {
  line: 1,
  productId: "feed",
  label: FEED_LABEL,
  use: firstUse(FEED_LABEL),
  labelConfirmedBy: "Rowan Ash",
  rate: rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft"),
  rateText: "2.5 lb per 1,000 sq ft",
  reason: "spring feed",
  zoneIds: ["front"],
  gear: SPREADER,
  tool: SCALE,
  onHand: of("lb", 500n),
  calibrationFinding: CALIBRATED,
};

export const IRON: TicketTreatment = {
  line: 2,
  productId: "iron",
  label: IRON_LABEL,
  use: firstUse(IRON_LABEL),
  labelConfirmedBy: "Rowan Ash",
  rate: rateOf("product-volume-per-area", "1.5", "fl oz per 1,000 sq ft"),
  rateText: "1.5 fl oz per 1,000 sq ft",
  reason: "yellow leaves",
  zoneIds: ["front"],
  gear: SPRAYER,
  tool: CUP,
  onHand: of("gal", 5n),
  calibrationFinding: CALIBRATED,
};

export const BARRIER: TicketTreatment = {
  ...FEED,
  line: 3,
  productId: "barrier",
  label: BARRIER_LABEL,
  use: firstUse(BARRIER_LABEL),
  rate: rateOf("product-mass-per-area", "3", "lb per 1,000 sq ft"),
  rateText: "3 lb per 1,000 sq ft",
  reason: "crabgrass",
  gear: { ...SPREADER, setting: { setting: "15", rate: rateOf("product-mass-per-area", "1.5", "lb per 1,000 sq ft"), words: "calibrated by Rowan Ash", basis: "calibration" } },
};

export const QUESTION: TicketQuestion = {
  on: "2026-04-14" as CalendarDate,
  state: "IL",
  lawns: [LAWN],
  treatments: [FEED, IRON],
  applicator: { name: "Rowan Ash", license: { standing: "stands", kind: "certified-applicator", number: "C-1", category: "Turf" } },
  forecastHighF: 71,
  forecastFollowingHighsF: [73, 74, 72],
  settings: {
    granularPasses: "two-at-half-rate-crosswise",
    tankLoads: "same-size-every-time",
    heatCautionFromF: 80,
    heatCautionWarmFromF: 90,
    tankMark: exactly("gal", "0.1"),
    minutesPerThousandSquareFeet: 4,
  },
};

type Asked = Partial<TicketQuestion>;

export function ticketOf(question: Asked = {}): MixTicket {
  const made = makeMixTicket({ ...QUESTION, ...question });
  if (!made.ok) throw new Error(made.refusal.sentence);
  return made.value;
}

export const rulesOf = (question: Asked = {}) => ticketOf(question).findings.map(({ level, rule }) => `${level} ${rule}`);
export const holdsOf = (question: Asked = {}) => rulesOf(question).filter((rule) => rule.startsWith("hold"));
export const granularOf = (question: Asked = {}) => ticketOf(question).mixes.find((mix): mix is GranularMix => mix.kind === "granular");
export const sprayOf = (question: Asked = {}) => ticketOf(question).mixes.find((mix): mix is SprayMix => mix.kind === "spray");
export const withFeed = (more: Partial<TicketTreatment>) => ({ treatments: [{ ...FEED, ...more }] });
export const withIron = (more: Partial<TicketTreatment>) => ({ treatments: [{ ...IRON, ...more }] });
export const withBarrier = (more: Partial<TicketTreatment>) => ({ treatments: [{ ...BARRIER, ...more }] });
