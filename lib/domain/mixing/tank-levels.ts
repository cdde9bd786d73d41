/** Something that changes what is in a tank, in canonical units of volume: a fill, a draw. */
export interface TankAction {
  /** The stop at which it happens, or on the way to which, from 0. */
  readonly stopIndex: number;
  readonly when: "on-the-way" | "at-the-stop";
  /** Below zero for what is taken. */
  readonly change: bigint;
}

/** What is in a tank at a stop. */
export interface TankLevel {
  readonly arrives: bigint;
  /** The most that is in it from the drive to the stop until it is left. */
  readonly highest: bigint;
  readonly leaves: bigint;
}

/**
 * What is in a tank at each stop of a route, from what is in it in the morning and what happens in order. What happens on
 * the way to a stop is done when the truck arrives there.
 */
export function levelsAlong(stops: number, before: bigint, actions: readonly TankAction[]): readonly TankLevel[] {
  let level = before;
  let next = 0;
  return Array.from({ length: stops }, (_unused, stopIndex): TankLevel => {
    let highest = level;
    const applyWhile = (isDue: (action: TankAction) => boolean) => {
      for (let action = actions[next]; action !== undefined && isDue(action); action = actions[next]) {
        level += action.change;
        highest = level > highest ? level : highest;
        next += 1;
      }
    };
    applyWhile((action) => action.stopIndex < stopIndex || (action.stopIndex === stopIndex && action.when === "on-the-way"));
    const arrives = level;
    applyWhile((action) => action.stopIndex === stopIndex);
    return { arrives, highest, leaves: level };
  });
}
