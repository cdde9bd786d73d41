// @ts-check

const NAME_WIDTH = 18;
const SECONDS_WIDTH = 8;
/** Enough for several failing tests; the whole output is in the stage's log. */
const SHOWN_LINES = 200;

/**
 * One line about a stage that has ended.
 *
 * @param {import("./run-stages.mjs").StageResult} result
 */
export function describeResult({ stage, outcome, seconds }) {
  const verdict = outcome.failed > 0 ? "FAILED" : "ok    ";
  const numbers = stage.isPreparation ? "" : `${outcome.passed} passed, ${outcome.failed} failed`;
  const rest = [numbers, outcome.note ?? ""].filter((text) => text !== "").join("; ");
  return `${verdict}  ${stage.name.padEnd(NAME_WIDTH)}${`${seconds.toFixed(1)} s`.padStart(SECONDS_WIDTH)}  ${rest}`.trimEnd();
}

/**
 * What a failed stage said, for the end of the run.
 *
 * @param {import("./run-stages.mjs").StageResult} result
 */
export function describeFailure({ stage, outcome }) {
  const lines = (outcome.output ?? "").trimEnd().split("\n");
  const left = lines.length - SHOWN_LINES;
  const shown = left > 0 ? [`(${left} more lines before)`, ...lines.slice(-SHOWN_LINES)] : lines;
  return ["", `--- ${stage.name} failed ---`, ...shown, ...outcome.complaints].join("\n");
}
