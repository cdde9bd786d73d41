import { describe, expect, test } from "vitest";
import { dayWords, hourWords, readHours, stretchWords } from "#domain/worksheets/typed-hours";
import { refusalOf, valueOf } from "../../support/domain-answers";

const WEATHER = "70, 60, 5, 0.1";
const hoursOf = (...clocks: string[]) => readHours(clocks.map((clock) => `${clock}, ${WEATHER}`).join("\n"));
const minutesOf = (...clocks: string[]) => valueOf(hoursOf(...clocks)).map(({ minute }) => minute / 60);

test("an hour is read with its weather, parted by commas, semicolons or tabs", () => {
  const nine = { minute: 540, weather: { startsAtEpochMilliseconds: 32_400_000, temperatureF: 70, relativeHumidityPercent: 60, windMph: 5, rainInches: 0.1 } };
  for (const line of ["9 am, 70, 60, 5, 0.1", "9:00;70;60;5;0.1", "9\t70\t60\t5\t0.1"]) expect(valueOf(readHours(line))).toEqual([nine]);
  expect(valueOf(readHours("6 am, -4, 60, 5, 0"))[0]?.weather.temperatureF).toBe(-4);
});

describe("hours in the order of time", () => {
  test("one that goes back on the clock is the next day's", () => {
    expect(minutesOf("noon", "1 pm", "11 pm", "midnight", "1 am", "noon", "11 pm", "midnight")).toEqual([12, 13, 23, 24, 25, 36, 47, 48]);
    expect(valueOf(hoursOf("11 pm", "midnight"))[1]?.weather.startsAtEpochMilliseconds).toBe(86_400_000);
    expect(minutesOf("midnight", "11 pm")).toEqual([0, 23]);
  });
  test("a night may be left out, and hours of one day too", () => {
    expect(minutesOf("7 am", "4 pm", "7 am")).toEqual([7, 16, 31]);
    expect(minutesOf("10 am", "7 am")).toEqual([10, 31]);
  });
  test("one that goes back by up to three hours was typed out of its order", () => {
    for (const before of ["8 am", "9 am"]) expect(refusalOf(hoursOf("10 am", before)).sentence).toBe(`${before} stands after 10 am. Write the hours in the order of time; those after midnight are the next day's.`);
    expect(refusalOf(hoursOf("1 am", "midnight")).allowed).toBe("hours in the order of time");
    expect(refusalOf(hoursOf("9 am", "10 am", "9 am")).allowed).toBe("hours in the order of time");
  });
});

describe("refused at the hours", () => {
  test.each([
    ["", "Give the hours, one to a line, such as 7 am, 62, 88, 2, 0."],
    ["9 am, 70, 60, 5", "has not these five"],
    ["9 am, 70, 60, 5, 0, 1", "has not these five"],
    ["9 am, 70, 60, , 0", "has not these five"],
    ["9:30 am, 70, 60, 5, 0", "does not begin on the hour"],
    ["early, 70, 60, 5, 0", "is no time of day"],
    ["9 am, 700, 60, 5, 0", "In \"9 am, 700, 60, 5, 0\": \"700\" is no answer for the temperature: it takes from -40 to 130 °F"],
    ["9 am, 70, 0, 5, 0", "it takes from 1 to 100 %"],
    ["9 am, 70, 60, 101, 0", "it takes from 0 to 100 mph"],
    ["9 am, 70, 60, 5, 11", "it takes from 0 to 10 in"],
    ["9 am, 70, 60, 5, 0\n9:00, 71, 60, 5, 0", "9 am stands there twice"],
  ])("%s", (hours, words) => {
    const refusal = refusalOf(readHours(hours));
    expect(refusal.field).toBe("hours");
    expect(refusal.sentence).toContain(words);
  });
  test("more than anybody types", () => {
    const clocks = Array.from({ length: 201 }, (_, index) => `${String(index % 24)}:00`);
    expect(minutesOf(...clocks.slice(0, 200)).at(-1)).toBe(199);
    expect(refusalOf(hoursOf(...clocks)).field).toBe("hours");
  });
});

test("hours and stretches are read with their day", () => {
  expect([0, 720, 1440, 1920, 3360].map(hourWords)).toEqual(["midnight", "noon", "midnight the next day", "8 am the next day", "8 am 2 days later"]);
  expect([0, 1, 2].map(dayWords)).toEqual(["", " the next day", " 2 days later"]);
  expect([stretchWords(0, 1440), stretchWords(1260, 1440), stretchWords(1260, 1500), stretchWords(1260, 2880), stretchWords(1440, 2880), stretchWords(420, 480)]).toEqual([
    "midnight to midnight", "9 pm to midnight", "9 pm to 1 am the next day", "9 pm to midnight 2 days later", "midnight the next day to midnight", "7 am to 8 am",
  ]);
});
