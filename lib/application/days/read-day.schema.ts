import { z } from "zod";
import { optionalDate } from "#application/field.schema";

/** The day to look at; empty for the one on which the place opens. */
export const readDaySchema = z.object({ date: optionalDate("the day") });
