import { listWords } from "#domain/foundation/list-words";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type StaysDry } from "#domain/mixing/watering-bounds";

/** A station of a lawn whose water reaches other lawns too. */
export interface ReachedLawns {
  readonly stationName: string;
  readonly lawnNames: readonly string[];
}

/** What holds for the water of a lawn because others share stations with it, directly or through a third. */
export interface SharedWater {
  /** What any of those lawns got, its own products included. */
  readonly products: readonly AppliedProduct[];
  /** What must stay dry on any of them. */
  readonly dry: readonly StaysDry[];
  /** Its stations that water others which want water as well. */
  readonly alsoWaters: readonly ReachedLawns[];
  /** Its stations that water others which want none. */
  readonly alsoWets: readonly ReachedLawns[];
}

/** Of a station that waters lawns which all want it: "1 Front waters Strip as well; run it once for both." */
export function alsoWatersSentence({ stationName, lawnNames }: ReachedLawns): string {
  return `${stationName} waters ${listWords(lawnNames)} as well; run it once for ${lawnNames.length === 1 ? "both" : "all"}.`;
}

/** Of a station that waters lawns which want no water: "1 Front waters Strip as well." */
export function alsoWetsSentence({ stationName, lawnNames }: ReachedLawns): string {
  return `${stationName} waters ${listWords(lawnNames)} as well.`;
}
