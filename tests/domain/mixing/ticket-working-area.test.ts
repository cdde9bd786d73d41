import { expect, test } from "vitest";
import { of } from "#domain/quantities/quantity";
import { placeOf, treatedAreaWorking } from "#domain/mixing/ticket-working-area";
import { type TicketLawn } from "#domain/mixing/ticket-question";
import { faultsOf } from "../../support/read-working";
import { FEED, granularOf, LAWN, QUESTION, ticketOf, withFeed } from "../../support/ticket";

function workingOf(change: Partial<TicketLawn>) {
  const asked = { lawns: [{ ...LAWN, ...change }], ...withFeed({}) };
  const lawn = granularOf(asked)?.lawns[0];
  if (lawn === undefined) throw new Error("The visit has a lawn.");
  const working = treatedAreaWorking(lawn, ["Harrowgate 32"], { ...QUESTION, ...asked }, ticketOf(asked).findings);
  expect(faultsOf(working)).toEqual([]);
  return working;
}

test("a lawn without water is treated whole, and says how its size is known", () => {
  expect(workingOf({ areaOrigin: "entered" })).toEqual({
    title: "Treated area of A Front for Harrowgate 32",
    formula: "treated area = the whole lawn; nothing of it is kept clear of water",
    inputs: [{ name: "Lawn", figure: "2,000 sq ft", from: "entered by hand" }],
    steps: [],
    result: "2,000 sq ft",
    source: "common practice",
  });
  expect(placeOf(LAWN)).toBe("A Front");
});

test("each strip along water is taken off, by whoever asks for its width", () => {
  // The state's law asks for 3 ft with a deflector: it widens the brook's strip and not the pond's.
  const edges = [
    { name: "the pond", length: of("ft", 40n), width: of("ft", 5n) },
    { name: "the brook", length: of("ft", 20n), width: of("ft", 1n) },
  ];
  const working = workingOf({ waterEdges: edges });
  expect(working.steps).toEqual(["40 ft × 5 ft = 200 sq ft", "20 ft × 3 ft = 60 sq ft", "200 sq ft + 60 sq ft = 260 sq ft", "2,000 sq ft − 260 sq ft = 1,740 sq ft"]);
  expect(working.inputs.find(({ name }) => name === "Kept clear of the pond")?.from).toBe("what the crew keeps clear");
  expect(working.inputs.find(({ name }) => name === "Kept clear of the brook")?.from).toContain("415 ILCS 65/5a");
  expect(working.source).toContain("415 ILCS 65/5a");
});

test("a strip of the label's width names the label; a ticket from before strips said whose they are still names the law", () => {
  const label = "label of Harrowgate 32, page 3";
  const distanceToWater = { withDeflector: of("ft", 8n), otherwise: of("ft", 20n), basis: "label", source: label } as const;
  const asked = { lawns: [{ ...LAWN, waterEdges: [{ name: "the pond", length: of("ft", 40n), width: of("ft", 1n) }] }], ...withFeed({ use: { ...FEED.use, distanceToWater } }) };
  const lawn = granularOf(asked)?.lawns[0];
  if (lawn === undefined) throw new Error("The visit has a lawn.");
  const said = (change: object) => treatedAreaWorking({ ...lawn, ...change }, ["Harrowgate 32"], { ...QUESTION, ...asked }, ticketOf(asked).findings);
  expect(said({}).steps[0]).toBe("40 ft × 8 ft = 320 sq ft");
  expect(said({}).inputs.find(({ name }) => name === "Kept clear of the pond")?.from).toBe(label);
  expect(said({}).source).toBe(`${label}, and common practice`);
  const before = { strips: lawn.strips?.map(({ name, length, width, area }) => ({ name, length, width, area })) };
  expect(said(before).inputs.find(({ name }) => name === "Kept clear of the pond")?.from).toBe(label);
  expect(said(before).source).toBe(`${label}, and common practice`);
});

test("a lawn of acres is shown in acres and worked out in square feet; one that is all strip has nothing left", () => {
  expect(workingOf({ area: of("sq ft", 100_188n) })).toMatchObject({ steps: ["100,188 sq ft ÷ 43,560 sq ft = 2.3 acres"], result: "2.3 acres" });
  const gone = workingOf({ area: of("sq ft", 100n), waterEdges: [{ name: "the pond", length: of("ft", 40n), width: of("ft", 5n) }] });
  expect(gone).toMatchObject({ steps: ["40 ft × 5 ft = 200 sq ft", "Nothing of the lawn is left to treat."], result: "0 sq ft" });
});
