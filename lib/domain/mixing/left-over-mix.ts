import { concentrationInSpray } from "#domain/quantities/rate";
import { highestOf } from "#domain/mixing/granular-mix";
import { finestTools } from "#domain/mixing/measuring-tool";
import { isSameMix } from "#domain/mixing/mix-change";
import { type SprayTreatment } from "#domain/mixing/spray-mix";
import { type FilledMix } from "#domain/mixing/tank-plan-question";

/**
 * Whether what is left of a fill is the mix that these treatments make together, as a day's tank plan takes it before it
 * plans another fill: the same products, each as strong to 2 % or the mark of its tool, and none too strong.
 * @param treatments of one mix, as rounding may take them (treatmentsForRounding)
 */
export function isLeftOverOf(filled: Pick<FilledMix, "finished" | "products">, treatments: readonly SprayTreatment[]): boolean {
  const next = treatments.map((treatment) => {
    const { productId, label: { productName, formulation }, rate, gear: { carrier } } = treatment;
    return { productId, productName, formulation, concentration: concentrationInSpray(rate, carrier.rate), strongest: concentrationInSpray(highestOf(treatment), carrier.rate) };
  });
  return isSameMix(filled, next, finestTools(treatments));
}
