// @ts-check
// Runs stages side by side as far as the machine allows, each as soon as what it needs is there.

/**
 * One part of a test run.
 *
 * @typedef {object} Stage
 * @property {string} name
 * @property {number} weight how many of the slots it takes while it runs
 * @property {string[]} needs stages that must have succeeded
 * @property {string[]} [after] stages that must have ended, however they did
 * @property {boolean} [isPreparation] adds nothing to what passed, only its failure counts
 * @property {() => Promise<StageOutcome>} run may throw; that is a failure of the stage and of no other
 */

/**
 * What a stage answers: its count, and what to show for it.
 *
 * @typedef {import("./summary.mjs").Count & { note?: string, output?: string }} StageOutcome
 */

/**
 * @typedef {{ stage: Stage, outcome: StageOutcome, seconds: number }} StageResult
 */

/**
 * The stages asked for by name and everything that they need, in the order of the table. "domain" stands for
 * every stage whose name is or begins with that word.
 *
 * @param {readonly Stage[]} stages
 * @param {readonly string[]} names none means all
 * @returns {Stage[] | { unknown: string }}
 */
export function selectStages(stages, names) {
  if (names.length === 0) return [...stages];
  const chosen = new Set();
  const choose = (/** @type {Stage} */ stage) => {
    chosen.add(stage.name);
    for (const needed of stages.filter(({ name }) => stage.needs.includes(name))) choose(needed);
  };
  for (const asked of names) {
    const found = stages.filter(({ name, isPreparation }) => !isPreparation && (name === asked || name.startsWith(`${asked}-`)));
    if (found.length === 0) return { unknown: asked };
    found.forEach(choose);
  }
  return stages.filter(({ name }) => chosen.has(name));
}

/**
 * Runs stages and answers with one result for each, in the order in which they ended. A stage whose need
 * failed is not run and counts as failed; every other stage runs whatever happens to its neighbors.
 *
 * @param {readonly Stage[]} stages
 * @param {object} options
 * @param {number} options.slots how much weight may run at a time; a heavier stage runs alone
 * @param {(result: StageResult) => void} options.onResult
 * @param {() => number} options.now a clock in milliseconds
 * @param {AbortSignal} options.aborted keeps what has not begun from beginning
 * @returns {Promise<StageResult[]>}
 */
export async function runStages(stages, { slots, onResult, now, aborted }) {
  const waiting = [...stages];
  /** @type {Map<string, StageResult>} */
  const results = new Map();
  /** @type {Map<Stage, Promise<void>>} */
  const running = new Map();
  const isHere = (/** @type {string} */ name) => stages.some((stage) => stage.name === name);
  const isReady = (/** @type {Stage} */ { needs, after = [] }) => [...needs, ...after].every((name) => !isHere(name) || results.has(name));
  const keep = (/** @type {StageResult} */ result) => {
    results.set(result.stage.name, result);
    onResult(result);
  };
  const start = (/** @type {Stage} */ stage) => {
    const begin = now();
    const run = runGuarded(stage).then((outcome) => {
      running.delete(stage);
      keep({ stage, outcome, seconds: (now() - begin) / 1000 });
    });
    running.set(stage, run);
  };
  while (waiting.length > 0 || running.size > 0) {
    for (const stage of waiting.filter(isReady)) {
      const missing = stage.needs.find((name) => (results.get(name)?.outcome.failed ?? 0) > 0);
      const load = [...running.keys()].reduce((sum, { weight }) => sum + weight, 0);
      if (missing === undefined && !aborted.aborted && load > 0 && load + stage.weight > slots) continue;
      waiting.splice(waiting.indexOf(stage), 1);
      if (missing === undefined && !aborted.aborted) start(stage);
      else keep({ stage, outcome: notRun(missing === undefined ? "the run was ended" : `it needs ${missing}, which failed`), seconds: 0 });
    }
    if (running.size > 0) await Promise.race(running.values());
    else if (waiting.length > 0 && !waiting.some(isReady)) throw new Error(`These stages wait for each other: ${waiting.map(({ name }) => name).join(", ")}.`);
  }
  return [...results.values()];
}

/**
 * @param {Stage} stage
 * @returns {Promise<StageOutcome>}
 */
async function runGuarded(stage) {
  try {
    const outcome = await stage.run();
    return stage.isPreparation ? { ...outcome, passed: 0 } : outcome;
  } catch (error) {
    const text = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return { passed: 0, failed: 1, complaints: ["The stage itself broke."], output: text };
  }
}

/** @param {string} reason @returns {StageOutcome} */
function notRun(reason) {
  return { passed: 0, failed: 1, complaints: [`Not run: ${reason}.`] };
}
