import { describe, expect, test } from "vitest";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type IrrigationStation, irrigationRun } from "#domain/mixing/irrigation-run";
import { stayingDry, wateringNeeds } from "#domain/mixing/watering-bounds";
import { type WateringHours } from "#domain/mixing/watering-hours";
import { type PlacedWatering, placeWaterings, type WateringToPlace } from "#domain/mixing/watering-places";
import { of } from "#domain/quantities/quantity";
import { aftercareQuestion, appliedOf, at, byHouse, byLaw, CHICAGO, daily, END, HOUR, hoursAfterEnd, labelOf, says } from "../../support/aftercare-builders";
import { valueOf } from "../../support/domain-answers";

const { visit, estimates } = aftercareQuestion([]);
const depth = { least: of("in", "0.25"), most: "none" } as const;
const feed = (name: string, hours: number) => appliedOf(labelOf(name, says("watering-in", { by: hoursAfterEnd(hours), depth, rain: "counts" })));
/** A station that takes so many minutes for a quarter of an inch. */
const station = (stationName: string, perHour: string): IrrigationStation => ({ stationName, depthPerHour: of("in", perHour), cycle: "none" });
const untested: IrrigationStation = { stationName: "New", depthPerHour: "not-tested", cycle: "none" };

function lawn(name: string, products: readonly AppliedProduct[], ...stations: readonly IrrigationStation[]): WateringToPlace {
  return {
    lawnNames: [name],
    products,
    needs: wateringNeeds(products, visit, CHICAGO),
    dry: stayingDry(products, { timeZone: CHICAGO, estimates }),
    runs: stations.map((one) => valueOf(irrigationRun(one, depth, "us"))),
  };
}

const mornings = (from: number, until: number): WateringHours => ({ localRules: "none", controller: byHouse(daily(from, until)) });
const placed = (hours: WateringHours, ...lawns: readonly WateringToPlace[]) => placeWaterings(lawns, { visit, timeZone: CHICAGO, hours, unitSystem: "us" });
const startsOf = (one: PlacedWatering | undefined) =>
  one?.kind === "places" ? one.starts.map(({ stationName, startsAfterMinutes }) => `${stationName} ${new Date((one.windows[0]?.fromEpochMilliseconds ?? 0) + startsAfterMinutes * 60_000).toISOString().slice(5, 16)}`) : one?.kind;
const findingsOf = (all: readonly PlacedWatering[]) => all.map((one) => (one.kind === "none" ? one.findings : []));

describe("one lawn", () => {
  test("with all its stations in the first hours that are long enough", () => {
    const [one] = placed(mornings(5, 7), lawn("Front", [feed("Evenfeed", 24)], station("A", "0.25"), station("B", "0.25")));
    expect(one).toMatchObject({ windows: [{ fromEpochMilliseconds: at("2026-05-02T05:00-05:00") }], elapsedMinutes: 120, isWithOthers: false, dueAtEpochMilliseconds: END + 24 * HOUR });
    expect(startsOf(one)).toEqual(["A 05-02T10:00", "B 05-02T11:00"]);
  });
  test("a station without minutes takes none of the time that is known, and there is no total", () => {
    const [one] = placed(mornings(5, 6), lawn("Front", [feed("Evenfeed", 24)], station("A", "0.25"), untested));
    expect(one).toMatchObject({ kind: "places", elapsedMinutes: null, starts: [{ stationName: "A" }] });
  });
});

describe("several lawns", () => {
  const front = lawn("Front", [feed("Evenfeed", 24)], station("A", "0.5"), station("B", "0.5"));
  const back = lawn("Back", [feed("Preem", 24)], station("C", "0.25"));
  test("take turns in hours that are just long enough", () => {
    expect(placed(mornings(5, 7), front, back).map(startsOf)).toEqual([["A 05-02T11:00", "B 05-02T11:30"], ["C 05-02T10:00"]]);
  });
  test("whose stations fit each alone but not together are held once, with the lawns, the products and their minutes", () => {
    const [first, second] = findingsOf(placed(mornings(5, 6), front, back));
    expect(second).toEqual([]);
    expect(first).toMatchObject([
      {
        level: "hold",
        rule: "watering-hours-leave-no-time",
        answerableBy: "office",
        what: "The hours in which this property may be watered leave too little time for watering in Front and Back, one station at a time.",
        about: ["Evenfeed", "Preem"],
      },
    ]);
    expect(first?.[0]?.figure).toContain("The stations need 120 min one at a time. Front: 60 min for Evenfeed, from Friday, May 1, 2026, 4 pm until Saturday, May 2, 2026, 4 pm. Back: 60 min for Preem, from");
  });
  test("that the town's rule alone leaves too little time are a license holder's to answer, and nobody is told to set the controller anew", () => {
    const law = { localRules: byLaw(daily(5, 6)), controller: byHouse(daily(4, 9)) } as const;
    expect(findingsOf(placed(law, front, back))[0]).toMatchObject([
      { source: "law", answerableBy: "license-holder", figure: expect.not.stringContaining("The controller") as string, toDo: "Put the product down on a day before a watering day, or split the visit." },
    ]);
    const house = { localRules: byLaw(daily(0, 10)), controller: byHouse(daily(5, 6)) } as const;
    expect(findingsOf(placed(house, front, back))[0]).toMatchObject([{ source: "house", answerableBy: "office", figure: expect.not.stringContaining("Local rules") as string, toDo: expect.stringContaining("set the controller anew within the town's rule") as string }]);
    expect(findingsOf(placed(mornings(5, 6), front, back))[0]?.[0]?.toDo).toContain("set the controller anew, or");
  });
  test("where the labels themselves leave too little, that is said and not the hours", () => {
    const quick = (name: string, stationName: string) => lawn(name, [feed(name, 1)], station(stationName, "0.3"));
    const [first] = findingsOf(placed({ localRules: "none", controller: "none" }, quick("Front", "A"), quick("Back", "B")));
    expect(first).toMatchObject([{ rule: "watering-time-too-short", what: "The labels leave too little time for watering in Front and Back, one station at a time." }]);
  });
  test("of which one can wait longer: only those that are in each other's way are held", () => {
    const [, , third, ...others] = placed(mornings(5, 6), front, back, lawn("Side", [feed("Barrier", 24 * 14)], station("D", "0.25")));
    expect(others).toEqual([]);
    expect(third).toMatchObject({ kind: "places", isWithOthers: false, windows: [{ fromEpochMilliseconds: at("2026-05-02T05:00-05:00") }, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}] });
  });
  test("of which one can wait for the next morning: it does", () => {
    const patient = lawn("Back", [feed("Preem", 48)], station("C", "0.25"));
    expect(placed(mornings(5, 6), patient, front).map(startsOf)).toEqual([["C 05-03T10:00"], ["A 05-02T10:00", "B 05-02T10:30"]]);
  });
  test("one that has no time of its own has its own finding, and leaves its time to the others", () => {
    const never = lawn("Side", [appliedOf(labelOf("Long", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(30)] }))), feed("Quick", 12)], station("D", "0.25"));
    const all = placed(mornings(5, 6), never, front);
    expect(findingsOf(all).map((findings) => findings.map(({ rule }) => rule))).toEqual([["no-common-watering-time"], []]);
    expect(startsOf(all[1])).toEqual(["A 05-02T10:00", "B 05-02T10:30"]);
  });
  test("of which one must stay dry for a product of this visit: it holds where what is down would have had its time without it", () => {
    const down = (name: string) => ({ ...feed(name, 24), appliedIn: "earlier-visit" as const });
    const iron = appliedOf(labelOf("Ferrox", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(12)] })));
    const dryFeed = { ...down("Preem"), label: labelOf("Preem", { ...down("Preem").label.facts, ...says("watering-not-before", { untilLaterOf: [hoursAfterEnd(12)] }) }) };
    const hours = { localRules: "none", controller: byHouse([...daily(5, 6), ...daily(17, 18)]) } as const;
    const later = lawn("Back", [dryFeed], station("C", "0.25"));
    expect(placed(hours, lawn("Front", [down("Evenfeed")], station("A", "0.25")), later).map(startsOf)).toEqual([["A 05-01T22:00"], ["C 05-02T10:00"]]);
    const [first] = findingsOf(placed(hours, lawn("Front", [down("Evenfeed"), iron], station("A", "0.25")), later));
    expect(first).toMatchObject([{ level: "hold", about: ["Ferrox", "Evenfeed", "Preem"], toDo: expect.stringMatching(/^Have Evenfeed .* and Preem .* watered in before this visit .*, or put Ferrox down after it has been\.$/u) as string }]);
    // With so little time that they are in each other's way anyhow this visit has no part in it.
    expect(findingsOf(placed(mornings(5, 6), lawn("Front", [down("Evenfeed"), iron], station("A", "0.25")), later))[0]).toMatchObject([{ level: "take-care" }]);
  });
  test("without minutes stand in nobody's way", () => {
    const byHand = lawn("Strip", [feed("Evenfeed", 24)], untested);
    expect(placed(mornings(5, 6), front, byHand)).toMatchObject([{ isWithOthers: false }, { isWithOthers: false, windows: [{}], starts: [] }]);
  });
});
