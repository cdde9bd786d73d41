export const database = "only for tests";
