import { concentrationInSpray } from "#domain/quantities/rate";
import { highestOf } from "#domain/mixing/granular-mix";
import { finestTools } from "#domain/mixing/measuring-tool";
import { isSameMix } from "#domain/mixing/mix-change";
import { type SprayTreatment } from "#domain/mixing/spray-mix";
import { type FilledMix } from "#domain/mixing/tank-plan-question";

type FilledWith = Pick<FilledMix, "finished" | "products">;

/**
 * Whether what is left of a fill is the mix that these treatments make together, as a day's tank plan takes it before it
 * plans another fill: the same products, each as strong to 2 % or the mark of its tool, and none too strong.
 * @param treatments of one mix, as rounding may take them (treatmentsForRounding)
 */
export function isLeftOverOf(filled: FilledWith, treatments: readonly SprayTreatment[]): boolean {
  const next = treatments.map((treatment) => {
    const { productId, label: { productName, formulation }, rate, gear: { carrier } } = treatment;
    return { productId, productName, formulation, concentration: concentrationInSpray(rate, carrier.rate), strongest: concentrationInSpray(highestOf(treatment), carrier.rate) };
  });
  return isSameMix(filled, next, finestTools(treatments));
}

/**
 * The same of a fill and of all that was filled on top of it since, used up or not: what is under another mix can't be had,
 * as a day's tank plan has it (restsAtBegin).
 */
export function isOnTopFor(layers: readonly FilledWith[], treatments: readonly SprayTreatment[]): boolean {
  return layers.every((filled) => isLeftOverOf(filled, treatments));
}
