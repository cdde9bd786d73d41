import { formatQuantity } from "#domain/quantities/format-quantity";
import { listWords } from "#domain/foundation/list-words";
import { type LoadingList } from "#domain/mixing/loading-list";
import { type FillOfRoute } from "#domain/mixing/tank-plan-answer";
import { treatedWords } from "#domain/mixing/treated-area";
import { type MixTicket } from "#domain/mixing/mix-ticket";
import { settingWords, toolWords } from "#domain/papers/loads-on-paper";
import { type LoadingGroup, type LoadingLine, type LoadingList as LoadingListPaper } from "#domain/papers/loading-list";
import { numberOnPaper } from "#domain/papers/company-on-paper";
import { findingLine, type PaperFinding, type PaperFrame } from "#domain/papers/paper";
import { clockWordsInFull } from "#domain/foundation/clock-words";
import { accessNoteOnPaper, type RouteMix, type RouteSheet, type RouteStop } from "#domain/papers/route-sheet";

/** One stop of a truck's day, with the mix ticket by which it is done. */
export interface StopToPrint {
  readonly position: number;
  /** Null where the day was not put in order. */
  readonly arrivesAtMinute: number | null;
  readonly window: { readonly fromMinute: number; readonly untilMinute: number } | null;
  readonly address: string;
  readonly customer: string;
  readonly phone: string | null;
  readonly accessNotes: readonly string[];
  /** Null where none was issued, or where it is not of the present plan: then nothing is put down by this sheet. */
  readonly ticket: { readonly number: number; readonly mixes: MixTicket["mixes"] } | null;
  readonly findings: readonly PaperFinding[];
}

/** A truck's day as its route sheet and its loading list take it. */
export interface DayToPrint {
  readonly frame: PaperFrame;
  readonly truck: string;
  readonly people: readonly string[];
  readonly stops: readonly StopToPrint[];
  readonly loading: LoadingList;
  /** How the tanks are filled along the route, in words. */
  readonly tanks: {
    readonly fills: readonly { readonly fill: Pick<FillOfRoute, "letter" | "gear" | "finished" | "products" | "water" | "steps">; readonly place: string }[];
    readonly mixes: readonly { readonly name: string; readonly sentences: readonly string[] }[];
  };
  readonly returnsAtMinute: number | null;
  readonly driveMeters: number | null;
}

/** A truck's day on one sheet, lawn by lawn, with room to write down what really happened. No code of a gate is on it. */
export function routeSheetOnPaper(day: DayToPrint): RouteSheet {
  const gear = day.stops.flatMap(({ ticket }) => ticket?.mixes.map(({ gearName }) => gearName) ?? []);
  return {
    frame: day.frame,
    truck: day.truck,
    people: day.people,
    equipment: gear.length === 0 ? ["none, because no mix ticket stands"] : [...new Set(gear)],
    summary: summaryOf(day),
    // Gear and spill kit are ticked off on the loading list; the sheet that travels names what differs from day to day.
    loading: [productsToLoad(day), ...tankGroups(day), signsToLoad(day)],
    stops: day.stops.map((stop) => stopOnPaper({ ...stop, findings: stop.findings.filter((finding) => finding.level !== "take-care" || stopsWith(day, finding).length === 1) })),
    findings: [...day.loading.findings.map(findingLine), ...saidOnce(day)],
  };
}

function stopsWith({ stops }: DayToPrint, { level, words }: PaperFinding): readonly StopToPrint[] {
  return stops.filter(({ findings }) => findings.some((other) => other.level === level && other.words === words));
}

/** What several stops ask care for in the same words is said once, at the top, with where. */
function saidOnce(day: DayToPrint): readonly PaperFinding[] {
  const byWords = new Map(day.stops.flatMap(({ findings }) => findings.filter(({ level }) => level === "take-care").map((finding) => [finding.words, finding] as const)));
  return [...byWords.values()].flatMap((finding) => {
    const stops = stopsWith(day, finding);
    return stops.length < 2 ? [] : [{ ...finding, words: `${finding.words} (${stopWords(stops)})` }];
  });
}

/** What the truck takes along for the mix tickets that stand, to be ticked off. */
export function loadingListOnPaper(day: DayToPrint, frame: PaperFrame): LoadingListPaper {
  const { truck, people, loading } = day;
  const open = day.stops.filter(({ ticket, findings }) => ticket === null && findings.some(({ level }) => level === "hold"));
  const left: readonly PaperFinding[] = open.length === 0 ? [] : [{ level: "take-care", words: `Nothing is loaded for ${stopWords(open)}: no mix ticket stands there.` }];
  return { frame, truck, people, groups: loadingGroups(day), findings: [...loading.findings.map(findingLine), ...left] };
}

function stopWords(stops: readonly StopToPrint[]): string {
  const numbers = stops.map(({ position }) => String(position));
  return numbers.length === 1 ? `stop ${listWords(numbers)}` : `stops ${listWords(numbers)}`;
}

const METERS_A_MILE = 1609.344;

function summaryOf({ stops, driveMeters, returnsAtMinute }: DayToPrint): string {
  const count = stops.length === 1 ? "1 stop" : `${String(stops.length)} stops`;
  const drive = driveMeters === null ? "miles not known" : `about ${String(Math.round(driveMeters / METERS_A_MILE))} miles`;
  const back = returnsAtMinute === null ? "the way back is not timed" : `back at the shop about ${clockWordsInFull(returnsAtMinute)}`;
  return `${count}, ${drive}, ${back}.`;
}

function stopOnPaper({ position, arrivesAtMinute, window, address, customer, phone, accessNotes, ticket, findings }: StopToPrint): RouteStop {
  return {
    order: String(position),
    arrival: arrivesAtMinute === null ? "not timed" : clockWordsInFull(arrivesAtMinute),
    ...(window === null ? {} : { timeWindow: `between ${clockWordsInFull(window.fromMinute)} and ${clockWordsInFull(window.untilMinute)}` }),
    address,
    customer,
    ...(phone === null ? {} : { phone }),
    // What is stored with a paper is as public as the paper: a code goes into neither.
    accessNotes: accessNotes.map(accessNoteOnPaper),
    mixes: ticket === null ? [] : mixesOnPaper(ticket),
    findings,
  };
}

function mixesOnPaper({ number, mixes }: NonNullable<StopToPrint["ticket"]>): readonly RouteMix[] {
  return mixes.map((mix) => {
    const ticketNumber = numberOnPaper(number);
    if (mix.kind === "granular") {
      return {
        name: `Spread ${mix.productName}, ${mix.gearName}, ${settingWords(mix)}`,
        ticketNumber,
        usedUnit: "lb",
        amounts: mix.lawns.map(({ name, amount, ...lawn }) => ({ lawn: name, treatedArea: treatedWords(lawn), amount: formatQuantity(amount, "us") })),
      };
    }
    return {
      name: `Spray ${mix.products.map(({ productName }) => productName).join(" and ")}, ${mix.gearName}`,
      ticketNumber,
      usedUnit: "gal",
      amounts: mix.lawns.map(({ name, finished, ...lawn }) => ({ lawn: name, treatedArea: treatedWords(lawn), amount: formatQuantity(finished, "us") })),
    };
  });
}

function loadingGroups(day: DayToPrint): readonly LoadingGroup[] {
  const { protectiveGear, spillKit } = day.loading;
  return [
    productsToLoad(day),
    ...tankGroups(day),
    signsToLoad(day),
    { title: "Protective gear", lines: protectiveGear.map((what) => ({ what, amount: "" })) },
    { title: "Spill kit", lines: spillKit.map((what) => ({ what, amount: "" })) },
  ];
}

/** Each fill with where it is made, what goes in by which marks, and the order of work; then what is rinsed and left. Nothing where nothing is sprayed. */
function tankGroups({ tanks: { fills, mixes } }: DayToPrint): readonly LoadingGroup[] {
  const groups = fills.map(({ fill, place }): LoadingGroup => ({
    title: `Fill ${fill.letter}`,
    lines: [
      { what: `${fill.gear.name}, ${place}: finished spray in all`, amount: formatQuantity(fill.finished, "us") },
      ...fill.products.map(({ productName, amount, toolName, marks }) => ({ what: `${productName}: ${toolWords(toolName, marks)}`, amount: formatQuantity(amount, "us") })),
      { what: "Water in all, by the gauge or the meter", amount: formatQuantity(fill.water, "us") },
      ...fill.steps.map((what) => ({ what, amount: "" })),
    ],
  }));
  const between = mixes.flatMap(({ name, sentences }) => sentences.map((what): LoadingLine => ({ what: `${name}: ${what}`, amount: "" })));
  return [...groups, { title: "Before and after each mix", lines: between }].filter((group) => group.lines.length > 0);
}

function productsToLoad({ loading: { products, water, cleanWater, weightAboard } }: DayToPrint): LoadingGroup {
  const lines = products.map(({ productName, needed, words, lotNumber }): LoadingLine => ({
    what: `${productName}, ${formatQuantity(needed, "us")} needed`,
    amount: words,
    lot: lotNumber ?? "none on hand",
  }));
  const more = [
    { what: "Water, all fills together", quantity: water },
    { what: "Clean water, to push mixes out", quantity: cleanWater },
    { what: "Products and water weigh at most", quantity: weightAboard },
  ].flatMap(({ what, quantity }): readonly LoadingLine[] => (quantity.amount === 0n ? [] : [{ what, amount: formatQuantity(quantity, "us") }]));
  return { title: "Products and water", lines: [...lines, ...more] };
}

function signsToLoad({ loading: { signs, stakes, notices } }: DayToPrint): LoadingGroup {
  return { title: "Signs and notices", lines: [counted("Lawn markers", signs), counted("Stakes for them", stakes), counted("Customer notices", notices)].flat() };
}

function counted(what: string, count: number): readonly LoadingLine[] {
  return count === 0 ? [] : [{ what, amount: String(count) }];
}
