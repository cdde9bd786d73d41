"use client";

import { useEffect, useRef } from "react";
import { Finding } from "#ui/finding";
import { ReadBack } from "#ui/read-back";
import { Row } from "#ui/row";
import { Stack } from "#ui/stack";
import { SubmitButton } from "#ui/submit-button.client";
import { type FormState } from "./form-state";

/** The name under which the two buttons of this step say which was pressed. */
export const PRESS = "press";

interface ReadBackStepProps {
  readonly state: FormState;
  readonly send: (form: FormData) => void;
  readonly write: { readonly submit: string; readonly whilePending: string };
}

/** What a form will write, as a sentence, with everything that was typed carried along: write it, or change it. */
export function ReadBackStep({ state, send, write }: ReadBackStepProps) {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    head.current?.focus();
  }, []);
  const { values = {}, readBack = [], cares = [] } = state;
  return (
    <form action={send}>
      <Stack gap={5}>
        {Object.entries(values)
          .filter(([name]) => name !== PRESS)
          .map(([name, value]) => (
            <input key={name} type="hidden" name={name} value={value} />
          ))}
        <h2 ref={head} tabIndex={-1}>
          Read it back
        </h2>
        <ReadBack parts={readBack} />
        {cares.map((care) => (
          <Finding key={`${care.what} ${care.figure ?? ""}`} {...care} />
        ))}
        <Row fillOnPhone>
          <SubmitButton kind="act" name={PRESS} value="write" whilePending={write.whilePending}>
            {write.submit}
          </SubmitButton>
          <SubmitButton name={PRESS} value="change" whilePending="Going back">
            Change
          </SubmitButton>
        </Row>
      </Stack>
    </form>
  );
}
