import { expect, test } from "vitest";
import { loadingList } from "#domain/mixing/loading-list";
import { planTanks } from "#domain/mixing/tank-plan";
import { type DayToPrint, loadingListOnPaper, routeSheetOnPaper, type StopToPrint } from "#domain/papers/day-on-paper";
import { type PaperFinding } from "#domain/papers/paper";
import { frameOf } from "../../support/sample-papers";
import { of } from "#domain/quantities/quantity";
import { SPRAYER, ticketOf } from "../../support/ticket";
import { tankQuestion } from "../../support/truck-stops";

const CARE: PaperFinding = { level: "take-care", words: "Ask the county." };
const STOP: StopToPrint = {
  position: 1, arrivesAtMinute: 530, window: null, address: "4 Sorrel Lane, Millbrook", customer: "Avery Thorn", phone: null, accessNotes: ["Gate code 4417"],
  ticket: { number: 3, mixes: ticketOf().mixes }, findings: [],
};
const DAY: DayToPrint = {
  frame: frameOf("Route sheet"), truck: "Truck 1", people: ["Dana Quill"], stops: [STOP], loading: loadingList([], [], planTanks(tankQuestion([]))),
  tanks: { fills: [], mixes: [] },
  returnsAtMinute: 940, driveMeters: 16093.44,
};

test("a stop gets its lawns from its mix ticket, its time from the order, and no code of a gate", () => {
  const sheet = routeSheetOnPaper(DAY);
  expect(sheet.summary).toBe("1 stop, about 10 miles, back at the shop about 3:40 pm.");
  expect(sheet.stops[0]).toMatchObject({ order: "1", arrival: "8:50 am" });
  expect(sheet.stops[0]?.mixes.map(({ usedUnit, ticketNumber, amounts }) => [usedUnit, ticketNumber, amounts.map(({ amount }) => amount)])).toEqual([["lb", "No. 3", ["5 lb"]], ["gal", "No. 3", ["3 gal"]]]);
  expect(JSON.stringify(sheet)).not.toContain("4417");
});

test("what was not timed says so", () => {
  const sheet = routeSheetOnPaper({ ...DAY, returnsAtMinute: null, driveMeters: null, stops: [{ ...STOP, arrivesAtMinute: null, ticket: null }] });
  expect(sheet.summary).toBe("1 stop, miles not known, the way back is not timed.");
  expect(sheet.stops[0]).toMatchObject({ arrival: "not timed", mixes: [] });
  expect(sheet.equipment).toEqual(["none, because no mix ticket stands"]);
});

test("what several stops have in common is said once with where; what one stop alone has stays there", () => {
  const own: PaperFinding = { level: "take-care", words: "Bees next door." };
  const sheet = routeSheetOnPaper({ ...DAY, stops: [{ ...STOP, findings: [CARE, own] }, { ...STOP, position: 2, findings: [CARE] }] });
  expect(sheet.findings.map(({ words }) => words)).toEqual(["Ask the county. (stops 1 and 2)"]);
  expect(sheet.stops.map(({ findings }) => findings.map(({ words }) => words))).toEqual([["Bees next door."], []]);
});

test("fills say where they are made, what goes in by which marks and in what order; what is rinsed and left is said mix by mix; nothing of it without a spray", () => {
  const fill = { letter: "A", gear: SPRAYER, finished: of("gal", 30n), water: of("gal", "29.765625"), products: [{ productId: "iron", productName: "Rustwater Iron", amount: of("fl oz", 30n), toolName: "half-ounce cup", marks: 60n }], steps: ["Put in about half.", "Add it."] };
  const tanks = { fills: [{ fill, place: "at the shop before leaving" }], mixes: [{ name: "Sprayer, fill A", sentences: ["Nothing is left in tank and lines."] }] };
  const { groups } = loadingListOnPaper({ ...DAY, tanks, loading: { ...DAY.loading, cleanWater: of("gal", 3n) } }, frameOf("Loading list"));
  expect(groups.slice(0, 3)).toEqual([
    { title: "Products and water", lines: [{ what: "Clean water, to push mixes out", amount: "3 gal" }] },
    {
      title: "Fill A",
      lines: [
        { what: "Sprayer, at the shop before leaving: finished spray in all", amount: "30 gal" },
        { what: "Rustwater Iron: half-ounce cup, 60 marks", amount: "30 fl oz" },
        { what: "Water in all, by the gauge or the meter", amount: "29.77 gal" },
        { what: "Put in about half.", amount: "" },
        { what: "Add it.", amount: "" },
      ],
    },
    { title: "Before and after each mix", lines: [{ what: "Sprayer, fill A: Nothing is left in tank and lines.", amount: "" }] },
  ]);
  expect(routeSheetOnPaper(DAY).loading.map(({ title }) => title)).toEqual(["Products and water", "Signs and notices"]);
});

test("a loading list names the stops that it loads nothing for", () => {
  const held: StopToPrint = { ...STOP, position: 4, ticket: null, findings: [{ level: "hold", words: "A hold stands." }] };
  expect(loadingListOnPaper({ ...DAY, stops: [STOP, held] }, frameOf("Loading list")).findings.at(-1)?.words).toBe("Nothing is loaded for stop 4: no mix ticket stands there.");
});
