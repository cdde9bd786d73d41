import { expect, test } from "vitest";
import { percentByWeight } from "#domain/quantities/active-ingredient";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { sprayWorkings } from "#domain/mixing/ticket-working-spray";
import { DeliveredActives, DeliveredNutrients } from "../../app/(office)/visits/[visitId]/delivered-nutrients";
import { SprayMixBlock } from "../../app/(office)/visits/[visitId]/spray-mix-block";
import { BARRIER, FEED, IRON, QUESTION, ticketOf } from "../support/ticket";
import { markupOf, tableRowsOf, textOf } from "./read-markup";

/** The iron with an active ingredient by weight, and no density that leads to it. */
const UNWEIGHED: TicketTreatment = { ...IRON, label: { ...IRON.label, density: "unknown", activeIngredients: [{ name: "velodiamine", concentration: percentByWeight("20"), modeOfAction: "none" }] } };
const asked = (treatments: readonly TicketTreatment[]) => {
  const question = { ...QUESTION, treatments };
  return { question, ticket: ticketOf(question) };
};

test("an active ingredient that can't be counted stands in the table and says why, alone and beside what is counted", () => {
  const alone = markupOf(<DeliveredActives {...asked([UNWEIGHED])} />);
  expect(tableRowsOf(alone)).toEqual([["Front", "velodiamine", "not countable: density of Rustwater Iron"]]);
  expect(textOf(alone)).toContain("How velodiamine on Front is worked out");
  expect(textOf(alone)).toContain("its density is not on file. It is not counted.");
  const both = markupOf(<DeliveredActives {...asked([BARRIER, UNWEIGHED])} />);
  expect(tableRowsOf(both)).toEqual([["Front", "velodiamine", "at least 0.484 lb per acre"]]);
  expect(textOf(both)).toContain("How at least 0.484 lb per acre of velodiamine on Front is worked out");
  expect(markupOf(<DeliveredActives {...asked([FEED])} />)).toBe("");
});

test("nutrients that can't be counted are never said to be none", () => {
  const none = { ...IRON, label: { ...IRON.label, analysis: "none" as const } };
  expect(textOf(markupOf(<DeliveredNutrients {...asked([UNWEIGHED])} />))).toBe("No nutrients that can be counted go down.");
  expect(textOf(markupOf(<DeliveredNutrients {...asked([none])} />))).toBe("No nutrients go down.");
});

test("nutrients of spot work stand for its spots", () => {
  const spots = { ...BARRIER, spot: { shareBasisPoints: 1000 } };
  expect(tableRowsOf(markupOf(<DeliveredNutrients {...asked([spots])} />))[0]?.slice(0, 2)).toEqual(["Front", "0.475 lb"]);
});

test("the half of the water and the time on the lawn open their steps", () => {
  const { question, ticket } = asked([IRON]);
  const mix = ticket.mixes.find((one) => one.kind === "spray");
  if (mix === undefined) throw new Error("The iron is sprayed.");
  const text = textOf(markupOf(<SprayMixBlock mix={mix} treatments={question.treatments} settings={question.settings} workings={sprayWorkings(mix, question, ticket)} />));
  expect(text).toContain("How half of the water is worked out");
  expect(text).toContain("Water: 2.9766 gal ÷ 2 = 1.4883 gal");
  expect(text).toContain("How the time on the lawn is worked out");
  expect(text).toContain("2,000 sq ft ÷ 1,000 sq ft × 4 min = 8 min, up to whole minutes");
});
