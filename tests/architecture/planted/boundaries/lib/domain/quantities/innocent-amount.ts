export const amount = 1n;
