"use client";

import { useActionState } from "react";
import { Button } from "#ui/button";
import { Finding } from "#ui/finding";
import { Stack } from "#ui/stack";
import { UNSENT } from "../../form-state";
import { orderDayAction } from "./action";

export interface OrderFormProps {
  readonly routeDayId: string;
  readonly version: number;
  readonly truck: string;
}

/** Puts a truck's stops in order. What finds no place is named first; taking it off the day is a second press. */
export function OrderForm({ routeDayId, version, truck }: OrderFormProps) {
  const [state, send, isPending] = useActionState(orderDayAction, UNSENT);
  const why = state.kind === "done" ? (state.values?.["why"] ?? "").split("\n").filter((line) => line !== "") : [];
  return (
    <form action={send}>
      <Stack gap={3}>
        <input type="hidden" name="routeDayId" value={routeDayId} />
        <input type="hidden" name="version" value={version} />
        <div>
          <Button type="submit" name="withoutPlace" value="tell" aria-label={`Fit again: ${truck}`} pendingWords={isPending ? "Fitting" : undefined}>
            Fit again
          </Button>
        </div>
        {state.kind === "refused" && (
          <div role="alert">
            <Finding level="hold" what={state.sentence} source="house" />
          </div>
        )}
        {why.length > 0 && (
          <div role="status">
            <Finding
              level="take-care"
              what={state.sentence}
              source="house"
              toDo={
                <>
                  {why.map((line) => (
                    <span key={line}>{line} </span>
                  ))}
                </>
              }
              actions={
                <Button type="submit" name="withoutPlace" value="take-off">
                  Take these off and fit the rest
                </Button>
              }
            />
          </div>
        )}
      </Stack>
    </form>
  );
}
