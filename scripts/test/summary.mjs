// @ts-check
// What the stages of a test run add up to. Only what was seen to pass counts as passed: a skipped test, a runner
// without tests or without a report, and a program that ends badly without saying why are failures.

/**
 * What came of one stage.
 *
 * @typedef {object} Count
 * @property {number} passed
 * @property {number} failed
 * @property {string[]} complaints one sentence for each failure that the runner's own output does not show
 */

/**
 * How a program ended: the exit code, or null when a signal ended it.
 *
 * @typedef {number | null} ExitCode
 */

/**
 * Counts a stage that is a single check, such as a type check.
 *
 * @param {ExitCode} exitCode
 * @returns {Count}
 */
export function countCheck(exitCode) {
  return exitCode === 0 ? { passed: 1, failed: 0, complaints: [] } : { passed: 0, failed: 1, complaints: [] };
}

/**
 * Counts a run of Vitest by its JSON report.
 *
 * @param {any} report undefined when there is none
 * @param {ExitCode} exitCode
 * @returns {Count}
 */
export function countVitest(report, exitCode) {
  if (!Array.isArray(report?.testResults)) return countMissingReport();
  const tests = report.testResults.flatMap((/** @type {any} */ file) => file.assertionResults);
  const withStatus = (/** @type {string} */ status) => tests.filter((/** @type {any} */ test) => test.status === status).length;
  // A file that breaks before its first test has no test that could say so.
  const broken = report.testResults.filter(
    (/** @type {any} */ file) =>
      file.status !== "passed" && !file.assertionResults.some((/** @type {any} */ test) => test.status === "failed"),
  ).length;
  const passed = withStatus("passed");
  const notRun = tests.length - passed - withStatus("failed");
  return withDoubts({ passed, failed: withStatus("failed") + broken + notRun, notRun, exitCode });
}

/**
 * Counts a run of Playwright by its JSON report.
 *
 * @param {any} report undefined when there is none
 * @param {ExitCode} exitCode
 * @returns {Count}
 */
export function countPlaywright(report, exitCode) {
  const { stats, errors } = report ?? {};
  if (stats === undefined || !Array.isArray(errors)) return countMissingReport();
  const failed = stats.unexpected + stats.flaky + stats.skipped + errors.length;
  return withDoubts({ passed: stats.expected, failed, notRun: stats.skipped, exitCode });
}

/**
 * @param {{ passed: number, failed: number, notRun: number, exitCode: ExitCode }} counted
 * @returns {Count}
 */
function withDoubts({ passed, failed, notRun, exitCode }) {
  const complaints = notRun > 0 ? [`${notRun} tests were skipped, and a skipped test is a failed one.`] : [];
  if (passed + failed === 0) complaints.push("No test ran.");
  else if (failed === 0 && exitCode !== 0) {
    complaints.push(`Every test passed, and the runner ended with ${exitCode ?? "a signal"} all the same.`);
  }
  const isDoubtful = failed === 0 && complaints.length > 0;
  return { passed, failed: isDoubtful ? 1 : failed, complaints };
}

/** @returns {Count} */
function countMissingReport() {
  return { passed: 0, failed: 1, complaints: ["The runner wrote no report that can be read."] };
}

/**
 * The last line of a run and its exit code. A run in which nothing passed has failed.
 *
 * @param {readonly Pick<Count, "passed" | "failed">[]} counts
 * @returns {{ line: string, exitCode: 0 | 1 }}
 */
export function summarize(counts) {
  const passed = counts.reduce((sum, count) => sum + count.passed, 0);
  const failed = counts.reduce((sum, count) => sum + count.failed, 0);
  return { line: `${passed} passed, ${failed} failed`, exitCode: failed === 0 && passed > 0 ? 0 : 1 };
}
