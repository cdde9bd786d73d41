import { type paper } from "#domain/papers/innocent-paper";

export type Paper = typeof paper;
