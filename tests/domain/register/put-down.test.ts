import { expect, test } from "vitest";
import { of, sum } from "#domain/quantities/quantity";
import { sharePutDown, takeDown } from "#domain/register/put-down";
import { type TreatedLawn } from "#domain/mixing/treated-area";

const lot = (lotId: string, stockLocationId: string, amount: bigint, receivedOrder = 0, expiresOn: string | null = null) => ({ lotId, stockLocationId, amount, receivedOrder, expiresOn }) as Parameters<typeof takeDown>[2][number][number];
const used = (amount: bigint) => ({ dimension: "mass", amount }) as const;

test("takes the first to expire first, place by place", () => {
  const truck = [lot("late", "truck", 5n, 0), lot("early", "truck", 5n, 1, "2026-05-01")];
  expect(takeDown("Greenmere", used(12n), [truck, [lot("shop", "shop", 9n)]])).toEqual({
    taken: [{ lotId: "early", stockLocationId: "truck", amount: 5n }, { lotId: "late", stockLocationId: "truck", amount: 5n }, { lotId: "shop", stockLocationId: "shop", amount: 2n }],
    findings: [],
  });
});

test("what the books do not have comes from the last lot that was taken from, else from the first at hand, and asks for a count", () => {
  const over = takeDown("Greenmere", used(12n), [[lot("one", "truck", 5n), lot("two", "truck", 5n, 1)]]);
  expect(over.taken).toEqual([{ lotId: "one", stockLocationId: "truck", amount: 5n }, { lotId: "two", stockLocationId: "truck", amount: 7n }]);
  expect(over.findings.map(({ rule }) => rule)).toEqual(["count-it"]);
  expect(takeDown("Greenmere", used(3n), [[lot("one", "truck", -1n)]]).taken).toEqual([{ lotId: "one", stockLocationId: "truck", amount: 3n }]);
  expect(takeDown("Greenmere", used(3n), [])).toMatchObject({ taken: [], findings: [{ figure: "No lot of it is on file." }] });
});

test("the lawns add up to what was used; without a label nothing is held against it", () => {
  const lawn = (zoneId: string, squareFeet: string) => ({ zoneId, letter: "A", name: zoneId, lawnArea: of("sq ft", squareFeet), keptClear: of("sq ft", "0"), treatedArea: of("sq ft", squareFeet) }) satisfies TreatedLawn;
  const total = of("lb", "10.01");
  const { lawns, findings } = sharePutDown("not-on-file", total, [lawn("front", "1000"), lawn("back", "2000"), lawn("bed", "0")]);
  expect(lawns.map(({ zoneId }) => zoneId)).toEqual(["front", "back"]);
  expect(sum("mass", lawns.map(({ amount }) => amount as typeof total))).toEqual(total);
  expect([findings, lawns.flatMap(({ activeIngredients }) => activeIngredients)]).toEqual([[], []]);
});
