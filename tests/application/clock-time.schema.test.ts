import { expect, test } from "vitest";
import { optionalClockTime, requiredClockTime } from "#application/clock-time.schema";

const schema = requiredClockTime("the time of the start");
const saysTo = (input: unknown) => schema.safeParse(input).error?.issues.map(({ message }) => message);

test("a time of day is its minutes since midnight, with or without a zero in front", () => {
  const times = ["0:00", "00:00", "9:12", "09:12", " 14:05 ", "23:59"].map((text) => schema.parse(text));
  expect(times).toEqual([0, 0, 552, 552, 845, 1439]);
});

test("what is no time of day is refused with an example, and nothing at all with what to give", () => {
  for (const text of ["24:00", "9:60", "9", "9:5", "9.12", "9:12 pm", "-1:00", "9:12:30", "\u0000"]) {
    expect(saysTo(text), text).toEqual(["Give the time of the start as hours and minutes, such as 9:12 or 14:05."]);
  }
  for (const nothing of ["", "  ", undefined, null, 552]) expect(saysTo(nothing)).toEqual(["Give the time of the start."]);
});

test("a field may have its own words for what is no time of day", () => {
  const leaves = requiredClockTime("when the truck leaves", "Give the time as hours and minutes, for example 07:30.");
  const said = (text: string) => leaves.safeParse(text).error?.issues.map(({ message }) => message);
  expect([said("25:00"), said("")]).toEqual([["Give the time as hours and minutes, for example 07:30."], ["Give when the truck leaves."]]);
  expect(leaves.parse("07:30")).toBe(450);
});

test("a time that may be left empty is null then, and else read the same way", () => {
  const customer = optionalClockTime("09:30");
  expect(["", "  ", "09:30", "9:30", "24:00"].map((text) => customer.safeParse(text).data)).toEqual([null, null, 570, 570, undefined]);
  const said = (input: unknown) => customer.safeParse(input).error?.issues.map(({ message }) => message);
  expect([said("half past nine"), said(undefined)]).toEqual([["Give the time as hours and minutes, for example 09:30."], ["Give a time, or leave it empty."]]);
});
