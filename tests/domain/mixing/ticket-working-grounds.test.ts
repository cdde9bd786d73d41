import { expect, test } from "vitest";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { type MixTicket } from "#domain/mixing/mix-ticket";
import { type TicketQuestion } from "#domain/mixing/ticket-question";
import { groundInputs, groundLines, groundsOf } from "#domain/mixing/ticket-working-grounds";
import { FEED, IRON, LAWN, ticketOf } from "../../support/ticket";

/** 10,000 sq ft with 200 ft of water beside it: 15 ft kept clear leave 7,000 sq ft, 3 ft leave 9,400. */
const lawn = { ...LAWN, area: of("sq ft", 10_000n), waterBeside: "yes" as const, waterEdges: [{ name: "the pond", length: of("ft", 200n), width: "unknown" as const }] };
const clear = (treatment: typeof FEED, feet: bigint) => ({ ...treatment, use: { ...treatment.use, distanceToWater: { withDeflector: of("ft", feet), otherwise: of("ft", feet), basis: "label", source: "label" } as const } });
const half = { name: "A feed", mass: exactly("lb", "0.7") };
const mixesOf = (treatments: TicketQuestion["treatments"]): MixTicket["mixes"] => ticketOf({ lawns: [lawn], treatments }).mixes;

test("what goes on one area is added up there; what goes on another is said over its own", () => {
  const same = mixesOf([clear(FEED, 15n), clear(IRON, 15n)]);
  expect(groundsOf([{ ...half, line: FEED.line }, { ...half, name: "Iron", line: IRON.line }], same, "front")).toMatchObject([
    { area: of("sq ft", 7000n), from: "where A feed and Iron go", parts: [exactly("lb", "0.7"), exactly("lb", "0.7")], total: exactly("lb", "1.4") },
  ]);
  const apart = groundsOf([{ ...half, line: FEED.line }, { ...half, name: "Iron", line: IRON.line }], mixesOf([clear(FEED, 3n), clear(IRON, 15n)]), "front");
  expect(apart.map(({ area, from }) => [area, from])).toEqual([[of("sq ft", 9400n), "where A feed goes"], [of("sq ft", 7000n), "where Iron goes"]]);
  expect(groundInputs(apart, "Front").map(({ figure, from }) => `${figure} ${from ?? ""}`)).toEqual(["9,400 sq ft of Front, where A feed goes", "7,000 sq ft of Front, where Iron goes"]);
  // By hand: 0.7 lb on 9,400 sq ft are 0.074468 lb on 1,000, on 7,000 sq ft 0.1 lb; where both go it is both.
  expect(groundLines(apart, of("sq ft", 1000n)).lines).toEqual(["0.7 lb ÷ 9,400 sq ft × 1,000 sq ft = 0.074468 lb", "0.7 lb ÷ 7,000 sq ft × 1,000 sq ft = 0.1 lb", "0.074468 lb + 0.1 lb = 0.17447 lb"]);
});

test("spot work counts on its spots, also beside what goes all over", () => {
  const spots = { ...clear(IRON, 15n), spot: { shareBasisPoints: 1000 }, tool: "none" } as const;
  const ground = (lines: readonly number[]) => groundsOf(lines.map((line) => ({ ...half, line })), mixesOf([spots, clear(FEED, 15n)]), "front").map(({ area, from }) => [area, from]);
  expect(ground([IRON.line])).toEqual([[of("sq ft", 700n), "spot work on 10% of it"]]);
  expect(ground([FEED.line, IRON.line])).toEqual([[of("sq ft", 7000n), "where A feed goes"], [of("sq ft", 700n), "spot work on 10% of it"]]);
});

test("no ground is left where nothing is treated, and nothing is said of it", () => {
  expect(groundsOf([{ ...half, line: FEED.line }], mixesOf([clear(FEED, 60n)]), "front")).toEqual([]);
  expect(groundsOf([{ ...half, line: 77 }], mixesOf([FEED]), "front")).toEqual([]);
  expect(groundLines([], of("acre", 1n))).toEqual({ lines: [], total: exactly("lb", "0") });
});
