/** A label on a line: how wide it is and where its middle would best be, both in pixels. */
export interface WantedLabel {
  readonly widthPixels: number;
  readonly middlePixels: number;
}

/**
 * Moves marks of one width apart until none overlaps, keeping their order and their places as far as possible, within
 * 0 and `lengthPixels`. Returns the middles. When they can't all fit they stand evenly from end to end.
 */
export function spreadApart(middlesPixels: readonly number[], widthPixels: number, lengthPixels: number): number[] {
  const placed = [...middlesPixels];
  const least = widthPixels / 2;
  const most = lengthPixels - widthPixels / 2;
  if (placed.length * widthPixels > lengthPixels) {
    return placed.map((_, index) => least + ((most - least) * index) / Math.max(1, placed.length - 1));
  }
  let bound = least;
  for (const [index, middle] of placed.entries()) {
    placed[index] = Math.max(middle, bound);
    bound = (placed[index] ?? bound) + widthPixels;
  }
  bound = most;
  for (let index = placed.length - 1; index >= 0; index -= 1) {
    placed[index] = Math.min(placed[index] ?? bound, bound);
    bound = (placed[index] ?? bound) - widthPixels;
  }
  return placed;
}

/** Where a label hangs: at its middle, or by its end where its middle would push it over an end of the line. */
export interface HungLabel {
  readonly share: number;
  readonly anchor: "start" | "middle" | "end";
}

/** Hangs a label at its mark so that it stays within a line of `lengthPixels`, and stays so on a longer line. */
export function hangLabel(label: WantedLabel, lengthPixels: number): HungLabel {
  const half = label.widthPixels / 2;
  if (label.middlePixels < half) return { share: 0, anchor: "start" };
  if (label.middlePixels > lengthPixels - half) return { share: 1, anchor: "end" };
  return { share: label.middlePixels / lengthPixels, anchor: "middle" };
}

/** The stretch that a hung label covers, in pixels. */
export function labelStretch(label: WantedLabel, lengthPixels: number): readonly [from: number, to: number] {
  const half = label.widthPixels / 2;
  const middle = Math.min(Math.max(label.middlePixels, half), lengthPixels - half);
  return [middle - half, middle + half];
}

/**
 * Gives each label the first of `rowCount` rows in which it keeps `gapPixels` from all that stand there already;
 * undefined where no row has room. Earlier labels go first.
 */
export function assignRows(
  labels: readonly WantedLabel[],
  lengthPixels: number,
  rowCount: number,
  gapPixels: number,
): (number | undefined)[] {
  const taken: (readonly [number, number])[][] = Array.from({ length: rowCount }, () => []);
  return labels.map((label) => {
    const [from, to] = labelStretch(label, lengthPixels);
    const row = taken.findIndex((stretches) =>
      stretches.every(([start, end]) => to + gapPixels <= start || from >= end + gapPixels),
    );
    if (row === -1) return undefined;
    taken[row]?.push([from, to]);
    return row;
  });
}
