// Named facts: the name small above, the value below; what is not known is said in words, what is to be written has a rule.
import { type PaperField, wordsOf } from "#domain/papers/paper";
import { type Block, STYLE, beside, line, space, stack } from "./block";
import { writingField } from "./write-in";

function fieldBlock({ label, value, isCode }: PaperField): Block {
  if (value.kind === "to-write") return writingField(label);
  const isKnown = value.kind === "said";
  const style = isKnown && isCode === true ? STYLE.code : STYLE.text;
  return stack([line(label, STYLE.label), line(isKnown ? value.text : wordsOf(value), style)]);
}

/** As many columns as leave no field alone in the last row. */
function columnsFor(count: number): number {
  return [4, 5, 3].find((columns) => count % columns === 0) ?? (count % 5 > 1 ? 5 : 4);
}

/** Fields in columns, read row by row. Each row is a block, so that a long grid may go on with the next page. */
export function fieldRows(fields: readonly PaperField[], columns = columnsFor(fields.length)): readonly Block[] {
  const rows: Block[] = [];
  for (let start = 0; start < fields.length; start += columns) {
    const cells = Array.from({ length: columns }, (_, index) => {
      const field = fields[start + index];
      return { width: { share: 1 }, block: field === undefined ? space(0) : fieldBlock(field) };
    });
    rows.push(stack([beside(cells, 14), space(5)]));
  }
  return rows;
}
