import { calendarDateIn } from "#domain/foundation/calendar-date";
import { type HoldAnswerer } from "#domain/foundation/finding";
import { type AftercareKind, type LabelAftercare, type StatedConstraint, statedConstraint } from "#domain/label/aftercare-constraint";
import { type ApplicationTimes } from "#domain/mixing/aftercare-instants";
import { dateWords } from "#domain/mixing/local-words";
import { type Authority, type LimitBasis } from "#domain/weather/spray-limits";

/** A product on the lawn: of this visit, or of other work, earlier or crossing it, whose constraints may still run. */
export interface AppliedProduct {
  readonly label: LabelAftercare;
  readonly application: ApplicationTimes;
  readonly appliedIn: "this-visit" | "earlier-visit";
  /** When it was watered in. Only an earlier visit's product can have been, or nobody knows. */
  readonly wateredInAtEpochMilliseconds: number | "not-yet" | "unknown";
}

/** Whether a product is down, or goes down, by other work than this visit: this visit can leave nothing of it out. */
export function isOfOtherWork({ appliedIn }: Pick<AppliedProduct, "appliedIn">): boolean {
  return appliedIn === "earlier-visit";
}

/** A constraint with the product that adds it. */
export interface AppliedConstraint<Kind extends AftercareKind> {
  readonly applied: AppliedProduct;
  readonly constraint: StatedConstraint<Kind>;
}

/** The stated constraints of one kind, each with its product, in an order that does not hang on that of the products. */
export function constraintsOf<Kind extends AftercareKind>(
  products: readonly AppliedProduct[],
  kind: Kind,
): readonly AppliedConstraint<Kind>[] {
  const found: AppliedConstraint<Kind>[] = [];
  for (const applied of products) for (const constraint of statedConstraint(applied.label, kind)) found.push({ applied, constraint });
  return found.length < 2 ? found : found.toSorted((one, other) => compareText(orderKey(one.applied), orderKey(other.applied)));
}

function orderKey({ label, application }: AppliedProduct): string {
  return `${label.productName} ${application.startsAtEpochMilliseconds} ${application.endsAtEpochMilliseconds}`;
}

function compareText(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}

/** The product's name, with its day when it is from an earlier visit. */
export function appliedName({ label, application, appliedIn }: AppliedProduct, timeZone: string): string {
  if (appliedIn === "this-visit") return label.productName;
  const date = calendarDateIn(timeZone, application.startsAtEpochMilliseconds);
  return `${label.productName} (put down ${dateWords(date)})`;
}

const ANSWERERS: Readonly<Record<LimitBasis, HoldAnswerer>> = {
  label: "nobody",
  law: "license-holder",
  handbook: "office",
  "common-practice": "office",
  house: "office",
};

const STRONGEST_FIRST: readonly LimitBasis[] = ["label", "law", "handbook", "common-practice", "house"];

/** The weakest of several authorities: whoever may answer for it may answer for the conflict. */
export function weakestAuthority(authorities: readonly Authority[]): {
  readonly source: LimitBasis;
  readonly answerableBy: HoldAnswerer;
  readonly citation: string;
} {
  const bases = authorities.map(({ basis }) => basis);
  const source = STRONGEST_FIRST.findLast((basis) => bases.includes(basis)) ?? "label";
  const citation = [...new Set(authorities.map((authority) => authority.source))].join("; ");
  return { source, answerableBy: ANSWERERS[source], citation };
}
