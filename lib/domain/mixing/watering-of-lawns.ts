import { type Finding } from "#domain/foundation/finding";
import { groupedBy } from "#domain/foundation/grouping";
import { listWords } from "#domain/foundation/list-words";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { type AftercareKind } from "#domain/label/aftercare-constraint";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type IrrigationStation } from "#domain/mixing/irrigation-run";
import { judgeWithByHand } from "#domain/mixing/watering-by-hand";
import { unreadFindings } from "#domain/mixing/unread-facts";
import { type ReachedLawns } from "#domain/mixing/watering-shared";
import { type JudgedWatering, judgeWaterings, keptDry, type LawnsToWater, type WateringAnswer, type WateringWindow } from "#domain/mixing/watering-window";

/** A lawn with the stations that water it. */
export interface WateredLawn {
  readonly name: string;
  readonly stations: readonly IrrigationStation[];
}

/** Lawns that got the same: they are watered alike. */
export interface WateredGroup {
  readonly lawns: readonly WateredLawn[];
  readonly products: readonly AppliedProduct[];
}

/** What of a property's watering is the same for all its lawns. */
export type WateringSetting = Omit<LawnsToWater, "products" | "stations" | "lawnNames">;

/**
 * When and how much each group of lawns is watered, in their order. A property has one supply and one controller: no two
 * of its stations run at one time, and lawns that share a station are watered under everything that their labels ask for
 * together, directly or through a third lawn. What is found of such lawns stands with the first group of them.
 * @param besides lawns that get nothing in this visit: what they got before keeps the stations off that they share
 */
export function wateringOfLawns(groups: readonly WateredGroup[], besides: readonly WateredGroup[], setting: WateringSetting): Outcome<readonly JudgedWatering[]> {
  const circles: Circle[] = [];
  for (const own of circlesOf(groups.map(memberOf))) {
    const circle = circleWith(own, besides.map(memberOf), setting);
    if (!circle.ok) return circle;
    circles.push(circle.value);
  }
  const judged = judgeWithByHand(circles.map((circle) => ({ ...setting, ...askedTogether(circle) })));
  if (!judged.ok) return judged;
  const shareOf = new Map(
    circles.flatMap((circle, index) => {
      const together = judged.value[index];
      if (together === undefined) throw new Error("Lawns were asked about together, and nothing was judged of them.");
      return sharesOf(circle, together, setting).map((share, at) => [circle.own[at]?.group, share] as const);
    }),
  );
  return accept(groups.flatMap((group) => shareOf.get(group) ?? []));
}

/** A group with its stations, each once, and a name for the lawns of it that have none. */
interface Member {
  readonly group: WateredGroup;
  readonly stations: readonly IrrigationStation[];
}

function memberOf(group: WateredGroup): Member {
  const { lawns } = group;
  const stations = eachStationOnce(lawns.flatMap((lawn) => lawn.stations));
  const without = lawns.filter((lawn) => lawn.stations.length === 0).map(({ name }) => name);
  const byHand = stations.length === 0 || without.length === 0 ? [] : [{ stationName: `Sprinkler or hose on ${listWords(without)}`, depthPerHour: "not-tested", cycle: "none" } as const];
  return { group, stations: [...stations, ...byHand] };
}

function eachStationOnce(stations: readonly IrrigationStation[]): readonly IrrigationStation[] {
  return [...new Map(stations.map((station) => [station.stationName, station])).values()];
}

const KINDS_OF_WATER: readonly AftercareKind[] = ["watering-not-before", "watering-in", "rain-that-spoils"];

/** A lawn on which nothing asks for water or for none may be watered with any other, and ties no two together. */
function minds({ group: { products } }: Member): boolean {
  return products.some(({ label: { facts } }) => KINDS_OF_WATER.some((kind) => facts[kind] !== "none"));
}

function shareStation(one: Member, other: Member): boolean {
  return minds(one) && minds(other) && one.stations.some(({ stationName }) => other.stations.some((station) => station.stationName === stationName));
}

/** The groups that share stations, directly or through a third, in the order of the first of each. */
function circlesOf(members: readonly Member[]): readonly (readonly Member[])[] {
  let circles: readonly (readonly Member[])[] = [];
  for (const member of members) {
    const isTouched = (circle: readonly Member[]) => circle.some((one) => shareStation(one, member));
    const joined = [...circles.filter(isTouched).flat(), member];
    const first = circles.findIndex(isTouched);
    circles = first < 0 ? [...circles, joined] : circles.flatMap((circle, index) => (index === first ? [joined] : isTouched(circle) ? [] : [circle]));
  }
  return circles;
}

/** Groups that are watered together, and what else their stations reach. */
interface Circle {
  readonly own: readonly Member[];
  /** Those of them that want water, or of which that is not known. */
  readonly watered: readonly Member[];
  readonly besides: readonly Member[];
}

function circleWith(own: readonly Member[], others: readonly Member[], setting: WateringSetting): Outcome<Circle> {
  const besides = others.filter((other) => own.some((one) => shareStation(one, other)));
  if (own.length + besides.length === 1) return accept({ own, watered: own, besides });
  const alone = judgeEach(own, setting);
  if (!alone.ok) return alone;
  return accept({ own, watered: own.filter((_, index) => alone.value[index]?.kind !== "none-needed"), besides });
}

function judgeEach(members: readonly Member[], setting: WateringSetting): Outcome<readonly WateringAnswer[]> {
  const answers: WateringAnswer[] = [];
  for (const { group } of members) {
    const judged = judgeWaterings([{ ...setting, products: group.products, stations: [], lawnNames: [] }]);
    if (!judged.ok) return judged;
    answers.push(...judged.value.map(({ answer }) => answer));
  }
  return accept(answers);
}

/** Everything that lawns of one circle ask for; a product that several got is asked about once. */
function askedTogether({ own, watered, besides }: Circle): Pick<LawnsToWater, "products" | "stations" | "lawnNames"> {
  const lawnNames = watered.flatMap(({ group }) => group.lawns.map(({ name }) => name));
  const stations = eachStationOnce(watered.flatMap((member) => member.stations));
  const [only, ...others] = [...own, ...besides];
  if (only !== undefined && others.length === 0) return { products: only.group.products, stations, lawnNames };
  const products = new Map([...own, ...besides].flatMap(({ group }) => group.products.map((product) => [textOf(product), product])));
  return { products: [...products.values()], stations, lawnNames };
}

/** What tells products apart that several lawns got. Depths are kept as whole numbers that text has no form for. */
function textOf(product: AppliedProduct): string {
  return JSON.stringify(product, (_key, value: unknown) => (typeof value === "bigint" ? `${value}n` : value));
}

/** What was judged of the groups of a circle together, as each of them is told it. */
function sharesOf({ own, watered, besides }: Circle, together: JudgedWatering, setting: WateringSetting): readonly JudgedWatering[] {
  if (own.length + besides.length === 1) return [together];
  const unread = watered.length > 0 && together.answer.kind === "undecided" ? unreadFindings(besides.flatMap(({ group }) => group.products), setting.timeZone) : [];
  const findings = [...unread, ...together.findings.map((finding) => ofSharedStations(finding, [...own, ...besides]))];
  const products = askedTogether({ own, watered, besides }).products;
  const unwatered = [...own, ...besides].filter((one) => !watered.includes(one));
  return own.map((member, index) => {
    const answer = watered.includes(member) ? shareOfAnswer(together.answer, member, watered) : ({ kind: "none-needed" } as const);
    const shared = { products, dry: together.dry, alsoWaters: reachedBy(member, watered), alsoWets: reachedBy(member, unwatered) };
    const said = { answer, findings: index === 0 ? findings : [], dry: keptDry(member.group.products, together.water, setting), water: together.water, lostToOthers: lostOf(member, together), shared };
    if (together.byHand === undefined || !watered.includes(member)) return said;
    return { ...said, byHand: { answer: shareOfWindow(together.byHand.answer, member, watered), lostToOthers: lostOf(member, together.byHand) } };
  });
}

/** Which of a member's stations water other lawns too. */
function reachedBy(member: Member, members: readonly Member[]): readonly ReachedLawns[] {
  const others = members.filter((one) => one !== member).flatMap(({ group }) => group.lawns);
  return member.stations.flatMap(({ stationName }) => {
    const lawnNames = others.filter((lawn) => lawn.stations.some((station) => station.stationName === stationName)).map(({ name }) => name);
    return lawnNames.length === 0 ? [] : [{ stationName, lawnNames }];
  });
}

/** What of a group's own products was let go: the circle asked about each product once, under whichever group got it. */
function lostOf({ group: { products } }: Member, { lostToOthers }: Pick<JudgedWatering, "lostToOthers">): JudgedWatering["lostToOthers"] {
  return lostToOthers.flatMap(({ applied, of }) => products.filter((own) => textOf(own) === textOf(applied)).map((own) => ({ applied: own, of })));
}

function shareOfAnswer(answer: WateringAnswer, member: Member, watered: readonly Member[]): WateringAnswer {
  return answer.kind === "window" ? shareOfWindow(answer, member, watered) : answer;
}

function shareOfWindow(answer: WateringWindow, member: Member, watered: readonly Member[]): WateringWindow {
  const own = new Set(member.stations.map(({ stationName }) => stationName));
  const isOwn = ({ stationName }: { readonly stationName: string }) => own.has(stationName);
  const { starts = [], parts = [] } = answer;
  const stations = answer.stations.filter(isOwn);
  const alsoWaters = reachedBy(member, watered);
  const runsOthers = ![...starts, ...parts.flatMap((part) => part.starts)].every(isOwn);
  const places = placesOfShare({ ...answer, starts: starts.filter(isOwn) }, parts.map((part) => ({ ...part, starts: part.starts.filter(isOwn) })), stations.some(({ kind }) => kind !== "run"));
  return { ...answer, ...places, stations, alsoWaters, isWithOthers: answer.isWithOthers === true || runsOthers, elapsedMinutes: runsOthers ? null : answer.elapsedMinutes };
}

/**
 * Of several parts those in which own stations run. Stations that have no minutes stand with the last part of all, on whichever
 * lawn they are, so that one that waters two lawns has one day. A single part is told as one go.
 */
function placesOfShare({ windows, starts }: WateringWindow, all: NonNullable<WateringWindow["parts"]>, hasUntimed: boolean): Pick<WateringWindow, "windows" | "parts" | "starts"> {
  if (all.length === 0) return { windows, parts: [], starts: starts ?? [] };
  const parts = all.filter((part, index) => part.starts.length > 0 || (hasUntimed && index === all.length - 1));
  const [only, ...others] = parts;
  if (only === undefined || others.length > 0) return { windows, parts, starts: [] };
  const { fromEpochMilliseconds, untilEpochMilliseconds } = only;
  return { windows: [{ fromEpochMilliseconds, untilEpochMilliseconds }], parts: [], starts: only.starts };
}

/** A finding whose products lie on several lawns says which stations bring them together; the words of others stay as they are. */
function ofSharedStations(finding: Finding, all: readonly Member[]): Finding {
  const namesOn = ({ group: { products } }: Member) => finding.about.filter((name) => products.some(({ label }) => label.productName === name));
  if (finding.level !== "hold" || all.some((member) => namesOn(member).length === finding.about.length)) return finding;
  const watered = all.flatMap((member) =>
    member.group.lawns.flatMap(({ name, stations }) => {
      const words = [name, ...namesOn(member).map((product) => `(${product})`)].join(" ");
      return stations.map(({ stationName }) => ({ words, stationName }));
    }),
  );
  const shared = [...groupedBy(watered, ({ stationName }) => stationName)].filter(([, lawns]) => lawns.length > 1);
  const sentences = shared.map(([stationName, lawns]) => `Station ${stationName} waters ${listWords(lawns.map(({ words }) => words))}.`);
  return { ...finding, figure: [finding.figure ?? "", ...sentences].join(" ").trim() };
}
