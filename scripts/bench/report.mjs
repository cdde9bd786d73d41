// @ts-check
// What a measurement comes to, as a table for people and as rows for programs.

/**
 * One measured figure.
 *
 * @typedef {object} Row
 * @property {string} name
 * @property {number} value
 * @property {string} unit
 * @property {string | null} baseline the name of the row that it is measured against; null for one that stands by itself
 * @property {number | null} ratio how many times the baseline it is
 */

/**
 * The middle value, or the mean of the two in the middle.
 *
 * @param {readonly number[]} values at least one
 */
export function median(values) {
  if (values.length === 0) throw new Error("There is no median of nothing.");
  const sorted = [...values].sort((one, other) => one - other);
  const middle = sorted.length / 2;
  const [low = NaN, high = NaN] = [sorted[Math.ceil(middle) - 1], sorted[Math.floor(middle)]];
  return (low + high) / 2;
}

/**
 * Rows of figures that were measured in rounds, each round taking every one of them once. A ratio is the median of
 * the rounds' own ratios, because what else the machine does changes from round to round and hits a whole round.
 *
 * @param {string} unit
 * @param {string} baseline the name of the figure that the others are measured against
 * @param {readonly Readonly<Record<string, number>>[]} rounds figures by name
 * @returns {Row[]} in the order of the first round
 */
export function rowsOfRounds(unit, baseline, rounds) {
  return Object.keys(rounds[0] ?? {}).map((name) => {
    const figure = (/** @type {Readonly<Record<string, number>>} */ round, /** @type {string} */ which) => {
      const value = round[which];
      if (value === undefined) throw new Error(`A round has no figure for "${which}".`);
      return value;
    };
    const value = median(rounds.map((round) => figure(round, name)));
    if (name === baseline) return { name, value, unit, baseline: null, ratio: null };
    return { name, value, unit, baseline, ratio: median(rounds.map((round) => figure(round, name) / figure(round, baseline))) };
  });
}

/**
 * A figure that was measured once, against another or by itself.
 *
 * @param {string} name
 * @param {number} value
 * @param {string} unit
 * @param {Row} [baseline]
 * @returns {Row}
 */
export function rowOf(name, value, unit, baseline) {
  if (baseline !== undefined && baseline.unit !== unit) throw new Error(`${name} is in ${unit} and ${baseline.name} in ${baseline.unit}.`);
  return { name, value, unit, baseline: baseline?.name ?? null, ratio: baseline === undefined ? null : value / baseline.value };
}

/**
 * The rows as an aligned table with a line of heads, numbers to the right.
 *
 * @param {readonly Row[]} rows
 */
export function tableOf(rows) {
  const cells = [
    ["", "measured", "", "ratio", "to"],
    ...rows.map(({ name, value, unit, baseline, ratio }) => [name, short(value), unit, ratio === null ? "" : short(ratio), baseline ?? ""]),
  ];
  const widths = [0, 1, 2, 3, 4].map((column) => Math.max(...cells.map((line) => line[column]?.length ?? 0)));
  const isNumber = (/** @type {number} */ column) => column === 1 || column === 3;
  return cells
    .map((line) => line.map((cell, column) => (isNumber(column) ? cell.padStart(widths[column] ?? 0) : cell.padEnd(widths[column] ?? 0))).join("  ").trimEnd())
    .map((line) => `${line}\n`)
    .join("");
}

/**
 * The rows as JSON. A figure that is no number is a defect of the measurement and is refused.
 *
 * @param {readonly Row[]} rows
 */
export function jsonOf(rows) {
  for (const { name, value, ratio } of rows) {
    if (!Number.isFinite(value) || (ratio !== null && !Number.isFinite(ratio))) throw new Error(`"${name}" was not measured.`);
  }
  return `${JSON.stringify(rows.map(({ name, value, unit, baseline, ratio }) => ({ name, value, unit, baseline, ratio })), null, 2)}\n`;
}

/**
 * Three digits that count, never as a power of ten.
 *
 * @param {number} value
 */
function short(value) {
  return value >= 100 ? value.toFixed(0) : value >= 10 ? value.toFixed(1) : value.toFixed(2);
}
