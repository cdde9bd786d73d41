// Named facts: the name small above, the value below; what is not known is said in words, what is to be written has a rule.
import { type PaperField, wordsOf } from "#domain/papers/paper";
import { type Block, STYLE, beside, line, space, stack } from "./block";
import { writingRule } from "./write-in";

function fieldBlock({ label, value, isCode }: PaperField): Block {
  if (value.kind === "to-write") return writingRule(label);
  const isKnown = value.kind === "said";
  const style = isKnown && isCode === true ? STYLE.code : STYLE.text;
  return stack([line(label, STYLE.label), line(isKnown ? value.text : wordsOf(value), style)]);
}

/** Fields in columns, read row by row. Each row is a block, so that a long grid may go on with the next page. */
export function fieldRows(fields: readonly PaperField[], columns: number): readonly Block[] {
  const rows: Block[] = [];
  for (let start = 0; start < fields.length; start += columns) {
    const cells = Array.from({ length: columns }, (_, index) => {
      const field = fields[start + index];
      return { width: { share: 1 }, block: field === undefined ? space(0) : fieldBlock(field) };
    });
    rows.push(stack([beside(cells, 14), space(6)]));
  }
  return rows;
}
