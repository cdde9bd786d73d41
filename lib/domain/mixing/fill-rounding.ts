import { type Finding } from "#domain/foundation/finding";
import { type SprayRate } from "#domain/label/label-facts";
import { rateFromAmounts } from "#domain/quantities/rate";
import { roundedBelowLowest } from "#domain/mixing/granular-mix";
import { roundedOffPlan } from "#domain/mixing/rounded-rate";
import { type SizedRun } from "#domain/mixing/sized-run";
import { type RunOfMix } from "#domain/mixing/tank-runs";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { plannedStrength, rateOnGround, strengthOf } from "#domain/mixing/stated-rate";
import { type PlannedFill } from "#domain/mixing/tank-fill";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { type Quantity } from "#domain/quantities/quantity";

/** One filling as it was measured out, under the name that people call it by: "fill A". */
export interface MeasuredFill extends Pick<PlannedFill, "finished" | "products"> {
  readonly name: string;
  /** Those that are served from it, in the order of the route. */
  readonly visitIds: readonly string[];
}

/** What is said of a fill, and at which stop. */
interface SaidAtStop {
  readonly visitId: string;
  readonly finding: Finding;
}

/** Some of the same mix that is in the tank when it is filled. */
interface Rest {
  readonly volume: bigint;
  readonly strength: SprayRate;
}

/**
 * What the marks of tools make of the products of one fill, as the ticket says it of a visit mixed alone: more than 2 %
 * off the plan, or below the lowest rate of a label's use, at the first stop of the fill that it is so for. What was in the
 * tank of this very mix, as it was measured out then, runs together with the first fill. Says nothing where a product is
 * measured without a tool.
 */
export function roundedInFill({ run, last, isSameAsLast, already }: SizedRun, fill: MeasuredFill, isFirst: boolean): readonly SaidAtStop[] {
  const rests = isFirst && isSameAsLast && typeof last !== "string" ? last.products : [];
  const said = new Map<string, SaidAtStop>();
  for (const { productId, amount, marks } of fill.products) {
    if (marks === null) continue;
    const rest = rests.find((one) => one.productId === productId);
    const strength = strengthWith(amount, fill.finished, rest === undefined || rest.concentration === "unknown" ? undefined : { volume: already, strength: rest.concentration });
    for (const { visitId, treatment } of usesServed(run, fill, productId)) {
      for (const finding of judged(treatment, strength, run.gear.carrier.rate, fill.name)) {
        const words = [finding.what, finding.figure, finding.citation].join("\n");
        if (!said.has(words)) said.set(words, { visitId, finding });
      }
    }
  }
  return [...said.values()];
}

/** Each use of a product's label that a fill is for, at the first of its stops: stops of one run share products and strength, and not what their labels ask. */
function usesServed({ draws }: RunOfMix, { visitIds }: MeasuredFill, productId: string): readonly { readonly visitId: string; readonly treatment: TicketTreatment }[] {
  const served = new Set(visitIds);
  const seen = new Set<TicketTreatment["use"]>();
  return draws.filter(({ visitId }) => served.has(visitId)).flatMap(({ visitId, treatments }) =>
    treatments.filter((one) => one.productId === productId && !seen.has(one.use)).map((treatment) => {
      seen.add(treatment.use);
      return { visitId, treatment };
    }),
  );
}

function judged(treatment: TicketTreatment, strength: SprayRate, carrier: Parameters<typeof rateOnGround>[1], name: string): readonly Finding[] {
  const became = plannedStrength(treatment) === undefined ? rateOnGround(strength, carrier) : strength;
  const tooLow = roundedBelowLowest(treatment, became, name);
  return tooLow.length > 0 ? tooLow : roundedOffPlan(treatment, became, `Measured out for ${name}`);
}

/** How strong a product is in the tank once a fill has run together with a rest. */
function strengthWith(amount: ProductAmount, finished: Quantity<"volume">, rest: Rest | undefined): SprayRate {
  const fresh = strengthOf(amount, finished);
  if (rest === undefined || rest.volume === 0n || rest.strength.basis !== fresh.basis) return fresh;
  const { amount: part, per } = rest.strength;
  return rateFromAmounts(fresh.basis, amount.amount * per + rest.volume * part, per * (finished.amount + rest.volume));
}
