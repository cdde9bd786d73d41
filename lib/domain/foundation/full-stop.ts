/** Words without the full stop at their end, for a sentence in whose middle they come to stand. */
export function withoutFullStop(words: string): string {
  return words.replace(/\.+$/u, "");
}
