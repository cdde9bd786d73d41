import { expect, test } from "vitest";
import { checkWeatherRead } from "#domain/register/weather-read";
import { type WeatherLimits } from "#domain/weather/spray-limits";
import { IRON } from "../../support/ticket";

const AT = { startedAt: new Date("2026-04-14T12:20:00Z"), endedAt: new Date("2026-04-14T13:05:00Z"), timeZone: "America/Indiana/Indianapolis" };
const OF_LABEL = { basis: "label", source: "label of Rustwater Iron" } as const;
const { label } = IRON;
const under = (weather: Partial<WeatherLimits>) => ({ label, use: { ...IRON.use, weather: { ...IRON.use.weather, highestTemperature: "none", ...weather } } }) as const;
const LIMITED = under({
  highestWind: { limitMph: 10, ...OF_LABEL },
  lowestWind: { limitMph: 2, ...OF_LABEL },
  highestTemperature: { limitF: 80, reaching: "forbidden", ...OF_LABEL },
  lowestTemperature: { limitF: 45, reaching: "allowed", ...OF_LABEL },
});
const said = (...asked: Parameters<typeof checkWeatherRead>) => checkWeatherRead(...asked).map(({ what }) => what);

test("wind above the label's is said with both figures, as a hold that nobody answers", () => {
  expect(checkWeatherRead(LIMITED, { temperatureF: 61, windMph: 25 }, AT)).toEqual([
    {
      level: "hold",
      answerableBy: "nobody",
      rule: "weather-outside-label",
      source: "label",
      what: "Rustwater Iron went down in more wind than its label allows.",
      figure: "As it was read at the site: The wind is 25 mph; the highest wind for Rustwater Iron is 10 mph.",
      toDo: "Tell the license holder today.",
      citation: "label of Rustwater Iron, Lawns",
      about: ["Rustwater Iron"],
    },
  ]);
});

test("each limit is held to the figure itself, as the label says it", () => {
  const read = (temperatureF: number, windMph: number) => said(LIMITED, { temperatureF, windMph }, AT).length;
  expect([read(61, 10), read(61, 11), read(61, 2), read(61, 1), read(79, 4), read(80, 4), read(45, 4), read(44, 4)]).toEqual([0, 1, 0, 1, 0, 1, 0, 1]);
  expect(said(LIMITED, { temperatureF: 85, windMph: 25 }, AT)).toEqual([
    "Rustwater Iron went down in more heat than its label allows.",
    "Rustwater Iron went down in more wind than its label allows.",
  ]);
  expect(said(LIMITED, { temperatureF: 40, windMph: 0 }, AT)).toEqual([
    "Rustwater Iron went down in more cold than its label allows.",
    "Rustwater Iron went down in less wind than its label asks for.",
  ]);
});

test("a limit on the hours afterwards is passed by the heat at the time, and not by hours that nobody read", () => {
  const ahead = under({ highestTemperatureAhead: { limitF: 85, reaching: "forbidden", withinHours: 24, ...OF_LABEL } });
  expect(said(ahead, { temperatureF: 90, windMph: 4 }, AT)).toEqual(["Rustwater Iron went down in more heat than its label allows at the time and in the hours after."]);
  expect(said(ahead, { temperatureF: 70, windMph: 4 }, AT)).toEqual([]);
});

test("what was not taken, limits that take a forecast, limits that nobody has read, and no label say nothing", () => {
  expect(said(LIMITED, { temperatureF: null, windMph: null }, AT)).toEqual([]);
  expect(said(LIMITED, { temperatureF: null, windMph: 25 }, AT)).toHaveLength(1);
  const forecast = under({ rainfast: { minutes: 240, ...OF_LABEL }, heavyRain: { inches: 0.5, withinHours: 24, ...OF_LABEL }, soil: { closedWhen: ["frozen"], ...OF_LABEL } });
  expect(said(forecast, { temperatureF: 61, windMph: 25 }, AT)).toEqual([]);
  expect(said(under({ highestWind: "unknown", highestTemperature: "unknown" }), { temperatureF: 99, windMph: 25 }, AT)).toEqual([]);
  expect(said("not-on-file", { temperatureF: 99, windMph: 25 }, AT)).toEqual([]);
});
