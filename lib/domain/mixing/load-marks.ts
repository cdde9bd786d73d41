import { type Finding, hold } from "#domain/foundation/finding";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { type TicketSettings, type TicketSprayer } from "#domain/mixing/ticket-question";

/** More fillings than this in one visit are a slip in an area or a tank's size. A setting of the house. */
const MOST_LOADS = 200n;

/** Marks of the tank's gauge in as few loads as a tank takes, as equal as marks go, or full tanks and a short one. Throws for a tank of no marks. */
export function loadMarks(marks: bigint, mostMarks: bigint, how: TicketSettings["tankLoads"]): readonly bigint[] {
  const count = (marks + mostMarks - 1n) / mostMarks;
  if (how === "full-tanks-then-a-short-one") {
    return Array.from({ length: Number(count) }, (_unused, index) => (BigInt(index) < count - 1n ? mostMarks : marks - mostMarks * (count - 1n)));
  }
  const [least, more] = [marks / count, marks % count];
  return Array.from({ length: Number(count) }, (_unused, index) => (BigInt(index) < more ? least + 1n : least));
}

/** What keeps a spray from being worked out at all, whatever goes into it. */
export function unworkable(gear: TicketSprayer, marks: bigint, perTank: bigint): readonly Finding[] {
  const words = { source: "house", about: [gear.name] } as const;
  if (perTank === 0n) {
    const figure = `Its tank holds ${formatQuantity(gear.capacity, "us")}, which is less than one mark of the gauge.`;
    return [hold("office", { ...words, rule: "tank-smaller-than-a-mark", what: `The tank of ${gear.name} is too small for the marks it is filled by.`, figure, toDo: "Enter the tank's size, or finer marks in the settings." })];
  }
  const count = (marks + perTank - 1n) / perTank;
  if (count <= MOST_LOADS) return [];
  const figure = `It would be filled ${String(count)} times; more than ${String(MOST_LOADS)} are not worked out.`;
  return [hold("office", { ...words, rule: "too-many-loads", what: `${gear.name} would have to be filled too often for one visit.`, figure, toDo: "Look at the areas and at the tank's size, or take a larger sprayer." })];
}
