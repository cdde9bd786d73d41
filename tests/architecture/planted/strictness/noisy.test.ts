import { once } from "node:events";
import { connect } from "node:net";
import { expect, test } from "vitest";
import { expectConsole } from "../../../support/console-fails";

test("is quiet", () => {
  expect(1).toBe(1);
});

test("logs an error", () => {
  console.error("the planted %s", "complaint");
});

test("logs a warning", () => {
  console.warn("planted");
});

test("expects its error", () => {
  expectConsole("error", /^planted$/);
  console.error("planted");
});

test("expects an error that never comes", () => {
  expectConsole("error", /^planted$/);
});

test("uses something deprecated", async () => {
  const heard = once(process, "warning");
  process.emitWarning("planted", "DeprecationWarning");
  await heard;
});

test("fetches from another machine", async () => {
  await fetch("http://192.0.2.1/");
});

test("connects to another machine", () => {
  connect(80, "example.invalid").once("error", () => undefined);
});
