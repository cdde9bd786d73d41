/** One number with a comma of thousands and nothing else that could be another entry: "1,250 sq ft". */
const ONE_NUMBER_WITH_THOUSANDS = /^\d{1,3},\d{3}(?!\d)[^,]*$/u;

/**
 * The parts of a list that was typed with semicolons, line ends or commas between. Where there are semicolons, line ends
 * or commas with a space behind them, those part and a comma within a part is the part's own ("1,250, 300" are two). Else
 * every comma parts ("32,150,145,17" are four), but not that of a single number of thousands. Empty parts are left out.
 */
export function listParts(text: string): readonly string[] {
  return text.trim().split(separatorsOf(text.trim())).map((part) => part.trim()).filter((part) => part !== "");
}

function separatorsOf(typed: string): RegExp {
  if (/[;\n]|,\s/u.test(typed)) return /[;\n]|,\s+|,$/u;
  return ONE_NUMBER_WITH_THOUSANDS.test(typed) ? /;/u : /,/u;
}
