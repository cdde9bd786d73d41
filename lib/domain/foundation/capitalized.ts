/** Words as a sentence begins with them: their first letter is a capital. */
export function capitalized(words: string): string {
  return `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`;
}
