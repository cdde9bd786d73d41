import { z } from "zod";
import { optionalClockTime } from "#application/clock-time.schema";
import { idField, optionalLine, versionField } from "#application/field.schema";
import { optionalArea, optionalLength, tickField } from "#application/properties/measure-fields.schema";
import { addressFields } from "#application/properties/property-fields.schema";
import { MOWERS } from "#domain/properties/client-standing";
import { oddOrEven, WATERING_DATES } from "#domain/properties/watering-dates";
import { TANK_WATER_ANSWERS } from "#domain/properties/tank-water";
import { isWeekday, WEEKDAYS } from "#domain/properties/weekday";

const optionalWeekday = z.string("Choose a day.").transform((text, context) => {
  if (text === "") return null;
  const day = Number(text);
  if (isWeekday(day)) return day;
  context.addIssue({ code: "custom", message: "Choose a day of the week." });
  return z.NEVER;
});

const longNote = z
  .string("Write a note, or leave it empty.")
  .trim()
  .max(2000, "At most 2000 characters.")
  .refine((text) => !/[\p{Cs}]|(?![\r\n\t])\p{Cc}/u.test(text), "Leave out control characters.")
  .transform((text) => (text === "" ? null : text.replaceAll("\r\n", "\n")));

/** A point on the earth as maps write it, "41.4021, -87.3254"; empty leaves the middle of the ZIP code. */
const optionalPosition = z.string("Give the position, or leave it empty.").transform((text, context) => {
  if (text.trim() === "") return null;
  const [, north, east] = /^(-?\d{1,2}(?:\.\d{1,8})?)\s*[,\s]\s*(-?\d{1,3}(?:\.\d{1,8})?)$/.exec(text.trim()) ?? [];
  const [latitude, longitude] = [Number(north), Number(east)];
  if (Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180) return { latitude, longitude };
  context.addIssue({ code: "custom", message: "Give latitude and longitude in degrees, for example 41.4021, -87.3254." });
  return z.NEVER;
});

/** Ticks by the number of the weekday: an object as the server reads a form, or a list as the browser's form holds numbered fields. */
const wateringDays = z.preprocess(
  (ticks) => (Array.isArray(ticks) ? Object.fromEntries(Object.entries(ticks)) : ticks),
  z.object(Object.fromEntries(WEEKDAYS.map((weekday) => [weekday, tickField])) as Record<string, typeof tickField>).default({}),
);

/** What the days of watering go by: days of the week (those that are ticked), or dates of the month. */
const wateringDaysBy = z.union([z.literal("weekdays").transform(() => null), z.enum(WATERING_DATES)], "Choose what the days of watering go by.");

export const changePropertySchema = z
  .object({
    propertyId: idField,
    version: versionField,
    ...addressFields,
    position: optionalPosition,
    accessNote: optionalLine(400),
    gateCode: optionalLine(40),
    narrowestGate: optionalLength("the narrowest gate", "in"),
    dogNote: optionalLine(200),
    tankWater: z.union([z.literal("").transform(() => null), z.enum(TANK_WATER_ANSWERS)], "Say whether a tank can be filled there."),
    mowingWeekday: optionalWeekday,
    mowedBy: z.union([z.literal("").transform(() => null), z.enum(MOWERS)], "Choose who mows."),
    lotArea: optionalArea("the size of the lot"),
    wateringFrom: optionalClockTime("05:30"),
    wateringUntil: optionalClockTime("05:30"),
    wateringBy: wateringDaysBy.default(null),
    wateringOn: wateringDays,
    note: longNote,
  })
  .refine((form) => (form.wateringFrom === null) === (form.wateringUntil === null), {
    path: ["wateringUntil"],
    message: "Give both times, or neither.",
  })
  .refine((form) => form.wateringFrom === null || form.wateringFrom !== form.wateringUntil, {
    path: ["wateringUntil"],
    message: "The two times are the same: leave both empty where water may always run.",
  })
  .refine((form) => form.wateringBy === null || WEEKDAYS.every((weekday) => form.wateringOn[String(weekday)] !== true), {
    path: ["wateringBy"],
    message: "Days of the week are ticked too. Untick them, or choose days of the week.",
  })
  .refine((form) => form.wateringBy === null || oddOrEven(form.wateringBy, form.street) !== undefined, {
    path: ["wateringBy"],
    message: "The street begins with no house number. Choose odd or even dates.",
  });
