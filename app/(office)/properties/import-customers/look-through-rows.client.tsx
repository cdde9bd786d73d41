"use client";

import { type ReactNode, useEffect, useRef } from "react";
import { CUSTOMER_COLUMN_IDS, CUSTOMER_COLUMNS, type CustomerCells } from "#domain/properties/customer-columns";
import { type CellComplaint } from "#domain/properties/customer-row";
import { BlockedButton } from "#ui/blocked-button.client";
import { RadioRows } from "#ui/choice-rows";
import { Columns } from "#ui/columns";
import { Disclosure } from "#ui/disclosure";
import { Row } from "#ui/row";
import { Section } from "#ui/section";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { SubmitButton } from "#ui/submit-button.client";
import { Table } from "#ui/table";
import { TextField } from "#ui/text-field";
import { cellField, type FaultyRow, type ImportState, meaningField, type UnderstoodRow } from "./import-state";

type State = Extract<ImportState, { step: "rows" }>;

interface Props {
  readonly state: State;
  readonly aside: ReactNode;
}

function rowsWord(count: number): string {
  return count === 1 ? "One row" : `${String(count)} rows`;
}

/** The rows that need another look, each with its cells to edit, then those that are ready, then the import. */
export function LookThroughRows({ state, aside }: Props) {
  const { rows, faulty, understood, answer } = state;
  const next = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // A row that became good takes its button away with it: the focus goes on to what is left.
    if (document.activeElement === document.body) next.current?.focus();
  }, [answer]);
  const asking = faulty.filter(({ complaints }) => complaints.some(({ asksLotOrTurf }) => asksLotOrTurf));
  return (
    <Stack gap={6}>
      <div ref={next} tabIndex={-1}>
        <Stack gap={3}>
        <p role="status">
          {faulty.length === 0 ? (
            <>All {String(rows.length)} rows are ready.</>
          ) : (
            <>
              <strong>{faulty.length === 1 ? "One row needs another look." : `${String(faulty.length)} rows need another look.`}</strong>{" "}
              {String(understood.length)} of {String(rows.length)} are ready.
            </>
          )}
        </p>
        {faulty.length > 0 && (
          // The first button of the form, so that the Enter key in a cell checks and never decides anything.
          <Row>
            <SubmitButton name="intent" value="check-all" whilePending="Checking">
              Check all rows again
            </SubmitButton>
          </Row>
        )}
        </Stack>
      </div>
      {asking.length > 1 && <AskForAll count={asking.length} />}
      {faulty.map((row) => (
        <FaultyRowSheet key={row.number} row={row} state={state} />
      ))}
      {understood.length > 0 && <ReadyRows rows={understood} open={faulty.length === 0} />}
      <Row>
        {faulty.length === 0 ? (
          <SubmitButton kind="act" name="intent" value="import" whilePending="Importing">
            {rows.length === 1 ? "Import this row" : `Import all ${String(rows.length)}`}
          </SubmitButton>
        ) : (
            <BlockedButton missing={`${rowsWord(faulty.length)} first`} missingId={`row-${String(faulty[0]?.number ?? 0)}`}>
              {`Import all ${String(rows.length)}`}
            </BlockedButton>
        )}
        {aside}
      </Row>
    </Stack>
  );
}

/** One answer for every size in acres of which nobody said what it is of. */
function AskForAll({ count }: { readonly count: number }) {
  return (
    <Sheet>
      <Stack gap={3}>
        <p>
          <strong>{String(count)} sizes are in acres.</strong> A lot is not a lawn: house, drive and beds are in it. A lot is kept on file, and the lawn stays to be measured.
        </p>
        <Row>
          <SubmitButton name="intent" value="lot" whilePending="Checking">
            They are all whole lots
          </SubmitButton>
          <SubmitButton name="intent" value="turf" whilePending="Checking">
            They are all turf alone
          </SubmitButton>
        </Row>
      </Stack>
    </Sheet>
  );
}

function FaultyRowSheet({ row, state }: { readonly row: FaultyRow; readonly state: State }) {
  const { number, complaints } = row;
  const whole = state.rows.find((each) => each.number === number);
  if (whole === undefined) return null;
  const { cells } = whole;
  const wrong = new Map(complaints.map((complaint) => [complaint.column, complaint]));
  const others = CUSTOMER_COLUMN_IDS.filter((column) => !wrong.has(column));
  const title = [cells.customer, cells.street].filter((word) => word !== "").join(", ");
  return (
    <Sheet as="section" labelledBy={`row-${String(number)}`}>
      <Stack gap={4}>
        <h2 id={`row-${String(number)}`} tabIndex={-1}>
          Row {String(number)}
          {title !== "" && `: ${title}`}
        </h2>
        <Columns split="two">
          {[...wrong.values()].map((complaint) => (
            <WrongCell key={`${complaint.column} ${state.answer}`} number={number} complaint={complaint} typed={cells[complaint.column]} meaning={whole.sizeMeaning} />
          ))}
        </Columns>
        <Disclosure name="The other cells of this row">
          <Columns>
            {others.map((column) => (
              <TextField
                key={`${column} ${state.answer}`}
                label={CUSTOMER_COLUMNS[column]}
                name={cellField(number, column)}
                defaultValue={cells[column satisfies keyof CustomerCells]}
                autoComplete="off"
              />
            ))}
          </Columns>
        </Disclosure>
        <Row>
          <SubmitButton name="intent" value={`check ${String(number)}`} whilePending="Checking">
            Check row {String(number)}
          </SubmitButton>
          <SubmitButton name="intent" value={`leave-out ${String(number)}`} whilePending="Leaving out">
            Leave row {String(number)} out
          </SubmitButton>
        </Row>
      </Stack>
    </Sheet>
  );
}

interface WrongCellProps {
  readonly number: number;
  readonly complaint: CellComplaint;
  readonly typed: string;
  readonly meaning: string;
}

function WrongCell({ number, complaint, typed, meaning }: WrongCellProps) {
  const { column, allowed, sentence, asksLotOrTurf } = complaint;
  const field = (
    <TextField
      label={CUSTOMER_COLUMNS[column]}
      name={cellField(number, column)}
      defaultValue={typed}
      autoComplete="off"
      hint={`Accepted: ${allowed}.`}
      error={sentence}
    />
  );
  if (!asksLotOrTurf) return field;
  return (
    <Stack gap={3}>
      {field}
      <RadioRows
        label={`“${typed}” is`}
        name={meaningField(number)}
        choices={[
          { value: "lot", word: "The whole lot", hint: "The lawn stays to be measured." },
          { value: "turf", word: "The turf alone" },
        ]}
        {...(meaning === "" ? {} : { defaultValue: meaning })}
      />
    </Stack>
  );
}

function ReadyRows({ rows, open }: { readonly rows: readonly UnderstoodRow[]; readonly open: boolean }) {
  return (
    <Section id="ready" name={`${rowsWord(rows.length)} ready`}>
      <Disclosure name="What was understood" open={open}>
        <Table
          caption="Rows that are ready"
          captionSpoken
          dense
          columns={[
            { id: "customer", head: "Customer" },
            { id: "row", head: "Row", align: "figure" },
            { id: "address", head: "Property" },
            { id: "lawn", head: "Lawn" },
            { id: "access", head: "Mowing, gate, dog" },
          ]}
          rows={rows.map(({ number, ...cells }) => ({ id: String(number), cells: { ...cells, row: String(number) } }))}
        />
      </Disclosure>
    </Section>
  );
}
