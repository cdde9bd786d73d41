import { parseQuantity } from "#domain/quantities/parse-quantity";
import { type MixAsked } from "#application/register/mixes-asked";
import { type FillEntered, fillsEntered, type MixEntered } from "#application/register/mix-entered";
import { badField, type UseCaseRefusal } from "#application/refusal";

/** What came out of the same fills in one pass, or one mix by itself. */
export interface DrawTogether {
  readonly lead: MixAsked;
  /** Products without a mix ticket that name a fill of it. */
  readonly others: readonly MixAsked[];
}

/**
 * Puts together what came out of one fill in one pass: a product without a mix ticket that names a fill which another line
 * names for the same lawns was in that spray, and its gallons are the same gallons. Two mixes with tickets are two passes.
 */
export function drawsTogether(asked: readonly MixAsked[], entered: Readonly<Record<string, MixEntered>>): readonly DrawTogether[] {
  const draws: (DrawTogether & { readonly others: MixAsked[] })[] = [];
  for (const one of asked) {
    const before = draws.find((draw) => isInDraw(one, draw, entered));
    if (before === undefined) draws.push({ lead: one, others: [] });
    else before.others.push(one);
  }
  return draws;
}

function isInDraw(one: MixAsked, draw: DrawTogether, entered: Readonly<Record<string, MixEntered>>): boolean {
  if ("mix" in one || one.ground !== draw.lead.ground) return false;
  // One product twice on the same lawns is two passes.
  if ([draw.lead, ...draw.others].some((other) => "treatment" in other && other.treatment.productId === one.treatment.productId)) return false;
  const named = new Set(fillsOfDraw(draw, entered).map(({ fillId }) => fillId));
  return fillsEntered(one.key, entered[one.key]).some(({ fillId }) => named.has(fillId));
}

/** All fills that the lines of a draw name, each once, with the gallons of the line that names it first. */
export function fillsOfDraw({ lead, others }: DrawTogether, entered: Readonly<Record<string, MixEntered>>): readonly FillEntered[] {
  const rows = [lead, ...others].flatMap(({ key }) => fillsEntered(key, entered[key]));
  return rows.filter((row, index) => rows.findIndex(({ fillId }) => fillId === row.fillId) === index);
}

/**
 * Refuses lines that say different things of one draw, with the question which is right. Gallons that were left empty are
 * those of the line that said them.
 * @param numberOf of a fill that is on file
 */
export function refuseOddDraw(draw: DrawTogether, entered: Readonly<Record<string, MixEntered>>, numberOf: (fillId: string) => number | undefined): UseCaseRefusal | undefined {
  const { lead, others } = draw;
  const rows = fillsOfDraw(draw, entered);
  for (const { key } of others) {
    const said = entered[key];
    if (said?.measuredBy !== entered[lead.key]?.measuredBy) return badField(`mixes.${key}.measuredBy`, "It came out of the same fill as what stands above it. Say the same of both: was that measured or not?").refusal;
    for (const { fillId, amount, field } of fillsEntered(key, said)) {
      const first = rows.find((row) => row.fillId === fillId);
      if (first === undefined || first.field === field || amount === "" || isSameVolume(first.amount, amount)) continue;
      return badField(`${field}.amount`, `Fill ${String(numberOf(fillId) ?? "")} was drawn from once for both, and above it says ${first.amount === "" ? "nothing" : first.amount}. Which is right? Write the same gallons in both places, or leave these empty.`).refusal;
    }
  }
  return undefined;
}

function isSameVolume(one: string, other: string): boolean {
  const [first, second] = [one, other].map((text) => parseQuantity(text, { field: "gallons", dimensions: ["volume"], unitWhenNone: "gal" }));
  return first?.ok === true && second?.ok === true && first.value.quantity.amount === second.value.quantity.amount;
}
