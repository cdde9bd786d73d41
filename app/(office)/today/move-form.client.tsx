"use client";

import { useActionState } from "react";
import { Button } from "#ui/button";
import { Finding } from "#ui/finding";
import { Row } from "#ui/row";
import { type Choice, SelectField } from "#ui/select-field";
import { Stack } from "#ui/stack";
import { TextField } from "#ui/text-field";
import { UNSENT } from "../../form-state";
import { moveVisitAction } from "./action";

export interface MoveFormProps {
  readonly visitId: string;
  readonly routeDayId: string;
  readonly position: number;
  readonly trucks: readonly Choice[];
}

/** Moves a visit to another truck or another place in the order, by words and a number. */
export function MoveForm({ visitId, routeDayId, position, trucks }: MoveFormProps) {
  const [state, send, isPending] = useActionState(moveVisitAction, UNSENT);
  return (
    <form action={send}>
      <Stack gap={3}>
        <input type="hidden" name="visitId" value={visitId} />
        <Row align="top">
          <SelectField label="Move to" name="routeDayId" id={`truck-${visitId}`} choices={trucks} defaultValue={state.values?.["routeDayId"] ?? routeDayId} />
          <TextField
            label="Place in the order"
            name="position"
            id={`position-${visitId}`}
            inputMode="numeric"
            autoComplete="off"
            width="short"
            defaultValue={state.values?.["position"] ?? String(position)}
            error={state.fields?.["position"]}
          />
        </Row>
        <div>
          <Button type="submit" pendingWords={isPending ? "Moving" : undefined}>
            Move
          </Button>
        </div>
        {state.kind === "refused" && state.fields?.["position"] === undefined && (
          <div role="alert">
            <Finding level="hold" what={state.sentence} source="house" />
          </div>
        )}
      </Stack>
    </form>
  );
}
