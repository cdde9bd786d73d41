/** Words without the full stop at their end, for a sentence in whose middle they come to stand. */
export function withoutFullStop(words: string): string {
  return words.replace(/\.+$/u, "");
}

/** Words with a full stop at their end, unless they end by themselves. */
export function ended(words: string): string {
  return /[.!?]$/u.test(words) ? words : `${words}.`;
}
