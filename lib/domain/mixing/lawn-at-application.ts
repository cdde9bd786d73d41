import { type Finding, hold } from "#domain/foundation/finding";
import { type AppliedConstraint, type AppliedProduct, appliedName, constraintsOf, weakestAuthority } from "#domain/mixing/applied-product";

/** How leaf or soil must be when a product goes down. */
export interface LawnAtApplication {
  readonly productName: string;
  readonly part: "leaf" | "soil";
  readonly state: "dry" | "moist";
  readonly labelWords: string;
}

type StateConstraint = AppliedConstraint<"leaf-at-application" | "soil-at-application">;

const PARTS = [
  { part: "leaf", kind: "leaf-at-application" },
  { part: "soil", kind: "soil-at-application" },
] as const;

/** What the products of this visit want of leaf and soil, by product, with a hold where two want opposites. */
export function lawnAtApplication(
  products: readonly AppliedProduct[],
  timeZone: string,
): { readonly wanted: readonly LawnAtApplication[]; readonly findings: readonly Finding[] } {
  const planned = products.filter(({ appliedIn }) => appliedIn === "this-visit");
  const byPart = PARTS.map(({ part, kind }) => ({ part, constraints: constraintsOf(planned, kind) }));
  return {
    wanted: byPart.flatMap(({ part, constraints }) =>
      constraints.map(({ applied, constraint }) => ({
        productName: appliedName(applied, timeZone),
        part,
        state: constraint.state,
        labelWords: constraint.labelWords,
      })),
    ),
    findings: byPart.flatMap(({ part, constraints }) => opposites(part, constraints)),
  };
}

function opposites(part: "leaf" | "soil", constraints: readonly StateConstraint[]): readonly Finding[] {
  const dry = constraints.find(({ constraint }) => constraint.state === "dry");
  const moist = constraints.find(({ constraint }) => constraint.state === "moist");
  if (dry === undefined || moist === undefined) return [];
  const [dryName, moistName] = [dry.applied.label.productName, moist.applied.label.productName];
  const { source, answerableBy, citation } = weakestAuthority([dry.constraint, moist.constraint]);
  return [
    hold(answerableBy, {
      rule: `opposite-${part}-at-application`,
      source,
      what: `${dryName} wants the ${part} dry when it goes down, and ${moistName} wants it moist.`,
      toDo: `Split the visit: put ${dryName} and ${moistName} down on different days.`,
      citation,
      about: [...new Set([dryName, moistName])],
    }),
  ];
}
