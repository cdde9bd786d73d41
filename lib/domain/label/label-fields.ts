/**
 * The facts that a person types from a container, field by field, each as the words that stand there. One convention
 * holds for all of them: an empty field has been read by nobody, "none" means that it was looked for and the label says
 * nothing, anything else is what is printed. Words of the label itself may follow in quotation marks.
 */
export const GENERAL_FIELDS = {
  formulation: { words: "How it is made", group: "The product", hint: "Decides where it stands in the mixing order." },
  epaRegistrationNumber: { words: "EPA registration number", group: "The product", hint: "As printed. Fertilizers have none: write none." },
  restrictedUse: { words: "Restricted use", group: "The product", hint: "As the head of the label says." },
  signalWord: { words: "Signal word", group: "The product", hint: "Printed large on the front." },
  grade: { words: "Grade", group: "The product", hint: "As in 32-0-0, or 6-0-0-10Fe where iron is guaranteed; none where it feeds nothing." },
  nitrogenRelease: {
    words: "Slow-release nitrogen",
    group: "The product",
    hint: "As in slow 16 % of product, or slow 50 % of nitrogen; none where the label does not say.",
  },
  density: { words: "Density", group: "The product", hint: "As in 10.2 lb per gal, or specific gravity 1.22. The safety data sheet has it too." },
  activeIngredients: {
    words: "Active ingredients",
    group: "The product",
    hint: "One a line: name; how much; resistance group. Prodiamine; 0.37 %; Group 3 herbicide. A fourth where it is printed: 2,4-D, acid equivalent 38.4 %.",
  },
} as const satisfies Readonly<Record<string, LabelField>>;

/** The fields of one use of a label, as those of the product above. */
export const USE_FIELDS = {
  useName: { words: "Name of this use", group: "What for", hint: "As the crew will know it: established lawns, spring." },
  section: { words: "Where on the label", group: "What for", hint: "The section or page, so that it is found again. May stay empty." },
  serviceType: { words: "Kind of work", group: "What for", hint: "As papers for the customer name it." },
  targets: { words: "Put down against", group: "What for", hint: "As in crabgrass, goosegrass; none for a feed." },
  grasses: { words: "On which grasses", group: "What for", hint: "Write any turfgrass, or the grasses by name, separated by commas." },
  rates: { words: "Rate", group: "How much", hint: "As in 2 to 3 lb per 1,000 sq ft. Ounces say which: oz wt or fl oz. For spot work also 1.5 fl oz per gal or 2% v/v; then spray to wet; no more than 3 fl oz per 1,000 sq ft; spots no more than 10% of the lawn." },
  carrier: { words: "Finished spray", group: "How much", hint: "As in 1 to 2 gal per 1,000 sq ft; none for what is spread dry." },
  droplets: { words: "Droplet class of the spray", group: "How much", hint: "As in medium or coarser; fine to medium; none where the label names no class or it is spread dry." },
  leastDaysBetween: { words: "Least time between two applications", group: "How much", hint: "As in 28 days." },
  mostApplications: { words: "Most applications", group: "How much", hint: "As in 2 per calendar year, 3 in 12 months, 2 per season." },
  seasonLimits: {
    words: "Most of an active ingredient",
    group: "How much",
    hint: "One a line: name; how much; the period. Prodiamine; 1.5 lb per acre; calendar year.",
  },
  lowestTemperature: { words: "Lowest temperature", group: "Weather", hint: "As in at least 50 °F; above 50 °F where 50 is already too cold." },
  highestTemperature: { words: "Highest temperature", group: "Weather", hint: "As in up to 85 °F; under 85 °F where 85 is already too hot." },
  highestTemperatureAhead: { words: "Highest temperature afterwards", group: "Weather", hint: "As in under 85 °F for 24 hours." },
  lowestWind: { words: "Lowest wind", group: "Weather", hint: "As in 3 mph." },
  highestWind: { words: "Highest wind", group: "Weather", hint: "As in 10 mph." },
  rainfast: { words: "Must stay without rain", group: "Weather", hint: "As in 4 hours." },
  heavyRain: { words: "Heavy rain that would wash it away", group: "Weather", hint: "As in 0.5 in within 24 hours." },
  soil: { words: "Not when the soil is", group: "Weather", hint: "As in frozen, saturated." },
  peopleAndPets: { words: "People and pets stay off", group: "Afterwards", hint: "As in until sprays have dried; until watered in and dry; 12 hours after application." },
  wateringNotBefore: { words: "Must not be watered", group: "Afterwards", hint: "As in 24 hours; 1 day after application; until dry." },
  wateringIn: { words: "Must be watered in", group: "Afterwards", hint: "As in 0.25 in within 2 days, rain counts; immediately, 0.5 to 1 in." },
  rainThatSpoils: { words: "Rain that spoils it", group: "Afterwards", hint: "As in any rain within 12 hours; 0.25 in within 24 hours." },
  leafAtApplication: { words: "The leaf must be", group: "Before and after", hint: "At the moment of the application." },
  soilAtApplication: { words: "The soil must be", group: "Before and after", hint: "At the moment of the application." },
  mowingBefore: { words: "No mowing before", group: "Before and after", hint: "As in 2 days." },
  mowingAfter: { words: "No mowing after", group: "Before and after", hint: "As in 2 days; until watered in." },
  seedingBefore: { words: "Not on new seed for", group: "Before and after", hint: "As in 60 days; until after 2 mowings." },
  seedingAfter: { words: "No seeding for", group: "Before and after", hint: "As in 4 months; after 2 mowings; or broadcast 6 weeks, slit 11 weeks." },
  postingSign: {
    words: "Sign that the label asks for",
    group: "Before and after",
    hint: "Mostly none: a sign is usually a matter of law. Else: up at start; down after 24 hours, after 2 days, or after sprays have dried.",
  },
  bloomAndBees: { words: "Not while something blooms", group: "Before and after", hint: "For the sake of bees: not in bloom, then the label's own words in quotation marks." },
  keptApart: {
    words: "Kept apart from other products",
    group: "Before and after",
    hint: "One a line: from what; tank, or so many days. Iron; tank. Lime; 14 days. Names, or fertilizers, herbicides, surfactants and the like; all others where the label names none.",
  },
  distanceToWater: {
    words: "Distance to water",
    group: "Before and after",
    hint: "As in 25 ft; or 3 ft with a deflector, 15 ft otherwise. Ponds, streams and shores that the lawn runs along.",
  },
  stainsHardSurfaces: { words: "Stains walks and drives", group: "Before and after", hint: "Then it is blown or swept off at once." },
} as const satisfies Readonly<Record<string, LabelField>>;

/** One fact to be typed: what it is called, under which heading it stands, and how it is written. */
export interface LabelField {
  readonly words: string;
  readonly group: string;
  readonly hint: string;
}

/** A field that holds for the product, whatever it is used for. */
export type GeneralField = keyof typeof GENERAL_FIELDS;
/** A field of one use. */
export type UseField = keyof typeof USE_FIELDS;
/** The names of the fields of a product, in the order in which they are asked. */
export const GENERAL_FIELD_NAMES = Object.keys(GENERAL_FIELDS) as readonly GeneralField[];
/** The names of the fields of a use, in the order in which they are asked. */
export const USE_FIELD_NAMES = Object.keys(USE_FIELDS) as readonly UseField[];

/** A label use as it was typed. */
export type LabelUseText = Readonly<Record<UseField, string>>;

/** A whole label as it was typed: what is stored, and what is held against the container before it counts. */
export interface LabelText {
  readonly productName: string;
  readonly form: "granular" | "liquid";
  readonly general: Readonly<Record<GeneralField, string>>;
  readonly uses: readonly LabelUseText[];
}

function emptyOf<Name extends string>(names: readonly Name[]): Readonly<Record<Name, string>> {
  return Object.fromEntries(names.map((name) => [name, ""])) as Record<Name, string>;
}

/** The general part of a label that nobody has read. */
export const UNREAD_GENERAL = emptyOf(GENERAL_FIELD_NAMES);

/** A use that nobody has read. */
export const UNREAD_USE: LabelUseText = emptyOf(USE_FIELD_NAMES);
