import { type ReactNode } from "react";
import { type Working } from "#domain/foundation/working";
import { type WorkedWorksheet, type WorksheetAnswer, type WorksheetTable } from "#domain/worksheets/worksheet";
import { Finding } from "#ui/finding";
import { Section } from "#ui/section";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { Table, type TableColumn } from "#ui/table";
import { Text } from "#ui/text";
import { WorkingSteps } from "#ui/working";
import { sourceWords } from "../visits/visit-finding";
import styles from "./worksheet.module.css";

interface Props {
  readonly worked: WorkedWorksheet;
  readonly drawing: ReactNode;
  /** On paper the drawing and the steps stand side by side: a drawing to scale can't be made smaller. */
  readonly isBeside: boolean;
}

/** What a worksheet came to: the amounts large, what to watch, then how it goes by hand. */
export function SheetResult({ worked, drawing, isBeside }: Props) {
  const { answers, findings, tables, working } = worked;
  return (
    <section className={styles.sections} data-beside={isBeside || undefined} aria-label="Result">
      <Sheet>
        <Stack gap={3}>
          <h2>{working.title}</h2>
          <div className={styles.answers}>
            {answers.map((answer) => (
              <Answer key={answer.of} answer={answer} />
            ))}
          </div>
        </Stack>
      </Sheet>
      {findings.map(({ rule, level, what, figure, toDo, source, citation }) => (
        <Finding key={rule} level={level} what={what} figure={figure} toDo={toDo} source={sourceWords({ source, ...(citation === undefined ? {} : { citation }) })} />
      ))}
      {drawing !== undefined && <div className={styles.drawing}>{drawing}</div>}
      {tables.map((table) => (
        <SheetTable key={table.caption} table={table} />
      ))}
      <ByHand working={working} />
    </section>
  );
}

/** The unit stands beside its figure and may break: "gal per 1,000 sq ft" is long on a phone. */
function Answer({ answer: { figure, unit, of } }: { readonly answer: WorksheetAnswer }) {
  return (
    <div className={styles.answer}>
      <p>
        <span className={styles.figure}>{figure}</span> <span className={styles.unit}>{unit}</span>
      </p>
      <p className={styles.of}>{of}</p>
    </div>
  );
}

/** A cell of so many letters is a sentence, for which a row on paper needs a second line and the sheet more words below. */
const SENTENCE_LETTERS = 40;

/** Every how many rows one is printed, so that a season of days, or two days of hours with their reasons, stays on the one page. */
function rowsToOneOnPaper(rows: number, hasSentences: boolean): { readonly step: 1 | 3 | 7 | 14; readonly words: string } {
  if (rows <= 30) return { step: 1, words: "" };
  if (rows <= 90 && !hasSentences) return { step: 3, words: "every third row and the last" };
  return rows <= 210 ? { step: 7, words: "every seventh row and the last" } : { step: 14, words: "every fourteenth row and the last" };
}

function SheetTable({ table: { caption, columns, rows } }: { readonly table: WorksheetTable }) {
  const { step, words } = rowsToOneOnPaper(rows.length, rows.some((cells) => cells.some((cell) => cell.length >= SENTENCE_LETTERS)));
  const [first, ...rest] = columns.map(({ head, align }, index): TableColumn => ({ id: String(index), head, align }));
  if (first === undefined) return null;
  return (
    <Sheet flush>
      <div className={styles.table} data-paper-step={step}>
        <Table
          caption={
            <span className={styles.caption}>
              {caption}
              {words !== "" && <span className={styles.onlyOnPaper}> On paper {words}; the page has all {rows.length}.</span>}
            </span>
          }
          columns={[first, ...rest]}
          rows={rows.map((cells, row) => ({ id: String(row), cells: Object.fromEntries(cells.map((cell, index) => [String(index), cell])) }))}
          dense
        />
      </div>
    </Sheet>
  );
}

function ByHand({ working: { formula, inputs, steps, result, source } }: { readonly working: Working }) {
  return (
    <Section id="by-hand" name="By hand">
      <div className={styles.parts}>
        <Part name="Formula">
          <p>{formula}</p>
        </Part>
        <Part name="Inputs">
          <dl className={styles.inputs}>
            {inputs.map(({ name, figure, from }, index) => (
              // Two products may have one name, and inputs never change places.
              <div key={`${String(index)} ${name}`}>
                <dt>{name}</dt>
                <dd>
                  {figure}
                  {from !== undefined && <span className={styles.from}> from {from}</span>}
                </dd>
              </div>
            ))}
          </dl>
        </Part>
        <Part name="Steps">
          <WorkingSteps steps={steps} />
          <p className={styles.outcome}>{result}</p>
        </Part>
        <Part name="Source">
          <Text size="small" tone="second">
            {source}.
          </Text>
        </Part>
      </div>
    </Section>
  );
}

function Part({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    <div className={styles.part}>
      <h3>{name}</h3>
      <div className={styles.partBody}>{children}</div>
    </div>
  );
}
