import { randomUUID } from "node:crypto";

export const reading = randomUUID;
