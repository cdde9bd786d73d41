import fc from "fast-check";
import { expect, test } from "vitest";
import { type Working } from "#domain/foundation/working";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { of } from "#domain/quantities/quantity";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { type GranularMix } from "#domain/mixing/granular-mix";
import { type SprayMix } from "#domain/mixing/spray-mix";
import { allWorkings } from "#domain/mixing/ticket-working";
import { granularWorkings } from "#domain/mixing/ticket-working-granular";
import { sprayWorkings } from "#domain/mixing/ticket-working-spray";
import { aftercareQuestion, appliedOf, FEED as WATERED_FEED } from "../../support/aftercare-builders";
import { valueOf } from "../../support/domain-answers";
import { faultsOf, firstFigure, lastComesTo } from "../../support/read-working";
import { LAWN, QUESTION, ticketOf } from "../../support/ticket";
import { someQuestion } from "../../support/ticket-questions";

const us = (measure: Parameters<typeof formatQuantity>[0]) => formatQuantity(measure, "us");
type Shown = readonly [shown: string, working: Working | undefined];

/** Every amount of a spread product as the page shows it, with the working that stands for it. */
function shownOfGranular(mix: GranularMix, workings: NonNullable<ReturnType<typeof granularWorkings>>): readonly Shown[] {
  return [
    ...mix.lawns.flatMap((lawn, index): readonly Shown[] => {
      const own = workings.lawns[index];
      return [
        [us(lawn.treatedArea), own?.treated],
        [us(lawn.amount), own?.amount],
        [us(lawn.perPass), own?.perPass],
        ...(lawn.rate === null ? [] : [[formatRate(lawn.rate, "us"), own?.rate] as const]),
      ];
    }),
    [us(mix.total), workings.total],
    [mix.hopperFills === 1n ? "Filled once" : `Filled ${String(mix.hopperFills)} times at least`, workings.hopper],
    ...(workings.time === undefined ? [] : [["About ", workings.time] as const]),
    ...(mix.setting === "not-calibrated" ? [] : [[`${mix.setting.setting}, puts down ${formatRate(mix.setting.rate, "us")} in a pass`, workings.setting] as const]),
  ];
}

/** Every amount of a spray as the page shows it, with the working that stands for it. */
function shownOfSpray(mix: SprayMix, workings: NonNullable<ReturnType<typeof sprayWorkings>>): readonly Shown[] {
  return [
    [formatRate(mix.carrier.rate, "us"), workings.carrier],
    [us(mix.finished), workings.finished],
    ...mix.loads.flatMap((load, index): readonly Shown[] => {
      const own = workings.loads[index];
      return [[us(load.finished), own?.finished], [us(load.water), own?.water], ...load.products.map(({ line, amount }) => [us(amount), own?.products.find((one) => one.line === line)?.working] as const)];
    }),
    ...mix.products.flatMap(({ line, concentration, total }): readonly Shown[] => {
      const own = workings.products.find((one) => one.line === line);
      const strength = concentration.basis === "product-mass-per-spray-volume" ? formatRate(concentration, "us") : formatRate(concentration, "us");
      return [[strength, own?.concentration], [us(total), own?.total]];
    }),
    ...mix.lawns.flatMap((lawn, index): readonly Shown[] => {
      const own = workings.lawns[index];
      return [[us(lawn.treatedArea), own?.treated], [us(lawn.finished), own?.finished], ...lawn.products.map(({ line, amount }) => [us(amount), own?.products.find((one) => one.line === line)?.working] as const)];
    }),
    ...(mix.rest === undefined || mix.rest.finished.amount === 0n
      ? []
      : [[us(mix.rest.finished), workings.rest?.finished] as const, ...mix.rest.products.map(({ line, amount }) => [us(amount), workings.rest?.products.find((one) => one.line === line)?.working] as const)]),
    [mix.products.map(({ productName }) => productName).join(", then "), workings.order],
    [mix.steps[0] ?? "no step", workings.half],
    ...(workings.time === undefined ? [] : [["About ", workings.time] as const]),
  ];
}

/** True where the last line and the result name one figure, as far as pages print it; nothing at all has no last line. */
function leadsToItsResult(working: Working): boolean {
  if (working.result.startsWith("0 ")) return true;
  const last = lastComesTo(working);
  const [said, shown] = [firstFigure(last ?? ""), firstFigure(working.result)];
  const isSameUnit = working.result.split(" ")[1] === last?.split(" ")[1];
  if (said === undefined || shown === undefined || !isSameUnit) return true;
  // Pages print an area to a tenth of a square foot, whatever little is left of it.
  return Math.abs(said - shown) <= (working.result.includes("sq ft") ? Math.max(0.0501, 0.0051 * said) : 0.0051 * Math.max(1, said));
}

test("every amount that the page shows has a working whose result says it exactly so, and which a reader can follow by hand", () => {
  let followed = 0;
  fc.assert(
    fc.property(someQuestion, (question) => {
      const ticket = ticketOf(question);
      const shown = ticket.mixes.flatMap((mix): readonly Shown[] => {
        if (mix.kind === "granular") {
          const workings = granularWorkings(mix, question, ticket);
          return workings === undefined ? [["the spread", undefined]] : shownOfGranular(mix, workings);
        }
        const workings = sprayWorkings(mix, question, ticket);
        return workings === undefined ? [["the spray", undefined]] : shownOfSpray(mix, workings);
      });
      for (const [words, working] of shown) expect(working?.result ?? "no working").toContain(words);
      const all = allWorkings({ question, ticket, aftercare: [] });
      const told = new Set(all.map(({ title, result, steps }) => [title, result, ...steps].join("\n")));
      for (const [, working] of shown) expect(told.has([working?.title, working?.result, ...(working?.steps ?? [])].join("\n"))).toBe(true);
      expect(all.flatMap(faultsOf)).toEqual([]);
      expect(all.filter((working) => !leadsToItsResult(working))).toEqual([]);
      expect(all.filter(({ source, formula }) => source === "" || formula === "")).toEqual([]);
      followed += all.reduce((sum, { steps }) => sum + steps.filter((step) => step.includes(" = ")).length, 0);
    }),
    { numRuns: 100 },
  );
  expect(followed).toBeGreaterThan(2000);
}, 60_000);

test("the workings of a ticket stand in the order of the ticket, the watering last", () => {
  const aftercare = [{ timeline: valueOf(aftercareTimeline(aftercareQuestion([appliedOf(WATERED_FEED)]))) }];
  const titles = allWorkings({ question: QUESTION, ticket: ticketOf(), aftercare }).map(({ title }) => title);
  expect(titles[0]).toBe("Treated area of A Front for Harrowgate 32");
  expect(titles.at(-1)).toBe("Minutes of station Front");
  expect(titles.indexOf("Rustwater Iron for the load")).toBeLessThan(titles.indexOf("Nitrogen on Front"));
});

test("a working is of what was kept: another question's facts don't change it, those of the kept one do", () => {
  const ticket = ticketOf();
  const ofKept = allWorkings({ question: QUESTION, ticket, aftercare: [] });
  const grown = { ...QUESTION, lawns: [{ ...LAWN, area: of("sq ft", 9000n) }] };
  expect(allWorkings({ question: QUESTION, ticket, aftercare: [] })).toEqual(ofKept);
  expect(allWorkings({ question: grown, ticket: ticketOf(grown), aftercare: [] })).not.toEqual(ofKept);
  expect(allWorkings({ question: { ...QUESTION, treatments: [] }, ticket, aftercare: [] }).map(({ title }) => title)).not.toContain("Harrowgate 32 for A Front");
});

test("the reader finds a wrong line, and a figure from nowhere", () => {
  const working: Working = { title: "T", formula: "f", inputs: [{ name: "a", figure: "2 lb" }], steps: ["2 lb × 1,000 = 2,000 lb"], result: "r", source: "s" };
  expect(faultsOf(working)).toEqual([]);
  expect(faultsOf({ ...working, steps: ["2 lb × 1,000 = 2,001 lb"] })).toHaveLength(1);
  expect(faultsOf({ ...working, steps: ["3 lb × 1,000 = 3,000 lb"] })).toHaveLength(1);
});
