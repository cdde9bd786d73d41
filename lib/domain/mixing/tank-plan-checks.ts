import { type Finding, note, hold, takeCare } from "#domain/foundation/finding";
import { capitalized } from "#domain/foundation/capitalized";
import { groupedBy } from "#domain/foundation/grouping";
import { listWords } from "#domain/foundation/list-words";
import { settle } from "#domain/quantities/exact-quantity";
import { formatQuantitiesApart, formatQuantity } from "#domain/quantities/format-quantity";
import { formatRate, formatRatesApart } from "#domain/quantities/format-rate";
import { fromAmount } from "#domain/quantities/quantity";
import { cleanOutComesFirst, filledUncleaned, heldNotKnown, type MixInTank, notCleanedOut, type Unwanted } from "#domain/mixing/mix-change";
import { type SizedRun } from "#domain/mixing/sized-run";
import { type Residue, residuesFor, type TankContents } from "#domain/mixing/tank-contents";
import { type MixOfRoute, type TankPlan } from "#domain/mixing/tank-plan-answer";
import { type TankPlanQuestion, type TreatedStop } from "#domain/mixing/tank-plan-question";
import { type DrawOfStop } from "#domain/mixing/tank-runs";
import { type TicketSprayer } from "#domain/mixing/ticket-question";

type Found = TankPlan["found"];

/** What was in the tank before a mix: the mix itself, what was below it since the last clean-out, and the run of the same day that it belongs to. */
export interface BeforeMix {
  readonly last: MixInTank | null;
  readonly below: TankContents;
  readonly before: SizedRun | undefined;
}

/** What is to be said of one mix of a route: its tank not clean, what the hose still holds, other rates, weight, places to fill. */
export function checkMix(question: TankPlanQuestion, sized: SizedRun, mix: MixOfRoute, { last, below, before }: BeforeMix): Found {
  const stop = question.stops[sized.run.draws[0]?.stopIndex ?? 0];
  if (stop === undefined) return [];
  const at = (findings: readonly Finding[]) => findings.map((finding) => ({ visitId: stop.visitId, finding }));
  return [
    ...uncleaned(question, sized, stop, last === null ? [] : [last, ...below]),
    ...at(carriedOver(mix, stop)),
    ...at(otherRates(sized, before, mix, stop)),
    ...at(leftOfLast(mix)),
    ...at(twoMixes(mix)),
    ...at(lessThanTheLine(sized, mix, stop)),
    ...keptDown(question, sized),
    ...placesNotKnown(question, sized),
  ];
}

/**
 * A tank that is not clean for a mix. A clean-out between two mixes of the day is what the plan does and wants care at the
 * mix's first stop; one that should have been done before is a hold at every stop that would get what is still in the tank.
 */
function uncleaned(question: TankPlanQuestion, sized: SizedRun, first: TreatedStop, contents: TankContents): Found {
  const { run, change } = sized;
  const { gear } = run;
  if (sized.onHand !== null) {
    // The tank holds this very mix already: what it held when it was filled counts until a clean-out before that is on file.
    const { fills: [latest], onto } = sized.onHand;
    const filled = onto.findLast((one) => one !== "unknown") ?? latest;
    return atEachStop(question, sized, (stop, treatments) => {
      const left = residuesFor(onto, { stop, treatments, gear });
      return left.length > 0 ? filledUncleaned(left, latest, { stop, gear }) : onto.includes("unknown") ? heldNotKnown(run, filled) : undefined;
    });
  }
  if (sized.isCleanOutOnFile) return [];
  if (sized.last === "unknown") return atEachStop(question, sized, () => heldNotKnown(run, null));
  if (change?.cleaning !== "clean-out") return [];
  const oldest = contents.findLast((one) => one !== "unknown") ?? null;
  const leftAt = (stop: TreatedStop, treatments: DrawOfStop["treatments"]) => residuesFor(contents, { stop, treatments, gear });
  if (sized.followsMixOfThatDay) return [{ visitId: first.visitId, finding: cleanOutComesFirst(leftAnywhere(question, sized, leftAt), { stop: first, gear }) }];
  return atEachStop(question, sized, (stop, treatments) => {
    const left = leftAt(stop, treatments);
    return left.length > 0 ? notCleanedOut(left, { stop, gear }) : contents.includes("unknown") ? heldNotKnown(run, oldest) : undefined;
  });
}

/** What must not reach one stop or another of a mix, each product once. */
function leftAnywhere({ stops }: TankPlanQuestion, { run: { draws } }: SizedRun, leftAt: (stop: TreatedStop, treatments: DrawOfStop["treatments"]) => readonly Residue[]): readonly Residue[] {
  const all = draws.flatMap(({ stopIndex, treatments }) => {
    const stop = stops[stopIndex];
    return stop === undefined ? [] : leftAt(stop, treatments);
  });
  const ofMix = new Map<string, Map<string, Unwanted>>();
  const mixes = new Map<string, Residue["mix"]>();
  for (const { mix, unwanted } of all) {
    mixes.set(mix.name, mix);
    const own = ofMix.get(mix.name) ?? new Map<string, Unwanted>();
    ofMix.set(mix.name, own);
    for (const one of unwanted) if (!own.has(one.productName)) own.set(one.productName, one);
  }
  return [...mixes].map(([name, mix]) => ({ mix, unwanted: [...(ofMix.get(name)?.values() ?? [])] }));
}

function atEachStop({ stops }: TankPlanQuestion, { run }: SizedRun, findingAt: (stop: TreatedStop, treatments: DrawOfStop["treatments"]) => Finding | undefined): Found {
  return [...groupedBy(run.draws, ({ stopIndex }) => stopIndex)].flatMap(([stopIndex, own]) => {
    const stop = stops[stopIndex];
    const finding = stop === undefined ? undefined : findingAt(stop, own.flatMap(({ treatments }) => treatments));
    return stop === undefined || finding === undefined ? [] : [{ visitId: stop.visitId, finding }];
  });
}

function carriedOver({ begin: { carryOver, line, lineVolume, lastName }, gear }: MixOfRoute, stop: TreatedStop): readonly Finding[] {
  if (carryOver !== null) {
    const amounts = carryOver.products.map(({ productName, amount }) => `${formatQuantity(amount, "us")} ${productName}`);
    return [
      note({
        rule: "carry-over",
        source: "common-practice",
        what: `Pump and hose of ${gear.name} still hold ${lastName ?? "the last mix"}: ${stop.name} gets it first.`,
        figure: `${formatQuantity(carryOver.mix, "us")} with ${listWords(amounts)}, enough for ${formatQuantity(carryOver.ground, "us")}.`,
        toDo: "Write it into the record as what it is.",
        about: [gear.name, stop.name],
      }),
    ];
  }
  if (line !== "flushed" || (lineVolume !== "unknown" && lineVolume.amount === 0n)) return [];
  return [
    takeCare({
      rule: "flush-the-line",
      source: "common-practice",
      what: `Pump and hose of ${gear.name} still hold ${lastName ?? "the last mix"}, which may not go on the lawn at ${stop.name}.`,
      figure: lineVolume === "unknown" ? "How much that is nobody has measured." : `That is ${formatQuantity(lineVolume, "us")}.`,
      toDo: "Run it out into a container before this stop.",
      about: [gear.name, stop.name],
    }),
  ];
}

/** The same products at other concentrations are another mix; the stop says so. */
function otherRates({ run }: SizedRun, before: SizedRun | undefined, mix: MixOfRoute, stop: TreatedStop): readonly Finding[] {
  if (before === undefined) return [];
  const had = new Map(before.run.products.map(({ productId, concentration }) => [productId, concentration]));
  if (had.size !== run.products.length || run.products.some(({ productId }) => !had.has(productId))) return [];
  const apart = run.products.filter(({ productId, concentration }) => {
    const other = had.get(productId);
    return other === undefined || other.amount * concentration.per !== concentration.amount * other.per;
  });
  const figures = apart.map(({ productId, productName, concentration }) => {
    const other = had.get(productId);
    if (other?.basis !== concentration.basis) return `${productName}: ${formatRate(concentration, "us")} here`;
    const [here, earlier] = formatRatesApart<typeof other.basis>(concentration, other, "us");
    return `${productName}: ${here} here, ${earlier} in the mix before`;
  });
  return [
    note({
      rule: "other-rates-than-the-fill",
      source: "house",
      what: `${stop.name} needs other rates than the stops before it, so it can't share their fill.`,
      figure: `${figures.join("; ")}.`,
      toDo: `Plan the same rates where the labels leave it open, or fill again${mix.name === "nothing" ? "" : ` (${mix.name})`}.`,
      about: [stop.name],
    }),
  ];
}

function leftOfLast({ begin: { leftOfLast: left, restName }, gear }: MixOfRoute): readonly Finding[] {
  const name = restName ?? "the last mix";
  const about = [gear.name];
  if (left === "unknown") {
    return [
      takeCare({
        rule: "last-mix-left",
        source: "stock",
        what: `What the tank of ${gear.name} still holds is not known.`,
        figure: `Visits that ${name} was filled for are not recorded; the fills are planned for an empty tank.`,
        toDo: "Record those visits, or dip the tank before it is filled.",
        about,
      }),
    ];
  }
  if (left === "more-than-it-holds") {
    return [
      takeCare({
        rule: "last-mix-left",
        source: "stock",
        what: `By the books more is in the tank of ${gear.name} than it holds.`,
        figure: `What is left of ${name} comes to more than that; the fills are planned for an empty tank.`,
        toDo: "Dip the tank before it is filled and record what it holds. Look at the gallons of those fills: only what was added belongs to each.",
        about,
      }),
    ];
  }
  if (left.amount === 0n) return [];
  return [
    takeCare({
      rule: "last-mix-left",
      source: "stock",
      what: `The tank of ${gear.name} is not empty by the books.`,
      figure: `${formatQuantity(left, "us")} of ${name} are left, which is another mix than the next one.`,
      toDo: "Spray it where its label allows it, or pump it into the rinsate tank, and record which.",
      about,
    }),
  ];
}

/** What the books still have of another mix under the one that is sprayed next: it makes that weaker, carries its products along and takes room. */
function twoMixes({ begin: { under, restName }, gear }: MixOfRoute): readonly Finding[] {
  if (under.length === 0) return [];
  const rests = under.map(({ name, left }) => (left === "unknown" ? `nobody knows how much of ${name}` : `${formatQuantity(left, "us")} of ${name}`));
  return [
    takeCare({
      rule: "two-mixes-in-the-tank",
      source: "stock",
      what: `By the books the tank of ${gear.name} holds more than one mix.`,
      figure: `Under ${restName ?? "the last fill"} there may be ${listWords(rests)}, which is another mix; the fills are planned without it.`,
      toDo: "Where that was let out or sprayed before, record it, or dip the tank and record what it holds. Else pump the tank into the rinsate tank.",
      about: [gear.name],
    }),
  ];
}

/** A mix of which there is less than pump and hose hold: it comes thinned, first and last. */
function lessThanTheLine({ waterBehind, run: { gear } }: SizedRun, { name }: MixOfRoute, stop: TreatedStop): readonly Finding[] {
  if (waterBehind === 0n || gear.holdUp === "unknown") return [];
  const [held, mixed] = formatQuantitiesApart(gear.holdUp, fromAmount("volume", gear.holdUp.amount - waterBehind), "us");
  return [
    takeCare({
      rule: "less-than-the-line-holds",
      source: "common-practice",
      what: `${capitalized(name)} for ${stop.name} is less than pump and hose of ${gear.name} hold.`,
      figure: `There are ${mixed} of it, and they hold ${held}: water stands before and behind all of it, and thins it.`,
      toDo: "Spray it out of a sprayer that holds less, or plan the same rates for more stops.",
      about: [gear.name, stop.name],
    }),
  ];
}

/** A truck that can't carry a full tank: what it may carry, and the fills it costs; or that it can't carry any, so that no stop of the mix gets it. */
function keptDown(question: TankPlanQuestion, sized: SizedRun): Found {
  const { stops, truck, settings } = question;
  const { run: { gear }, fills, fillsByTankAlone, noRoomAt } = sized;
  const { name, payload } = truck;
  if (noRoomAt !== null && (payload === null || fillsByTankAlone === 0)) return atEachStop(question, sized, () => underTheFirstMark(gear, settings.tankMark));
  if (payload === null) return [];
  if (noRoomAt !== null) return atEachStop(question, sized, () => noRoom(name, payload, gear, stops[noRoomAt]));
  if (fills.length <= fillsByTankAlone) return waitsForRoom(question, sized, payload);
  const largest = fills.reduce((most, { mixed }) => (mixed > most ? mixed : most), 0n);
  const finding = takeCare({
    rule: "payload-splits-the-fill",
    source: "house",
    what: `${name} can't carry ${gear.name} as full as the stops would fill it.`,
    figure: `The payload of ${formatQuantity(payload, "us")} leaves room for ${formatQuantity(fromAmount("volume", largest), "us")}: ${String(fills.length)} fills instead of ${String(fillsByTankAlone)}.`,
    toDo: "Fill as planned here, or fetch part of the bags later.",
    about: [name, gear.name],
  });
  return [{ visitId: null, finding }];
}

/** A tank that is not filled before leaving, although nothing is in the way but what else the truck carries then. */
function waitsForRoom({ stops, truck: { name } }: TankPlanQuestion, sized: SizedRun, payload: NonNullable<TankPlanQuestion["truck"]["payload"]>): Found {
  const { run: { gear }, fills: [first], waitsForRoom: waits } = sized;
  const stop = first === undefined ? undefined : stops[first.beginsAt];
  if (!waits || stop === undefined) return [];
  const finding = takeCare({
    rule: "payload-delays-the-fill",
    source: "house",
    what: `${name} can't carry what ${gear.name} needs for ${stop.name} when it leaves.`,
    figure: `The payload of ${formatQuantity(payload, "us")} has no room for it on the way to the stops before.`,
    toDo: "Fill as planned here, or fetch part of the bags later.",
    about: [name, gear.name, stop.name],
  });
  return [{ visitId: stop.visitId, finding }];
}

/** The hold for a tank that holds less than one mark of its gauge: no fill of it can be measured. */
function underTheFirstMark(gear: TicketSprayer, tankMark: TankPlanQuestion["settings"]["tankMark"]): Finding {
  return hold("office", {
    rule: "no-room-for-spray",
    source: "house",
    what: `${gear.name} can't be filled to a mark of its gauge.`,
    figure: `Its tank holds ${formatQuantity(gear.capacity, "us")}, and the first mark is at ${formatQuantity(settle(tankMark, "nearest"), "us")}.`,
    toDo: "Set a finer mark for filling tanks, or take another sprayer.",
    about: [gear.name],
  });
}

function noRoom(truck: string, payload: NonNullable<TankPlanQuestion["truck"]["payload"]>, gear: TicketSprayer, stop: TreatedStop | undefined): Finding {
  return hold("office", {
    rule: "no-room-for-spray",
    source: "house",
    what: `${truck} has no room for the spray that ${gear.name} needs.`,
    figure: `On the way to ${stop?.name ?? "the stop"} it already carries all that its payload of ${formatQuantity(payload, "us")} allows.`,
    toDo: "Take bags off, or move stops to another truck.",
    about: [truck, gear.name],
  });
}

function placesNotKnown({ stops }: TankPlanQuestion, { fills, run: { gear } }: SizedRun): Found {
  return fills.flatMap(({ mixed, isBeforeLeaving, beginsAt, emptiesAtShop }) => {
    const stop = stops[beginsAt];
    if (mixed === 0n || isBeforeLeaving || emptiesAtShop || stop?.water !== "unknown") return [];
    const finding = takeCare({
      rule: "water-at-stop-not-known",
      source: "house",
      what: `Whether a tank can be filled at ${stop.name} is not on file.`,
      figure: `${gear.name} is empty when the truck comes there; the plan sends it back to the shop to fill.`,
      toDo: "Leave time for the way, or ask for water there.",
      about: [stop.name],
    });
    return [{ visitId: stop.visitId, finding }];
  });
}
