// A test that makes the console complain has failed, unless it said beforehand what it expects. Node's own
// deprecation warnings count too: they tell of calls that the next version of a library refuses.
import { format } from "node:util";
import { afterAll, afterEach, beforeEach } from "vitest";

type Channel = "error" | "warn";

const complaints: string[] = [];
let expected: { readonly channel: Channel; readonly pattern: RegExp; met: boolean }[] = [];

/** Says that this test will write such a complaint to the console; it fails if it does not. */
export function expectConsole(channel: Channel, pattern: RegExp): void {
  expected.push({ channel, pattern, met: false });
}

function record(channel: Channel, values: readonly unknown[]): void {
  const text = format(...values);
  const expectation = expected.find((each) => each.channel === channel && each.pattern.test(text));
  if (expectation === undefined) complaints.push(`console.${channel}: ${text}`);
  else expectation.met = true;
}

console.error = (...values: unknown[]) => record("error", values);
console.warn = (...values: unknown[]) => record("warn", values);
process.on("warning", ({ name, message }) => {
  if (name === "DeprecationWarning") complaints.push(`${name}: ${message}`);
});

function failOnComplaints(): void {
  const unmet = expected.filter(({ met }) => !met).map(({ channel, pattern }) => `no console.${channel} like ${pattern.source}`);
  const found = [...complaints.splice(0), ...unmet];
  expected = [];
  if (found.length > 0) throw new Error(`The console said what this test did not expect:\n${found.join("\n")}`);
}

beforeEach(() => {
  // What a file says while it loads belongs to its first test.
  expected = [];
});
afterEach(failOnComplaints);
afterAll(failOnComplaints);
