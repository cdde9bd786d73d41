import { Fragment, type ReactNode } from "react";
import { type EntryOfLabel } from "#application/products/stored-label";
import { answerOf } from "#domain/label/label-answer";
import {
  GENERAL_FIELD_NAMES,
  GENERAL_FIELDS,
  type GeneralField,
  type LabelField,
  USE_FIELD_NAMES,
  USE_FIELDS,
  type UseField,
} from "#domain/label/label-fields";
import { useNamed } from "#domain/label/label-facts";
import { sentencesOfLabel, sentencesOfUse } from "#domain/label/label-sentences";
import { Code } from "#ui/code";
import { Columns } from "#ui/columns";
import { KeyValueList } from "#ui/key-value-list";
import { QuotedWords } from "#ui/quote";
import { Stack } from "#ui/stack";
import { Text } from "#ui/text";
import styles from "./label-lines.module.css";

interface Line {
  readonly name: GeneralField | UseField;
  readonly field: LabelField;
  readonly typed: string;
  /** What was understood, where it could be misread. */
  readonly understood: string | undefined;
}

interface Part {
  readonly name: string;
  readonly lines: readonly Line[];
}

/** Facts that are said in our own words and not in the label's. */
const OURS: ReadonlySet<GeneralField | UseField> = new Set(["formulation", "restrictedUse", "useName", "section", "serviceType", "stainsHardSurfaces"]);

/** What was taken when it was entered and is refused today counts for nothing until it is entered anew. */
function refusedToday(complaint: string | undefined): string | undefined {
  return complaint === undefined ? undefined : `This counts as not read: ${complaint}`;
}

/** A label entry in parts: the product, then each use under its own name. */
function partsOf({ text, facts, complaints }: EntryOfLabel): readonly Part[] {
  const general = sentencesOfLabel(facts);
  return [
    {
      name: "The product",
      lines: GENERAL_FIELD_NAMES.map((name) => ({ name, field: GENERAL_FIELDS[name], typed: text.general[name], understood: refusedToday(complaints[`general.${name}`]) ?? general[name] })),
    },
    ...text.uses.map((use, index) => {
      const name = answerOf(use.useName);
      const read = name.kind === "printed" ? useNamed(facts, name.value) : undefined;
      const sentences = read === undefined ? {} : sentencesOfUse(read);
      const understood = (name: UseField) => refusedToday(complaints[`uses.${String(index)}.${name}`]) ?? sentences[name];
      return { name: use.useName, lines: USE_FIELD_NAMES.map((name) => ({ name, field: USE_FIELDS[name], typed: use[name], understood: understood(name) })) };
    }),
  ];
}

/** Where the label is found is no fact of it; left empty, it is not missed. */
function isMissed({ name, typed }: Line): boolean {
  return name !== "section" && answerOf(typed).kind === "unread";
}

/** How many facts of an entry nobody has read. */
export function unreadCount(entry: EntryOfLabel): number {
  return partsOf(entry)
    .flatMap(({ lines }) => lines)
    .filter(isMissed).length;
}

function Value({ line }: { readonly line: Line }) {
  const answer = answerOf(line.typed);
  if (answer.kind === "unread") return <strong>nobody has read this</strong>;
  if (answer.kind === "none") return <>the label says nothing</>;
  if (line.name === "epaRegistrationNumber") return <Code>{answer.value}</Code>;
  if (OURS.has(line.name)) return <>{answer.value}</>;
  return (
    <>
      {answer.value.split("\n").map((printed, index) => (
        <Fragment key={printed}>
          {index > 0 && <br />}
          <QuotedWords>{printed}</QuotedWords>
        </Fragment>
      ))}
      {answer.labelWords !== line.typed.trim() && (
        <>
          <br />
          The label’s words: <QuotedWords>{answer.labelWords}</QuotedWords>
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

/** The facts' names within a sentence; an abbreviation keeps its capitals. */
function namesOf(lines: readonly Line[]): string {
  return lines.map(({ field: { words } }) => (/^[A-Z][a-z]/u.test(words) ? words.charAt(0).toLowerCase() + words.slice(1) : words)).join("; ");
}

function groupsOf(lines: readonly Line[]): readonly (readonly [string, readonly Line[]])[] {
  const names = [...new Set(lines.map(({ field }) => field.group))];
  return names.map((group) => [group, lines.filter(({ field }) => field.group === group)] as const);
}

function Facts({ lines }: { readonly lines: readonly Line[] }) {
  return <KeyValueList pairs={lines.map((line) => ({ key: line.field.words, value: <Value line={line} /> }))} />;
}

/** Every line in the order of the form, one below the other: to be held against the container. */
export function EveryLabelLine({ entry }: { readonly entry: EntryOfLabel }) {
  return (
    <div className={styles.oneColumn}>
      <Stack gap={6}>
        {partsOf(entry).map(({ name, lines }, part) => (
          <Stack key={name} gap={4}>
            <h2>{part === 0 ? name : `Use: ${name}`}</h2>
            {groupsOf(lines.filter((line) => line.name !== "section" || line.typed !== "")).map(([group, own]) => (
              <Stack key={group} gap={2}>
                {part > 0 && <h3 className={styles.group}>{group}</h3>}
                <Facts lines={own} />
              </Stack>
            ))}
          </Stack>
        ))}
      </Stack>
    </div>
  );
}

interface LabelLinesProps {
  readonly entry: EntryOfLabel;
  /** What stands below a use. */
  readonly belowUse: (index: number) => ReactNode;
}

/** What a label says, by subject; what it says nothing about, and what nobody has read, is summed up in a sentence each. */
export function LabelLines({ entry, belowUse }: LabelLinesProps) {
  return (
    <Stack gap={6}>
      {partsOf(entry).map(({ name, lines }, part) => {
        const missed = lines.filter(isMissed);
        const silent = lines.filter(({ typed }) => answerOf(typed).kind === "none");
        return (
          <Stack key={name} gap={4}>
            <h3 className={styles.part}>{part === 0 ? name : `Use: ${name}`}</h3>
            <Columns split="two">
              {groupsOf(lines.filter((line) => answerOf(line.typed).kind === "printed" && line.name !== "useName")).map(([group, own]) => (
                <Stack key={group} gap={2}>
                  {part > 0 && <h4 className={styles.group}>{group}</h4>}
                  <Facts lines={own} />
                </Stack>
              ))}
            </Columns>
            {missed.length > 0 && (
              <p>
                <strong>Nobody has read:</strong> {namesOf(missed)}.
              </p>
            )}
            {silent.length > 0 && (
              <Text size="small" tone="second">
                The label says nothing about: {namesOf(silent)}.
              </Text>
            )}
            {part > 0 && belowUse(part - 1)}
          </Stack>
        );
      })}
    </Stack>
  );
}
