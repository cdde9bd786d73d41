// The printed application record. Its elements are the union of what the record rules of the states read for this
// product ask for (7 CFR 110.3; 40 CFR 171; 355 IAC 4-4-1; ECL 33-1205; OAC 901:5-11-10 and others), so that one paper
// satisfies each of them, and says of everything else that it was not taken or not recorded.
import { type PaperField, type PaperFinding, type PaperFrame, type PaperValue } from "./paper";

/** An amount that was put down, and how it is known. "As planned" is a statement of its own and never a measurement. */
export type AmountOnRecord =
  | { readonly kind: "measured"; readonly text: string; readonly by: string }
  | { readonly kind: "as-planned"; readonly text: string }
  | { readonly kind: "not-recorded" };

/** How an amount reads on paper: "8.1 lb, measured by weight" or "8.1 lb, as planned, not measured". */
export function amountWords(amount: AmountOnRecord): string {
  switch (amount.kind) {
    case "measured":
      return `${amount.text}, measured by ${amount.by}`;
    case "as-planned":
      return `${amount.text}, as planned, not measured`;
    case "not-recorded":
      return "not recorded";
  }
}

/** The labels of the elements that speak of the application as a whole, by group, in the order in which they print. */
const ELEMENT_GROUPS = {
  "Customer and site": {
    customerName: "Customer (first and last name)",
    customerAddress: "Customer’s address",
    customerPhone: "Customer’s phone",
    propertyName: "Property",
    siteAddress: "Site address with ZIP",
    municipality: "Municipality",
    county: "County",
    siteAndPlants: "Site and plants",
    area: "Area treated",
    targetPest: "Target pest or purpose",
  },
  "When": {
    date: "Date",
    startTime: "Start",
    endTime: "End",
    reentryInterval: "Reentry interval",
    reentryTime: "Reentry from",
  },
  "Who": {
    applicatorName: "Applicator",
    applicatorLicense: "Applicator’s license",
    supervisorName: "Supervisor or responsible applicator",
    supervisorLicense: "Supervisor’s license",
    noncertifiedName: "Noncertified person or trainee",
    noncertifiedNumber: "Registration number of that person",
    businessName: "Business",
    businessAddress: "Business address",
    businessLicense: "Business license",
  },
  "How": {
    method: "Method",
    equipment: "Equipment",
    calibration: "Calibration used",
    mixingPlace: "Place of mixing",
    totalMix: "Total mix put down",
    dilution: "Dilution (concentrate and diluent)",
  },
  "Weather at the site": {
    windSpeed: "Wind speed",
    windDirection: "Wind from",
    temperature: "Temperature",
    otherWeather: "Other weather",
    weatherInstrument: "Measured with",
  },
  "Afterward": {
    unexpected: "Unexpected occurrences",
    disposal: "Disposal",
    accidents: "Accidents or illness",
    insurer: "Insurer, where an accident was reported",
    labelCopy: "Copy of the label attached",
    customerCopy: "Copy sent to the customer",
    enteredTime: "Entered",
    receivedTime: "Received by the office",
  },
} as const;

type ElementGroups = typeof ELEMENT_GROUPS;
type ElementOf<Group> = Group extends unknown ? keyof Group : never;
/** An element of a record, by its name. */
export type RecordElement = ElementOf<ElementGroups[keyof ElementGroups]>;

/** What the rules ask about each product. Lot and fill are the house's own. */
const PRODUCT_ELEMENTS = {
  formulation: "Formulation",
  activeIngredients: "Active ingredients",
  registrationNumber: "EPA registration number",
  restrictedUse: "Restricted use",
  rate: "Rate",
  fertilizerAnalysis: "Fertilizer analysis and weight",
  lot: "Lot",
  fill: "Fill",
} as const;
/** An element of one product of a record, by its name. */
export type ProductElement = keyof typeof PRODUCT_ELEMENTS;

const CODES: ReadonlySet<string> = new Set<RecordElement | ProductElement>(["registrationNumber", "lot"]);

/** One product of a record. */
export interface RecordProduct {
  readonly brand: string;
  readonly amount: AmountOnRecord;
  readonly elements: Readonly<Record<ProductElement, PaperValue>>;
}

/** One amendment, oldest first. The record itself is never rewritten. */
export interface RecordAmendment {
  readonly when: string;
  readonly who: string;
  readonly words: string;
  readonly hash: string;
}

/** An application record as it is printed. */
export interface ApplicationRecordPaper {
  readonly frame: PaperFrame;
  readonly siteAddress: string;
  /** The record in a sentence, as it was read back before it was written. */
  readonly readBack: string;
  readonly elements: Readonly<Record<RecordElement, PaperValue>>;
  readonly products: readonly RecordProduct[];
  /** Each lawn with what became of it: "Front: done, 4,210 sq ft". */
  readonly lawns: readonly string[];
  readonly findings: readonly PaperFinding[];
  readonly amendments: readonly RecordAmendment[];
  readonly hash: string;
  readonly previousHash: string;
  /** By whom and when it was signed on a screen, or a line to sign on. */
  readonly signature: PaperValue;
}

/** Labeled fields under one heading. */
export interface FieldGroup {
  readonly title: string;
  readonly fields: readonly PaperField[];
}

/** The elements of the application as a whole as labeled fields. Every element is there, whatever is known of it. */
export function recordFieldGroups(elements: ApplicationRecordPaper["elements"]): readonly FieldGroup[] {
  return Object.entries(ELEMENT_GROUPS).map(([title, labels]) => ({ title, fields: fieldsOf(labels, elements) }));
}

/** The elements of one product as labeled fields, its amount first. */
export function productFields(product: RecordProduct): readonly PaperField[] {
  const amount: PaperField = { label: "Total product", value: { kind: "said", text: amountWords(product.amount) } };
  return [amount, ...fieldsOf(PRODUCT_ELEMENTS, product.elements)];
}

function fieldsOf(labels: Readonly<Record<string, string>>, values: Readonly<Record<string, PaperValue>>): PaperField[] {
  return Object.entries(labels).map(([element, label]) => {
    const value = values[element] ?? { kind: "not-recorded" };
    return CODES.has(element) ? { label, value, isCode: true } : { label, value };
  });
}
