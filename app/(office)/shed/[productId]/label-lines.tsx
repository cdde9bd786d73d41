import { type ReactNode } from "react";
import { type EntryOfLabel } from "#application/products/stored-label";
import { answerOf } from "#domain/label/label-answer";
import { GENERAL_FIELD_NAMES, GENERAL_FIELDS, type LabelField, USE_FIELD_NAMES, USE_FIELDS } from "#domain/label/label-fields";
import { sentencesOfLabel, sentencesOfUse } from "#domain/label/label-sentences";
import { KeyValueList } from "#ui/key-value-list";
import { QuotedWords } from "#ui/quote";
import { Stack } from "#ui/stack";
import { Text } from "#ui/text";

interface Line {
  readonly field: LabelField;
  readonly typed: string;
  /** What was understood, where it could be misread. */
  readonly understood: string | undefined;
}

interface Part {
  readonly name: string;
  readonly lines: readonly Line[];
}

/** A label entry in parts: the product, then each use under its own name. */
function partsOf({ text, facts }: EntryOfLabel): readonly Part[] {
  const general = sentencesOfLabel(facts);
  return [
    {
      name: "The product",
      lines: GENERAL_FIELD_NAMES.map((name) => ({ field: GENERAL_FIELDS[name], typed: text.general[name], understood: general[name] })),
    },
    ...text.uses.map((use, index) => {
      const read = facts.uses[index];
      const sentences = read === undefined ? {} : sentencesOfUse(read);
      return { name: use.useName, lines: USE_FIELD_NAMES.map((name) => ({ field: USE_FIELDS[name], typed: use[name], understood: sentences[name] })) };
    }),
  ];
}

/** How many facts of an entry nobody has read. Where the label is found is no fact of it. */
export function unreadCount(entry: EntryOfLabel): number {
  return partsOf(entry)
    .flatMap(({ lines }) => lines)
    .filter(({ field, typed }) => field !== USE_FIELDS.section && answerOf(typed).kind === "unread").length;
}

function Typed({ line }: { readonly line: Line }) {
  const answer = answerOf(line.typed);
  if (answer.kind === "unread") return <strong>nobody has read this</strong>;
  if (answer.kind === "none") return <>the label says nothing</>;
  return (
    <>
      <QuotedWords>{answer.value}</QuotedWords>
      {answer.labelWords !== line.typed.trim() && (
        <>
          {" "}
          in the label’s words <QuotedWords>{answer.labelWords}</QuotedWords>
        </>
      )}
      {line.understood !== undefined && (
        <Text size="small" tone="second">
          {line.understood}
        </Text>
      )}
    </>
  );
}

function namesOf(lines: readonly Line[]): string {
  return lines.map(({ field }) => field.words.charAt(0).toLowerCase() + field.words.slice(1)).join("; ");
}

interface LabelLinesProps {
  readonly entry: EntryOfLabel;
  /** Every line, also those that say nothing: for holding against the container. Else those are summed up. */
  readonly every: boolean;
  /** What stands beside a use's name. */
  readonly asideOfUse?: (index: number) => ReactNode;
}

/** A label read back: what was typed in the label's own face, and below it what was understood. */
export function LabelLines({ entry, every, asideOfUse }: LabelLinesProps) {
  return (
    <Stack gap={6}>
      {partsOf(entry).map(({ name, lines }, index) => {
        const shown = every ? lines : lines.filter(({ typed }) => answerOf(typed).kind === "printed");
        const silent = lines.filter(({ typed }) => answerOf(typed).kind === "none");
        const unread = lines.filter(({ field, typed }) => field !== USE_FIELDS.section && answerOf(typed).kind === "unread");
        return (
          <Stack key={name} gap={3}>
            <h3>{index === 0 ? name : `Use: ${name}`}</h3>
            <KeyValueList pairs={shown.filter(({ field, typed }) => field !== USE_FIELDS.section || typed !== "").map((line) => ({ key: line.field.words, value: <Typed line={line} /> }))} />
            {!every && unread.length > 0 && (
              <p>
                <strong>Nobody has read:</strong> {namesOf(unread)}.
              </p>
            )}
            {!every && silent.length > 0 && (
              <Text size="small" tone="second">
                The label says nothing about: {namesOf(silent)}.
              </Text>
            )}
            {index > 0 && asideOfUse?.(index - 1)}
          </Stack>
        );
      })}
    </Stack>
  );
}
