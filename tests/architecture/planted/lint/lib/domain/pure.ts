// caught by nothing
import { addDays } from "date-fns";

export const day = addDays(new Date(0), 1);
export const words = ["b", "a"].sort((one, other) => one.localeCompare(other, "en-US"));
export const text = (12.5).toLocaleString("en-US");
