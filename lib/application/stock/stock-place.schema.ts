import { z } from "zod";

const PLACE = /^(?:shop|(vehicle|equipment):([0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}))$/i;

/** The shop, a truck or a tank, as forms name it: "shop", "vehicle:<id>", "equipment:<id>". */
export const stockPlaceField = z
  .string("Choose a location.")
  .regex(PLACE, "Choose a location.")
  .transform((text) => {
    const [, kind, id = ""] = PLACE.exec(text) ?? [];
    if (kind === "vehicle") return { kind, vehicleId: id } as const;
    return kind === "equipment" ? ({ kind, equipmentId: id } as const) : ({ kind: "shop" } as const);
  });
