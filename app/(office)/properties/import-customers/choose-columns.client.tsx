"use client";

import { type ReactNode } from "react";
import { CUSTOMER_COLUMN_IDS, CUSTOMER_COLUMNS, type CustomerColumn, NEEDED_COLUMNS } from "#domain/properties/customer-columns";
import { Columns } from "#ui/columns";
import { Row } from "#ui/row";
import { SelectField } from "#ui/select-field";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { SubmitButton } from "#ui/submit-button.client";
import { type ImportState } from "./import-state";

type State = Extract<ImportState, { step: "columns" }>;

interface Props {
  readonly state: State;
  readonly aside: ReactNode;
}

/** Which column of the list holds what: an offer by the names of its first line, to be looked over and changed. */
export function ChooseColumns({ state, aside }: Props) {
  const count = state.lines.length;
  return (
    <Sheet>
      <Stack gap={5}>
        <p>
          <strong>{count === 1 ? "One row." : `${String(count)} rows.`}</strong> Look over which column holds what; the first row shows whether it fits.
        </p>
        <Columns>
          {CUSTOMER_COLUMN_IDS.map((column) => (
            <ColumnChoice key={column} column={column} state={state} />
          ))}
        </Columns>
        <Row>
          <SubmitButton kind="act" whilePending="Reading">
            Read the rows
          </SubmitButton>
          {aside}
        </Row>
      </Stack>
    </Sheet>
  );
}

const LONGEST_SAMPLE = 40;

function ColumnChoice({ column, state }: { readonly column: CustomerColumn; readonly state: State }) {
  const place = state.places[column];
  const name = `place.${column}`;
  const sample = place === undefined ? "" : (state.lines[0]?.cells[place] ?? "").slice(0, LONGEST_SAMPLE);
  return (
    <SelectField
      label={CUSTOMER_COLUMNS[column]}
      name={name}
      optional={!NEEDED_COLUMNS.includes(column)}
      hint={place === undefined ? "No column was found for it." : `First row: ${sample === "" ? "empty" : sample}`}
      error={state.missing.includes(column) ? `Say which column holds the ${CUSTOMER_COLUMNS[column].toLowerCase()}.` : undefined}
      chooseWords="Not in this list"
      defaultValue={place === undefined ? "" : String(place)}
      choices={state.heads.map((head, at) => ({ value: String(at), word: head === "" ? `Column ${String(at + 1)}` : head }))}
    />
  );
}
