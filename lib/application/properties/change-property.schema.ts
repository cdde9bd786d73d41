import { z } from "zod";
import { idField, optionalLine, versionField } from "#application/field.schema";
import { optionalArea, optionalLength } from "#application/properties/measure-fields.schema";
import { addressFields } from "#application/properties/property-fields.schema";
import { controllerFields, townRuleFields } from "#application/properties/watering-fields.schema";
import { MOWERS } from "#domain/properties/client-standing";
import { NO_FIXED_DAY } from "#domain/properties/mowing-day";
import { TANK_WATER_ANSWERS } from "#domain/properties/tank-water";
import { oddOrEven } from "#domain/properties/watering-dates";
import { type WateringFact } from "#domain/properties/watering-fact";
import { isWeekday } from "#domain/properties/weekday";

const optionalMowingDay = z.string("Choose a day.").transform((text, context) => {
  if (text === "") return null;
  if (text === NO_FIXED_DAY) return NO_FIXED_DAY;
  const day = Number(text);
  if (isWeekday(day)) return day;
  context.addIssue({ code: "custom", message: "Choose a day of the week, or that none is fixed." });
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
    mowingDay: optionalMowingDay,
    mowedBy: z.union([z.literal("").transform(() => null), z.enum(MOWERS)], "Choose who mows."),
    lotArea: optionalArea("the size of the lot"),
    townRule: townRuleFields,
    controller: controllerFields,
    note: longNote,
  })
  .refine(({ townRule, street }) => !goesByHouseNumber(townRule) || oddOrEven("house-number", street) !== undefined, {
    path: ["townRule", "by"],
    message: "The street begins with no house number. Choose odd or even dates.",
  });

function goesByHouseNumber(fact: WateringFact): boolean {
  return typeof fact === "object" && fact.days !== null && "dates" in fact.days && fact.days.dates === "house-number";
}
