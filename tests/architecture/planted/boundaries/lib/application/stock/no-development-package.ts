import { assert } from "fast-check";

export const check = assert;
