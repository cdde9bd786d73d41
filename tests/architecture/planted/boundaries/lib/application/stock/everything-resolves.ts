import { nowhere } from "#domain/quantities/nowhere";

export const lost: unknown = nowhere;
