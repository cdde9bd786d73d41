"use client";

import { type ReactNode, useActionState, useEffect, useRef } from "react";
import { Button } from "#ui/button";
import { Finding } from "#ui/finding";
import { Row } from "#ui/row";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { SubmitButton } from "#ui/submit-button.client";
import { TextAreaField } from "#ui/text-area-field";
import { TextField } from "#ui/text-field";
import { importCustomersAction } from "./action";
import { ChooseColumns } from "./choose-columns.client";
import { FIRST_STEP, type ImportState } from "./import-state";
import { LookThroughRows } from "./look-through-rows.client";

/** The import, step by step, in one form that carries the list with it. It works without scripts too. */
export function ImportCustomersForm() {
  const [state, send] = useActionState(importCustomersAction, FIRST_STEP);
  return (
    <form action={send} noValidate>
      <Stack gap={5}>
        <Said key={state.answer} state={state} />
        <Step state={state} />
      </Stack>
    </form>
  );
}

function Step({ state }: { readonly state: ImportState }) {
  switch (state.step) {
    case "text":
      return <GiveText key={state.answer} state={state} />;
    case "columns":
      return <ChooseColumns key={state.answer} state={state} aside={<BeginAnew />} />;
    case "rows":
      return <LookThroughRows state={state} aside={<BeginAnew />} />;
  }
}

/** What the last press came to, where it was refused; it takes the focus so that nobody misses it. */
function Said({ state }: { readonly state: ImportState }): ReactNode {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    box.current?.focus();
  }, []);
  if (state.sentence === undefined) return null;
  return (
    <div role="alert" ref={box} tabIndex={-1}>
      <Finding level="hold" what={state.sentence} source="Nothing was stored." />
    </div>
  );
}

function BeginAnew() {
  return (
    <Button type="submit" name="intent" value="begin-anew">
      Begin with another list
    </Button>
  );
}

function GiveText({ state }: { readonly state: Extract<ImportState, { step: "text" }> }) {
  return (
    <Sheet>
      <Stack gap={5}>
        <TextField label="File" type="file" name="file" accept=".csv,.txt,.tsv,text/csv,text/plain" hint="A spreadsheet saved as CSV. The first line names the columns." />
        <TextAreaField
          label="Or paste the list"
          name="text"
          rows={8}
          defaultValue={state.text}
          spellCheck={false}
          hint="Copied straight out of a spreadsheet, with its line of names."
        />
        <Row>
          <SubmitButton kind="act" whilePending="Reading">
            Read the list
          </SubmitButton>
        </Row>
      </Stack>
    </Sheet>
  );
}
