import { type Finding } from "#domain/foundation/finding";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { type AppliedProduct, isOfOtherWork } from "#domain/mixing/applied-product";
import { type WateringNeed } from "#domain/mixing/watering-bounds";
import { compareThirst, tooMuchWater } from "#domain/mixing/watering-thirst";

/** That there is no place for some products' water, and what is let go where they are down already: a date, or water. */
export interface Unplaced {
  readonly kind: "none";
  /** Whether it is time that is short, whole minutes that miss the depth, or depths of which one excludes another. */
  readonly of: "time" | "minutes" | "depth";
  readonly finding: Finding;
  /** Whose date is the first that can't be kept. */
  readonly dateOf?: AppliedProduct;
  /** Whose water can't be given together with that of the others. */
  readonly waters: readonly AppliedProduct[];
}

/** A product of other work that can't be watered in by its own date any more, or not with the water of the others. */
export interface LostWater {
  readonly applied: AppliedProduct;
  readonly of: "date" | "water";
}

/** What of the needs still binds this visit, and what is said of the rest. */
export interface SettledNeeds {
  readonly needs: readonly WateringNeed[];
  readonly findings: readonly Finding[];
  readonly lost: readonly LostWater[];
}

type PlaceOf = (needs: readonly WateringNeed[]) => Outcome<{ readonly kind: "found" } | Unplaced>;

/**
 * The thirstiest of some products, where those that want no more than the one whose date comes first, or where none has
 * a date than the least thirsty of all, would have a place without them; none where it is not their water that is too much.
 */
function tooThirsty(needs: readonly WateringNeed[], { of, dateOf }: Unplaced, place: PlaceOf): Outcome<readonly WateringNeed[]> {
  const byThirst = needs.toSorted(compareThirst);
  const [least, thirstiest] = [byThirst.find(({ applied }) => applied === dateOf) ?? byThirst[0], byThirst.at(-1)];
  if (of === "depth" || least === undefined || thirstiest === undefined || compareThirst(thirstiest, least) === 0) return accept([]);
  const placed = place(needs.filter((need) => compareThirst(need, least) <= 0));
  if (!placed.ok) return placed;
  return accept(placed.value.kind === "none" ? [] : needs.filter((need) => compareThirst(need, thirstiest) === 0));
}

function withoutThirsty(needs: readonly WateringNeed[], unplaced: Unplaced, thirsty: readonly WateringNeed[], timeZone: string): Unplaced {
  const { kind, of, finding } = unplaced;
  if (thirsty.length === 0) return unplaced;
  const rest = needs.filter((need) => !thirsty.includes(need));
  return { kind, of, finding: of === "time" ? tooMuchWater(thirsty, rest, finding, timeZone) : finding, waters: thirsty.map(({ applied }) => applied) };
}

/** What is let go at one time, and what is said of it. */
interface LetGo {
  readonly finding: Finding;
  readonly lost: readonly LostWater[];
}

/** Water whose date was let go before is said once, with what was in the way of that date. */
function withLetGo(before: readonly LetGo[], next: LetGo): readonly LetGo[] {
  const [only, ...others] = next.lost;
  const isItsDate = ({ lost }: LetGo) => others.length === 0 && only?.of === "water" && lost.length === 1 && lost.every(({ applied, of }) => of === "date" && applied === only.applied);
  const figures = before.filter(isItsDate).flatMap(({ finding }) => finding.figure ?? []);
  const own = next.finding.figure ?? "";
  const figure = [...figures, ...(figures.some((one) => one.includes(own)) ? [] : [own])].join(" ");
  return [...before.filter((one) => !isItsDate(one)), figures.length === 0 ? next : { ...next, finding: { ...next.finding, figure } }];
}

/**
 * Lets go what other work has put down at odds already, before this visit's own products are looked at: nothing that this
 * visit leaves out could mend it. As long as those products alone have no place for their water, the first date that
 * can't be kept is let go, and the product waits as what is late does; where it is no date, the water itself. Where less
 * water would have a place, it is the water of the thirstiest that is let go, and no date. Each is said once. What remains can be kept, so that only a product of this visit can still be in its way.
 * @param place where those products' water can run, or why there is none; the first refusal is handed on
 */
export function settleOtherWork(
  wanted: readonly WateringNeed[],
  place: PlaceOf,
  timeZone: string,
): Outcome<SettledNeeds> {
  let letGo: readonly LetGo[] = [];
  let others = wanted.filter(({ applied }) => isOfOtherWork(applied));
  while (others.length > 0) {
    const placed = place(others);
    if (!placed.ok) return placed;
    if (placed.value.kind === "found") break;
    const thirsty = tooThirsty(others, placed.value, place);
    if (!thirsty.ok) return thirsty;
    const { finding, dateOf, waters } = withoutThirsty(others, placed.value, thirsty.value, timeZone);
    letGo = withLetGo(letGo, { finding, lost: [...waters.map((applied) => ({ applied, of: "water" }) as const), ...(dateOf === undefined ? [] : [{ applied: dateOf, of: "date" } as const])] });
    others = others
      .filter(({ applied }) => !waters.includes(applied))
      .map((need) => (need.applied === dateOf ? { ...need, dueAtEpochMilliseconds: null, isOverdue: true } : need));
  }
  const needs = wanted.flatMap((need) => (isOfOtherWork(need.applied) ? others.filter(({ applied }) => applied === need.applied) : [need]));
  return accept({ needs, findings: letGo.map(({ finding }) => finding), lost: letGo.flatMap(({ lost }) => lost) });
}
