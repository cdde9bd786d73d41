import { expect, test } from "vitest";
import { SPRAYER_KINDS, SPREADER_KINDS } from "#domain/equipment/equipment-kind";
import { hasIngredients, isSprayed, isSprayGear, isSpread, type TicketTreatment } from "#domain/mixing/ticket-question";
import { FEED, IRON, SPRAYER, SPREADER } from "../../support/ticket";

test.each(SPRAYER_KINDS)("what a %s puts down is sprayed", (kind) => {
  const treatment: TicketTreatment = { ...IRON, gear: { ...SPRAYER, kind } };
  expect([isSprayed(treatment), isSpread(treatment)]).toEqual([true, false]);
});

test.each(SPREADER_KINDS)("what a %s puts down is spread", (kind) => {
  const treatment: TicketTreatment = { ...FEED, gear: { ...SPREADER, kind } };
  expect([isSprayed(treatment), isSpread(treatment)]).toEqual([false, true]);
});

test("gear sprays or spreads by its kind", () => {
  expect(SPRAYER_KINDS.map((kind) => isSprayGear({ ...SPRAYER, kind }))).not.toContain(false);
  expect(SPREADER_KINDS.map((kind) => isSprayGear({ ...SPREADER, kind }))).not.toContain(true);
});

test("what nobody has read may have ingredients; what has none has none", () => {
  const velodiamine = { name: "velodiamine", rate: "not-countable", modeOfAction: "unknown" } as const;
  expect((["unknown", [], [velodiamine]] as const).map((activeIngredients) => hasIngredients({ activeIngredients }))).toEqual([true, false, true]);
});
