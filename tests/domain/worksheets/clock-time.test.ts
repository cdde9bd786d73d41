import { expect, test } from "vitest";
import { accept } from "#domain/foundation/outcome";
import { readClockMinute } from "#domain/worksheets/clock-time";

test.each([["7 am", 420], ["7:40 am", 460], ["12 am", 0], ["12 pm", 720], ["8:10 p.m.", 1210], ["19:40", 1180], ["0:00", 0], ["7", 420]])("%s is minute %i", (text, minute) => {
  expect(readClockMinute("sunrise", text)).toEqual(accept(minute));
});

test.each(["", "24:00", "13 pm", "0 am", "7:60", "early", "7 m", "7.", "13 m."])("%s is no time of day", (text) => {
  expect(readClockMinute("sunrise", text)).toMatchObject({ ok: false, refusal: { field: "sunrise", allowed: "a time of day, such as 7 am or 13:00" } });
});
