import { type Finding, hold } from "#domain/foundation/finding";
import { multiplyExact, settle } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { type Quantity } from "#domain/quantities/quantity";
import { partOfShare, shareWords, WHOLE_LAWN } from "#domain/quantities/share";
import { type ClearStrip, keptClearOf } from "#domain/rules/kept-clear";
import { type RulePack } from "#domain/rules/rule-pack";
import { isSpread, type SpotWork, type TicketLawn, type TicketTreatment } from "#domain/mixing/ticket-question";

/** How much of a lawn a treatment goes on. */
export interface TreatedLawn {
  readonly zoneId: string;
  readonly letter: string;
  readonly name: string;
  readonly lawnArea: Quantity<"area">;
  readonly keptClear: Quantity<"area">;
  /** The strips that what is kept clear is made of; there only where the lawn runs along water. */
  readonly strips?: readonly ClearStrip[];
  /** Of spot work: its share, and what it is a share of; there only for spot work. */
  readonly spot?: SpotWork & { readonly treatable: Quantity<"area"> };
  readonly treatedArea: Quantity<"area">;
}

/**
 * The area of each lawn of a treatment less what stays clear of water for it, and of spot work its stated share of that, down
 * to the canonical unit. What is kept clear belongs to treatment,
 * equipment and rule: the same lawn can have two treated areas. A strip larger than the lawn, and a lawn
 * without an area, leave nothing, as a hold.
 */
export function treatedLawns(
  treatment: TicketTreatment,
  lawns: readonly TicketLawn[],
  pack: RulePack | undefined,
): { readonly lawns: readonly TreatedLawn[]; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const treated = lawns
    .filter(({ zoneId }) => treatment.zoneIds.includes(zoneId))
    .map((lawn): TreatedLawn => {
      const { area: keptClear, edges: strips, findings: found } = keptClearOf(lawn, placementOf(treatment), pack?.facts["distance-to-water"]);
      findings.push(...found);
      const { zoneId, letter, name, area: lawnArea } = lawn;
      const isNothingLeft = keptClear.amount >= lawnArea.amount;
      if (isNothingLeft) findings.push(nothingLeft(treatment, lawn));
      const treatable: Quantity<"area"> = { dimension: "area", amount: isNothingLeft ? 0n : lawnArea.amount - keptClear.amount };
      return { zoneId, letter, name, lawnArea, keptClear, ...(strips.length === 0 ? {} : { strips }), ...shareTreated(treatment.spot, treatable) };
    });
  return { lawns: treated, findings };
}

/** The treated area in words, with its share where it is spot work: "120 sq ft in spots, 5% of the lawn". */
export function treatedWords({ treatedArea, spot }: Pick<TreatedLawn, "treatedArea" | "spot">): string {
  const area = formatQuantity(treatedArea, "us");
  return spot === undefined || spot.shareBasisPoints === WHOLE_LAWN ? area : `${area} in spots, ${shareWords(spot.shareBasisPoints)} of the lawn`;
}

/** What is treated of ground that may be: all of it, or of spot work its share, down to the canonical unit. */
export function shareTreated(spot: SpotWork | undefined, treatable: Quantity<"area">): Pick<TreatedLawn, "spot" | "treatedArea"> {
  if (spot === undefined) return { treatedArea: treatable };
  return { spot: { ...spot, treatable }, treatedArea: settle(multiplyExact(treatable, partOfShare(spot.shareBasisPoints)), "down") };
}

function placementOf(treatment: TicketTreatment) {
  return {
    productName: treatment.label.productName,
    isFertilizer: treatment.label.analysis !== "none",
    label: treatment.use.distanceToWater,
    deflector: isSpread(treatment) ? treatment.gear.deflector : ("not-a-spreader" as const),
  };
}

function nothingLeft({ label }: TicketTreatment, { name, area }: TicketLawn): Finding {
  const isEmpty = area.amount === 0n;
  return hold("office", {
    rule: "nothing-left-to-treat",
    source: "house",
    what: `Nothing of ${name} is left to treat with ${label.productName}.`,
    figure: isEmpty ? "The lawn is entered without an area." : "The strip along the water is as large as the lawn.",
    toDo: isEmpty ? "Measure the lawn and enter its area." : "Take the lawn off this visit, or measure the strip again.",
    about: [label.productName, name],
  });
}
