import fc from "fast-check";
import { expect, test } from "vitest";
import { of } from "#domain/quantities/quantity";
import { ILLINOIS } from "#domain/rules/packs/illinois";
import { shareTreated, treatedLawns, treatedWords } from "#domain/mixing/treated-area";
import { FEED, IRON, LAWN, SPREADER } from "../../support/ticket";

const along = (feet: bigint) => ({ ...LAWN, waterEdges: [{ name: "the pond", length: of("ft", feet), width: of("ft", 4n) }] });

// 415 ILCS 65/5a: 3 ft with a deflector (the crew's own 4 ft is wider), 15 ft for the sprayer.
test("the same lawn has another treated area for another machine", () => {
  expect(treatedLawns(FEED, [along(50n)], ILLINOIS).lawns[0]?.treatedArea).toEqual(of("sq ft", 1800n));
  expect(treatedLawns({ ...FEED, gear: { ...SPREADER, deflector: "no" } }, [along(50n)], ILLINOIS).lawns[0]?.treatedArea).toEqual(of("sq ft", 1250n));
  expect(treatedLawns(IRON, [along(50n)], ILLINOIS).lawns[0]?.treatedArea).toEqual(of("sq ft", 1250n));
  expect(treatedLawns(IRON, [along(50n)], ILLINOIS).lawns[0]?.strips).toMatchObject([{ length: of("ft", 50n), width: of("ft", 15n), area: of("sq ft", 750n) }]);
  expect(treatedLawns(FEED, [LAWN], ILLINOIS).lawns[0]).not.toHaveProperty("strips");
  expect(treatedLawns(IRON, [along(50n)], undefined).lawns[0]?.treatedArea).toEqual(of("sq ft", 1800n));
});

test("the label's own distance is the machine's and the use's", () => {
  const distanceToWater = { withDeflector: of("ft", 6n), otherwise: of("ft", 20n), basis: "label", source: "label of a feed" } as const;
  const far = (treatment: typeof FEED) => ({ ...treatment, use: { ...treatment.use, distanceToWater } });
  expect(treatedLawns(far(FEED), [along(50n)], ILLINOIS).lawns[0]).toMatchObject({ treatedArea: of("sq ft", 1700n), strips: [{ whose: "label", width: of("ft", 6n) }] });
  expect(treatedLawns(far(IRON), [along(50n)], ILLINOIS).lawns[0]).toMatchObject({ treatedArea: of("sq ft", 1000n), strips: [{ whose: "label", width: of("ft", 20n) }] });
  const unread = { ...FEED, use: { ...FEED.use, distanceToWater: "unknown" as const } };
  expect(treatedLawns(unread, [along(50n)], ILLINOIS).findings.map(({ rule }) => rule)).toEqual(["distance-to-water-not-read"]);
});

test("what stays clear and what is treated make the lawn, or nothing is left and that holds", () => {
  fc.assert(
    fc.property(fc.bigInt(0n, 900n), (feet) => {
      const { lawns, findings } = treatedLawns(FEED, [along(feet)], ILLINOIS);
      const [lawn] = lawns;
      const left = 2000n - feet * 4n;
      expect(lawn?.treatedArea).toEqual(of("sq ft", left > 0n ? left : 0n));
      expect(findings.some(({ rule }) => rule === "nothing-left-to-treat")).toBe(left <= 0n);
    }),
  );
});

test("only the treatment's own lawns", () => {
  expect(treatedLawns(FEED, [LAWN, { ...LAWN, zoneId: "back", name: "Back" }], ILLINOIS).lawns.map(({ name }) => name)).toEqual(["Front"]);
});

test("a lawn that is entered without an area is held for that, and not for a strip of water", () => {
  const { lawns, findings } = treatedLawns(FEED, [{ ...LAWN, area: of("sq ft", 0n) }], ILLINOIS);
  expect(lawns[0]?.treatedArea.amount).toBe(0n);
  expect(findings).toMatchObject([{ level: "hold", rule: "nothing-left-to-treat", figure: "The lawn is entered without an area.", about: ["Harrowgate 32", LAWN.name] }]);
});

test("a lawn that is all strip along the water is held for that", () => {
  const { findings } = treatedLawns(FEED, [along(500n)], ILLINOIS);
  expect(findings).toMatchObject([{ level: "hold", rule: "nothing-left-to-treat", figure: "The strip along the water is as large as the lawn." }]);
});

test("spot work is its share of what may be treated, and says so; what stays clear of water comes off first", () => {
  const spots = { ...FEED, spot: { shareBasisPoints: 500 } };
  const [lawn] = treatedLawns(spots, [along(50n)], ILLINOIS).lawns;
  expect(lawn).toMatchObject({ lawnArea: of("sq ft", 2000n), keptClear: of("sq ft", 200n), treatedArea: of("sq ft", 90n), spot: { treatable: of("sq ft", 1800n) } });
  expect(lawn === undefined ? "" : treatedWords(lawn)).toBe("90 sq ft in spots, 5% of the lawn");
  expect(treatedWords({ treatedArea: of("sq ft", 90n) })).toBe("90 sq ft");
  expect(treatedLawns(FEED, [LAWN], ILLINOIS).lawns[0]).not.toHaveProperty("spot");
});

test("a share is never more than the ground, and the whole share is all of it", () => {
  fc.assert(
    fc.property(fc.bigInt(0n, 10n ** 15n), fc.integer({ min: 1, max: 10_000 }), (amount, shareBasisPoints) => {
      const ground = { dimension: "area", amount } as const;
      const treated = shareTreated({ shareBasisPoints }, ground).treatedArea.amount;
      expect(treated).toBe((amount * BigInt(shareBasisPoints)) / 10_000n);
    }),
  );
  expect(shareTreated({ shareBasisPoints: 10_000 }, of("sq ft", 7n)).treatedArea).toEqual(of("sq ft", 7n));
});
