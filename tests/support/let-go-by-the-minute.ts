// A second way to say what other work has at odds already before a visit puts anything down: its products alone are
// walked minute by minute, and the first date that no minute keeps is let go, or the water of the thirstiest where the
// rest of it would find its minutes, until what is left can be kept.
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { judgeWatering } from "#domain/mixing/watering-window";
import { type DrawnVisit, questionOf } from "./aftercare-arbitraries";
import { valueOf } from "./domain-answers";
import { statedBy, waterWanted } from "./label-by-the-minute";
import { DAY, MINUTE } from "./wall-clock";
import { allDownAt, isUndecided, walk, type Walked } from "./watering-by-the-minute";

/** A visit whose other work asks only for what can still be kept, with the rules that said what can't. */
export interface LetGo {
  readonly visit: DrawnVisit;
  readonly rules: readonly string[];
}

type Walk = Extract<Walked, { readonly kind: "walked" }>;

const isOther = ({ appliedIn }: AppliedProduct) => appliedIn === "earlier-visit";

function withoutDate(product: AppliedProduct): AppliedProduct {
  const wants = product.label.facts["watering-in"];
  const waits = typeof wants === "string" ? wants : { ...wants, by: "not-stated" as const };
  return { ...product, label: { ...product.label, facts: { ...product.label.facts, "watering-in": waits } } };
}

function withoutWater(product: AppliedProduct): AppliedProduct {
  return { ...product, label: { ...product.label, facts: { ...product.label.facts, "watering-in": "none" } } };
}

const depthOf = (product: AppliedProduct) => {
  const depth = statedBy(product, "watering-in")?.depth;
  return depth === undefined || depth === "not-stated" || !("amount" in depth.least) ? undefined : depth.least.amount;
};

/** The product whose date is over in the first minute in which any is. */
function firstDue(products: readonly AppliedProduct[], { ground }: DrawnVisit): AppliedProduct | undefined {
  const dated = products.flatMap((product) => {
    const wanted = waterWanted(product, ground);
    return wanted?.hasDate === true ? [{ product, late: wanted.late }] : [];
  });
  const last = allDownAt(products, ground) + 60 * DAY;
  for (let minute = ground.visitUntil; dated.length > 0 && minute < last; minute += MINUTE) {
    const over = dated.find(({ late }) => late(minute));
    if (over !== undefined) return over.product;
  }
  return undefined;
}

/** Why no place is found for the water of products alone; undefined where there is one, or none is needed. */
function whyNone(visit: DrawnVisit): string | undefined {
  const walked = walk(visit.products, visit.stations, visit.ground);
  if (walked.kind === "undecided" || walked.kind === "none-needed") return undefined;
  if (walked.kind !== "walked") return { "no-common-depth": "no-common-watering-depth", "minutes-miss-depth": "station-minutes-miss-depth", "no-common-time": "no-common-watering-time" }[walked.kind];
  const needed = Math.max(1, walked.knownMinutes);
  if (walked.stretches.some(({ from, until }) => until - from >= needed * MINUTE) || isFoundInParts(visit, walked)) return undefined;
  return walked.longestWithoutHours < needed ? "watering-time-too-short" : "watering-hours-leave-no-time";
}

/** How whole stations are spread over days is the product's own choice; that it keeps to stretches of the walk is tested of it. */
function isFoundInParts(visit: DrawnVisit, { knownMinutes }: Walk): boolean {
  if (knownMinutes === 0) return false;
  const { answer, lostToOthers } = valueOf(judgeWatering(questionOf(visit)));
  return lostToOthers.length === 0 && answer.kind === "window";
}

/** The thirstiest, where those that want no more than the first due does, or than the least thirsty, are not in want of a place. */
function tooMuchFor(rule: string, visit: DrawnVisit, wanting: readonly AppliedProduct[], due: AppliedProduct | undefined): readonly AppliedProduct[] {
  const thirstOf = (product: AppliedProduct) => Number(depthOf(product) ?? -1n);
  const enough = due === undefined || rule === "station-minutes-miss-depth" ? Math.min(...wanting.map(thirstOf)) : thirstOf(due);
  const thirstier = wanting.filter((product) => thirstOf(product) > enough);
  if (thirstier.length === 0 || rule === "no-common-watering-depth") return [];
  const without = { ...visit, products: visit.products.map((product) => (thirstier.includes(product) ? withoutWater(product) : product)) };
  const most = Math.max(...wanting.map(thirstOf));
  return whyNone(without) === undefined ? wanting.filter((product) => thirstOf(product) === most) : [];
}

function letGoFor(rule: string, visit: DrawnVisit): readonly AppliedProduct[] {
  const { products, ground } = visit;
  const wanting = products.filter((product) => waterWanted(product, ground) !== undefined);
  const due = firstDue(wanting, visit);
  const tooMuch = tooMuchFor(rule, visit, wanting, due);
  const deep = wanting.filter((product) => depthOf(product) !== undefined);
  const thirstiest = deep.reduce<AppliedProduct | undefined>((most, one) => (most === undefined || (depthOf(one) ?? 0n) > (depthOf(most) ?? 0n) ? one : most), undefined);
  const waters = tooMuch.length > 0 ? tooMuch : rule === "no-common-watering-depth" ? [thirstiest] : rule === "station-minutes-miss-depth" ? deep : due === undefined ? wanting : [];
  return products.map((product) => (waters.includes(product) ? withoutWater(product) : waters.length === 0 && product === due ? withoutDate(product) : product));
}

/** The visit with what the product itself says its other work can't have any more let go: the walk is long, and is tested of that alone. */
export function letGoAsJudged(visit: DrawnVisit): LetGo {
  const { findings, lostToOthers } = valueOf(judgeWatering(questionOf(visit)));
  const products = visit.products.map((product) =>
    lostToOthers.filter(({ applied }) => applied === product).reduce((left, { of }) => (of === "date" ? withoutDate(left) : withoutWater(left)), product),
  );
  const rules = lostToOthers.length === 0 ? [] : findings.filter(({ level, rule }) => level === "take-care" && rule !== "watering-in-overdue").map(({ rule }) => rule);
  return { visit: { ...visit, products }, rules };
}

/**
 * The visit as the rows are read of it: where the product itself says that no time was found for water, nobody can say when
 * what waits for it has been watered in, as if no label set a date.
 */
export function rowsAsJudged(visit: DrawnVisit): DrawnVisit {
  const { answer } = valueOf(judgeWatering(questionOf(visit)));
  const { products } = letGoAsJudged(visit).visit;
  return { ...visit, products: answer.kind === "window" ? products : products.map(withoutDate) };
}

/** A rule that was said of the water or the date of one product, or of several: a date is not said any more once its water goes. */
interface Said {
  readonly rule: string;
  readonly of: "several" | { readonly index: number; readonly isWater: boolean };
}

/** The visit with what its other work can't have any more let go. */
export function letGo(visit: DrawnVisit): LetGo {
  const { products, ground } = visit;
  if (!products.some(isOther) || isUndecided(products, ground)) return { visit, rules: [] };
  let said: readonly Said[] = [];
  let others: DrawnVisit = { ...visit, products: products.filter(isOther) };
  for (let rule = whyNone(others); rule !== undefined; rule = whyNone(others)) {
    const left = letGoFor(rule, others);
    const [changed, ...more] = left.flatMap((product, index) => (product === others.products[index] ? [] : [{ index, isWater: statedBy(product, "watering-in") === undefined }]));
    const of = changed === undefined || more.length > 0 ? "several" : changed;
    said = [...said.filter((one) => of === "several" || !of.isWater || one.of === "several" || one.of.isWater || one.of.index !== of.index), { rule, of }];
    others = { ...others, products: left };
  }
  const left = new Map(products.filter(isOther).map((product, index) => [product, others.products[index] ?? product]));
  return { visit: { ...visit, products: products.map((product) => left.get(product) ?? product) }, rules: said.map(({ rule }) => rule) };
}
