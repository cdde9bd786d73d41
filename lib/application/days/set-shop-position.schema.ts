import { z } from "zod";

function degrees(what: string, most: number) {
  const sentence = `Give the ${what} in degrees between -${String(most)} and ${String(most)}, for example ${most === 90 ? "41.5402" : "-87.0931"}.`;
  return z
    .string(sentence)
    .trim()
    .transform((text, context) => {
      if (text === "") return null;
      const value = /^-?\d{1,3}(\.\d{1,8})?$/.test(text) ? Number(text) : Number.NaN;
      if (Math.abs(value) <= most) return value;
      context.addIssue({ code: "custom", message: sentence });
      return z.NEVER;
    })
    .default(null);
}

export const setShopPositionSchema = z
  .object({
    zip: z
      .string("Give the ZIP code.")
      .trim()
      .regex(/^(\d{5}(-\d{4})?)?$/, "Five digits, or five and four: 46304 or 46304-1102.")
      .default(""),
    latitude: degrees("latitude", 90),
    longitude: degrees("longitude", 180),
  })
  .refine(({ latitude, longitude }) => (latitude === null) === (longitude === null), { path: ["longitude"], message: "Give both latitude and longitude, or the ZIP code." })
  .refine(({ zip, latitude }) => zip !== "" || latitude !== null, { path: ["zip"], message: "Give the ZIP code of the shop, or its latitude and longitude." });
